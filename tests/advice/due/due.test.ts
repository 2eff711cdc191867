import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import type { Collection } from '../../../src/knowledge/checkCollection.js';
import { SparebudError } from '../../../src/knowledge/error.js';
import { dayOf, isoOf } from '../../../src/season/day.js';
import { wrongBy } from '../../contract/answerValidator.js';
import { cases } from '../../laws/cases.js';
import { dateArbitrary, plausibleProposal } from '../../laws/plausibleProposal.js';
import { advisor, root, shipped, stations } from '../../shipped.js';

const demo = parse(readFileSync(`${root}docs/demo/collection.yaml`, 'utf8')) as Collection;
const months = Array.from({ length: 12 }, (_, month) => `2027-${String(month + 1).padStart(2, '0')}-20`);
const places = fc.constantFrom(...stations.slice(0, 60)).map((station) => ({ place: station.id }));
const collections = fc.array(plausibleProposal(shipped, stations, { where: places }), { minLength: 1, maxLength: 3 })
  .map((proposals) => ({ trees: proposals.map(({ tree, where }, i) => ({ id: `tree-${i}`, tree, ...(where === undefined ? {} : { where }) })) }) as Collection);

/** Where a tree stands by its log, where that is not told: as the words for berths and moves say. */
const standingOf = ({ standing, log }: Collection['trees'][number]['tree'], date: string): string | undefined => {
  const moves = (log ?? []).filter((entry) => ['overwinter', 'move-indoors', 'move-outdoors'].includes(entry['op'] as string) && String(entry['date']) <= date);
  const last = [...moves].sort((a, b) => (String(a['date']) < String(b['date']) ? -1 : 1)).map((entry) => (entry['op'] === 'move-outdoors' ? 'outdoors' : ((entry['placement'] ?? entry['to']) as string | undefined))).findLast((to) => to !== undefined);
  return standing ?? last?.replace(/^outdoors-.*/, 'outdoors');
};

/** Every item, asked again in the middle of its window, on the tree as it was told on the day of the list. */
const badInTheMiddle = async (collection: Collection, date: string): Promise<readonly string[]> => {
  const due = await advisor.due(collection, date);
  expect(wrongBy('due', due)).toEqual([]);
  const bad: string[] = [];
  for (const { id, tree: name, operation, window, verdict } of due.items) {
    const { tree, where = collection.where } = collection.trees.find((each) => each.id === name)!;
    const { phase, ...rest } = tree;
    const standing = standingOf(tree, date);
    const seen = phase === undefined ? {} : { log: [...(tree.log ?? []), { saw: phase, date }] };
    const middle = Math.floor((dayOf(window.from) + dayOf(window.to)) / 2);
    const again = await advisor.verdict({ tree: { ...rest, ...(standing === undefined ? {} : { standing }), ...seen }, ...(where === undefined ? {} : { where }), operation, date: isoOf(middle) });
    if (again.verdict === 'advise-against' || again.verdict !== verdict) bad.push(`${date} ${id} in the middle of ${window.from} to ${window.to}: ${again.verdict}, told ${verdict}`);
  }
  return bad;
};

/** Items of the day's list that, done and logged on that day, are still on the list of the next. */
const stillThere = async (collection: Collection, date: string): Promise<readonly string[]> => {
  const still: string[] = [];
  for (const item of (await advisor.due(collection, date)).items) {
    const each = collection.trees.find(({ id }) => id === item.tree)!;
    const tree = { ...each.tree, log: [...(each.tree.log ?? []), { ...item.operation, date }] } as Collection['trees'][number]['tree'];
    const next = await advisor.due({ ...collection, trees: [{ ...each, tree }] }, isoOf(dayOf(date) + 1));
    still.push(...next.items.filter(({ operation }) => operation.op === item.operation.op && operation.branch === item.operation.branch).map(({ id, state }) => `${date} ${item.id} ${item.state}, then ${id} ${state}`));
  }
  return still;
};

