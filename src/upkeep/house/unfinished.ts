import { parseDocument, visit } from 'yaml';
import type { Fault } from '../../knowledge/check.js';

/** How a scaffold marks what a person has still to write, and the lines that only help to write it. */
export const todo = 'TODO';
export const helpMark = '#~';

/** Places of a YAML file that a scaffold left for a person to write. */
export const unfinished = (file: string, text: string): readonly Fault[] => {
  const faults: Fault[] = [];
  visit(parseDocument(text), {
    Scalar(key, node, parents) {
      if (key === 'key' || typeof node.value !== 'string' || !node.value.startsWith(todo)) return;
      const at = parents.flatMap((parent, i): (string | number)[] => {
        const inner = (parents[i + 1] ?? node) as unknown;
        if ('items' in (parent as object)) {
          const position = (parent as { items: readonly unknown[] }).items.indexOf(inner);
          return (inner as { key?: unknown }).key === undefined ? [position] : [String((inner as { key: { value?: unknown } }).key.value)];
        }
        return [];
      });
      const name = String(at.findLast((step) => typeof step === 'string') ?? file);
      faults.push({ code: 'incomplete', file, at, path: at.join('.'), message: `\`${name}\` is still to be written`, help: node.value === todo ? 'write it in the place of TODO' : `in the place of TODO: ${node.value.slice(todo.length).trim()}` });
    },
  });
  return faults;
};
