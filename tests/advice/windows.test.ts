import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Judge, Judged } from '../../src/advice/judge.js';
import type { Prepared } from '../../src/advice/prepare.js';
import { windowsOf } from '../../src/advice/windows.js';
import type { VerdictOnly } from '../../src/advisor.js';
import type { Assessment, Proposal } from '../../src/contract/types.generated.js';
import { severity } from '../../src/engine/verdict.js';
import type { Verdict } from '../../src/knowledge/knowledge.js';
import { dayOf, isoOf } from '../../src/season/day.js';
import { knownCases } from '../cases/knownCases.js';
import { cases, patience } from '../laws/cases.js';
import { onAnotherDay } from '../laws/onAnotherDay.js';
import { dateArbitrary, plausibleProposal, whereArbitrary } from '../laws/plausibleProposal.js';
import { advisor, shipped, stations } from '../shipped.js';

/* Law 8: windows agree with asking day by day. */

const daysAhead = 425;

const dated = knownCases.filter(({ proposal }) => proposal.date !== undefined);

type Window = Assessment['windows'][number];
const holds = (window: Window, day: number): boolean => dayOf(window.from) <= day && day <= dayOf(window.to);
const better = (fresh: VerdictOnly, today: Verdict): boolean => severity(fresh.range[1]) < severity(today);

/** What is wrong with the windows of an answer, as a fresh answer on a day shows it. */
const wrongOn = (day: number, fresh: VerdictOnly, answer: Assessment): readonly string[] => {
  const { windows, verdict: today } = answer;
  const window = windows.find((each) => holds(each, day));
  const shown = `${isoOf(day)} is ${fresh.verdict} (${fresh.range.join(' to ')}), today ${today}`;
  if (window !== undefined) return window.verdict === fresh.verdict && better(fresh, today) ? [] : [`${shown}; the window ${window.from} to ${window.to} says ${window.verdict}`];
  if (!better(fresh, today)) return [];
  const last = windows.at(-1);
  // Only four are shown: what is left out comes after them in order.
  const leftOut = windows.length === 4 && last !== undefined && (severity(fresh.verdict) > severity(last.verdict) || (fresh.verdict === last.verdict && day > dayOf(last.to)));
  return leftOut ? [] : [`${shown}; no window holds it (${windows.map((each) => `${each.from} to ${each.to} ${each.verdict}`).join(', ')})`];
};

/** Days on which a mistake of one day would show: both ends of each window, and the days beside them. */
const rims = (windows: readonly Window[]): readonly number[] => windows.flatMap(({ from, to }) => [dayOf(from) - 1, dayOf(from), dayOf(to), dayOf(to) + 1]);

const faultsOf = async (proposal: Proposal, days: (today: number) => readonly number[]): Promise<readonly string[]> => {
  const answer = await advisor.assess(proposal);
  if (answer.verdict === 'allowed' && answer.settled) return answer.windows.length === 0 ? [] : ['windows where the work is plainly allowed today'];
  const today = dayOf(proposal.date!);
  const faults: string[] = [];
  for (const day of new Set([...days(today), ...rims(answer.windows)])) {
    if (day <= today || day > today + daysAhead) continue;
    faults.push(...wrongOn(day, await advisor.verdict(onAnotherDay(proposal, isoOf(day))), answer));
  }
  return faults;
};

