import type { FactWord, Rule, WrittenCondition } from '../../knowledge/knowledge.js';

/** A rule with one thing in it put wrong. */
export interface Mutant {
  readonly kind: 'threshold' | 'comparison' | 'condition' | 'exception' | 'verdict';
  /** Where and what, for a person to read. */
  readonly what: string;
  readonly rule: Rule;
}

/** A piece of a rule with one thing in it put wrong. */
interface Change<Piece> {
  readonly kind: Mutant['kind'];
  readonly what: string;
  readonly piece: Piece;
}

type Facts = Readonly<Record<string, FactWord>>;
type Members = Readonly<Record<string, unknown>>;

/** The other way round, and with its edge on the other side. */
const others: Readonly<Record<string, readonly string[]>> = {
  above: ['atLeast', 'below'],
  atLeast: ['above', 'atMost'],
  below: ['atMost', 'above'],
  atMost: ['below', 'atLeast'],
};

const rounded = (value: number): number => Math.round(value * 1e6) / 1e6;

/** The smallest difference that a person would write: one, or a hundredth where a share or a ratio is meant. */
export const stepOf = (word: FactWord | undefined): number => (word?.whole !== true && word?.bounds !== undefined && word.bounds[1] - word.bounds[0] <= 2 ? 0.01 : 1);

const movedLimit = (limit: unknown, by: number): unknown => {
  if (typeof limit === 'number') return rounded(limit + by);
  const { plus = 0, ...rest } = limit as { readonly plus?: number };
  return { ...rest, plus: rounded(plus + by) };
};

const text = (value: unknown): string => (typeof value === 'string' ? value : JSON.stringify(value).replace(/"/g, ''));

const operandChanges = (fact: string, operand: unknown, facts: Facts): readonly Change<unknown>[] => {
  const step = stepOf(facts[fact]);
  const denied = (what: string): Change<unknown> => ({ kind: 'comparison', what, piece: { not: operand } });
  if (typeof operand === 'boolean') return [{ kind: 'comparison', what: `${fact}: ${String(operand)} turned round`, piece: !operand }];
  if (typeof operand === 'number') return [-step, step].map((by) => ({ kind: 'threshold', what: `${fact}: ${operand} moved to ${movedLimit(operand, by) as number}`, piece: movedLimit(operand, by) }));
  if (typeof operand === 'string' || Array.isArray(operand)) return [denied(`${fact}: ${text(operand)} turned into not ${text(operand)}`)];
  return Object.entries(operand as Members).flatMap(([key, limit]): readonly Change<unknown>[] => {
    const put = (kind: Mutant['kind'], what: string, name: string, value: unknown): Change<unknown> => ({
      kind,
      what: `${fact}: ${key} ${text(limit)} ${what}`,
      piece: Object.fromEntries(Object.entries(operand as Members).map(([other, kept]) => (other === key ? [name, value] : [other, kept]))),
    });
    if (key === 'not') return [{ kind: 'comparison', what: `${fact}: not ${text(limit)} turned into ${text(limit)}`, piece: typeof limit === 'object' && limit !== null && !Array.isArray(limit) ? { ...limit } : limit }];
    if (key === 'has' || key === 'in') return [denied(`${fact}: ${key} ${text(limit)} turned into not`)];
    if (key === 'between') {
      const [least, most] = limit as readonly [number, number];
      return [-step, step].flatMap((by) => [put('threshold', `least moved by ${by}`, key, [rounded(least + by), most]), put('threshold', `most moved by ${by}`, key, [least, rounded(most + by)])]);
    }
    return [
      ...[-step, step].map((by) => put('threshold', `moved by ${by}`, key, movedLimit(limit, by))),
      ...(others[key] ?? []).map((other) => put('comparison', `turned into ${other}`, other, limit)),
    ];
  });
};

const conditionChanges = (condition: WrittenCondition, facts: Facts): readonly Change<WrittenCondition>[] => {
  const [key, operand] = Object.entries(condition)[0]!;
  if (key === 'any' || key === 'all') return listChanges(operand as readonly WrittenCondition[], facts).map((change) => ({ ...change, piece: { [key]: change.piece } }));
  return operandChanges(key, operand, facts).map((change) => ({ ...change, piece: { [key]: change.piece } }));
};

const listChanges = (list: readonly WrittenCondition[], facts: Facts): readonly Change<readonly WrittenCondition[]>[] =>
  list.flatMap((condition, i) => [
    { kind: 'condition' as const, what: `${text(condition)} dropped`, piece: list.filter((_, j) => j !== i) },
    ...conditionChanges(condition, facts).map((change) => ({ ...change, piece: list.map((other, j) => (j === i ? change.piece : other)) })),
  ]);

/** What a lone condition leaves when it is dropped is nothing: an exception without conditions would always lift. */
const exceptionChanges = (rule: Rule, facts: Facts): readonly Change<Rule['unless']>[] =>
  rule.unless.flatMap((reason, i) => [
    { kind: 'exception' as const, what: `exception ${i + 1} dropped`, piece: rule.unless.filter((_, j) => j !== i) },
    ...listChanges(reason.when, facts)
      .filter(({ piece }) => piece.length > 0)
      .map((change) => ({ kind: change.kind, what: `exception ${i + 1}: ${change.what}`, piece: rule.unless.map((other, j) => (j === i ? { ...other, when: change.piece } : other)) })),
  ]);

/** A rule put wrong in every small way that a slip of the pen could: each threshold moved a step, each comparison turned, each condition and exception dropped, the verdict changed. */
export const mutantsOf = (rule: Rule, facts: Facts): readonly Mutant[] => {
  const other = rule.verdict === 'risky' ? 'advise-against' : 'risky';
  return [
    ...listChanges(rule.when, facts).map(({ kind, what, piece }): Mutant => ({ kind, what, rule: { ...rule, when: piece } })),
    ...exceptionChanges(rule, facts).map(({ kind, what, piece }): Mutant => ({ kind, what, rule: { ...rule, unless: piece } })),
    { kind: 'verdict', what: `verdict turned into ${other}`, rule: { ...rule, verdict: other } },
  ];
};
