import type { NestedCondition, RuleProperties } from 'json-rules-engine';
import type { Knowledge } from '../knowledge/knowledge.js';
import type { Condition, Limit } from './condition.js';
import { ruleCondition } from './ruleCondition.js';

/** The fact that stands for a limit which is no constant: `limit:roots.maxRemoved:1.5:0`, or `limit:daysNeeded` of the operation. */
export const limitFact = (limit: Limit): string | undefined =>
  'is' in limit ? undefined : 'trait' in limit ? `limit:${limit.trait}:${limit.times}:${limit.plus}` : 'limit:daysNeeded';

const plain = (condition: Condition): NestedCondition => {
  switch (condition.kind) {
    case 'all':
      return { all: condition.of.map(plain) };
    case 'any':
      return { any: condition.of.map(plain) };
    case 'test': {
      const fact = limitFact(condition.limit);
      return { fact: condition.fact, operator: condition.operator, value: fact === undefined ? (condition.limit as { readonly is: unknown }).is : { fact } };
    }
    case 'not':
    case 'constant':
      throw new Error(`a condition must be in normal form, found ${condition.kind}`);
  }
};

/**
 * The rules in the plain format of json-rules-engine, for an app that runs that engine already.
 *
 * Facts and traits are facts by their ids; an unknown fact is then not told apart from one that does not fit, as that engine has it.
 * @param operation only the rules of this operation
 */
export const engineRules = (knowledge: Knowledge, operation?: string): readonly RuleProperties[] =>
  Object.values(knowledge.rules)
    .filter((rule) => operation === undefined || rule.operations === 'all' || rule.operations.includes(operation))
    .map((rule) => ({ name: rule.id, conditions: { all: [plain(ruleCondition(rule))] }, event: { type: rule.verdict, params: { rule: rule.id, title: rule.title, operations: rule.operations } } }));
