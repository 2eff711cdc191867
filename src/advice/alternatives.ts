import type { Assessment, Proposal } from '../contract/types.generated.js';
import { type Judgement, severity } from '../engine/verdict.js';
import type { Knowledge, Value } from '../knowledge/knowledge.js';
import type { Judged } from './judge.js';
import { message } from './message.js';
import { setText } from './setText.js';

type Alternative = Assessment['alternatives'][number];
type Operation = Alternative['operation'];

/** How a verdict is found for another operation on the same tree, day and place. */
export type JudgeOther = (operation: Proposal['operation']) => Promise<Judgement | undefined>;

const most = 3;

/** Whether one alternative only asks for more than another that is judged as well. */
const asksMore = (one: Alternative, other: Alternative): boolean =>
  one !== other && one.operation.op === other.operation.op && severity(other.verdict) <= severity(one.verdict)
  && Object.entries(other.operation).every(([name, value]) => (one.operation as Readonly<Record<string, unknown>>)[name] === value);

/** Other work that serves the same end and is judged better, here and now: named by the operation, or by a rule that fired. */
export const alternativesOf = async (judged: Judged, proposal: Proposal, knowledge: Knowledge, judgeOther: JudgeOther): Promise<readonly Alternative[]> => {
  if (judged.verdict === 'allowed') return [];
  const asked = proposal.operation;
  const kept = knowledge.operations[asked.op]!;
  const same = (op: string, set: Readonly<Record<string, Value>>): Operation => {
    const { op: called, ...told } = op === asked.op ? { ...asked, ...set } : { op, ...set };
    return { op: called, ...Object.fromEntries(Object.entries(told).sort(([a], [b]) => (a < b ? -1 : 1))) } as Operation;
  };
  const candidates: { readonly operation: Operation; readonly set: Readonly<Record<string, Value>>; readonly title?: string }[] = [];
  for (const { residual, fires } of judged.fired) {
    const { instead, title } = residual.rule;
    if (fires !== 'certainly' || instead === undefined) continue;
    if (instead.do !== undefined) {
      const { op, ...set } = instead.do;
      candidates.push({ operation: { op, ...set } as unknown as Operation, set, title });
    }
    const set = Object.fromEntries(Object.entries(instead.set ?? {}).filter(([name]) => kept.parameters.includes(name)));
    if (Object.keys(set).length > 0) candidates.push({ operation: same(asked.op, set), set, title });
  }
  for (const { op, set } of kept.instead) candidates.push({ operation: same(op, set), set });
  const alternatives = new Map<string, Alternative>();
  for (const { operation, set, title } of candidates) {
    const key = JSON.stringify(Object.entries(operation).sort(([a], [b]) => (a < b ? -1 : 1)));
    if (alternatives.has(key) || key === JSON.stringify(Object.entries(asked).sort(([a], [b]) => (a < b ? -1 : 1)))) continue;
    const other = await judgeOther(operation as unknown as Proposal['operation']);
    if (other === undefined || severity(other.verdict) >= severity(judged.verdict)) continue;
    const label = knowledge.operations[operation.op]!.label;
    const changed = Object.keys(set).length > 0;
    const why = title !== undefined && !changed ? message(knowledge, 'alternative.rule', { operation: label, title }) : changed ? message(knowledge, 'alternative.set', { operation: label, with: setText(set, knowledge) }) : message(knowledge, 'alternative.other', { operation: label });
    alternatives.set(key, { operation, verdict: other.verdict, why });
  }
  const found = [...alternatives.values()];
  return found.filter((one) => !found.some((other) => asksMore(one, other))).sort((a, b) => severity(a.verdict) - severity(b.verdict)).slice(0, most);
};