describe('the thirty trees of the demo over a year', () => {
  const lists = Promise.all(months.map(async (date) => await advisor.due(demo, date)));

  test('are all understood, and give a list of the length that a person will follow, in every month', async () => {
    expect(demo.trees).toHaveLength(30);
    for (const { date, items, unanswered } of await lists) {
      expect(unanswered).toEqual([]);
      expect(items.length, date).toBeGreaterThanOrEqual(5);
      expect(items.length, date).toBeLessThanOrEqual(25);
    }
  }, 120_000);

  test('are never asked to bear what is advised against in the middle of its days', async () => {
    for (const date of months) expect(await badInTheMiddle(demo, date)).toEqual([]);
  }, 300_000);

  test('are not asked again tomorrow for what was done today', async () => {
    for (const date of months) expect(await stillThere(demo, date)).toEqual([]);
  }, 300_000);

  test('leave a grower who does what is open a list that gets shorter, and never two lines for the same work on one tree', async () => {
    let trees = demo.trees;
    const lengths: number[] = [];
    for (const date of months) {
      const { items } = await advisor.due({ ...demo, trees }, date);
      lengths.push(items.length);
      const work = items.map(({ tree, operation }) => `${tree} ${operation.op} ${operation.branch ?? ''}`);
      expect(new Set(work).size, date).toBe(work.length);
      const done = items.filter(({ state, window }) => state !== 'soon' && window.from <= date);
      trees = trees.map((each) => {
        const entries = done.filter(({ tree }) => tree === each.id).map(({ operation }) => ({ ...operation, date }));
        const { standing, ...rest } = each.tree;
        const moved = entries.some(({ op }) => op === 'overwinter' || op === 'move-outdoors');
        return { ...each, tree: { ...rest, ...(moved || standing === undefined ? {} : { standing }), log: [...(each.tree.log ?? []), ...entries] } as typeof each.tree };
      });
    }
    expect(Math.max(...lengths)).toBeLessThanOrEqual(22);
    expect(Math.min(...lengths)).toBeGreaterThanOrEqual(1);
    expect(lengths.reduce((sum, each) => sum + each, 0)).toBeLessThan((await lists).reduce((sum, { items }) => sum + items.length, 0));
  }, 300_000);

  test('are repotted in spring, moved before the frosts, put out in May, and pinched while candles are soft', async () => {
    const has = async (month: number, tree: string, op: string): Promise<boolean> => (await lists)[month - 1]!.items.some((item) => item.tree === tree && item.operation.op === op);
    expect(await has(3, 'beech', 'repot')).toBe(true);
    expect(await has(7, 'beech', 'repot')).toBe(false);
    expect(await has(11, 'trident-old', 'overwinter')).toBe(true);
    expect(await has(6, 'trident-old', 'overwinter')).toBe(false);
    expect(await has(5, 'jade', 'move-outdoors')).toBe(true);
    expect(await has(12, 'jade', 'move-outdoors')).toBe(false);
    expect(await has(5, 'black-pine', 'candle-cut')).toBe(true);
    expect(await has(5, 'scots-pine', 'candle-pinch')).toBe(true);
    expect(await has(6, 'trident-old', 'defoliate')).toBe(true);
    expect(await has(1, 'trident-old', 'defoliate')).toBe(false);
  }, 120_000);

  test('keep the id of a piece of work from week to week, and never use one twice', async () => {
    for (const [i, date] of months.entries()) {
      const [now, later] = [(await lists)[i]!, await advisor.due(demo, isoOf(dayOf(date) + 7))];
      expect(new Set(now.items.map(({ id }) => id)).size).toBe(now.items.length);
      const ids = new Set(later.items.map(({ id }) => id));
      for (const item of now.items.filter(({ window, state }) => state !== 'overdue' && window.to > isoOf(dayOf(date) + 7))) expect(ids, `${date} ${item.id}`).toContain(item.id);
    }
  }, 300_000);
});

describe('any collection', () => {
  test('is never told to do what is advised against', async () => {
    await fc.assert(fc.asyncProperty(collections, dateArbitrary, async (collection, date) => { expect(await badInTheMiddle(collection, date)).toEqual([]); }), { numRuns: cases(40) });
  }, 600_000);

  test('is not asked again tomorrow for what was done today', async () => {
    await fc.assert(fc.asyncProperty(collections, dateArbitrary, async (collection, date) => { expect(await stillThere(collection, date)).toEqual([]); }), { numRuns: cases(40) });
  }, 600_000);

  test('is answered alike whatever the order of its trees', async () => {
    await fc.assert(fc.asyncProperty(collections, dateArbitrary, async (collection, date) => {
      expect(JSON.stringify(await advisor.due({ ...collection, trees: [...collection.trees].reverse() }, date))).toBe(JSON.stringify(await advisor.due(collection, date)));
    }), { numRuns: cases(20) });
  }, 600_000);
});

