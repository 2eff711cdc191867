import fc from 'fast-check';
import { expect, test } from 'vitest';
import { askEngine } from '../../src/engine/askEngine.js';
import { answersOf, cellKey, tableOf } from '../../src/engine/cells.js';
import { testsOf } from '../../src/engine/condition.js';
import { evaluate } from '../../src/engine/evaluate.js';
import { deriveFacts } from '../../src/facts/deriveFacts.js';
import { readyFor } from '../../src/advice/ready.js';
import type { Value } from '../../src/knowledge/knowledge.js';
import { plausibleProposal } from '../laws/plausibleProposal.js';
import { cases } from '../laws/cases.js';
import { shipped, stations } from '../shipped.js';

const ready = readyFor(shipped, stations);

/* Law 6: the cell says what the engine says. */

test('an answer kept in a cell equals a fresh run of the engine, on the class and on the very values', async () => {
  let met = 0;
  await fc.assert(fc.asyncProperty(plausibleProposal(shipped, stations, { told: 3 }), async (written) => {
    const { prepared, residuals: { rules } } = await ready(written);
    const { read } = deriveFacts(prepared.asked);
    await evaluate(rules, read);
    for (const { table, left } of rules.slice(0, 8)) {
      if (table === undefined) continue;
      const key = cellKey(table, read);
      const kept = table.cells.get(key);
      expect(kept).toBeDefined();
      met += 1;
      expect(await answersOf([{ table: tableOf(left, shipped.facts), key }])).toEqual([kept]);
      const facts = [...new Set(testsOf(left).map((each) => each.fact))];
      if (facts.some((fact) => read(fact).value === undefined)) continue;
      expect(await askEngine([{ condition: left, possible: new Map(facts.map((fact): [string, readonly Value[]] => [fact, [read(fact).value!]])) }])).toEqual([kept]);
    }
  }), { numRuns: cases(250) });
  expect(met).toBeGreaterThan(cases(250));
}, 300_000);

test('a table has a cell for what was asked and no more', async () => {
  const { prepared, residuals: { rules } } = await readyFor(shipped, stations)({ tree: { species: 'juniperus-chinensis', vigour: 'strong' }, operation: { op: 'repot', rootsRemoved: 0.3 } });
  expect(rules.every(({ table }) => table === undefined || table.cells.size === 0)).toBe(true);
  const { read } = deriveFacts(prepared.asked);
  await evaluate(rules, read);
  for (const { table } of rules) if (table !== undefined) expect(table.cells.size).toBeLessThanOrEqual(2);
  const filled = rules.map(({ table }) => table?.cells.size);
  await evaluate(rules, read);
  expect(rules.map(({ table }) => table?.cells.size)).toEqual(filled);
});
