import { readFileSync } from 'node:fs';
import { parse } from 'yaml';
import { describe, expect, test } from 'vitest';
import { measuresOf } from '../../src/advice/measure/measure.js';
import { message } from '../../src/advice/message.js';
import { treePicture } from '../../src/picture/treePicture.js';
import { yearPicture, type Wording } from '../../src/picture/yearPicture.js';
import type { Knowledge } from '../../src/knowledge/knowledge.js';
import { knownCases } from '../cases/knownCases.js';
import { german, germanAdvisor } from '../german.js';
import { named, readXml } from '../picture/readXml.js';
import { saidOtherwise } from '../saidOtherwise.js';
import { advisor, root, shipped } from '../shipped.js';

const demo = (name: string): unknown => parse(readFileSync(`${root}docs/demo/${name}`, 'utf8'));
const pine = demo('keepers-pine.yaml') as { readonly tree: Parameters<typeof treePicture>[0] };

describe('an advisor in German', () => {
  test.each(knownCases.map(({ id, proposal }) => [id, proposal] as const))('answers %s as the English one does, and says every text in German', async (_, proposal) => {
    expect(saidOtherwise(await advisor.assess(proposal), await germanAdvisor.assess(proposal), german)).toEqual([]);
  });

  test('sets ways side by side, and names them in German', async () => {
    const { proposal } = knownCases[0]!;
    const patches = [{ date: '2027-03-15' }, { date: null }];
    const compared = await germanAdvisor.compare(proposal, patches);
    expect(saidOtherwise(await advisor.compare(proposal, patches), compared, german)).toEqual([]);
    expect(compared.variants.map(({ label }) => label)).toEqual(['wie gefragt', 'date=2027-03-15', 'date=weggelassen']);
  });

  test('judges plans, and says what would do instead', async () => {
    for (const name of ['plan-shrub.yaml', 'plan-pine.yaml']) expect(saidOtherwise(await advisor.plan(demo(name)), await germanAdvisor.plan(demo(name)), german), name).toEqual([]);
    const hard = { tree: { species: 'trident maple' }, where: { latitude: 51, longitude: 7 }, steps: [{ date: '2026-11-15', operations: [{ op: 'repot', rootsRemoved: 0.6 }, { op: 'trunk-chop' }] }, { date: '2026-12-15', operations: [{ op: 'defoliate' }] }] };
    const plan = await germanAdvisor.plan(hard);
    expect(plan.changes.length).toBeGreaterThan(0);
    expect(saidOtherwise(await advisor.plan(hard), plan, german)).toEqual([]);
  });

  test('lists what is due', async () => {
    const due = await germanAdvisor.due(demo('collection.yaml'), '2027-03-10', 120);
    expect(due.items.length).toBeGreaterThan(2);
    expect(saidOtherwise(await advisor.due(demo('collection.yaml'), '2027-03-10', 120), due, german)).toEqual([]);
  });

  test('chooses branches, and says what they are charged for', async () => {
    for (const name of ['keepers-pine.yaml', 'keepers-twin.yaml']) expect(saidOtherwise(await advisor.keepers(demo(name)), await germanAdvisor.keepers(demo(name)), german), name).toEqual([]);
  });

  test('reads a structure', () => {
    for (const name of ['keepers-pine.yaml', 'keepers-twin.yaml']) {
      const measures = measuresOf(demo(name), germanAdvisor.knowledge);
      expect(measures.entries.length).toBeGreaterThan(10);
      expect(saidOtherwise(measuresOf(demo(name), shipped), measures, german), name).toEqual([]);
    }
  });

  test('says what has changed since an answer was kept, in whichever language it was kept', async () => {
    const { proposal } = knownCases[0]!;
    const kept = await advisor.assess(proposal);
    const changed = { ...kept, findings: [...kept.findings.map((finding) => ({ ...finding, verdict: 'allowed' })), { ...kept.findings[0]!, rule: 'roots/too-many' }] };
    expect(saidOtherwise(await advisor.explain(changed), await germanAdvisor.explain(changed), german)).toEqual([]);
    expect((await germanAdvisor.explain(kept)).knowledge.same).toBe(true);
  });

  test('draws a year and a tree without an English word', async () => {
    const question = { tree: { species: 'acer-palmatum' }, where: { place: 'malmo-sweden' }, from: '2027-01-01' };
    const [english, other] = [await advisor.year(question), await germanAdvisor.year(question)];
    expect(saidOtherwise(english, other, german)).toEqual([]);
    const wordingOf = (knowledge: Knowledge): Wording => (id, params = {}) => message(knowledge, id, params).text;
    const wordsIn = (svg: string): readonly string[] => ['text', 'title', 'desc'].flatMap((kind) => named(readXml(svg), kind)).map(({ text }) => text).filter((text) => /[a-z]{3}/i.test(text));
    for (const draw of [(knowledge: Knowledge) => yearPicture(knowledge === shipped ? english : other, wordingOf(knowledge)), (knowledge: Knowledge) => treePicture(pine.tree, wordingOf(knowledge))]) {
      const said = wordsIn(draw(shipped));
      const same = wordsIn(draw(germanAdvisor.knowledge)).filter((text) => said.includes(text));
      /* Months, names of branches, and words that are the same in both. */
      expect(same.filter((text) => !/^(?:(?:\d+\. )?(?:Jan|Feb|Apr|Jun|Jul|Aug|Sep|Nov)|\d+ [\w-]+|Phase|Frost)$/i.test(text))).toEqual([]);
    }
  });

  test('lists operations and parameters for a form in German', () => {
    const said = new Set(advisor.operations().flatMap(({ label, parameters }) => [label, ...parameters.flatMap((parameter) => [parameter.label, parameter.meaning])]));
    const words = germanAdvisor.operations().flatMap(({ label, parameters }) => [label, ...parameters.flatMap((parameter) => [parameter.label, parameter.meaning])]);
    expect(words.filter((text) => said.has(text) && text !== 'radius')).toEqual([]);
  });
});
