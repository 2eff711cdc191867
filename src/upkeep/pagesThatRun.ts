/** Pages whose shell and code blocks are run, and whose outputs are compared by the tests. */
export const pagesThatRun: readonly string[] = ['docs/recipes.md', 'docs/stability.md', 'docs/at-scale.md', 'docs/guides/embed.md', 'docs/guides/what-if.md', 'docs/guides/catalogue.md'];
