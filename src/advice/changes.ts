import type { Assessment, Proposal } from '../contract/types.generated.js';
import { severity } from '../engine/verdict.js';
import type { Asked } from '../facts/asked.js';
import type { FactWord, Value, Verdict } from '../knowledge/knowledge.js';
import type { JudgeOther } from './alternatives.js';
import { answersTo } from './answers.js';
import type { Judge, Judged, TryOut } from './judge.js';
import { message } from './message.js';
import { canTell, lookedAt, reaching } from './relevant.js';
import { setText } from './setText.js';

type Change = Assessment['changes'][number];

/** A value of one parameter that the work could be done with, and how much that asks for. */
interface Step {
  readonly name: string;
  readonly value: Value;
  readonly asks: number;
}

const most = 4;

/** How many single steps are tried with a second one. */
const firstSteps = 4;

/** How far a value is from what was meant: shares and counts by how much of it, words by one. */
const asksFor = (word: FactWord, meant: Value | undefined, value: Value): number => {
  if (typeof value !== 'number' || typeof meant !== 'number') return 1;
  const span = word.unit === 'share' ? 1 : Math.max(Math.abs(meant), 1);
  return Math.abs(value - meant) / span;
};

const stepsOf = async (judge: TryOut, word: FactWord, meant: Value | undefined): Promise<readonly (Step & { readonly verdict: Verdict; readonly range: readonly [Verdict, Verdict] })[]> => {
  const name = word.given!.slice('operation.'.length);
  const answers = await answersTo(judge, word, undefined);
  return answers.flatMap(({ value, atLeast, below, verdict, range }) => {
    if (value !== undefined) return value === meant ? [] : [{ name, value, asks: asksFor(word, meant, value), verdict, range }];
    /* Of a stretch of numbers the one nearest to what was meant. */
    const inside = below === undefined ? undefined : Math.round((below - (word.whole === true ? 1 : 0.01)) * 1000) / 1000;
    const [low, high] = [atLeast ?? Math.min(word.tries![0]!, inside ?? Infinity), inside ?? Math.max(word.tries!.at(-1)!, atLeast ?? -Infinity)];
    const near = typeof meant === 'number' ? Math.min(high, Math.max(low, meant)) : low;
    return near === meant ? [] : [{ name, value: near, asks: asksFor(word, meant, near), verdict, range }];
  });
};

/** A phase that was seen today is a sighting of today on any other day. */
const seenToday = ({ tree, date }: Proposal): Readonly<Record<string, unknown>> =>
  tree.phase === undefined || date === undefined ? {} : { tree: { phase: null, log: [...(tree.log ?? []), { saw: tree.phase, date }] } };

/**
 * The smallest changes to the work itself that would be judged better: one parameter, or two together, or another day; never the species, its age or its health.
 * Each is a JSON Merge Patch (RFC 7396) with the verdict that asking again with it gives.
 */
export const changesOf = async (judged: Judged, judge: Judge, asked: Asked, windows: Assessment['windows'], judgeOther: JudgeOther): Promise<readonly Change[]> => {
  if (judged.verdict === 'allowed') return [];
  const { knowledge, operation, proposal } = asked;
  const meant = proposal.operation as unknown as Readonly<Record<string, Value>>;
  const turning = reaching(judged.fired.flatMap(({ residual }) => [...lookedAt([residual])]), judged.facts);
  const words = Object.values(knowledge.facts).filter((word) => word.chosen === true && canTell(word, operation) && turning.has(word.id)).sort((a, b) => (a.id < b.id ? -1 : 1));
  const value = (word: FactWord): Value | undefined => meant[word.given!.slice('operation.'.length)] ?? judged.facts.read(word.id).value;
  const steps = (await Promise.all(words.map(async (word) => await stepsOf(judge, word, value(word))))).flat();
  const better = (range: readonly [Verdict, Verdict]): boolean => severity(range[1]) < severity(judged.verdict);
  const found: { readonly change: Change; readonly asks: number; readonly chosen: readonly Step[] }[] = [];
  /* Two steps are worth offering only where they do better than each of them alone. */
  const tryOut = async (chosen: readonly Step[]): Promise<void> => {
    const set = Object.fromEntries(chosen.map(({ name, value }) => [name, value]));
    const again = await judgeOther({ ...proposal.operation, ...set } as Proposal['operation']);
    if (again === undefined || !better(again.range)) return;
    const alone = found.filter((each) => each.chosen.length < chosen.length && each.chosen.every((step) => chosen.includes(step)));
    if (alone.some(({ change }) => severity(change.verdict) <= severity(again.verdict))) return;
    found.push({ chosen, change: { patch: { operation: set }, why: message(knowledge, 'change.set', { with: setText(set, knowledge) }), verdict: again.verdict }, asks: chosen.length + chosen.reduce((sum, step) => sum + step.asks, 0) });
  };
  for (const step of steps.filter(({ range }) => better(range)).sort((a, b) => a.asks - b.asks)) await tryOut([step]);
  if (!found.some(({ change }) => change.verdict === 'allowed')) {
    const firsts = steps.filter(({ range }) => better(range)).sort((a, b) => severity(a.verdict) - severity(b.verdict) || a.asks - b.asks).slice(0, firstSteps);
    for (const first of firsts) {
      const taken = words.find((word) => word.given === `operation.${first.name}`)!;
      const then: TryOut = async (tried = new Map()) => await judge(new Map([[taken.id, first.value], ...tried]));
      for (const word of words) {
        if (word === taken) continue;
        for (const second of (await stepsOf(then, word, value(word))).filter(({ verdict }) => severity(verdict) < severity(first.verdict)).sort((a, b) => a.asks - b.asks).slice(0, 1)) await tryOut([first, second]);
      }
    }
  }
  const window = windows[0];
  if (window !== undefined) found.push({ change: { patch: { date: window.from, ...seenToday(proposal) }, why: message(knowledge, 'change.date', { date: window.from }), verdict: window.verdict }, asks: 1.5, chosen: [] });
  return found.sort((a, b) => severity(a.change.verdict) - severity(b.change.verdict) || a.asks - b.asks || (JSON.stringify(a.change.patch) < JSON.stringify(b.change.patch) ? -1 : 1)).slice(0, most).map(({ change }) => change);
};
