import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Assessment, Proposal } from '../../src/contract/types.generated.js';
import type { VerdictOnly } from '../../src/advisor.js';
import { severity } from '../../src/engine/verdict.js';
import type { Verdict } from '../../src/knowledge/knowledge.js';
import { dayOf, isoOf } from '../../src/season/day.js';
import { cases } from '../laws/cases.js';
import { plausibleProposal } from '../laws/plausibleProposal.js';
import { advisor, root, shipped, stations } from '../shipped.js';

/* Law 8: windows agree with asking day by day. */

const daysAhead = 425;

const known = readFileSync(`${root}tests/cases/cases.jsonl`, 'utf8').trim().split('\n').map((line) => JSON.parse(line) as { readonly id: string; readonly proposal: Proposal });
const dated = known.filter(({ proposal }) => proposal.date !== undefined);

/** The same question asked on another day by someone who wrote down what the tree showed on the first. */
const asked = (proposal: Proposal, day: number): Proposal => {
  const { phase, ...tree } = proposal.tree;
  const log = [...(tree.log ?? []), ...(phase === undefined ? [] : [{ date: proposal.date!, saw: phase }])];
  return { ...proposal, date: isoOf(day), tree: { ...tree, ...(log.length === 0 ? {} : { log }) } } as Proposal;
};

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
    faults.push(...wrongOn(day, await advisor.verdict(asked(proposal, day)), answer));
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
  }, 120_000);

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
  }, 120_000);

  it('are none where no day is told or the work is plainly allowed', async () => {
    for (const { proposal } of known.slice(0, 12)) {
      const { date: _, ...undated } = proposal;
      expect((await advisor.assess(undated)).windows).toEqual([]);
    }
    for (const { id, proposal } of dated) {
      const answer = await advisor.assess(proposal);
      if (answer.verdict === 'allowed' && answer.settled) expect(answer.windows, id).toEqual([]);
    }
  }, 120_000);
});

describe('windows of any proposal', () => {
  it('agree with asking anew on days picked at random and on the days beside their ends, also where a phase was told', async () => {
    const drawn = plausibleProposal(shipped, stations).filter((proposal) => proposal.date !== undefined);
    await fc.assert(
      fc.asyncProperty(drawn, fc.array(fc.integer({ min: 1, max: daysAhead }), { minLength: 4, maxLength: 4 }), async (proposal, ahead) => {
        expect(await faultsOf(proposal, (today) => ahead.map((days) => today + days))).toEqual([]);
      }),
      { numRuns: cases(100) },
    );
  }, 600_000);

  it('would not agree if they said another verdict: a window turned round is a fault', async () => {
    for (const { proposal } of dated) {
      const answer = await advisor.assess(proposal);
      const [first] = answer.windows;
      if (first === undefined) continue;
      const day = dayOf(first.from);
      const fresh = await advisor.verdict(asked(proposal, day));
      expect(wrongOn(day, fresh, answer)).toEqual([]);
      expect(wrongOn(day, fresh, { ...answer, windows: answer.windows.slice(1) })).toHaveLength(1);
      expect(wrongOn(day, fresh, { ...answer, windows: [{ ...first, verdict: first.verdict === 'allowed' ? 'risky' : 'allowed' }, ...answer.windows.slice(1)] })).toHaveLength(1);
      return;
    }
    expect.fail('no case has a window');
  });
});
