import type { Residual } from '../engine/specialise.js';
import type { Assessment } from '../contract/types.generated.js';
import type { Asked } from '../facts/asked.js';
import type { FactWord, Rule, Value } from '../knowledge/knowledge.js';
import { answersTo, settles } from './answers.js';
import type { Judge, Judged } from './judge.js';
import { message } from './message.js';
import { canTell, reaching } from './relevant.js';

type Question = Assessment['questions'][number];

const most = 5;

/** A day or a place has no short list of answers. */
const openEnded = (word: FactWord): boolean => word.given === 'where' || word.given === 'date';

/** Questions whose answers would settle the verdict, the one that settles most first; each missing input is asked for once, whatever hangs on it. */
export const questionsOf = async (judged: Judged, judge: Judge, { knowledge, operation }: Asked): Promise<readonly Question[]> => {
  const { facts, fired, range, settled } = judged;
  if (settled) return [];
  const open = fired.filter((each) => each.fires === 'possibly' || !each.firm).map((each) => each.residual as Residual<Rule>);
  const turning = new Set(open.flatMap((residual) => residual.table?.buckets.map((buckets) => buckets.fact) ?? []));
  const untold = [...reaching([...turning].filter((id) => ['unknown', 'estimated'].includes(facts.read(id).state)), facts)].filter((id) => {
    const state = facts.read(id).state;
    return knowledge.facts[id]?.ask !== undefined && canTell(knowledge.facts[id], operation) && (state === 'unknown' || state === 'estimated');
  });
  const asked: { readonly question: Question; readonly worth: number }[] = [];
  for (const id of untold) {
    const word = knowledge.facts[id]!;
    const among = facts.read(id).among;
    const answers = openEnded(word) ? [] : await answersTo(judge, word, Array.isArray(among) ? (among as readonly Value[]) : undefined);
    const worth = settles(answers, range);
    if (!openEnded(word) && worth === 0 && answers.every((answer) => answer.verdict === judged.verdict)) continue;
    asked.push({ question: { fact: id as Question['fact'], ask: message(knowledge, `ask.${word.ask!}`), answers: answers as unknown as Question['answers'] }, worth });
  }
  return asked.sort((a, b) => b.worth - a.worth || (a.question.fact < b.question.fact ? -1 : 1)).slice(0, most).map((each) => each.question);
};
