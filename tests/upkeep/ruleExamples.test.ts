import { describe, expect, test } from 'vitest';
import { newFolds } from '../../src/engine/specialise.js';
import { runExample } from '../../src/upkeep/runExample.js';
import { vet } from '../../src/upkeep/vet.js';
import { root, shipped, shippedRead } from '../shipped.js';

const folds = newFolds();

describe('each rule does what its examples say', () => {
  test.each(Object.values(shipped.rules).map((rule): [string, typeof rule] => [`${rule.id}: ${rule.title}`, rule]))('%s', async (_, rule) => {
    const does = await Promise.all(rule.examples.map(async (example) => ({ given: example.given, fires: await runExample(rule, example, shipped, folds) })));
    expect(does).toEqual(rule.examples.map(({ given, fires }) => ({ given, fires })));
    for (const fires of ['certainly', 'possibly', 'never']) expect(rule.examples.some((example) => example.fires === fires), `no example fires ${fires}`).toBe(true);
  });
});

test('the shipped knowledge has no faults', async () => {
  expect(shippedRead.issues).toEqual([]);
  expect((await vet(root)).issues).toEqual([]);
}, 60_000);

test('there are at least 90 rules and 40 species, two rules to each operation, and two in five rules cite a source that was read', () => {
  const rules = Object.values(shipped.rules);
  expect(rules.length).toBeGreaterThanOrEqual(90);
  expect(Object.values(shipped.species).filter((species) => species.rank === 'taxon').length).toBeGreaterThanOrEqual(40);
  for (const operation of Object.keys(shipped.operations)) expect(rules.filter((rule) => rule.operations !== 'all' && rule.operations.includes(operation)).length, operation).toBeGreaterThanOrEqual(2);
  expect(rules.filter((rule) => rule.sources.some((id) => shipped.sources[id]!.from === 'read')).length / rules.length).toBeGreaterThanOrEqual(0.4);
});

test('a rule speaks of traits: no species, no genus and no month stands in a condition', () => {
  const names = Object.values(shipped.species).filter((species) => species.rank !== 'group').flatMap((species) => [species.id, species.name]);
  for (const rule of Object.values(shipped.rules)) {
    const conditions = JSON.stringify([rule.when, rule.unless.map((reason) => reason.when)]);
    expect(conditions).not.toContain('tree.species');
    for (const name of names) expect(conditions, rule.id).not.toContain(`"${name}"`);
    expect(conditions, rule.id).not.toMatch(/january|february|march|april|june|july|august|september|october|november|december|"\d\d-\d\d"/i);
  }
});
