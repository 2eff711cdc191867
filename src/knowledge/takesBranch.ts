import type { Knowledge } from './knowledge.js';

/** Whether work, as it is written, takes the branch that it names or kills it: bark that is stripped from a trunk does neither. */
export const takesBranch = ({ op, on }: { readonly op?: unknown; readonly on?: unknown }, { operations }: Knowledge): boolean =>
  operations[op as string]?.leaves.takesBranch === true && on !== 'trunk';
