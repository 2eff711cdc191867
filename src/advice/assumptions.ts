import type { Assessment } from '../contract/types.generated.js';
import { liftable } from '../engine/liftable.js';
import { sharpened } from '../engine/sharpen.js';
import type { Residual } from '../engine/specialise.js';
import { judgementOf } from '../engine/verdict.js';
import type { Asked } from '../facts/asked.js';
import type { Knowledge, Rule, Value } from '../knowledge/knowledge.js';
import { type Answer, answersTo } from './answers.js';
import type { Judge, Judged } from './judge.js';
import { canTell, lookedAt, reaching } from './relevant.js';

type Assumption = Assessment['assumed'][number];

/** An answer that the assumption itself would give is none. */
const isAssumed = (answer: Answer, value: Value | undefined): boolean =>
  answer.value === value || (typeof value === 'number' && answer.value === undefined && value >= (answer.atLeast ?? -Infinity) && value < (answer.below ?? Infinity));

const differs = (answer: Answer, judged: Judged): boolean => answer.verdict !== judged.verdict || answer.range.join() !== judged.range.join();

/** A region is a text, and only those that alerts name can change anything. */
const regionsOf = ({ alerts }: Knowledge): readonly string[] => [...new Set(alerts.flatMap(({ regions }) => regions))].sort();

/** Each fact that was assumed or estimated and on which the verdict turns, with what another value would bring. */
export const assumptionsOf = async (judged: Judged, judge: Judge, rules: readonly Residual<Rule>[], { knowledge, operation }: Asked): Promise<readonly Assumption[]> => {
  const { facts } = judged;
  const assumed: Assumption[] = [];
  for (const id of reaching(lookedAt(rules), facts)) {
    const word = knowledge.facts[id];
    const fact = facts.read(id);
    if (word === undefined || (word.assume === undefined && word.ask === undefined && fact.state !== 'estimated')) continue;
    if (fact.state !== 'assumed' && fact.state !== 'estimated') continue;
    const among = word.id === 'place.region' ? regionsOf(knowledge) : fact.state === 'estimated' && Array.isArray(fact.among) ? (fact.among as readonly Value[]) : undefined;
    if (!canTell(word, operation) || (word.type === 'text' && among === undefined) || (word.type === 'number' && word.tries === undefined)) continue;
    const answers = await answersTo(judge, word, among);
    const otherwise = answers.filter((answer) => differs(answer, judged) && !isAssumed(answer, fact.value));
    if (otherwise.length > 0) assumed.push({ fact: id as Assumption['fact'], value: (fact.value ?? null) as Assumption['value'], otherwise: otherwise as unknown as Assumption['otherwise'] });
  }
  /* A fact that is not known and stands only in a reason to lift a rule is taken not to lift it; without the rules that it could lift the verdict would be this. */
  const lifts = new Map<string, Set<(typeof judged.fired)[number]>>();
  for (const fired of judged.fired) {
    if (fired.fires !== 'certainly') continue;
    for (const id of await liftable(fired.residual, facts.read, knowledge.facts)) lifts.set(id, (lifts.get(id) ?? new Set()).add(fired));
  }
  for (const [id, lifted] of lifts) {
    const word = knowledge.facts[id];
    if (word === undefined || !canTell(word, operation)) continue;
    const rest = judged.fired.filter((each) => !lifted.has(each));
    const { verdict, range } = await sharpened(judgementOf(rest), rest, facts.read, knowledge.facts);
    if (range.join() === judged.range.join() || assumed.some((each) => each.fact === id)) continue;
    assumed.push({ fact: id as Assumption['fact'], value: null, otherwise: [{ verdict, range: [...range] }] as unknown as Assumption['otherwise'] });
  }
  return assumed.sort((a, b) => (a.fact < b.fact ? -1 : 1));
};
