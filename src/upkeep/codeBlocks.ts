/** Markdown with the output of every `js` block that is followed by a `text` block put into that, as the code really prints it now. */
export const withCodeOutputs = (markdown: string, run: (code: string) => string): string =>
  markdown.replace(/```js\n([\s\S]*?)```\n\n```text\n[\s\S]*?```/g, (_, code: string) => `\`\`\`js\n${code}\`\`\`\n\n\`\`\`text\n${run(code).trimEnd()}\n\`\`\``);