describe('windows of the known cases', () => {
  it('agree with asking anew on every seventh day of fourteen months, and on the days beside their ends', async () => {
    const faults: string[] = [];
    for (const { id, proposal } of dated) {
      for (const fault of await faultsOf(proposal, (today) => Array.from({ length: Math.floor(daysAhead / 7) }, (_, week) => today + 7 * (week + 1)))) faults.push(`${id}: ${fault}`);
    }
    expect(faults).toEqual([]);
    expect(dated.length).toBeGreaterThan(50);
  }, patience(120_000));

  it('are four at most, better than today, the best first and then the soonest, apart from each other and within fourteen months', async () => {
    let seen = 0;
    for (const { id, proposal } of dated) {
      const { windows, verdict } = await advisor.assess(proposal);
      const today = dayOf(proposal.date!);
      seen += windows.length;
      expect(windows.length, id).toBeLessThanOrEqual(4);
      for (const window of windows) {
        expect(severity(window.verdict), id).toBeLessThan(severity(verdict));
        expect(dayOf(window.from), id).toBeGreaterThan(today);
        expect(dayOf(window.to), id).toBeGreaterThanOrEqual(dayOf(window.from));
        expect(dayOf(window.to), id).toBeLessThanOrEqual(today + daysAhead);
        expect(window.plusMinusDays, id).toBeGreaterThanOrEqual(0);
      }
      windows.slice(1).forEach((window, i) => {
        const before = windows[i]!;
        expect(severity(window.verdict) > severity(before.verdict) || (window.verdict === before.verdict && window.from > before.to), `${id}: ${before.from} ${before.verdict} stands before ${window.from} ${window.verdict}`).toBe(true);
      });
    }
    expect(seen).toBeGreaterThan(20);
  }, patience(120_000));

  it('are none where no day is told or the work is plainly allowed', async () => {
    for (const { proposal } of knownCases.slice(0, 12)) {
      const { date: _, ...undated } = proposal;
      expect((await advisor.assess(undated)).windows).toEqual([]);
    }
    for (const { id, proposal } of dated) {
      const answer = await advisor.assess(proposal);
      if (answer.verdict === 'allowed' && answer.settled) expect(answer.windows, id).toEqual([]);
    }
  }, patience(120_000));
});

/** Strong trees and work in its usual way: for these most often a better day comes. */
const sound = fc.record({
  species: fc.constantFrom(...Object.values(shipped.species).filter((each) => each.rank === 'taxon').map((each) => each.id)),
  operation: fc.constantFrom(...Object.values(shipped.operations).flatMap(({ id, usual }) => usual.map((set) => ({ op: id, ...set })))),
  phase: fc.option(fc.constantFrom('bud-swell', 'bud-burst', 'leafing-out', 'extending', 'turning'), { nil: undefined }),
  date: dateArbitrary,
  where: whereArbitrary(stations),
}).map(({ species, operation, phase, date, where }) =>
  ({ tree: { species, vigour: 'strong', health: 'sound', rootState: 'sound', ...(phase === undefined ? {} : { phase }) }, operation, date, where }) as unknown as Proposal);

describe('windows of any proposal', () => {
  it('agree with asking anew on days picked at random and on the days beside their ends, also where a phase was told', async () => {
    const drawn = fc.oneof(plausibleProposal(shipped, stations).filter((proposal) => proposal.date !== undefined), sound);
    await fc.assert(
      fc.asyncProperty(drawn, fc.array(fc.integer({ min: 1, max: daysAhead }), { minLength: 2, maxLength: 2 }), async (proposal, ahead) => {
        expect(await faultsOf(proposal, (today) => ahead.map((days) => today + days))).toEqual([]);
      }),
      { numRuns: cases(2000) },
    );
  }, patience(600_000));

  it('take what the tree shows today as the start of its year: told early, the better days come early, and as they would to one who wrote it down', async () => {
    let moved = 0;
    for (const op of ['repot', 'wire', 'cut-back', 'defoliate', 'graft', 'cutting', 'air-layer', 'trim-roots', 'sow'].filter((each) => shipped.operations[each] !== undefined)) {
      const proposal = (phase: string | undefined) => ({ tree: { species: 'acer-palmatum', vigour: 'strong', health: 'sound', ...(phase === undefined ? {} : { phase }) }, operation: { op, ...shipped.operations[op]!.usual[0] }, date: '2026-03-10', where: { place: 'koeln-cologne-germany' } }) as unknown as Proposal;
      expect(await faultsOf(proposal('leafing-out'), (today) => Array.from({ length: 60 }, (_, i) => today + 1 + 3 * i)), op).toEqual([]);
      const ends = async (phase: string | undefined): Promise<string> => JSON.stringify((await advisor.assess(proposal(phase))).windows.map(({ from, to }) => [from, to]));
      if (await ends('leafing-out') !== await ends(undefined)) moved += 1;
    }
    expect(moved).toBeGreaterThanOrEqual(2);
  }, 60_000);

  it('name no phase that begins only towards their middle', async () => {
    const { windows } = await advisor.assess({ tree: { species: 'buxus-sempervirens', vigour: 'steady', health: 'sound' }, operation: { op: 'trim', shareRemoved: 0.4 }, date: '2027-10-01', where: { latitude: 55.9, longitude: -3.2 } });
    const [months] = windows;
    expect(dayOf(months!.to) - dayOf(months!.from)).toBeGreaterThan(200);
    expect(months!.phase).toBeUndefined();
    expect(windows.map(({ phase }) => phase)).toContain('resting');
  });

  it('would not agree if they said another verdict: a window turned round is a fault', async () => {
    for (const { proposal } of dated) {
      const answer = await advisor.assess(proposal);
      const [first] = answer.windows;
      if (first === undefined) continue;
      const day = dayOf(first.from);
      const fresh = await advisor.verdict(onAnotherDay(proposal, isoOf(day)));
      expect(wrongOn(day, fresh, answer)).toEqual([]);
      expect(wrongOn(day, fresh, { ...answer, windows: answer.windows.slice(1) })).toHaveLength(1);
      expect(wrongOn(day, fresh, { ...answer, windows: [{ ...first, verdict: first.verdict === 'allowed' ? 'risky' : 'allowed' }, ...answer.windows.slice(1)] })).toHaveLength(1);
      return;
    }
    expect.fail('no case has a window');
  });
});

