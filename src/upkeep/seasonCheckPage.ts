import type { Knowledge } from '../knowledge/knowledge.js';
import { dayOf, isoOf } from '../season/day.js';
import type { Station } from '../season/station.js';
import { seasonCells, type SeasonCell, type SeasonEvent, seasonEvents, seasonObservations, withinKm } from './seasonCheck.js';

/** Every species that the catalogue answers for by name and for which leaf or colour was observed near a bundled station, and the group that stands for mixed canopies. */
export const checkedSpecies: readonly string[] = [
  'acer-palmatum', 'acer-rubrum', 'acer-saccharum', 'betula-papyrifera', 'crataegus', 'fagus-grandifolia', 'ginkgo-biloba', 'pinus-strobus', 'populus-tremuloides', 'quercus-alba', 'quercus-rubra', 'temperate-deciduous',
];

/** Every bundled station with an observation near it, and two south of the equator, where none was found. */
export const checkedPlaces: readonly string[] = [
  'acadia-np-me', 'asheville-nc', 'barren-river-lake-ky', 'birch-hill-dam-ma', 'boston-logan-ma', 'burlington-vt', 'knoxville-tn', 'raleigh-durham-nc', 'washington-reagan-dc-va', 'tokyo-japan', 'christchurch-new-zealand', 'hobart-australia',
];

const months = ['January', 'February', 'March', 'April', 'May', 'June', 'July', 'August', 'September', 'October', 'November', 'December'];
const dateOf = (dayOfYear: number): string => {
  const iso = isoOf(dayOf('2026-01-01') + Math.round(dayOfYear) - 1);
  return `${Number(iso.slice(8))} ${months[Number(iso.slice(5, 7)) - 1]!}`;
};

const sourceNames: Readonly<Record<string, string>> = { hf003: 'HF003', phenocam: 'PhenoCam', 'jma-autumn-news-2021': 'JMA, from news' };

/** Ours less observed, days; undefined where the model has no such phase. */
export const differenceOf = ({ ours, observed }: SeasonCell): number | undefined => (ours === undefined ? undefined : ours - observed);

/** How far off on average, days: mean of absolute differences and of signed ones over the cells of an event. */
export const errorsOf = (cells: readonly SeasonCell[], event: SeasonEvent): { readonly cells: number; readonly meanAbsolute: number; readonly mean: number; readonly worst: number; readonly within10: number; readonly within14: number } => {
  const differences = cells.filter((cell) => cell.event === event).flatMap((cell) => differenceOf(cell) ?? []);
  const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;
  const absolute = differences.map(Math.abs);
  const within = (days: number): number => absolute.filter((value) => value <= days).length;
  return { cells: differences.length, meanAbsolute: mean(absolute), mean: mean(differences), worst: Math.max(...absolute), within10: within(10), within14: within(14) };
};

const signed = (days: number, digits = 0): string => {
  const size = Math.abs(days).toFixed(digits);
  return `${Number(size) === 0 ? '' : days < 0 ? '−' : '+'}${size}`;
};

const row = (cell: SeasonCell): string => {
  const { species, station, event, ours, observed, sites } = cell;
  const difference = differenceOf(cell);
  const shown = ours === undefined || difference === undefined ? ['no such phase', '']
    : [dateOf(ours), event === 'hardening' ? (difference >= 0 ? `${difference.toFixed(0)} later, as it must be` : `**${Math.abs(difference).toFixed(0)} too early**`) : Math.abs(difference) > 14 ? `**${signed(difference)}**` : signed(difference)];
  const where = sites.length === 1 ? sites[0]!.site : `${sites.length} sites`;
  return `| ${species.rank === 'group' ? `${species.name} (group), mixed canopy` : species.name} | ${station.name} | ${event} | ${shown[0]!} | ${event === 'hardening' ? 'not before ' : ''}${dateOf(observed)} | ${shown[1]!}${cell.fitted ? ' †' : ''} | ${where}, ${sourceNames[sites[0]!.source] ?? sites[0]!.source} |`;
};

