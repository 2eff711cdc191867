import { stringify } from 'yaml';
import { afterAll, describe, expect, test } from 'vitest';
import { englishWording } from '../../../src/upkeep/wording/englishWording.js';
import { vet } from '../../../src/upkeep/vet.js';
import { shippedRead, shipped } from '../../shipped.js';
import { removeTinyFolders, tinyFolder } from '../../knowledge/tinyFolder.js';
import { tinyKnowledge } from '../../knowledge/tinyKnowledge.js';
import { vetWording } from '../../../src/upkeep/wording/vetWording.js';

afterAll(removeTinyFolders);

type Texts = Readonly<Record<string, string>>;

/** Another language that says what English says, in an order of its own: rules in one file, the rest in the other. */
const whole = englishWording(tinyKnowledge);
const rules = Object.fromEntries(Object.entries(whole).filter(([id]) => id.includes('/')));
const others = Object.fromEntries(Object.entries(whole).filter(([id]) => !id.includes('/')));
const faultsOf = async (main: Texts, ofRules: Texts = rules): Promise<readonly string[]> => {
  const { issues } = await vet(tinyFolder({ 'shared/wording/xx.yaml': stringify(main, { lineWidth: 0 }), 'shared/wording/xx.rules.yaml': stringify(ofRules, { lineWidth: 0 }) }));
  return issues.map(({ code, file, line, message, help }) => `${code} ${file}:${line} ${message}; ${help}`);
};
const without = (texts: Texts, id: string): Texts => Object.fromEntries(Object.entries(texts).filter(([each]) => each !== id));
const lineOf = (texts: Texts, id: string): number => Object.keys(texts).indexOf(id) + 1;

describe('a second language', () => {
  test('that says all there is to say has no faults', async () => {
    expect(await faultsOf(others)).toEqual([]);
  });

  test('that lacks a text is told which, what it says in English, and after which line it belongs', async () => {
    const [fault, ...more] = await faultsOf(without(others, 'caution.blades'));
    expect(more).toEqual([]);
    expect(fault).toBe(`missing shared/wording/xx.yaml:${lineOf(others, 'ask.phase')} \`caution.blades\` is missing in \`xx\`; say it in this language: Blades cut fingers.`);
    expect(await faultsOf(others, without(rules, 'strain/weak.unless.0'))).toEqual([`missing shared/wording/xx.rules.yaml:${lineOf(rules, 'strain/weak.title')} \`strain/weak.unless.0\` is missing in \`xx\`; say it in this language: The whole season lies ahead.`]);
  });

  test('that says what English does not is told where', async () => {
    expect(await faultsOf({ ...others, 'caution.blade': 'x' })).toEqual([`unknown-name shared/wording/xx.yaml:${Object.keys(others).length + 1} no text has the id \`caution.blade\`; did you mean \`caution.blades\`?`]);
    expect(await faultsOf({ ...others, constructor: 'x' })).toHaveLength(1);
  });

  test('with other parameters than English is told both', async () => {
    const id = 'roots/too-many.because';
    expect(await faultsOf(others, { ...rules, [id]: 'Zu viel für {species.nam}.' })).toEqual([`unknown-parameter shared/wording/xx.rules.yaml:${lineOf(rules, id)} \`${id}\` has {species.nam}, the English text {roots.shareRemoved} {species.name}; use each parameter of the English text, and no other`]);
    expect(await faultsOf({ ...others, 'ask.phase': '{what}?' })).toEqual([expect.stringContaining('has {what}, the English text no parameter')]);
  });

  test('that says one thing in two files is told to keep one', async () => {
    expect(await faultsOf(others, { ...rules, 'ask.phase': 'x' })).toEqual([expect.stringMatching(/^duplicate .*`ask\.phase` stands in shared\/wording\/xx(?:\.rules)?\.yaml too; keep one of them$/)]);
  });
});

test('German says all that English says, with the same parameters', () => {
  expect(vetWording(shipped, shippedRead.files)).toEqual([]);
});

test('what is to be said holds messages, rules, operations, phases, styles, groups of species, values and facts', () => {
  const english = englishWording(shipped);
  for (const id of ['ask.phase', 'roots/too-many.title', 'operation.repot.label', 'phase.dormant.label', 'style.broom', 'species.succulent', 'value.bud-swell', 'value.long-ago', 'fact.branch.meaning', 'fact.cut.heightMm.label']) expect(english[id], id).toMatch(/\w/);
});
