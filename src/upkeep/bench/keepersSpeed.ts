import { createAdvisor } from '../../advisor.js';
import type { Proposal } from '../../contract/types.generated.js';
import { SparebudError } from '../../knowledge/error.js';
import type { Knowledge } from '../../knowledge/knowledge.js';
import type { Station } from '../../season/station.js';
import { median, timed } from './timing.js';

/** `keepers` over some trees, in milliseconds, and how many of its searches came to their end. */
export interface KeepersSpeed {
  readonly branches: number;
  readonly median: number;
  readonly nineteenOfTwenty: number;
  readonly exact: number;
  readonly refused: number;
}

export const treesEach = 30;

/* Trees drawn by the same rule each time: branches in whorls and alone, up a straight trunk, each a third of it on average. */
const branched = (count: number, tree: number): NonNullable<Proposal['tree']['structure']> => {
  const part = (i: number, salt: number): number => Math.abs(Math.sin((i + 1) * 12.9898 + tree * 78.233 + salt) * 43758.5453) % 1;
  const heightMm = 620;
  return {
    trunks: [{ id: 'trunk', points: [{ heightMm: 0, diameterMm: 60 }, { heightMm, diameterMm: 8 }] }],
    branches: Array.from({ length: count }, (_, i) => {
      const at = 0.18 + (0.75 * Math.floor(i * 0.6)) / count / 0.6;
      return { id: `b${i}`, heightMm: at * heightMm + part(i, 1) * 4, azimuthDeg: part(i, 2) * 360, diameterMm: (60 - 52 * at) * (0.2 + 0.3 * part(i, 3)), lengthMm: 80 + 120 * part(i, 4), pitchDeg: 50 * part(i, 5) - 10 };
    }),
  };
};

export const keepersSpeed = async (knowledge: Knowledge, stations: readonly Station[], branches: number): Promise<KeepersSpeed> => {
  const advisor = createAdvisor(knowledge, { places: stations });
  const styles = Object.keys(knowledge.aims.styles);
  const took: number[] = [];
  let [exact, refused] = [0, 0];
  for (let each = 0; each < treesEach; each++) {
    const asked = { tree: { species: 'pinus-thunbergii', vigour: 'strong', aim: { style: styles[each % styles.length] }, trunk: { diameterMm: 60, heightMm: 620 }, structure: branched(branches, each) }, where: { place: 'koeln-cologne-germany' }, date: '2027-02-10' };
    took.push(await timed(async () => {
      try {
        if ((await advisor.keepers(asked)).notices.every(({ id }) => id !== 'keepers.cut-short')) exact++;
      } catch (cause) {
        if (!(cause instanceof SparebudError)) throw cause;
        refused++;
      }
    }));
  }
  return { branches, median: median(took), nineteenOfTwenty: [...took].sort((a, b) => a - b)[28]!, exact, refused };
};
