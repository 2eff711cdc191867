import { closed, document, listOf, mapOf, type Schema, text } from '../../knowledge/schemas/schema.js';

const figure = (minimum: number, maximum: number, description: string): Schema => ({ type: 'number', minimum, maximum, description });
const degrees = (description: string): Schema => figure(0, 360, description);
const share = (description: string): Schema => figure(0, 1, description);
const count = (description: string): Schema => ({ type: 'integer', minimum: 0, maximum: 200, description });

/** What each term has beside its weight. */
const targets: Readonly<Record<string, Readonly<Record<string, Schema>>>> = {
  thick: { from: share('branch to trunk from which it counts'), full: share('branch to trunk at which it counts in full') },
  front: { withinDeg: degrees('how near the line to the viewer'), belowShare: share('of the height') },
  'inside-curve': {},
  'between-trunks': { withinDeg: degrees('how near the line to the other trunk') },
  pitch: { fromDeg: figure(-90, 90, 'steepest downward that is wanted'), toDeg: figure(-90, 90, 'steepest upward that is wanted'), spareDeg: degrees('how far beyond it counts in full') },
  low: { belowShare: share('of the height') },
  side: {},
  bar: {},
  crowded: {},
  over: { withinDeg: degrees('how near one line, seen from above'), gapShare: share('of the height, from which on it does not count') },
  crossing: { inView: share('how much of it counts where two only seem to cross from the front') },
  parallel: {},
  foliage: {},
  wound: {},
  'empty-side': { fromDeg: degrees('how wide a sector without a branch counts'), spareDeg: degrees('how far beyond it counts in full') },
  high: { aboveShare: share('of the height'), spareShare: share('how far beyond it counts in full') },
  'first-side': {},
  many: { most: count('branches that are not too many') },
  few: { least: count('branches that are not too few') },
  trunks: { least: count('trunks that are not too few'), most: count('trunks that are not too many') },
  tall: {},
  stump: {},
};

const weight = figure(0, 20, 'cost of the fault in full; 1 is a fault that most growers would mend if it cost them nothing');
const sources = listOf(text('id of a source in shared/sources.yaml'), 1);

/** The schema of shared/aims.yaml: what `keepers` weighs, and where a style differs. */
export const aimsSchema = (): Schema => {
  const each = (make: (members: Readonly<Record<string, Schema>>) => Schema): Readonly<Record<string, Schema>> => Object.fromEntries(Object.entries(targets).map(([term, members]) => [term, make(members)]));
  return document('aims', 'Aims of training: what is weighed when branches are chosen', closed(
    {
      equal: figure(0, 5, 'sets that cost no more than this above the best are its equals'),
      told: { type: 'integer', minimum: 1, maximum: 50, description: 'how many sets are told at most' },
      years: { type: 'integer', minimum: 1, maximum: 10, description: 'over how many years the work may be spread' },
      daysApart: { type: 'integer', minimum: 1, maximum: 1000, description: 'days that a tree is left to grow between two sittings' },
      terms: closed(each((members) => closed({ weight, ...members, sources }, ['weight', ...Object.keys(members), 'sources'])), Object.keys(targets)),
      styles: mapOf(closed({ label: text(), terms: closed(each((members) => closed({ weight, ...members }))) }, ['label', 'terms'])),
    },
    ['equal', 'told', 'years', 'daysApart', 'terms', 'styles'],
  ));
};
