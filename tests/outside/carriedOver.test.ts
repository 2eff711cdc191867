import { describe, expect, it } from 'vitest';
import { saidBy, traitRows } from './traitRows.js';

/** Points of germination gained by cold. */
const gain = new Map(traitRows('sylvanseeds.csv', 'species').map(({ species, row }) => [species.id, Number(row['coldPct']) - Number(row['unstratifiedPct'])]));

// Against: ASPCA, Toxic and non-toxic plants; University of Florida IFAS, Ability to compartmentalize; SylvanSeeds. Nearly every trait here cites the list itself: these
// hold that a list was carried over whole, and check nothing independently.
describe('what was carried over from a list', () => {
  const whom = { cat: 'pets', dog: 'pets', horse: 'livestock' } as const;

  it('names every plant of ours that is listed as poisonous to pets or livestock', () => {
    for (const { listed, species, row } of traitRows('aspca-toxic.csv', 'taxon')) {
      const needed = (row['toxicTo'] ?? '').split(';').map((animal) => whom[animal as keyof typeof whom]);
      expect(saidBy(species, 'hazards.eaten').flat(), `${listed}: ${species.id}`).toEqual(expect.arrayContaining([...new Set(needed)]));
    }
  });

  it('keeps walls against decay as listed, or says that sources disagree', () => {
    const rows = traitRows('compartmentalization.csv', 'taxon');
    for (const { species, row } of rows) expect(saidBy(species, 'healing.rot'), species.id).toContain(row['walls'] === 'good' ? 'resists' : 'weak');
    expect(rows.length).toBeGreaterThan(30);
  });

  it('is longer for seed that cold helped much than for seed that it did not, as SylvanSeeds has it', () => {
    const weeks = (among: (points: number) => boolean): readonly number[] => traitRows('sylvanseeds.csv', 'species').filter(({ species }) => among(gain.get(species.id)!)).flatMap(({ species }) => saidBy(species, 'propagation.coldWeeks') as readonly number[]);
    const median = (values: readonly number[]): number => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)]!;
    expect(median(weeks((points) => points >= 30))).toBeGreaterThan(median(weeks((points) => points < 10)));
  });
});
