import type { Entry } from './contenders.js';
import type { Ask, FiredOn, Rules } from './contender.js';
import type { Question } from './questions.js';
import { median, timed } from './timing.js';

/** What one way took, in microseconds an assessment, and in how many of its answers it differed from ours. */
export interface Stood {
  readonly id: Entry['id'];
  readonly name: string;
  readonly microseconds: number;
  readonly asked: number;
  readonly differing: number;
}

interface Ready extends Entry {
  readonly asks: readonly { readonly ask: Ask; readonly question: Question }[];
}

const readied = (entry: Entry, questions: readonly Question[]): Ready => {
  const readyFor = entry.contender();
  const made = new Map<Rules, Ask>();
  const asks = questions.filter((_, i) => i % entry.oneIn === 0).map((question) => {
    const ask = made.get(question.rules) ?? readyFor(question.rules);
    made.set(question.rules, ask);
    return { ask, question };
  });
  return { ...entry, asks };
};

const plainly = (fired: readonly FiredOn[]): string => JSON.stringify(fired.map(({ rule, fires, facts }) => [rule, fires, [...new Set(facts)].sort()].join()).sort());

/** The answers of each way in plain text, by question. */
const answersOf = async ({ asks }: Ready): Promise<ReadonlyMap<Question, string>> => {
  const answers = new Map<Question, string>();
  for (const { ask, question } of asks) answers.set(question, plainly(await ask(question.facts)));
  return answers;
};

const run = async ({ asks }: Ready): Promise<void> => {
  for (const { ask, question } of asks) {
    const fired = ask(question.facts);
    /* A promise costs some tenths of a microsecond: only those that give one pay for it. */
    if (fired instanceof Promise) await fired;
  }
};

/**
 * Each way is asked the same questions in turn, round after round; the median of its rounds counts. Before that their answers are compared with those of the first,
 * which fills its cells too.
 * @throws where one differs that need not
 */
export const warmBatch = async (entries: readonly Entry[], questions: readonly Question[], rounds: number): Promise<readonly Stood[]> => {
  const ways = entries.map((entry) => readied(entry, questions));
  const ours = await answersOf(ways[0]!);
  const differing = new Map<Ready, number>();
  for (const way of ways) {
    const wrong = [...(await answersOf(way))].filter(([question, answer]) => answer !== ours.get(question));
    if (wrong.length > 0 && way.unsound !== true) throw new Error(`${way.name}: ${wrong.length} answers differ, first ${wrong[0]![1]} instead of ${ours.get(wrong[0]![0])}`);
    differing.set(way, wrong.length);
  }
  const took = new Map(ways.map((way): [Ready, number[]] => [way, []]));
  for (let round = 0; round < rounds; round++) for (const way of ways) took.get(way)!.push((await timed(async () => await run(way)) * 1000) / way.asks.length);
  return ways.map((way) => ({ id: way.id, name: way.name, microseconds: median(took.get(way)!), asked: way.asks.length, differing: differing.get(way)! }));
};
