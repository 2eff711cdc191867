/** The id that a name gives where nothing else is said: `Acer x freemanii` gives `acer-x-freemanii`. */
export const plainId = (name: string): string => name.toLowerCase().replace(/[^a-z0-9]+/g, '-');
