import type { Proposal } from '../contract/types.generated.js';
import { evaluate, type Fired } from '../engine/evaluate.js';
import type { Residual } from '../engine/specialise.js';
import { type Judgement, judgementOf } from '../engine/verdict.js';
import { type DerivedFacts, deriveFacts } from '../facts/deriveFacts.js';
import type { Asked } from '../facts/asked.js';
import type { Rule, Value } from '../knowledge/knowledge.js';
import type { Day } from '../season/day.js';
import type { Prepared } from './prepare.js';
import { lookedAt, reaching } from './relevant.js';

/** A proposal judged: its facts, the rules that fired and the verdict they come to. */
export interface Judged extends Judgement {
  readonly facts: DerivedFacts;
  readonly fired: readonly Fired<Rule>[];
}

/** Judges a prepared proposal: with facts that are tried out in the place of those it has, or on another day. */
export interface Judge extends TryOut {
  readonly on: (day: Day) => Promise<Judged>;
}

/** Judges with some facts tried out in the place of those it has. */
export type TryOut = (tried?: ReadonlyMap<string, Value>) => Promise<Judged>;

/** Facts that a date alone can change; whatever is worked out of them changes with it. */
const dated = (id: string): boolean => id.startsWith('season.') || id.startsWith('history.') || id.startsWith('sitting.') || id === 'disease.inSeason';

/** The answer as it stands, and which facts turn on which: another day or another value is then judged by what it changes alone. */
interface Standing {
  readonly facts: DerivedFacts;
  readonly fired: ReadonlyMap<Residual<Rule>, Fired<Rule>>;
  /** For each fact, all that were worked out of it, itself among them. */
  readonly outOf: ReadonlyMap<string, ReadonlySet<string>>;
}

export const judgeOf = (prepared: Prepared, rules: readonly Residual<Rule>[], ignore: Proposal['ignore']): Judge => {
  const asked = ignore === undefined ? rules : rules.filter((residual) => !ignore.includes(residual.rule.id));
  const judged = (fired: readonly Fired<Rule>[], facts: DerivedFacts): Judged => ({ ...judgementOf(fired), facts, fired });

  const stand = async (): Promise<Standing> => {
    const facts = deriveFacts(prepared.asked);
    const fired = new Map((await evaluate(asked, facts.read)).map((each) => [each.residual, each]));
    const outOf = new Map<string, Set<string>>();
    for (const id of reaching(lookedAt(asked), facts)) {
      for (const input of reaching([id], facts)) {
        const out = outOf.get(input) ?? new Set();
        outOf.set(input, out.add(id));
      }
    }
    return { facts, fired, outOf };
  };
  let standing: Promise<Standing> | undefined;
  const split = new Map<string, { readonly changed: ReadonlySet<string>; readonly moving: readonly Residual<Rule>[]; readonly still: readonly Fired<Rule>[] }>();
  /* Rules that look at nothing that changes keep the answer they gave. */
  const changing = async (key: string, changes: (id: string) => boolean, elsewise: Asked): Promise<Judged> => {
    standing ??= stand();
    const { facts: base, fired, outOf } = await standing;
    let parts = split.get(key);
    if (parts === undefined) {
      const changed = new Set([...outOf].flatMap(([id, out]) => (changes(id) ? [...out] : [])));
      const moves = (residual: Residual<Rule>): boolean => residual.table?.buckets.some((buckets) => changed.has(buckets.fact)) === true;
      parts = { changed, moving: asked.filter(moves), still: asked.filter((residual) => !moves(residual)).flatMap((residual) => fired.get(residual) ?? []) };
      split.set(key, parts);
    }
    const facts = deriveFacts(elsewise, { facts: base, changed: parts.changed });
    return judged([...parts.still, ...(await evaluate(parts.moving, facts.read))], facts);
  };

  const judge = async (tried?: ReadonlyMap<string, Value>): Promise<Judged> => {
    if (tried !== undefined) return await changing([...tried.keys()].join(), (id) => tried.has(id), { ...prepared.asked, tried });
    standing ??= stand();
    const { facts, fired } = await standing;
    return judged([...fired.values()], facts);
  };
  return Object.assign(judge, { on: async (day: Day) => await changing('day', dated, prepared.on(day)) });
};
