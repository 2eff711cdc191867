import type { WrittenCondition } from '../knowledge/knowledge.js';
import { all, any, type Condition, testsOf } from './condition.js';
import { normalForm } from './normalForm.js';
import { parseCondition } from './parseCondition.js';

/** Marks the tests on facts that stand only in `unless`: where such a fact is not known, it is taken not to lift the rule. */
const lenient = (condition: Condition, needed: ReadonlySet<string>): Condition => {
  switch (condition.kind) {
    case 'test':
      return needed.has(condition.fact) ? condition : { ...condition, lenient: true };
    case 'all':
    case 'any':
      return { kind: condition.kind, of: condition.of.map((part) => lenient(part, needed)) };
    case 'not':
    case 'constant':
      return condition;
  }
};

/** Whatever has conditions: a rule, a caution, a follow-up. */
export interface Conditional {
  readonly id: string;
  readonly when: readonly WrittenCondition[];
  readonly unless?: readonly { readonly when: readonly WrittenCondition[] }[];
}

/** The one condition that a rule comes to, in normal form: all of `when`, and none of `unless`. */
export const ruleCondition = (rule: Conditional): Condition => {
  const when = all(rule.when.map(parseCondition));
  const needed = new Set(testsOf(when).map((test) => test.fact));
  const lifted = (rule.unless ?? []).map((reason) => all(reason.when.map(parseCondition)));
  const kept = lifted.length === 0 ? [] : [lenient(normalForm({ kind: 'not', of: any(lifted) }), needed)];
  return all([normalForm(when), ...kept]);
};
