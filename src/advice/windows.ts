import type { Assessment } from '../contract/types.generated.js';
import { severity } from '../engine/verdict.js';
import type { Verdict } from '../knowledge/knowledge.js';
import { type Day, isoOf } from '../season/day.js';
import type { Judge, Judged } from './judge.js';
import type { Prepared } from './prepare.js';

type Window = Assessment['windows'][number];

/** How far ahead is looked: fourteen months. */
const daysAhead = 425;

/** No more stretches than a person will read. */
const most = 4;

/** Runs of days on end with the same verdict. */
const runs = (verdicts: readonly Verdict[], from: Day): readonly { readonly verdict: Verdict; readonly from: Day; readonly to: Day }[] => {
  const found: { verdict: Verdict; from: Day; to: Day }[] = [];
  verdicts.forEach((verdict, i) => {
    const last = found.at(-1);
    if (last?.verdict === verdict) last.to = from + i;
    else found.push({ verdict, from: from + i, to: from + i });
  });
  return found;
};

/**
 * The next stretches of days on which the same work would be judged better, the best first, then the soonest: what asking day by day gives.
 * A day that could still turn out as bad as today, for something unknown or only estimated, is not better.
 */
export const windowsOf = async (judged: Judged, judge: Judge, prepared: Prepared): Promise<readonly Window[]> => {
  const { day, proposal, climate } = prepared.asked;
  if (day === undefined || (judged.verdict === 'allowed' && judged.settled)) return [];
  if (severity(await judge.atBest()) >= severity(judged.verdict)) return [];
  const first = day + 1;
  const outcomes = await judge.verdictsOn(Array.from({ length: daysAhead }, (_, ahead) => first + ahead));
  const verdicts = outcomes.map(({ verdict, range }) => (severity(range[1]) < severity(judged.verdict) ? verdict : judged.verdict));
  const better = runs(verdicts, first).filter((run) => severity(run.verdict) < severity(judged.verdict));
  const standing = proposal.tree.standing ?? 'outdoors';
  return better
    .sort((a, b) => severity(a.verdict) - severity(b.verdict) || a.from - b.from)
    .slice(0, most)
    .map(({ verdict, from, to }) => {
      const [season, early] = [2, 4].map((part) => prepared.on(Math.floor(from + (to - from) / part)).season(undefined, standing));
      /* A phase that begins only towards the middle would not name the stretch. */
      const phase = early?.phase === season?.phase ? season?.phase : undefined;
      return { from: isoOf(from), to: isoOf(to), plusMinusDays: season?.plusMinusDays ?? climate.plusMinusDays, ...(phase === undefined ? {} : { phase }), verdict };
    });
};
