import { afterAll, describe, expect, it } from 'vitest';
import { type Compared, holdTo, tallied } from './agreement.js';
import { cites, saidBy, traitRows } from './traitRows.js';

/*
 * Species traits against published tables (tests/outside/data/README.md names them and their terms). A row whose table the trait itself cites is no
 * check and is left out. A flag of a table is not the truth either: rows that look wrong on their face are left out by name, with the reason.
 */

const plants = traitRows('usda-plants.csv', 'species');
const table = 'usda-plants-characteristics';
const yes = (flag: string | undefined): boolean => flag === 'yes';
afterAll(() => process.stdout.write(`${tallied()}\n`));

// Against: USDA NRCS, The PLANTS Database, characteristics: does it come again once the whole top is gone?
describe('coming again from wood without leaves', () => {
  /** Flags of the table against what is seen on the plant wherever it is grown (practice, not read). */
  const flagged: Readonly<Record<string, string>> = {
    'ginkgo-biloba': 'flag no; known for sprouts from stem and base',
    'cryptomeria-japonica': 'flag no; coppiced for poles in Japan',
    'hedera-helix': 'flag no; comes from every old stem',
    'celastrus-orbiculatus': 'flag no; comes from stump and root',
    'cydonia-oblonga': 'flag no; suckers and sprouts when cut hard',
    'picea-abies': 'flag yes; a cut spruce stump without green is dead',
  };
  const differing: Readonly<Record<string, string>> = {
    'cotoneaster-horizontalis': 'flag no; in gardens it is cut back hard and shoots from low wood (practice)',
    'juniperus-virginiana': 'flag yes; the sprouting model of the US Forest Service and two handbooks give junipers no live buds on old wood',
    'quercus-agrifolia': 'flag no; the sprouting model of the US Forest Service has it sprout, as the oaks do',
    'salvia-rosmarinus': 'flag yes; four of four clipping records (BROT 2.0, 2018) did not come again',
  };

  it('is what the database of the plants of the United States says of nine species in ten', () => {
    let resting = 0;
    let half = 0;
    const compared: Compared[] = [];
    for (const { species, row } of plants) {
      if (flagged[species.id] !== undefined) continue;
      /* The stump is what the table speaks of. Where our stump trait rests on that table, the bare branch stands for it: practice or other sources. */
      const trait = ['budding.stump', 'budding.bareWood'].find((one) => !cites(species, one, table));
      if (trait === undefined) { resting += 1; continue; }
      const said = saidBy(species, trait);
      if (trait === 'budding.bareWood' && said.includes('poor')) { half += 1; continue; }
      compared.push({ id: species.id, agrees: said.some((one) => (one === 'good' || one === 'fair') === yes(row['resprouts'])), found: `${trait} ${said.join(' or ')}, table ${row['resprouts']}` });
    }
    expect(compared.length).toBeGreaterThanOrEqual(45);
    expect(compared.filter((one) => one.found.endsWith('no')).length).toBeGreaterThanOrEqual(12);
    holdTo('regrowth, USDA PLANTS', compared, differing, `not compared: ${resting} that cite the table, ${half} whose bare wood buds poorly, ${Object.keys(flagged).length} flags that look wrong (with them ${Math.round((100 * compared.filter((one) => one.agrees).length) / (compared.length + Object.keys(flagged).length))} %)`);
  });
});

// Against: the same table: the lowest temperature of the range, a record that is usually 5 to 8 C colder than what gardens count on; two zones are 11 C.
describe('cold that the top bears', () => {
  it('lies within two zones of the cold of its range', () => {
    const free = plants.filter(({ species }) => !cites(species, 'climate.coldestC', table) && species.id !== 'pyracantha-coccinea');
    const compared = free.map(({ species, row }): Compared => {
      const over = (saidBy(species, 'climate.coldestC')[0] as number) - Number(row['lowestC']);
      return { id: species.id, agrees: over >= -6 && over <= 17, found: `${over} C above the range's record` };
    });
    holdTo('hardiness, USDA PLANTS', compared, {}, `not compared: ${plants.length - free.length - 1} that cite the table, firethorn, whose row (-11 C) is far too warm`);
  });
});
