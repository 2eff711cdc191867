import type { Knowledge } from './knowledge.js';

/** What an id that was published is called now, however often it was renamed; itself where it never was. */
export const nowCalled = ({ renames }: Pick<Knowledge, 'renames'>, id: string): string => {
  const seen = new Set<string>();
  let at = id;
  for (let next = renames.find(({ from }) => from === at); next?.to !== undefined && !seen.has(at); next = renames.find(({ from }) => from === at)) {
    seen.add(at);
    at = next.to;
  }
  return at;
};
