import type { Verdict } from '../../knowledge/knowledge.js';
import { severity } from '../../engine/verdict.js';
import type { Limits } from '../../structure/keepers/sittings.js';
import type { Ready } from '../ready.js';

/** Just beyond a limit, and just short of one that counts already where it is met. */
const hair = 1e-6;

/** The most of a fact up to which no rule that looks at it says this or worse; undefined where none ever does. Each limit of these rules is tried on the tree. */
const borne = async ({ residuals, judge }: Ready, fact: string, verdict: Verdict): Promise<number | undefined> => {
  const looking = residuals.rules.filter(({ rule, table }) => severity(rule.verdict) >= severity(verdict) && table?.buckets.some((buckets) => buckets.fact === fact) === true);
  const asked = new Set(looking.map(({ rule }) => rule.id));
  const limits = new Set(looking.flatMap(({ table }) => table!.buckets.filter((buckets) => buckets.fact === fact).flatMap(({ stands }) => stands as readonly number[])));
  const fires = async (value: number): Promise<boolean> => (await judge(new Map([[fact, value]]))).fired.some(({ residual, fires: how }) => how === 'certainly' && asked.has(residual.rule.id));
  for (const limit of [...limits].filter((each) => each >= 0).sort((a, b) => a - b)) {
    if (await fires(limit)) return Math.max(0, limit - hair);
    if (await fires(limit + hair)) return limit;
  }
  return undefined;
};

/** What the rules bear of this tree on its day: what one sitting may take without a word against it, and what all may wound without being advised against. */
export const ruleLimits = async (asked: Ready): Promise<Limits> => {
  const told = {
    foliageShare: await borne(asked, 'sitting.foliageShare', 'risky'),
    sectionShare: await borne(asked, 'sitting.cutAreaShare', 'risky'),
    girthShare: await borne(asked, 'wound.girthShare', 'risky'),
    girthShareInAll: await borne(asked, 'wound.girthShare', 'advise-against'),
  };
  return Object.fromEntries(Object.entries(told).filter(([, limit]) => limit !== undefined));
};
