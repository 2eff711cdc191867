import { LineCounter, parseDocument } from 'yaml';
import type { Issue } from '../error.js';

/** A YAML file as plain data, with the place of every member in it. */
export interface YamlFile {
  readonly file: string;
  readonly data: unknown;
  readonly issues: readonly Issue[];
  /** Line and column (from 1) of the member at a path; of its nearest parent where it has none. */
  readonly at: (path: readonly (string | number)[]) => { readonly line: number; readonly col: number };
}

interface Placed {
  readonly range?: readonly number[] | null;
}

/** Reads YAML 1.2 text: duplicate keys and alias bombs are issues, never data. */
export const readYaml = (file: string, text: string): YamlFile => {
  const lines = new LineCounter();
  const parsed = parseDocument(text, { lineCounter: lines, version: '1.2', strict: true, uniqueKeys: true, prettyErrors: false, logLevel: 'error' });
  const placeOf = (offset: number): { line: number; col: number } => {
    const { line, col } = lines.linePos(offset);
    return { line: Math.max(1, line), col: Math.max(1, col) };
  };
  /* One slip of the pen can upset all that follows: the first error is the one to mend. */
  const first = parsed.errors.find((error) => error.code !== 'DUPLICATE_KEY');
  const issues: Issue[] = (first === undefined ? parsed.errors : [first]).map((error) => ({
    code: error.code === 'DUPLICATE_KEY' ? 'duplicate' : 'bad-yaml',
    path: '',
    message: `${error.code === 'DUPLICATE_KEY' ? 'the same key stands twice' : error.message.split('\n')[0]!.toLowerCase()} in ${file}`,
    help: error.code === 'DUPLICATE_KEY' ? 'keep one of them' : 'check indentation, colons, commas and quotes on this line',
    file,
    ...placeOf(error.pos[0]),
  }));
  let data: unknown;
  if (issues.length === 0) {
    try {
      data = parsed.toJS({ maxAliasCount: 50 });
    } catch (cause) {
      issues.push({ code: 'bad-yaml', path: '', message: `aliases multiply beyond reason in ${file}`, help: `write the values out: ${(cause as Error).message}`, file, line: 1, col: 1 });
    }
  }
  const at = (path: readonly (string | number)[]): { line: number; col: number } => {
    for (let steps = path.length; steps > 0; steps--) {
      const within = path.slice(0, steps - 1);
      const parent: unknown = within.length === 0 ? parsed.contents : parsed.getIn(within, true);
      const key = path[steps - 1]!;
      const items = (parent as { items?: readonly unknown[] } | null | undefined)?.items;
      if (items === undefined) continue;
      const item = typeof key === 'number' ? items[key] : items.find((pair) => String((pair as { key?: { value?: unknown } }).key?.value) === String(key));
      const node = (typeof key === 'number' ? item : (item as { key?: unknown } | undefined)?.key) as Placed | undefined;
      if (node?.range) return placeOf(node.range[0]!);
    }
    return { line: 1, col: 1 };
  };
  return { file, data, issues, at };
};
