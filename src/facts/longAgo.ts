/** Days that stand for never, or for longer than anyone remembers. */
export const longAgo = 36500;
