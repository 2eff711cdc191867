import type { Assessment, Message } from '../contract/types.generated.js';
import { severity } from '../engine/verdict.js';
import { SparebudError, type Issue } from '../knowledge/error.js';
import type { Knowledge, Verdict } from '../knowledge/knowledge.js';
import { mergePatch } from './mergePatch.js';
import { message } from './message.js';

/** One way to do it, beside the way that was asked first. */
export interface Variant {
  readonly label: string;
  readonly patch: Readonly<Record<string, unknown>>;
  readonly verdict?: Verdict;
  readonly range?: readonly [Verdict, Verdict];
  readonly settled?: boolean;
  readonly expect?: Assessment['expect'];
  /** Rules that this way brings up, and those that it is rid of. */
  readonly findingsAdded: readonly string[];
  readonly findingsGone: readonly string[];
  /** Why it could not be answered. */
  readonly issues?: readonly Issue[];
}

export interface Comparison {
  readonly schema: 'compare/1';
  /** The first is the proposal as it stands. */
  readonly variants: readonly Variant[];
  /** Labels of the variants that none other beats; several where they tie. */
  readonly best: readonly string[];
  /** What sets the best apart from the next, or that nothing does. */
  readonly why: Message;
}

const labelOf = (patch: Readonly<Record<string, unknown>>, leftOut: string, under = ''): string =>
  Object.entries(patch).map(([key, value]) => (typeof value === 'object' && value !== null && !Array.isArray(value) ? labelOf(value as Readonly<Record<string, unknown>>, leftOut, `${under}${key}.`) : `${under}${key}=${value === null ? leftOut : String(value)}`)).join(' ');

/** What is compared, the weightiest first. */
const grounds = ['verdict', 'worst', 'best', 'findings'] as const;

/** Better: the milder verdict, then the milder worst end, then the milder best end, then the fewer findings. */
const rank = ({ verdict, range }: Pick<Assessment, 'verdict' | 'range'>, findings: number): readonly number[] => [severity(verdict), severity(range[1]!), severity(range[0]!), findings];

const before = (a: readonly number[], b: readonly number[]): number => {
  for (let i = 0; i < a.length; i++) if (a[i] !== b[i]) return a[i]! - b[i]!;
  return 0;
};

/** The first ground on which the best differ from the best of the others. */
const whyOf = (best: readonly number[], others: readonly (readonly number[])[], knowledge: Knowledge): Message => {
  const next = [...others].sort(before)[0];
  const ground = next === undefined ? undefined : grounds[best.findIndex((each, i) => each !== next[i])];
  return message(knowledge, `compare.${ground ?? 'tied'}`);
};

/** Variants of a proposal side by side: each a JSON Merge Patch of it. One that cannot be understood says why, and the rest goes on. */
export const compareWith = async (assess: (proposal: unknown) => Promise<Assessment>, knowledge: Knowledge, proposal: unknown, patches: readonly Readonly<Record<string, unknown>>[]): Promise<Comparison> => {
  const base = await assess(proposal);
  const rulesOf = (assessment: Assessment): readonly string[] => assessment.findings.map((finding) => finding.rule);
  const ranked: { readonly label: string; readonly rank: readonly number[] }[] = [];
  const shown = (label: string, patch: Readonly<Record<string, unknown>>, assessment: Assessment): Variant => {
    const [had, has] = [rulesOf(base), rulesOf(assessment)];
    ranked.push({ label, rank: rank(assessment, has.length) });
    return {
      label, patch, verdict: assessment.verdict, range: assessment.range as unknown as readonly [Verdict, Verdict], settled: assessment.settled, expect: assessment.expect,
      findingsAdded: has.filter((rule) => !had.includes(rule)), findingsGone: had.filter((rule) => !has.includes(rule)),
    };
  };
  const asAsked = message(knowledge, 'compare.as-asked').text;
  const leftOut = message(knowledge, 'compare.left-out').text;
  const variants: Variant[] = [shown(asAsked, {}, base)];
  for (const patch of patches) {
    const label = labelOf(patch, leftOut) || asAsked;
    try {
      variants.push(shown(label, patch, await assess(mergePatch(proposal, patch))));
    } catch (cause) {
      if (!(cause instanceof SparebudError)) throw cause;
      variants.push({ label, patch, findingsAdded: [], findingsGone: [], issues: cause.issues });
    }
  }
  const least = [...ranked].sort((a, b) => before(a.rank, b.rank))[0]!;
  const isBest = ({ rank }: { readonly rank: readonly number[] }): boolean => before(rank, least.rank) === 0;
  return { schema: 'compare/1', variants, best: ranked.filter(isBest).map((each) => each.label), why: whyOf(least.rank, ranked.filter((each) => !isBest(each)).map((each) => each.rank), knowledge) };
};
