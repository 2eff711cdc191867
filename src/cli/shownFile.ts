/** A file that an example reads, as a part of the help: its name, then what it holds. */
export const shownFile = (name: string, yaml: string): string => `\n${name}:\n${yaml.trim().split('\n').map((line) => `  ${line}`).join('\n')}\n`;
