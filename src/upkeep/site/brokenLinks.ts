import { posix } from 'node:path';

/** Links of the site that lead nowhere: to no file, or to no such place in one. Links out of the site are not followed. */
export const brokenLinks = (files: ReadonlyMap<string, string>): readonly string[] => {
  const broken: string[] = [];
  const ids = new Map<string, ReadonlySet<string>>();
  const idsOf = (path: string): ReadonlySet<string> => {
    const kept = ids.get(path) ?? new Set([...(files.get(path) ?? '').matchAll(/ id="([^"]+)"/g)].map((match) => match[1]!));
    ids.set(path, kept);
    return kept;
  };
  for (const [path, text] of files) {
    if (!path.endsWith('.html')) continue;
    for (const [, address] of text.matchAll(/ (?:href|src)="([^"]+)"/g)) {
      if (/^https?:/.test(address!)) continue;
      const [target = '', anchor] = address!.split('#');
      const to = target === '' ? path : posix.normalize(posix.join(posix.dirname(path), target));
      /* The API is made by typedoc, which checks its own links. */
      if (to.startsWith('api/')) continue;
      if (!files.has(to)) broken.push(`${path}: ${address!}`);
      else if (anchor !== undefined && anchor !== '' && !idsOf(to).has(anchor)) broken.push(`${path}: ${address!}`);
    }
  }
  return broken;
};