describe('one tree', () => {
  const where = { place: 'malmo-sweden' };
  const items = async (tree: object, date: string): Promise<readonly string[]> => (await advisor.due({ where, trees: [{ id: 'it', tree }] }, date)).items.map(({ operation, state }) => `${operation.op} ${state}`);
  const stub = { species: 'hawthorn', lastRepotted: '2027-03-20', log: [{ op: 'remove-branch', branch: 'low', finish: 'stub', branchDiameterMm: 10, date: '2026-03-10' }] };

  test('whose stub has dried is to be cleaned, sooner or later, until that is done', async () => {
    expect(await items(stub, '2026-04-10')).toEqual([]);
    expect(await items(stub, '2027-05-10')).toContain('clean-stub open');
    expect(await items(stub, '2028-05-10')).toContain('clean-stub overdue');
    expect(await items({ ...stub, log: [...stub.log, { op: 'clean-stub', branch: 'low', date: '2027-05-09' }] }, '2027-05-10')).not.toContain('clean-stub open');
    expect(await items({ ...stub, log: [...stub.log, { op: 'clean-stub', branch: 'other', date: '2027-05-09' }] }, '2027-05-10')).toContain('clean-stub open');
  });

  test('that was repotted yesterday is not to be repotted', async () => {
    const maple = { species: 'acer-palmatum', stage: 'developing', vigour: 'steady' };
    expect(await items({ ...maple, lastRepotted: '2023-03' }, '2027-03-25')).toContainEqual(expect.stringMatching(/^repot/));
    expect(await items({ ...maple, lastRepotted: '2027-03-24' }, '2027-03-25')).not.toContainEqual(expect.stringMatching(/^repot/));
    expect(await items({ ...maple, lastRepotted: '2023-03', log: [{ op: 'repot', date: '2027-03-24' }] }, '2027-03-25')).not.toContainEqual(expect.stringMatching(/^repot/));
  });

  test('whose last repotting nobody told of is not said to be late, but asked about; where it stands is asked first', async () => {
    expect(await items({ species: 'acer-palmatum' }, '2027-03-25')).not.toContainEqual(expect.stringMatching(/^repot/));
    const untold = async (tree: object, place?: object): Promise<readonly string[]> => (await advisor.due({ ...(place === undefined ? {} : { where: place }), trees: [{ id: 'it', tree }] }, '2027-03-25')).untold.map(({ fact, trees }) => `${fact} ${trees.join()}`);
    expect(await untold({ species: 'acer-palmatum' }, where)).toEqual(['history.daysSinceRepot it']);
    expect(await untold({ species: 'acer-palmatum', growing: 'ground' }, where)).toEqual([]);
    expect(await untold({ species: 'acer-palmatum', lastRepotted: '2026' }, where)).toEqual([]);
    expect(await untold({ species: 'acer-palmatum', lastRepotted: '2026' })).toEqual(['place.told it']);
  });

  test('that needs a cold rest and stands in a heated room is to be moved when nights are cold', async () => {
    expect(await items({ species: 'acer-palmatum', standing: 'heated-room', lastRepotted: '2027-03' }, '2027-10-25')).toContainEqual(expect.stringMatching(/^overwinter/));
    expect(await items({ species: 'acer-palmatum', standing: 'heated-room', lastRepotted: '2027-03' }, '2027-07-25')).not.toContainEqual(expect.stringMatching(/^overwinter/));
  });
});

describe('a tree whose log tells where it was moved', () => {
  const where = { place: 'malmo-sweden' };
  const works = async (log: readonly object[], date: string): Promise<readonly string[]> => (await advisor.due({ where, trees: [{ id: 'it', tree: { species: 'trident maple', lastRepotted: '2027-03', log } }] }, date)).items.map(({ operation }) => operation.op);
  const inFrame = [{ op: 'winter berth', placement: 'cold-frame', date: '2026-11-02' }];

  test('is put into its frame before the frosts, taken out as it wakes, and put in again a year later', async () => {
    expect(await works([], '2026-10-25')).toEqual(['overwinter']);
    expect(await works(inFrame, '2026-11-20')).toEqual([]);
    expect(await works(inFrame, '2027-04-05')).toEqual(['move-outdoors']);
    expect(await works([...inFrame, { op: 'move-outdoors', date: '2027-04-05' }], '2027-04-06')).toEqual([]);
    expect(await works([...inFrame, { op: 'move-outdoors', date: '2027-04-05' }], '2027-10-25')).toEqual(['overwinter']);
  });
});

