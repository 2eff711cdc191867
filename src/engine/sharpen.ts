import { type FactValue, known } from '../facts/factValue.js';
import type { FactWord, Rule } from '../knowledge/knowledge.js';
import { bucketsOf, tooMany } from './buckets.js';
import type { ReadFact } from './cells.js';
import { testsOf } from './condition.js';
import { evaluateEach, type Fired } from './evaluate.js';
import { type Judgement, judgementOf, ranged, severity } from './verdict.js';

/** More combinations than this are not gone through: the range then stays as wide as each rule for itself allows. */
const mostCombinations = 1024;

/** Every combination of one value from each list, one after the other. */
function* combinations<Item>([first, ...rest]: readonly (readonly Item[])[]): Generator<readonly Item[]> {
  if (first === undefined) yield [];
  else for (const row of combinations(rest)) for (const item of first) yield [item, ...row];
}

/** Items in lots of one, two, four and so on: the first few mostly say all, and of many the engine is asked together. */
function* growing<Item>(items: Iterable<Item>): Generator<readonly Item[]> {
  let lot: Item[] = [];
  let size = 1;
  for (const item of items) {
    if (lot.push(item) < size) continue;
    yield lot;
    lot = [];
    size *= 2;
  }
  if (lot.length > 0) yield lot;
}

/**
 * The range sharpened: the rules that might fire are looked at together, over all that the unknown facts could still be.
 *
 * Two rules of which one fires below 5 and the other from 5 on leave nothing open, though each of them does. Facts worked out of the same unknown one are taken as free
 * of each other, so that the range is never too narrow.
 */
export const sharpened = async (judgement: Judgement, fired: readonly Fired<Rule>[], read: ReadFact, words: Readonly<Record<string, FactWord>>): Promise<Judgement> => {
  const open = fired.filter((each) => each.fires === 'possibly');
  if (judgement.settled || open.length === 0) return judgement;
  const tests = open.flatMap(({ residual }) => testsOf(residual.table!.condition));
  const unknown = [...new Set(tests.map((test) => test.fact))].map((id) => ({ fact: read(id), buckets: bucketsOf(id, words[id], tests.filter((test) => test.fact === id)) })).filter(({ fact }) => fact.value === undefined);
  if (unknown.some(({ buckets }) => tooMany(buckets))) return judgement;
  const values = unknown.map(({ buckets, fact }) => {
    const mask = buckets.among(fact);
    return buckets.stands.filter((_, bucket) => (mask & (1 << bucket)) !== 0);
  });
  if (values.reduce((product, each) => product * each.length, 1) > mostCombinations) return judgement;
  const settled = fired.filter((each) => each.fires === 'certainly');
  let [best, worst] = [judgement.range[1], judgement.range[0]];
  const moving = open.map(({ residual }) => residual);
  for (const rows of growing(combinations(values))) {
    const reads = rows.map((row): ReadFact => {
      const told = new Map(unknown.map(({ buckets }, i): [string, FactValue] => [buckets.fact, known(row[i]!, 'given')]));
      return (id) => told.get(id) ?? read(id);
    });
    for (const might of await evaluateEach(moving, reads)) {
      const now = judgementOf([...settled, ...might]);
      if (severity(now.range[0]) < severity(best)) best = now.range[0];
      if (severity(now.range[1]) > severity(worst)) worst = now.range[1];
    }
    /* Both ends are really met: nothing is left to sharpen. */
    if (best === judgement.range[0] && worst === judgement.range[1]) return judgement;
  }
  return ranged(best, worst);
};
