import type { Value } from '../knowledge/knowledge.js';
import type { FactState, FactValue } from './factValue.js';

const worst = (states: readonly FactState[]): FactState => (states.includes('estimated') ? 'estimated' : states.includes('assumed') ? 'assumed' : 'known');

const mayBe = (fact: FactValue): readonly Value[] | undefined => {
  if (fact.value !== undefined) return [fact.value];
  return Array.isArray(fact.among) ? (fact.among as readonly Value[]) : undefined;
};

/**
 * A fact worked out from others: over every value that they may have, so that it is unknown only where it really depends on one.
 * An estimated result keeps no sure bounds of its own unless `among` gives them.
 */
export const workOut = (inputs: readonly FactValue[], from: string, work: (...values: readonly Value[]) => Value): FactValue => {
  const choices = inputs.map(mayBe);
  if (choices.some((choice) => choice === undefined)) return { state: 'unknown', from: 'unknown' };
  let rows: readonly (readonly Value[])[] = [[]];
  for (const choice of choices) rows = rows.flatMap((row) => choice!.map((value) => [...row, value]));
  const results = [...new Map(rows.map((row) => work(...row)).map((result) => [JSON.stringify(result), result])).values()];
  if (results.length === 1) return { state: worst(inputs.map((input) => (input.state === 'unknown' ? 'known' : input.state))), value: results[0]!, from };
  return { state: 'unknown', among: results, from: 'unknown' };
};
