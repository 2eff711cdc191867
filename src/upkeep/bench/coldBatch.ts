import { readyFor } from '../../advice/ready.js';
import { residualsOf } from '../../engine/residuals.js';
import type { Traits } from '../../engine/specialise.js';
import { deriveFacts } from '../../facts/deriveFacts.js';
import type { FactValue } from '../../facts/factValue.js';
import type { Knowledge } from '../../knowledge/knowledge.js';
import type { Station } from '../../season/station.js';
import type { Contender, Facts } from './contender.js';
import { questionsFor } from './questions.js';
import { timed } from './timing.js';

interface Asked {
  readonly operation: string;
  readonly variant: string;
  readonly traits: Traits;
  readonly facts: Facts;
}

const atOnce = 1000;

/** Of so many proposals one is asked of the others. */
const oneIn = 200;

/**
 * Microseconds that the rules of one proposal take over a batch that begins with nothing kept: residual rules and cells are made as they are needed. The others, which gain
 * nothing by keeping, are asked in turn with it, of a proposal now and then. Facts are worked out beforehand.
 */
export const coldBatch = async (knowledge: Knowledge, stations: readonly Station[], proposals: readonly unknown[], cells: Contender, others: readonly Contender[]): Promise<{ readonly cells: number; readonly others: readonly number[] }> => {
  const ready = readyFor(knowledge, stations);
  const residuals = residualsOf(knowledge);
  const questionOf = questionsFor(knowledge, stations);
  const askedOf = async (proposal: unknown): Promise<Asked> => {
    const { prepared, residuals: { rules } } = await ready(proposal);
    const { read } = deriveFacts(prepared.asked);
    const facts = new Map<string, FactValue>();
    for (const { table } of rules) for (const { fact } of table?.buckets ?? []) if (!facts.has(fact)) facts.set(fact, read(fact));
    return { operation: prepared.asked.operation.id, variant: prepared.variant, traits: prepared.asked.traits, facts: { read: (id) => facts.get(id)!, mayBe: {}, whole: {} } };
  };
  const cellsReady = cells();
  const othersReady = others.map((other) => ({ rulesReady: other(), milliseconds: 0 }));
  let milliseconds = 0;
  let sampled = 0;
  for (let from = 0; from < proposals.length; from += atOnce) {
    const lot = proposals.slice(from, from + atOnce);
    const questions: Asked[] = [];
    for (const proposal of lot) questions.push(await askedOf(proposal));
    milliseconds += await timed(async () => {
      for (const { operation, variant, traits, facts } of questions) await cellsReady({ knowledge, operation, traits, residuals: (await residuals(operation, variant, traits)).rules })(facts);
    });
    const sample = await Promise.all(lot.filter((_, i) => i % oneIn === 0).map(questionOf));
    sampled += sample.length;
    for (const other of othersReady) {
      const asks = sample.map(({ rules, facts }) => ({ ask: other.rulesReady(rules), facts }));
      other.milliseconds += await timed(async () => {
        for (const { ask, facts } of asks) await ask(facts);
      });
    }
  }
  return { cells: (milliseconds * 1000) / proposals.length, others: othersReady.map((other) => (other.milliseconds * 1000) / sampled) };
};
