/** Runs a command line, without its leading `$`, and hands back what it prints. */
export type RunLine = (line: string) => string;

/** Markdown with the output of every `console` block put under its `$` line, as the command really prints it now. */
export const withOutputs = (markdown: string, run: RunLine): string =>
  markdown.replace(/```console\n\$ (.*)\n[\s\S]*?```/g, (_, line: string) => `\`\`\`console\n$ ${line}\n${run(line).trimEnd()}\n\`\`\``);
