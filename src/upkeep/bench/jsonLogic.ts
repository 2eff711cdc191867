import { LogicEngine } from 'json-logic-engine';
import type { Table } from '../../engine/cells.js';
import { type Condition, type Operator, type Test, testsOf } from '../../engine/condition.js';
import type { Value } from '../../knowledge/knowledge.js';
import type { Contender, FiredOn } from './contender.js';
import { type Said, standsOn } from './standsOn.js';

type Mode = 'certainly' | 'possibly';
type Logic = unknown;
type Built<Result> = (mayBe: object) => Result;

interface Compiled {
  readonly certainly: Built<boolean>;
  readonly possibly: Built<boolean>;
  readonly testsCertain: Built<Said>;
  readonly testsPossible: Built<Said>;
}

const value = { var: '' };

const compared = (operator: Operator, limit: Value): Logic => {
  switch (operator) {
    case 'equal': return { '===': [value, limit] };
    case 'notEqual': return { '!==': [value, limit] };
    case 'in': return { in: [value, limit] };
    case 'notIn': return { '!': { in: [value, limit] } };
    case 'greaterThan': return { '>': [value, limit] };
    case 'greaterThanInclusive': return { '>=': [value, limit] };
    case 'lessThan': return { '<': [value, limit] };
    case 'lessThanInclusive': return { '<=': [value, limit] };
    case 'contains': return { in: [limit, value] };
    case 'doesNotContain': return { '!': { in: [limit, value] } };
  }
};

const testLogic = (test: Test, mode: Mode): Logic => {
  const over = mode === 'certainly' && test.lenient !== true ? 'all' : 'some';
  /* A fact's id is one key, not a path. */
  const each = (test.limits ?? []).map((limit) => ({ [over]: [{ var: test.fact.replaceAll('.', String.raw`\.`) }, compared(test.operator, limit)] }));
  return each.length === 1 ? each[0] : { [mode === 'certainly' ? 'and' : 'or']: each };
};

const logicOf = (condition: Condition, mode: Mode): Logic => {
  switch (condition.kind) {
    case 'test':
      return testLogic(condition, mode);
    case 'all':
    case 'any':
      return { [condition.kind === 'all' ? 'and' : 'or']: condition.of.map((part) => logicOf(part, mode)) };
    case 'not':
    case 'constant':
      throw new Error(`a residual condition is in normal form and folded, found ${condition.kind}`);
  }
};

/** json-logic-engine over the same residual conditions, compiled by its `build`; what each test said is asked of those that fire. */
export const jsonLogic: Contender = () => {
  const engine = new LogicEngine();
  const build = <Result>(logic: Logic): Built<Result> => engine.build(logic) as Built<Result>;
  const made = new Map<Table, Compiled>();
  const compiledOf = (table: Table): Compiled => {
    const tests = testsOf(table.condition);
    const compiled = made.get(table) ?? {
      certainly: build(logicOf(table.condition, 'certainly')),
      possibly: build(logicOf(table.condition, 'possibly')),
      testsCertain: build(tests.map((test) => testLogic(test, 'certainly'))),
      testsPossible: build(tests.map((test) => testLogic(test, 'possibly'))),
    };
    made.set(table, compiled);
    return compiled;
  };
  return ({ residuals }) => {
    const rules = residuals.map((residual) => ({ rule: residual.rule.id, facts: standsOn(residual), logic: residual.table === undefined ? undefined : compiledOf(residual.table) }));
    return ({ mayBe }) => {
      const fired: FiredOn[] = [];
      for (const { rule, facts, logic } of rules) {
        if (logic !== undefined && !logic.possibly(mayBe)) continue;
        const certainly = logic === undefined || logic.certainly(mayBe);
        fired.push(certainly ? { rule, fires: 'certainly', facts: facts(logic?.testsCertain(mayBe) ?? []) } : { rule, fires: 'possibly', facts: facts(logic.testsPossible(mayBe)) });
      }
      return fired;
    };
  };
};
