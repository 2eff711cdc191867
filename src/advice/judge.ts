import type { Proposal } from '../contract/types.generated.js';
import { type Cuts, cutKey, cutsOf } from '../engine/cells.js';
import { evaluate, evaluateEach, type Fired } from '../engine/evaluate.js';
import type { Residual } from '../engine/specialise.js';
import { sharpened } from '../engine/sharpen.js';
import { type Judgement, judgementOf } from '../engine/verdict.js';
import { deriveFacts } from '../facts/deriveFacts.js';
import type { Asked, DerivedFacts, Read } from '../facts/asked.js';
import { toldBySeason } from '../facts/season.js';
import type { Rule, Value, Verdict } from '../knowledge/knowledge.js';
import type { Day } from '../season/day.js';
import type { Prepared } from './prepare.js';
import { lookedAt, reaching } from './relevant.js';

/** A verdict and the rules that fired. */
export interface Outcome extends Judgement {
  readonly fired: readonly Fired<Rule>[];
}

/** A proposal judged: its facts, the rules that fired and the verdict they come to. */
export interface Judged extends Outcome {
  readonly facts: DerivedFacts;
}

/** Judges a prepared proposal: with facts that are tried out in the place of those it has, or on another day. */
export interface Judge extends TryOut {
  readonly on: (day: Day) => Promise<Judged>;
  /** Other days without their facts: days on which they fall into the same classes share the outcome, so that a year of them is cheap. */
  readonly verdictsOn: (days: readonly Day[]) => Promise<readonly Outcome[]>;
  readonly verdictOn: (day: Day) => Promise<Outcome>;
  /** What no other day betters: the verdict of the rules that no date can change. */
  readonly atBest: () => Promise<Verdict>;
}

/** Judges with some facts tried out in the place of those it has. */
export type TryOut = (tried?: ReadonlyMap<string, Value>) => Promise<Judged>;

/** Facts that a date alone can change, whatever was done before; what is worked out of them changes with it. */
const ofSeason = (id: string): boolean => id.startsWith('season.') || id === 'asked.date';

/** Facts that count the days since earlier work, or what was done on the same day. */
const ofPast = (id: string): boolean => id.startsWith('history.') || id.startsWith('sitting.');

/** Facts of a told structure that count what the log says of the same day. */
const countsSitting = (id: string): boolean => id.startsWith('structure.') || id === 'wound.girthShare';

/** Facts that another date can change, of the tree that is asked about. */
const datedIn = ({ built, past }: Asked): ((id: string) => boolean) =>
  (id) => ofSeason(id) || (past !== undefined && (ofPast(id) || (built !== undefined && countsSitting(id))));

/** The answer as it stands. */
interface Standing {
  readonly facts: DerivedFacts;
  readonly fired: ReadonlyMap<Residual<Rule>, Fired<Rule>>;
}

/** Which facts something changes, the rules that look at them, and the answers of those that do not. */
interface Split {
  readonly facts: DerivedFacts;
  readonly changed: ReadonlySet<string>;
  readonly moving: readonly Residual<Rule>[];
  readonly still: readonly Fired<Rule>[];
}

