import { afterAll, describe, expect, it } from 'vitest';
import type { Assessment } from '../../src/contract/types.generated.js';
import { advisor, shipped } from '../shipped.js';
import { foliage } from './statements/foliage.js';
import { pruning } from './statements/pruning.js';
import { restsOn, traitsRestOn } from './statements/restsOn.js';
import { roots } from './statements/roots.js';
import type { Ask, Statement } from './statements/statement.js';
import { wounds } from './statements/wounds.js';

/*
 * Published statements of arboriculture and horticulture against what the advisor says. Nearly all were made about trees in the ground.
 * A statement whose own source is also cited by the rule or trait that decides is a weaker check, and is counted apart: "independent", none of its
 * sources decides; "shared", one of them is cited beside others; "own source", nothing else published decides.
 */

type Kind = 'independent' | 'shared' | 'own source' | 'overridden';
interface Judged { readonly statement: Statement; readonly kind: Kind; /** Whether a trait that decides has no published source but the statement's own: then it is no check of it. */ readonly ofTrait: boolean; readonly answers: readonly { readonly ask: Ask; readonly assessment: Assessment }[] }

const judge = async (statement: Statement): Promise<Judged> => {
  const answers = await Promise.all(statement.asks.map(async (ask) => ({ ask, assessment: await advisor.assess({ tree: ask.tree, operation: ask.operation, date: ask.date, where: ask.where } as never) })));
  const decide = new Set(answers.flatMap(({ ask, assessment }) => [...restsOn(ask, assessment)]));
  const own = statement.sources.some((id) => decide.has(id));
  const others = [...decide].some((id) => !statement.sources.includes(id));
  const ofTrait = answers.some(({ ask, assessment }) => traitsRestOn(ask, assessment).some((sources) => sources.size > 0 && [...sources].every((id) => statement.sources.includes(id))));
  return { statement, answers, ofTrait, kind: statement.overridden !== undefined ? 'overridden' : !own ? 'independent' : others ? 'shared' : 'own source' };
};

const judged = await Promise.all([...wounds, ...pruning, ...foliage, ...roots].map(judge));
const named = { independent: '', shared: ' (also one of the rule\'s sources)', 'own source': ' (also the rule\'s own source)', overridden: ' [overridden]' } as const;

const rank = ['independent', 'shared', 'own source'] as const;
const rows = (kind: Kind): readonly number[] => [...new Set(judged.filter((one) => one.kind === kind).map((one) => one.statement.row))];
/** Each statement once, under the strongest of its checks. */
const counted = (kind: (typeof rank)[number]): readonly number[] =>
  rows(kind).filter((row) => !rank.slice(0, rank.indexOf(kind)).some((stronger) => rows(stronger).includes(row))).sort((a, b) => a - b);

/** Statements that check something: each trait that decides the answer would stand without them, by another published source. */
const checks = [...new Set(judged.filter((one) => one.kind !== 'overridden' && !one.ofTrait).map((one) => one.statement.row))].sort((a, b) => a - b);

describe('what growers and arborists have published', () => {
  for (const { statement, kind, answers } of judged) {
    it(`${statement.row}. ${statement.says}${named[kind]} <${statement.published}>`, () => {
      for (const id of statement.sources) expect(shipped.sources[id]?.from, id).toBe('read');
      for (const { ask, assessment } of answers) {
        const certain = assessment.findings.filter((finding) => finding.fires === 'certainly').map((finding) => finding.rule);
        const about = `${JSON.stringify(ask.tree)} ${JSON.stringify(ask.operation)} ${ask.date}: ${certain.join(', ')}`;
        expect(ask.accept, about).toContain(assessment.verdict);
        expect(certain, about).toEqual(expect.arrayContaining([...(ask.because ?? [])]));
        for (const rule of ask.silent ?? []) expect(assessment.findings.map((finding) => finding.rule), about).not.toContain(rule);
        ask.also?.(assessment, answers.map((answer) => answer.assessment));
      }
      if (statement.overridden !== undefined) expect(statement.overridden.length).toBeGreaterThan(40);
    });
  }

  it('are at least thirty that no deciding trait was taken from alone, without those that practice overrides', () => {
    expect(checks.length).toBeGreaterThanOrEqual(30);
    for (const row of [6, 7, 12]) expect(checks).not.toContain(row);
  });

  it('rest on other sources than their own in at least ten cases', () => expect(counted('independent').length).toBeGreaterThanOrEqual(10));
});

afterAll(() => {
  const lines = [...rank.map((kind) => [kind, counted(kind)] as const), ['overridden', rows('overridden')] as const].map(([kind, which]) => `  ${kind.padEnd(12)} ${String(which.length).padStart(2)}   ${which.join(', ')}`);
  lines.push(`  not the only source of a trait that decides: ${checks.length}   ${checks.join(', ')}`);
  process.stdout.write(`published statements, by what the verdict rests on\n${lines.join('\n')}\n  questions asked: ${judged.reduce((sum, one) => sum + one.answers.length, 0)}\n`);
});
