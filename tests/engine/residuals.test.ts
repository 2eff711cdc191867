import { expect, test } from 'vitest';
import { residualsOf } from '../../src/engine/residuals.js';
import type { Traits } from '../../src/engine/specialise.js';
import { shipped } from '../shipped.js';

const knowledge = { ...shipped, rules: Object.fromEntries(Object.entries(shipped.rules).filter(([id]) => id.startsWith('roots/'))), cautions: {}, followUps: {}, chores: {} };
const maple = shipped.species['acer-palmatum']!.traits;
const seen = (share: number): Traits => ({ ...maple, 'roots.maxRemoved': { is: share, sources: [], level: 'own' } });

test('trees with ever other traits of their own do not fill the memory: past 8,000 kinds what is left of the rules goes with its tables, and is made the same again', async () => {
  const ask = residualsOf(knowledge);
  const first = await ask('repot', 'maple', maple);
  expect(first.rules.length).toBeGreaterThan(5);
  for (let i = 1; i < 8000; i++) await ask('repot', `own ${i}`, seen(i / 8000));
  expect(await ask('repot', 'maple', maple)).toBe(first);

  const limits = async (kind: string, share: number): Promise<readonly unknown[]> => (await ask('repot', kind, seen(share))).rules.map(({ rule, left }) => [rule.id, left]);
  expect(await limits('one more', 0.3)).not.toEqual(await limits('another', 0.2));
  const again = await ask('repot', 'maple', maple);
  expect(again).not.toBe(first);
  const tables = new Set(first.rules.map(({ table }) => table));
  expect(again.rules.filter(({ table }) => table !== undefined && tables.has(table))).toEqual([]);
  expect(JSON.stringify(again)).toBe(JSON.stringify(first));
});
