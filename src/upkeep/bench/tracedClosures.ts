import { type Condition, type Operator, type Test, testsOf } from '../../engine/condition.js';
import type { Table } from '../../engine/cells.js';
import type { Value } from '../../knowledge/knowledge.js';
import type { Contender, FiredOn, MayBe } from './contender.js';
import { standsOn } from './standsOn.js';

type Mode = 'certainly' | 'possibly';
type Holds = (value: Value) => boolean;
/** Whether a condition holds; what each test that was looked at said is kept under its place in file order. */
type Traced = (mayBe: MayBe, trace: boolean[]) => boolean;

const compared = (operator: Operator, limit: Value): Holds => {
  switch (operator) {
    case 'equal': return (value) => value === limit;
    case 'notEqual': return (value) => value !== limit;
    case 'in': return (value) => (limit as readonly Value[]).includes(value);
    case 'notIn': return (value) => !(limit as readonly Value[]).includes(value);
    case 'greaterThan': return (value) => value > limit;
    case 'greaterThanInclusive': return (value) => value >= limit;
    case 'lessThan': return (value) => value < limit;
    case 'lessThanInclusive': return (value) => value <= limit;
    case 'contains': return (value) => (value as readonly Value[]).includes(limit);
    case 'doesNotContain': return (value) => !(value as readonly Value[]).includes(limit);
  }
};

const every = (holds: Holds) => (values: readonly Value[]): boolean => {
  for (const value of values) if (!holds(value)) return false;
  return true;
};
const some = (holds: Holds) => (values: readonly Value[]): boolean => {
  for (const value of values) if (holds(value)) return true;
  return false;
};

const tracedTest = (test: Test, place: number, mode: Mode): Traced => {
  const { fact } = test;
  const over = mode === 'certainly' && test.lenient !== true ? every : some;
  const [first, ...rest] = (test.limits ?? []).map((limit) => over(compared(test.operator, limit)));
  const holds = rest.length === 0 ? first! : mode === 'certainly' ? (values: readonly Value[]) => first!(values) && rest.every((each) => each(values)) : (values: readonly Value[]) => first!(values) || rest.some((each) => each(values));
  return (mayBe, trace) => (trace[place] = holds(mayBe[fact]!));
};

const traced = (condition: Condition, places: ReadonlyMap<Test, number>, mode: Mode): Traced => {
  switch (condition.kind) {
    case 'test':
      return tracedTest(condition, places.get(condition)!, mode);
    case 'all': {
      const parts = condition.of.map((part) => traced(part, places, mode));
      return (mayBe, trace) => {
        for (const part of parts) if (!part(mayBe, trace)) return false;
        return true;
      };
    }
    case 'any': {
      const parts = condition.of.map((part) => traced(part, places, mode));
      return (mayBe, trace) => {
        for (const part of parts) if (part(mayBe, trace)) return true;
        return false;
      };
    }
    case 'not':
    case 'constant':
      throw new Error(`a residual condition is in normal form and folded, found ${condition.kind}`);
  }
};

/** Closures as one would write them by hand for the same residual conditions, stopping at the first test that decides and recording what each test said. */
export const tracedClosures: Contender = () => {
  const made = new Map<Table, Readonly<Record<Mode, Traced>>>();
  const closuresOf = (table: Table): Readonly<Record<Mode, Traced>> => {
    const places = new Map(testsOf(table.condition).map((test, i) => [test, i]));
    const closures = made.get(table) ?? { certainly: traced(table.condition, places, 'certainly'), possibly: traced(table.condition, places, 'possibly') };
    made.set(table, closures);
    return closures;
  };
  return ({ residuals }) => {
    const rules = residuals.map((residual) => ({ rule: residual.rule.id, facts: standsOn(residual), closures: residual.table === undefined ? undefined : closuresOf(residual.table) }));
    return ({ mayBe }) => {
      const fired: FiredOn[] = [];
      for (const { rule, facts, closures } of rules) {
        const possible: boolean[] = [];
        if (closures !== undefined && !closures.possibly(mayBe, possible)) continue;
        const certain: boolean[] = [];
        const certainly = closures === undefined || closures.certainly(mayBe, certain);
        fired.push(certainly ? { rule, fires: 'certainly', facts: facts(certain) } : { rule, fires: 'possibly', facts: facts(possible) });
      }
      return fired;
    };
  };
};
