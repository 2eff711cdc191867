import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Condition, all } from '../../src/engine/condition.js';
import { tableOf } from '../../src/engine/cells.js';
import { evaluate } from '../../src/engine/evaluate.js';
import { normalForm } from '../../src/engine/normalForm.js';
import { parseCondition } from '../../src/engine/parseCondition.js';
import { sharpened } from '../../src/engine/sharpen.js';
import type { Residual } from '../../src/engine/specialise.js';
import { judgementOf, severity } from '../../src/engine/verdict.js';
import { type FactValue, known, unknown } from '../../src/facts/factValue.js';
import type { FactWord, Rule, Verdict, WrittenCondition } from '../../src/knowledge/knowledge.js';

const words = {
  nodes: { id: 'nodes', type: 'number', whole: true, bounds: [0, 6], meaning: 'nodes' },
  wood: { id: 'wood', type: 'choice', values: ['young', 'middling', 'old'], meaning: 'wood' },
  green: { id: 'green', type: 'boolean', meaning: 'green' },
} as const satisfies Readonly<Record<string, FactWord>>;

const rule = (id: string, verdict: Rule['verdict'], when: readonly WrittenCondition[]): Residual<Rule> => {
  const condition: Condition = normalForm(all(when.map(parseCondition)));
  return { rule: { id, verdict } as Rule, folded: condition, left: condition, table: tableOf(condition, words), disputed: [] };
};

type Told = Readonly<Record<string, FactValue>>;
const judge = async (rules: readonly Residual<Rule>[], told: Told) => {
  const read = (id: string): FactValue => told[id] ?? unknown(words[id as keyof typeof words].type === 'boolean' ? [true, false] : (words[id as keyof typeof words] as FactWord).values);
  const fired = await evaluate(rules, read);
  const alone = judgementOf(fired);
  return { alone, together: await sharpened(alone, fired, read, words) };
};

test('two rules that share out all that an unknown fact may be leave nothing open', async () => {
  const rules = [rule('few', 'risky', [{ nodes: { below: 3 } }]), rule('many', 'risky', [{ nodes: { atLeast: 3 } }])];
  const { alone, together } = await judge(rules, {});
  expect(alone).toEqual({ verdict: 'risky', range: ['allowed', 'risky'], settled: false });
  expect(together).toEqual({ verdict: 'risky', range: ['risky', 'risky'], settled: true });
});

test('two rules that cannot fire together are not counted as if they could', async () => {
  const rules = [rule('none', 'risky', [{ green: false }, { wood: 'old' }]), rule('some', 'advise-against', [{ green: true }, { wood: 'old' }])];
  expect((await judge(rules, { wood: known('old', 'given') })).together.range).toEqual(['risky', 'advise-against']);
  expect((await judge(rules, {})).together.range).toEqual(['allowed', 'advise-against']);
});

/** All that a fact of these may be. */
const whole = { nodes: [0, 1, 2, 3, 4, 5, 6], wood: ['young', 'middling', 'old'], green: [true, false] } as const;

test('the range is what going through every value gives', async () => {
  const condition = fc.oneof(
    fc.record({ nodes: fc.oneof(fc.record({ below: fc.integer({ min: 1, max: 6 }) }), fc.record({ atLeast: fc.integer({ min: 0, max: 6 }) }), fc.integer({ min: 0, max: 6 })) }),
    fc.record({ wood: fc.subarray(['young', 'middling', 'old'], { minLength: 1, maxLength: 2 }) }),
    fc.record({ green: fc.boolean() }),
  ) as fc.Arbitrary<WrittenCondition>;
  const rules = fc.array(fc.tuple(fc.constantFrom<Rule['verdict']>('risky', 'advise-against'), fc.array(condition, { minLength: 1, maxLength: 2 })), { minLength: 1, maxLength: 4 });
  const told = fc.record({ nodes: fc.constantFrom(...whole.nodes), wood: fc.constantFrom(...whole.wood), green: fc.boolean() }, { requiredKeys: [] });
  await fc.assert(fc.asyncProperty(rules, told, async (written, given) => {
    const asked = written.map(([verdict, when], i) => rule(`r${i}`, verdict, when));
    const facts = Object.fromEntries(Object.entries(given).map(([id, value]) => [id, known(value, 'given')]));
    const { together } = await judge(asked, facts);
    const verdicts: Verdict[] = [];
    for (const nodes of whole.nodes) for (const wood of whole.wood) for (const green of whole.green) {
      const now = { nodes, wood, green, ...given };
      verdicts.push((await judge(asked, Object.fromEntries(Object.entries(now).map(([id, value]) => [id, known(value, 'given')])))).alone.verdict);
    }
    const rising = verdicts.sort((a, b) => severity(a) - severity(b));
    expect(together.range).toEqual([rising[0], rising.at(-1)]);
  }), { numRuns: 300 });
}, 120_000);