describe('windows of an invented judge', () => {
  const today = dayOf('2026-01-01');
  const windowsBy = async (judged: Pick<Judged, 'verdict' | 'settled'>, on: (ahead: number) => Pick<Judged, 'verdict' | 'range'>, atBest: Verdict = 'allowed'): Promise<readonly Window[]> =>
    await windowsOf(judged as Judged, { verdictsOn: async (days: readonly number[]) => days.map((day) => on(day - today)), atBest: async () => atBest } as unknown as Judge, { asked: { day: today, proposal: { tree: {} }, climate: { plusMinusDays: 12 } }, on: () => ({ season: () => undefined }) } as unknown as Prepared);
  const plain = (verdict: Verdict): Pick<Judged, 'verdict' | 'range'> => ({ verdict, range: [verdict, verdict] });

  it('are the four that are best and soonest, of however many there are', async () => {
    const found = await windowsBy({ verdict: 'advise-against', settled: true }, (ahead) => plain(ahead % 40 < 10 ? 'risky' : ahead > 100 && ahead % 40 < 20 ? 'allowed' : 'advise-against'));
    expect(found.map(({ from, verdict }) => [dayOf(from) - today, verdict])).toEqual([[130, 'allowed'], [170, 'allowed'], [210, 'allowed'], [250, 'allowed']]);
    const few = await windowsBy({ verdict: 'advise-against', settled: true }, (ahead) => plain(ahead % 100 < 10 ? 'risky' : ahead >= 300 && ahead <= 320 ? 'allowed' : 'advise-against'));
    expect(few.map(({ from, to, verdict }) => [dayOf(from) - today, dayOf(to) - today, verdict])).toEqual([[310, 320, 'allowed'], [1, 9, 'risky'], [100, 109, 'risky'], [200, 209, 'risky']]);
  });

  it('hold no day that could still turn out as bad as today, and none where nothing is better', async () => {
    const open: Pick<Judged, 'verdict' | 'range'> = { verdict: 'risky', range: ['allowed', 'advise-against'] };
    expect(await windowsBy({ verdict: 'advise-against', settled: true }, () => open)).toEqual([]);
    expect(await windowsBy({ verdict: 'risky', settled: false }, () => plain('risky'))).toEqual([]);
    expect(await windowsBy({ verdict: 'allowed', settled: true }, () => plain('allowed'))).toEqual([]);
  });

  it('are not looked for where what no date changes is as bad as today', async () => {
    expect(await windowsBy({ verdict: 'risky', settled: true }, () => expect.fail('a day was asked'), 'risky')).toEqual([]);
    expect(await windowsBy({ verdict: 'advise-against', settled: true }, () => plain('risky'), 'risky')).toHaveLength(1);
  });

  it('reach fourteen months ahead and no farther', async () => {
    const [window] = await windowsBy({ verdict: 'risky', settled: true }, () => plain('allowed'));
    expect([dayOf(window!.from) - today, dayOf(window!.to) - today, window!.plusMinusDays]).toEqual([1, daysAhead, 12]);
  });
});