describe('wire that was put on in autumn', () => {
  test('is looked at when the tree grows again, since wire marks in growth', async () => {
    const due = async (wired: string, date: string): Promise<readonly string[]> => (await advisor.due({ where: { place: 'malmo-sweden' }, trees: [{ id: 'it', tree: { species: 'trident maple', lastRepotted: '2027-03', log: [{ op: 'wire', date: wired }] } }] }, date)).items.filter(({ operation }) => operation.op === 'unwire').map(({ state }) => state);
    expect(await due('2026-11-20', '2027-02-01')).toEqual([]);
    expect(await due('2026-11-20', '2027-05-25')).toEqual(['open']);
    expect(await due('2026-11-20', '2027-08-01')).toEqual(['overdue']);
    expect(await due('2027-05-20', '2027-06-25')).toEqual(['open']);
    expect(await due('2027-05-20', '2027-08-01')).toEqual(['overdue']);
  });
});

describe('a pot full of roots', () => {
  test('asks for a repotting though nobody told when the last one was, and a tree in the ground never does', async () => {
    const repots = async (tree: object): Promise<boolean> => (await advisor.due({ where: { place: 'malmo-sweden' }, trees: [{ id: 'it', tree: { species: 'Fagus sylvatica', ...tree } }] }, '2027-03-20')).items.some(({ operation }) => operation.op === 'repot');
    expect(await repots({ rootState: 'bound' })).toBe(true);
    expect(await repots({})).toBe(false);
    expect(await repots({ lastRepotted: '2020-04' })).toBe(true);
    expect(await repots({ lastRepotted: '2020-04', growing: 'ground' })).toBe(false);
  });
});

test('two hundred trees at two places are answered in seconds', async () => {
  const trees = Array.from({ length: 200 }, (_, i) => ({ ...demo.trees[i % 30]!, id: `tree-${i}`, tree: { ...demo.trees[i % 30]!.tree, ageYears: 5 + (i % 40) } }));
  const before = process.cpuUsage();
  const { items, unanswered } = await advisor.due({ ...demo, trees }, '2027-03-20');
  expect(unanswered).toEqual([]);
  expect(items.length).toBeGreaterThan(100);
  expect(process.cpuUsage(before).user / 1e6, 'seconds of one processor').toBeLessThan(15);
}, 120_000);

describe('a collection that cannot be understood in part', () => {
  test('says which trees, and answers for the rest', async () => {
    const due = await advisor.due({ where: { place: 'malmo-sweden' }, trees: [
      { id: 'odd', tree: { species: 'no such tree' } }, { id: 'wrong', tree: { species: 'acer', vigor: 'strong' } }, { id: 'far', where: { place: 'nowhere' }, tree: { species: 'acer' } },
      { id: 'beech', tree: { species: 'Fagus sylvatica', lastRepotted: '2022-04' } }, { id: 'beech', tree: { species: 'acer' } },
    ] }, '2027-03-20');
    expect(due.unanswered.map(({ tree, issues }) => `${tree} ${issues.map(({ code }) => code).join()}`)).toEqual(['beech duplicate', 'far unknown-place', 'odd unknown-species', 'wrong unknown-field']);
    expect(due.items.map(({ tree }) => tree)).toContain('beech');
  });

  test('or as a whole, or by its date, is refused with a coded error', async () => {
    const code = async (collection: unknown, date: string): Promise<string> => await advisor.due(collection, date).then(() => '', (cause: unknown) => (cause as SparebudError).code);
    expect(await code({}, '2027-03-20')).toBe('missing');
    expect(await code(null, '2027-03-20')).toBe('wrong-type');
    expect(await code(demo, '2027-02-30')).toBe('bad-date');
    expect(await code(demo, 'soon')).toBe('bad-date');
  });
});
