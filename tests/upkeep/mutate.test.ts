import { describe, expect, test } from 'vitest';
import { newFolds } from '../../src/engine/specialise.js';
import type { Rule } from '../../src/knowledge/knowledge.js';
import { draftExamples } from '../../src/upkeep/mend/draftExamples.js';
import { mutate } from '../../src/upkeep/mutate/mutate.js';
import { mutantsOf } from '../../src/upkeep/mutate/mutantsOf.js';
import { tinyKnowledge as tiny } from '../knowledge/tinyKnowledge.js';

const tooMany = tiny.rules['roots/too-many']!;
const weak = tiny.rules['strain/weak']!;

const watch = async (rule: Rule, cases: Parameters<typeof mutate>[3] = []): Promise<readonly string[]> => (await mutate(tiny, [rule], [], cases))[0]!.survivors.map(({ what }) => what);

describe('ways to put a rule wrong', () => {
  test('a threshold moves either way, and its comparison turns round or moves its edge', () => {
    expect(mutantsOf(tooMany, tiny.facts).map(({ kind, rule }) => [kind, rule.when[0]?.['roots.shareRemoved'] ?? rule.verdict])).toEqual([
      ['condition', 'advise-against'],
      ['threshold', { above: { trait: 'roots.maxRemoved', plus: -0.01 } }],
      ['threshold', { above: { trait: 'roots.maxRemoved', plus: 0.01 } }],
      ['comparison', { atLeast: { trait: 'roots.maxRemoved' } }],
      ['comparison', { below: { trait: 'roots.maxRemoved' } }],
      ['verdict', { above: { trait: 'roots.maxRemoved' } }],
    ]);
  });

  test('an exception goes, and each condition nested in any or all', () => {
    const nested: Rule = { ...weak, when: [{ any: [{ 'tree.vigour': 'weak' }, { all: [{ 'cut.foliageLeft': false }, { 'roots.shareRemoved': { between: [0.2, 0.4] } }] }] }] };
    const whats = mutantsOf(nested, tiny.facts).map(({ kind, what }) => `${kind}: ${what}`);
    expect(whats).toContain('exception: exception 1 dropped');
    expect(whats).toContain('condition: {tree.vigour:weak} dropped');
    expect(whats).toContain('comparison: cut.foliageLeft: false turned round');
    expect(whats.filter((what) => /between/.test(what) && what.startsWith('threshold'))).toHaveLength(4);
  });
});

describe('what notices', () => {
  test('a rule without examples is watched by nothing', async () => {
    expect(await watch({ ...tooMany, examples: [] })).toHaveLength(6);
  });

  test('a verdict is watched by an example that gives it', async () => {
    expect(await watch(tooMany)).toContain('verdict turned into risky');
    expect(await watch({ ...tooMany, examples: tooMany.examples.map((example) => (example.fires === 'certainly' ? { ...example, verdict: 'advise-against' } : example)) })).not.toContain('verdict turned into risky');
  });

  test('or by a known case', async () => {
    const known = { id: 'half-the-roots', proposal: { tree: { species: 'fictaria-x-nigra', vigour: 'steady' }, operation: { op: 'repot', rootsRemoved: 0.9 } }, accept: ['advise-against'] } as const;
    expect(await watch(tooMany, [known])).not.toContain('verdict turned into risky');
  });
});

test('drafts for a rule without examples tell it from every way to put it wrong', async () => {
  for (const rule of [tooMany, weak, tiny.rules['cut/bare-wood']!]) {
    const drafts = await draftExamples({ ...rule, examples: [] }, tiny, newFolds());
    const examples = drafts.map(({ example }) => example);
    expect(new Set(examples.map(({ fires }) => fires))).toEqual(new Set(['certainly', 'possibly', 'never']));
    expect(await watch({ ...rule, examples })).toEqual([]);
  }
});
