import { expect, test } from 'vitest';
import { createAdvisor } from '../../src/advisor.js';
import { inWording } from '../../src/knowledge/inWording.js';
import { englishWording } from '../../src/upkeep/wording/englishWording.js';
import { german } from '../german.js';
import { shipped, stations } from '../shipped.js';

const proposal = { tree: { species: 'trident maple' }, operation: { op: 'repot', rootsRemoved: 0.4 }, date: '2026-11-15', where: { place: 'koeln-cologne-germany' } };
const asked = async (wording?: Readonly<Record<string, string>>) => await createAdvisor(shipped, { places: stations, ...(wording === undefined ? {} : { wording }) }).assess(proposal);

test('an app that words one text otherwise gets that text, and all else as it was', async () => {
  const english = await asked();
  const { id } = english.findings[0]!.title;
  const text = 'Cold soil, cut roots';
  const own = await asked({ [id]: text });
  expect(own.findings[0]!.title).toEqual({ id, params: {}, text });
  const { findings: [first, ...rest], summary, ...others } = own;
  expect(rest).toEqual(english.findings.slice(1));
  expect({ ...first!, title: english.findings[0]!.title }).toEqual(english.findings[0]);
  expect(summary.text).toContain(text);
  const { findings: _, summary: __, ...asBefore } = english;
  expect(others).toEqual(asBefore);
});

test('the words of an operation, a phase, a value and a fact are an app’s to choose', () => {
  const { operations, phases, facts, rules } = inWording(shipped, { 'operation.repot.label': 'new pot', 'phase.dormant.being': 'fast asleep', 'fact.tree.vigour.label': 'push', 'graft/no-season-to-knit.unless.0': 'why not' });
  expect([operations['repot']!.label, phases['dormant']!.being, phases['dormant']!.label, facts['tree.vigour']!.label]).toEqual(['new pot', 'fast asleep', 'dormant', 'push']);
  expect(shipped.rules['graft/no-season-to-knit']!.unless.length).toBeGreaterThan(0);
  expect(rules['graft/no-season-to-knit']).toEqual({ ...shipped.rules['graft/no-season-to-knit'], unless: shipped.rules['graft/no-season-to-knit']!.unless.map((reason, n) => (n === 0 ? { ...reason, because: 'why not' } : reason)) });
});

test('words change no rule, no version and no hash', () => {
  const other = inWording(shipped, german);
  const bare = (rule: (typeof shipped.rules)[string]): unknown => ({ ...rule, title: '', because: '', unless: rule.unless.map((reason) => ({ ...reason, because: '' })) });
  for (const [id, rule] of Object.entries(shipped.rules)) expect(bare(other.rules[id]!), id).toEqual(bare(rule));
  expect([other.version, other.hash, other.species, other.sources]).toEqual([shipped.version, shipped.hash, shipped.species, shipped.sources]);
});

test('the English wording, given as a wording, changes nothing at all', async () => {
  expect(JSON.stringify(await asked(englishWording(shipped)))).toBe(JSON.stringify(await asked()));
});

test('a wording can set no verdict, and what is no text in it stays English', async () => {
  const bad = JSON.parse('{"roots/too-many.verdict": "allowed", "summary.found": 5, "summary.found-more": null, "__proto__": {"summary.depends": "x"}, "where.station-itself": ["x"]}') as Readonly<Record<string, string>>;
  expect(JSON.stringify(await asked(bad))).toBe(JSON.stringify(await asked()));
});
