import { describe, expect, test } from 'vitest';
import { findSpecies } from '../../src/knowledge/findSpecies.js';
import { shipped } from '../shipped.js';
import { tinyKnowledge } from './tinyKnowledge.js';

const found = (name: string): string => {
  const answer = findSpecies(tinyKnowledge, name);
  return answer.kind === 'found' ? `${answer.species.id} by ${answer.by}` : answer.kind;
};

test('a species is found by id, accepted name, synonym and common name', () => {
  expect(found('fictaria-alba')).toBe('fictaria-alba by id');
  expect(found('Fictaria nivea')).toBe('fictaria-alba by synonym');
  expect(found('white fiction tree')).toBe('fictaria-alba by common-name');
  expect(found('fiction tree')).toBe('fictaria by common-name');
});

test.each([
  ['capitals do not matter', 'FICTARIA ALBA', 'fictaria-alba'],
  ['neither do blanks, hyphens and underscores', '  Fictaria_alba ', 'fictaria-alba'],
  ['nor accents', 'arbre reve', 'fictaria-alba'],
  ['nor accents that are written apart', 'arbre re\u0302ve\u0301', 'fictaria-alba'],
  ['a hybrid sign may be written', 'Fictaria × nigra', 'fictaria-x-nigra'],
  ['a hybrid sign may be left out', 'Fictaria nigra', 'fictaria-x-nigra'],
  ['a hybrid sign may be an x', 'Fictaria x nigra', 'fictaria-x-nigra'],
  ['a cultivar in quotes is left aside', 'Fictaria alba ‘Silver Night’', 'fictaria-alba'],
  ['a synonym of a member finds the member', 'Fictaria minima', 'fictaria-parva'],
])('%s', (_, name, id) => {
  const answer = findSpecies(tinyKnowledge, name);
  expect(answer.kind === 'found' ? answer.species.id : answer).toBe(id);
});

test('a common name that two species share is ambiguous, and both are offered', () => {
  const answer = findSpecies(tinyKnowledge, 'moon tree');
  expect(answer.kind).toBe('ambiguous');
  expect(answer.kind === 'ambiguous' && answer.species.map((species) => species.id)).toEqual(['fictaria-alba', 'fictaria-x-nigra']);
});

test('a near miss offers what may have been meant, nearest first', () => {
  const answer = findSpecies(tinyKnowledge, 'Fictaria abla');
  expect(answer.kind === 'unknown' && answer.near[0]).toBe('fictaria alba');
});

test('an unknown species of a known genus offers the genus', () => {
  const answer = findSpecies(tinyKnowledge, 'Fictaria quintessentialis');
  expect(answer.kind === 'unknown' && answer.genus?.id).toBe('fictaria');
});

test('a name that is nothing like any is unknown, and nothing is offered', () => {
  expect(findSpecies(tinyKnowledge, 'Zzyzx')).toEqual({ kind: 'unknown', near: [] });
  expect(findSpecies(tinyKnowledge, '')).toMatchObject({ kind: 'unknown' });
  expect(findSpecies(tinyKnowledge, '__proto__')).toMatchObject({ kind: 'unknown' });
  expect(findSpecies(tinyKnowledge, 'constructor')).toMatchObject({ kind: 'unknown' });
  expect(findSpecies(tinyKnowledge, 'x'.repeat(100_000))).toMatchObject({ kind: 'unknown' });
});

describe('in the shipped catalogue', () => {
  test('every id and every accepted name finds its own species', () => {
    for (const species of Object.values(shipped.species)) {
      for (const name of [species.id, species.name]) {
        const answer = findSpecies(shipped, name);
        expect(answer.kind === 'found' ? answer.species.id : answer, name).toBe(species.id);
      }
    }
  });

  test('every synonym finds its species', () => {
    for (const species of Object.values(shipped.species)) {
      for (const name of species.synonyms) {
        const answer = findSpecies(shipped, name);
        expect(answer.kind === 'found' ? answer.species.id : answer, name).toBe(species.id);
      }
    }
  });

  test('every common name of a species finds it or the genus that it belongs to, or several of which it is one', () => {
    const chain = (id: string | undefined): readonly string[] => (id === undefined ? [] : [id, ...chain(shipped.species[id]!.parent)]);
    for (const species of Object.values(shipped.species)) {
      for (const name of Object.values(species.commonNames).flat()) {
        const answer = findSpecies(shipped, name);
        if (answer.kind === 'ambiguous') expect(answer.species.map((each) => each.id), name).toContain(species.id);
        else expect(answer.kind === 'found' && (species.rank === 'genus' || species.rank === 'group' || chain(species.id).includes(answer.species.id)), `${name} of ${species.id}`).toBe(true);
      }
    }
  });
});
