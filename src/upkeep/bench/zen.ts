import type { ZenEngine } from '@gorules/zen-engine';
import { type Condition, type Operator, type Test, testsOf } from '../../engine/condition.js';
import type { Residual } from '../../engine/specialise.js';
import type { Rule, Value } from '../../knowledge/knowledge.js';
import type { Contender, FiredOn } from './contender.js';
import { type Said, standsOn } from './standsOn.js';

type Mode = 'certainly' | 'possibly';

/** A row of the table whose condition held. */
interface Hit {
  readonly rule: { readonly place: number; readonly fires: Mode; readonly said: Said };
}

const nameOf = (fact: string): string => fact.replaceAll(/\W/g, '_');

const compared = (operator: Operator, limit: Value): string => {
  const written = JSON.stringify(limit);
  switch (operator) {
    case 'equal': return `# == ${written}`;
    case 'notEqual': return `# != ${written}`;
    case 'in': return `# in ${written}`;
    case 'notIn': return `not (# in ${written})`;
    case 'greaterThan': return `# > ${written}`;
    case 'greaterThanInclusive': return `# >= ${written}`;
    case 'lessThan': return `# < ${written}`;
    case 'lessThanInclusive': return `# <= ${written}`;
    case 'contains': return `${written} in #`;
    case 'doesNotContain': return `not (${written} in #)`;
  }
};

const testExpression = (test: Test, mode: Mode): string => {
  const over = mode === 'certainly' && test.lenient !== true ? 'all' : 'some';
  return `(${(test.limits ?? []).map((limit) => `${over}(${nameOf(test.fact)}, ${compared(test.operator, limit)})`).join(mode === 'certainly' ? ' and ' : ' or ')})`;
};

const expression = (condition: Condition, mode: Mode): string => {
  switch (condition.kind) {
    case 'test':
      return testExpression(condition, mode);
    case 'all':
    case 'any':
      return `(${condition.of.map((part) => expression(part, mode)).join(condition.kind === 'all' ? ' and ' : ' or ')})`;
    case 'not':
    case 'constant':
      throw new Error(`a residual condition is in normal form and folded, found ${condition.kind}`);
  }
};

/** A decision in that engine's format: one table, a row for each residual rule, which gives what its tests said where the rule might fire. */
const decisionOf = (residuals: readonly Residual<Rule>[]): object => {
  const rows = residuals.flatMap(({ table }, place) => {
    if (table === undefined) return [];
    const tests = (mode: Mode): string => `[${testsOf(table.condition).map((test) => testExpression(test, mode)).join(', ')}]`;
    return [{ _id: `rule${place}`, if: expression(table.condition, 'possibly'), then: `${expression(table.condition, 'certainly')} ? { place: ${place}, fires: "certainly", said: ${tests('certainly')} } : { place: ${place}, fires: "possibly", said: ${tests('possibly')} }` }];
  });
  const position = { x: 0, y: 0 };
  const content = { hitPolicy: 'collect', inputs: [{ id: 'if', name: 'if', type: 'expression' }], outputs: [{ id: 'then', name: 'then', field: 'rule', type: 'expression' }], rules: rows };
  return {
    nodes: [{ id: 'facts', name: 'facts', type: 'inputNode', position }, { id: 'rules', name: 'rules', type: 'decisionTableNode', position, content }, { id: 'fired', name: 'fired', type: 'outputNode', position }],
    edges: [{ id: 'in', sourceId: 'facts', targetId: 'rules', type: 'edge' }, { id: 'out', sourceId: 'rules', targetId: 'fired', type: 'edge' }],
  };
};

/** zen-engine over the same residual conditions: one decision table, one call across to its native code an assessment. */
export const zen = (engine: ZenEngine): Contender => () => ({ residuals }) => {
  const decision = engine.createDecision(decisionOf(residuals));
  const needed = [...new Set(residuals.flatMap(({ left }) => testsOf(left)).map(({ fact }) => fact))].map((fact) => [fact, nameOf(fact)] as const);
  const rules = residuals.map((residual) => ({ rule: residual.rule.id, facts: standsOn(residual) }));
  const always = residuals.flatMap(({ table }, place): readonly Hit[] => (table === undefined ? [{ rule: { place, fires: 'certainly', said: [] } }] : []));
  return async ({ mayBe }) => {
    const facts: Record<string, readonly Value[]> = {};
    for (const [fact, name] of needed) facts[name] = mayBe[fact]!;
    const hits = (await decision.evaluate(facts)).result as readonly Hit[];
    return [...always, ...hits].map(({ rule: { place, fires, said } }): FiredOn => ({ rule: rules[place]!.rule, fires, facts: rules[place]!.facts(said) }));
  };
};
