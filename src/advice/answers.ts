import { severity } from '../engine/verdict.js';
import type { FactWord, Value, Verdict } from '../knowledge/knowledge.js';
import type { TryOut } from './judge.js';

/** What the verdict would be for one value of a fact, or for numbers from one bound to another. */
export interface Answer {
  readonly value?: Value;
  readonly atLeast?: number;
  readonly below?: number;
  readonly verdict: Verdict;
  readonly range: readonly [Verdict, Verdict];
}

/** The grid on which the edge between two verdicts is looked for. */
const grid: Readonly<Record<string, number>> = { share: 0.01, mm: 0.5, '°C': 0.5, days: 1, weeks: 1, years: 1 };

const same = (a: Answer, b: Answer): boolean => a.verdict === b.verdict && a.range[0] === b.range[0] && a.range[1] === b.range[1];

const at = async (judge: TryOut, fact: string, value: Value): Promise<Answer> => {
  const { verdict, range } = await judge(new Map([[fact, value]]));
  return { value, verdict, range };
};

/** Numbers are tried at the values that the fact names; between two that differ the edge is halved down to the grid. */
const numberAnswers = async (judge: TryOut, word: FactWord): Promise<readonly Answer[]> => {
  const step = word.whole === true ? 1 : (grid[word.unit ?? ''] ?? 0.01);
  const tried = await Promise.all((word.tries ?? []).map(async (value) => await at(judge, word.id, value)));
  const parts: Answer[] = [];
  for (const [i, answer] of tried.entries()) {
    const before = tried[i - 1];
    if (before !== undefined && same(before, answer)) continue;
    let edge: number | undefined;
    if (before !== undefined) {
      let [low, high] = [before.value as number, answer.value as number];
      while (high - low > step * 1.5) {
        const middle = Math.round((low + high) / 2 / step) * step;
        if (middle <= low || middle >= high) break;
        if (same(await at(judge, word.id, middle), before)) low = middle;
        else high = middle;
      }
      edge = Math.round(high * 1000) / 1000;
      parts[parts.length - 1] = { ...parts.at(-1)!, below: edge };
    }
    const { verdict, range } = answer;
    parts.push(edge === undefined ? { verdict, range } : { atLeast: edge, verdict, range });
  }
  return parts;
};

/** The verdict that each answer to a question would bring. */
export const answersTo = async (judge: TryOut, word: FactWord, among: readonly Value[] | undefined): Promise<readonly Answer[]> => {
  if (word.type === 'number') return await numberAnswers(judge, word);
  const values = among ?? (word.type === 'boolean' ? [true, false] : (word.values ?? []));
  return await Promise.all(values.map(async (value) => await at(judge, word.id, value)));
};

/** How much of the range an answer settles, on the whole: none of it 0, all of it in every answer 1. */
export const settles = (answers: readonly Answer[], range: readonly [Verdict, Verdict]): number => {
  const width = ([best, worst]: readonly [Verdict, Verdict]): number => severity(worst) - severity(best);
  const open = width(range);
  if (open === 0 || answers.length === 0) return 0;
  return answers.reduce((sum, answer) => sum + (open - width(answer.range)) / open, 0) / answers.length;
};