const figures = (cells: readonly SeasonCell[], event: Exclude<SeasonEvent, 'hardening'>, label: string): string => {
  const { cells: count, meanAbsolute, mean, worst, within10, within14 } = errorsOf(cells, event);
  return count === 0 ? `| ${label} | 0 | | | | | |` : `| ${label} | ${count} | ${meanAbsolute.toFixed(1)} | ${signed(mean, 1)} | ${worst.toFixed(0)} | ${within10} | ${within14} |`;
};

/** All cells of the page. */
export const checkedCells = (knowledge: Knowledge, stations: readonly Station[], phenologyCsv: string): readonly SeasonCell[] =>
  seasonCells(knowledge, checkedSpecies, checkedPlaces.map((id) => stations.find((station) => station.id === id)!), seasonObservations(phenologyCsv));

/** docs/season-check.md: our dates beside what was observed. */
export const seasonCheckPage = (knowledge: Knowledge, stations: readonly Station[], phenologyCsv: string): string => {
  const cells = checkedCells(knowledge, stations, phenologyCsv);
  const all = checkedSpecies.length * checkedPlaces.length * seasonEvents.length;
  const without = checkedPlaces.filter((id) => cells.every((cell) => cell.station.id !== id)).map((id) => stations.find((station) => station.id === id)!.name);
  const fit = (share: SeasonEvent): number => cells.filter((cell) => cell.event === share).length;
  return `# The season beside what was observed

This page is generated: \`npx tsx src/upkeep/seasonCheckMain.ts\` writes it from the shipped species files, the bundled places and \`tests/outside/data/phenology.csv\`, and a test fails while it lags behind. No date and no figure on it is typed by hand.

${checkedSpecies.length} species, ${checkedPlaces.length} places and ${seasonEvents.length} events make ${all} cells. ${cells.length} of them hold an observation and stand below, all of them; ${all - cells.length} are empty. No observation was found at ${without.join(' and ')}, nor anywhere else south of the equator: there the calendar is the northern one turned by half a year, which nobody has checked on trees.

## What the figures mean

Our dates come from monthly normals of the station named and from the species' traits: an ordinary year, without a word about this year's weather. Do not read them closer than ten days either way. Leaf-out of one site departs from its own mean by about five days on average from year to year, and by up to three weeks; autumn colour of single species is hardly predictable at all (Estrella and Menzel 2006, Climate Research 32:253). What the grower sees on the tree moves these dates, and is worth more than any of them.

The check is weaker than it looks, for three reasons. Where a row bears a †, our date was worked out from that very source: it shows that the sums hold, not that they foretell. A station stands for sites up to ${withinKm} km away, some of them hundreds of metres higher (around Asheville and Knoxville the cameras look at mountains). And no word means quite the same: *leaf-out* is half the buds showing leaves at Harvard, but the greening of a whole canopy at a camera; *turning* is our first colour, but most leaves turned in Tokyo; *leaf fall* is our first falling leaves. For pines our leaf-out is the opening candle, theirs the needles that come out of it weeks later.

*Hardening* was observed nowhere. The day on which three quarters of the leaves had three quarters of their size is only its lower bound: no flush is hard before it.

| event | cells | mean error, days | bias, days | worst, days | within 10 | within 14 |
| --- | ---: | ---: | ---: | ---: | ---: | ---: |
${(['leaf-out', 'turning', 'leaf fall'] as const).flatMap((event) => [figures(cells, event, event), figures(cells.filter((cell) => !cell.fitted), event, `${event}, without †`)]).join('\n')}

Hardening keeps its bound in ${cells.filter((cell) => cell.event === 'hardening' && (differenceOf(cell) ?? -1) >= 0).length} of ${fit('hardening')} cells. Plus means that ours is later. Bold: more than a fortnight off, or a bound that is broken. †: not independent, as said above.

## The cells

| species | place | event | ours | observed | difference, days | where, source |
| --- | --- | --- | --- | --- | --- | --- |
${cells.map(row).join('\n')}

Sources: Harvard Forest Data Archive HF003 (O'Keefe), means of 12 to 33 years; PhenoCam Dataset v1 (Richardson et al. 2018), means of 1 to 15 years; Tokyo: ordinary dates of the Japan Meteorological Agency for 1991–2020, derived from news of one autumn that gave its date and how late it was. Cherry bloom in \`phenology.csv\` is left out: no phase of ours stands for it.
`;
};
