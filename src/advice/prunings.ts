import type { Assessment, Proposal } from '../contract/types.generated.js';
import { severity } from '../engine/verdict.js';
import type { Knowledge } from '../knowledge/knowledge.js';
import type { JudgeOther } from './alternatives.js';

type Pruning = Assessment['prunings'][number];

/** Whether what is cut off may be struck as cuttings, and of which wood; only where cuttings are worth a try. */
export const pruningsOf = async (proposal: Proposal, knowledge: Knowledge, judgeOther: JudgeOther): Promise<readonly Pruning[]> => {
  const operation = knowledge.operations[proposal.operation.op]!;
  if (!operation.sheds) return [];
  const woods = knowledge.facts['cuttings.wood']?.values?.filter((wood) => wood !== 'root') ?? [];
  const tried = await Promise.all(woods.map(async (wood): Promise<Pruning | undefined> => {
    const cuttings = { op: 'take-cuttings', wood } as const;
    const judged = await judgeOther(cuttings as Proposal['operation']);
    return judged === undefined || judged.verdict !== 'allowed' ? undefined : { operation: { ...cuttings }, verdict: judged.verdict };
  }));
  return tried.filter((each) => each !== undefined).sort((a, b) => severity(a.verdict) - severity(b.verdict));
};
