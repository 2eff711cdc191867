import type { Proposal } from '../../contract/types.generated.js';
import type { Knowledge } from '../../knowledge/knowledge.js';

/** What a piece of work is called, with the branch that it is done to. */
export const workLabel = ({ op, branch }: Proposal['operation'], { operations }: Knowledge): string => `${operations[op]?.label ?? op}${branch === undefined ? '' : ` (${branch})`}`;
