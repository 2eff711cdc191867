import { posix } from 'node:path';
import { Marked } from 'marked';
import { raw } from './html.js';
import type { Page } from './page.js';

/** The first sentence that says what a page holds, not how it was made. */
const firstSentence = (markdown: string): string | undefined => {
  const lines = markdown.split('\n').filter((line) => /^[A-Z]/.test(line) && !/^(This page is generated|Counted from)/.test(line));
  return lines[0]?.replaceAll(/\[([^\]]+)\]\([^)]*\)/g, '$1').replaceAll(/[`*]/g, '').split(/(?<=[.?!]) /)[0];
};

/**
 * A page written in Markdown, its links to other pages of Markdown led to where they stand in the site; what lies in the repository alone is named, not linked.
 *
 * @param file where it stands in the repository, such as `docs/guides/embed.md`
 * @param placed where each Markdown file of the repository stands in the site
 */
export const markdownPage = (file: string, markdown: string, placed: ReadonlyMap<string, string>): Page => {
  const marked = new Marked({
    renderer: {
      link({ href, tokens }): string | false {
        if (/^(https?:|#)/.test(href)) return false;
        const text = this.parser.parseInline(tokens);
        const [target = '', anchor] = href.split('#');
        const path = placed.get(posix.normalize(posix.join(posix.dirname(file), target)));
        return path === undefined ? text : `<a href="~/${path}${anchor === undefined ? '' : `#${anchor}`}">${text}</a>`;
      },
      table(token): string {
        const cells = (row: typeof token.header, tag: 'th' | 'td'): string => row.map((cell) => `<${tag}${tag === 'th' ? ' scope="col"' : ''}>${this.parser.parseInline(cell.tokens)}</${tag}>`).join('');
        return `<div class="wide"><table><thead><tr>${cells(token.header, 'th')}</tr></thead><tbody>${token.rows.map((row) => `<tr>${cells(row, 'td')}</tr>`).join('')}</tbody></table></div>`;
      },
    },
  });
  const title = /^# (.+)$/m.exec(markdown)?.[1] ?? file;
  return { path: placed.get(file)!, title, section: 'guides', description: firstSentence(markdown) ?? title, words: markdown.match(/^##+ .+$/gm)?.join(' ') ?? '', body: raw(marked.parse(markdown, { async: false })) };
};