export const judgeOf = (prepared: Prepared, rules: readonly Residual<Rule>[], ignore: Proposal['ignore']): Judge => {
  const asked = ignore === undefined ? rules : rules.filter((residual) => !ignore.includes(residual.rule.id));
  const words = prepared.asked.knowledge.facts;
  const outcomeOf = async (fired: readonly Fired<Rule>[], read: Read): Promise<Outcome> => ({ ...(await sharpened(judgementOf(fired), fired, read, words)), fired });
  const judged = async (fired: readonly Fired<Rule>[], facts: DerivedFacts): Promise<Judged> => ({ ...(await outcomeOf(fired, facts.read)), facts });

  const stand = async (): Promise<Standing> => {
    const facts = deriveFacts(prepared.asked);
    const fired = new Map((await evaluate(asked, facts.read)).map((each) => [each.residual, each]));
    return { facts, fired };
  };
  /** For each fact, all that were worked out of it, itself among them: another day or another value is judged by what it changes alone. */
  const outOfEach = (facts: DerivedFacts): ReadonlyMap<string, ReadonlySet<string>> => {
    const outOf = new Map<string, Set<string>>();
    for (const id of reaching(lookedAt(asked), facts)) {
      for (const input of reaching([id], facts)) {
        const out = outOf.get(input) ?? new Set();
        outOf.set(input, out.add(id));
      }
    }
    return outOf;
  };
  let standing: Promise<Standing> | undefined;
  let outOf: ReadonlyMap<string, ReadonlySet<string>> | undefined;
  const split = new Map<string, Split>();
  const days = new Map<string, Outcome>();
  let cuts: readonly Cuts[] | undefined;
  /* Rules that look at nothing that changes keep the answer they gave. */
  const splitBy = async (key: string, changes: (id: string) => boolean): Promise<Split> => {
    standing ??= stand();
    const { facts, fired } = await standing;
    let parts = split.get(key);
    if (parts === undefined) {
      outOf ??= outOfEach(facts);
      const changed = new Set([...outOf].flatMap(([id, out]) => (changes(id) ? [...out] : [])));
      const moves = (residual: Residual<Rule>): boolean => residual.table?.buckets.some((buckets) => changed.has(buckets.fact)) === true;
      parts = { facts, changed, moving: asked.filter(moves), still: asked.filter((residual) => !moves(residual)).flatMap((residual) => fired.get(residual) ?? []) };
      split.set(key, parts);
    }
    return parts;
  };
  const changing = async ({ facts: base, changed, moving, still }: Split, elsewise: Asked): Promise<Judged> => {
    const facts = deriveFacts(elsewise, { facts: base, changed });
    return await judged([...still, ...(await evaluate(moving, facts.read))], facts);
  };

  const judge = async (tried?: ReadonlyMap<string, Value>): Promise<Judged> => {
    if (tried !== undefined) return await changing(await splitBy([...tried.keys()].join(), (id) => tried.has(id)), { ...prepared.asked, tried });
    standing ??= stand();
    const { facts, fired } = await standing;
    return await judged([...fired.values()], facts);
  };
  const byDay = datedIn(prepared.asked);
  const verdictsOn = async (on: readonly Day[]): Promise<readonly Outcome[]> => {
    const { facts: base, changed, moving, still } = await splitBy('day', byDay);
    cuts ??= cutsOf(moving.map(({ table }) => table!), words, changed);
    const before = { facts: base, changed };
    const standing = base.read('tree.standing').value as string;
    const fresh = new Map<string, Read>();
    const keys = on.map((day) => {
      let facts: DerivedFacts | undefined;
      const read: Read = (id) => (facts ??= deriveFacts(prepared.on(day), before)).read(id);
      const season = day === prepared.asked.day ? undefined : prepared.seasonOn(day, standing);
      const key = cutKey(cuts!, season === undefined ? read : (id) => toldBySeason[id]?.(season, prepared.asked) ?? read(id));
      if (!days.has(key) && !fresh.has(key)) fresh.set(key, read);
      return key;
    });
    if (fresh.size > 0) {
      const reads = [...fresh];
      const fired = await evaluateEach(moving, reads.map(([, read]) => read));
      for (const [i, [key, read]] of reads.entries()) days.set(key, await outcomeOf([...still, ...fired[i]!], read));
    }
    return keys.map((key) => days.get(key)!);
  };
  const atBest = async (): Promise<Verdict> => judgementOf((await splitBy('day', byDay)).still).range[0];
  return Object.assign(judge, { on: async (day: Day) => await changing(await splitBy('day', byDay), prepared.on(day)), verdictsOn, verdictOn: async (day: Day) => (await verdictsOn([day]))[0]!, atBest });
};
