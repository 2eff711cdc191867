import { describe, expect, test } from 'vitest';
import { createAdvisor } from '../../src/advisor.js';
import { extendKnowledge } from '../../src/knowledge/packs/extendKnowledge.js';
import { paramsIn, ruleMessage } from '../../src/advice/message.js';
import { german } from '../german.js';
import { advisor, shipped } from '../shipped.js';

const saying = (text: string, params: Readonly<Record<string, string | number>>): string => ruleMessage('any', text, params).text;

describe('a number that is not known', () => {
  test('is left out with the brackets that it stands in', () => {
    const text = 'Roots die near {limit} °C; here it gets colder ({lowest} °C).';
    expect(saying(text, { limit: -9, lowest: -12 })).toBe('Roots die near -9 °C; here it gets colder (-12 °C).');
    expect(saying(text, { limit: -9, lowest: '…' })).toBe('Roots die near -9 °C; here it gets colder.');
    expect(saying(text, { limit: -9 })).toBe('Roots die near -9 °C; here it gets colder.');
    expect(saying('A wide wound ({wide} mm, {years} years), left open (always).', { wide: 20 })).toBe('A wide wound, left open (always).');
  });

  /* What nothing tells of these is taken for granted, so a finding has a number; of a log that tells only a year a span of days is left. */
  const taken = (name: string): boolean => name.startsWith('species.') || (!name.startsWith('history.') && shipped.facts[name]?.assume !== undefined);

  test.each(Object.values(shipped.rules).filter(({ because }) => paramsIn(because).some((name) => !taken(name))).map(({ id, because }) => [id, because] as const))('leaves no gap in the reason of %s, in either language', (id, because) => {
    for (const text of [because, german[`${id}.because`]!]) expect(saying(text, Object.fromEntries(paramsIn(text).filter(taken).map((name) => [name, 1])))).not.toContain('…');
  });

  test('is said as each of its values where sources disagree on a trait', async () => {
    const disputed = extendKnowledge(shipped, { schema: 'pack/1', namespace: 'club', version: '1', sources: {}, overrides: { traits: { 'acer-palmatum': { 'propagation.coldWeeks': { either: [10, 14], sources: ['common-practice', 'from-memory'] } } } } });
    for (const [wording, said] of [[{}, '10 or 14 weeks'], [german, '10 oder 14 Wochen']] as const) {
      const { findings } = await createAdvisor(disputed, { wording }).assess({ tree: { species: 'acer-palmatum' }, operation: { op: 'sow', coldWeeks: 1, warmWeeks: 0 } });
      expect(findings.find(({ rule }) => rule === 'sow/cold-missing')?.because.text).toContain(said);
    }
  });

  test('leaves no gap where no place, no day and no size is told', async () => {
    let several = 0;
    for (const { op } of advisor.operations()) {
      for (const species of ['acer-palmatum', 'pinus-thunbergii', 'prunus-mume', 'ficus-microcarpa', 'juniperus-chinensis']) {
        const { findings } = await advisor.assess({ tree: { species }, operation: { op } });
        several += findings.filter(({ because }) => Object.values(because.params ?? {}).includes('…')).length;
        expect(findings.map(({ because }) => because.text).filter((text) => text.includes('…')), `${op} ${species}`).toEqual([]);
      }
    }
    expect(several).toBeGreaterThan(50);
  });
});
