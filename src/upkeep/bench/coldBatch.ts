import { readyFor } from '../../advice/ready.js';
import { residualsOf } from '../../engine/residuals.js';
import type { Traits } from '../../engine/specialise.js';
import { deriveFacts } from '../../facts/deriveFacts.js';
import type { FactValue } from '../../facts/factValue.js';
import type { Knowledge } from '../../knowledge/knowledge.js';
import type { Station } from '../../season/station.js';
import type { Contender, Facts } from './contender.js';
import { timed } from './timing.js';

const atOnce = 1000;

/** Microseconds that the rules of one proposal take over a batch that begins with nothing kept: residual rules and cells are made as they are needed. Facts are worked out beforehand. */
export const coldBatch = async (knowledge: Knowledge, stations: readonly Station[], contender: Contender, proposals: readonly unknown[]): Promise<number> => {
  const ready = readyFor(knowledge, stations);
  const residuals = residualsOf(knowledge);
  const rulesReady = contender();
  let milliseconds = 0;
  for (let from = 0; from < proposals.length; from += atOnce) {
    const questions: { readonly operation: string; readonly variant: string; readonly traits: Traits; readonly facts: Facts }[] = [];
    for (const proposal of proposals.slice(from, from + atOnce)) {
      const { prepared, residuals: { rules } } = await ready(proposal);
      const { read } = deriveFacts(prepared.asked);
      const facts = new Map<string, FactValue>();
      for (const { table } of rules) for (const { fact } of table?.buckets ?? []) if (!facts.has(fact)) facts.set(fact, read(fact));
      questions.push({ operation: prepared.asked.operation.id, variant: prepared.variant, traits: prepared.asked.traits, facts: { read: (id: string) => facts.get(id)!, mayBe: {}, whole: {} } });
    }
    milliseconds += await timed(async () => {
      for (const { operation, variant, traits, facts } of questions) await rulesReady({ knowledge, operation, traits, residuals: (await residuals(operation, variant, traits)).rules })(facts);
    });
  }
  return (milliseconds * 1000) / proposals.length;
};
