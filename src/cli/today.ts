/** The day of this machine's clock, ISO 8601: only the command line looks at it, and only where no date is given. */
export const today = (): string => new Date().toISOString().slice(0, 10);
