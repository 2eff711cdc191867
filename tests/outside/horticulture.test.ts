import { afterAll, describe, expect, it } from 'vitest';
import type { Assessment } from '../../src/contract/types.generated.js';
import { advisor, shipped } from '../shipped.js';
import { decidedBy, type Support } from './statements/decidedBy.js';
import { foliage } from './statements/foliage.js';
import { further } from './statements/further.js';
import { independence, type Kind, kinds } from './statements/independence.js';
import { pruning } from './statements/pruning.js';
import { roots } from './statements/roots.js';
import type { Ask, Statement } from './statements/statement.js';
import { wounds } from './statements/wounds.js';

/*
 * Published statements of arboriculture and horticulture against what the advisor says. Nearly all were made about trees in the ground.
 * statements/independence.ts tells from the sources how far each check stands apart from what it checks.
 */

interface Judged { readonly statement: Statement; readonly kind: Kind | 'overridden'; readonly supports: readonly Support[]; readonly answers: readonly { readonly ask: Ask; readonly assessment: Assessment }[] }

const judge = async (statement: Statement): Promise<Judged> => {
  const answers = await Promise.all(statement.asks.map(async (ask) => ({ ask, assessment: await advisor.assess({ tree: ask.tree, operation: ask.operation, date: ask.date, where: ask.where } as never) })));
  const supports = answers.flatMap(({ ask, assessment }) => decidedBy(ask, assessment));
  return { statement, supports, answers, kind: statement.overridden === undefined ? independence(statement, supports) : 'overridden' };
};

const judged = await Promise.all([...wounds, ...pruning, ...foliage, ...roots, ...further].map(judge));
const named = { independent: '', 'other source': ' (cited too, but borne out by others)', shared: ' (also one of the rule\'s sources)', 'own source': ' (also the rule\'s own source)', overridden: ' [overridden]' } as const;

const rows = (kind: Judged['kind']): readonly number[] => [...new Set(judged.filter((one) => one.kind === kind).map((one) => one.statement.row))].sort((a, b) => a - b);
/** Each statement once, under the strongest of its checks. */
const counted = (kind: Kind): readonly number[] => rows(kind).filter((row) => !kinds.slice(0, kinds.indexOf(kind)).some((stronger) => rows(stronger).includes(row)));
const ofTheForty = (row: number): boolean => row <= 40;

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

  it('are at least thirty, without those that practice overrides', () => {
    expect(kinds.flatMap(counted).filter(ofTheForty).length).toBeGreaterThanOrEqual(30);
    expect(kinds.flatMap(counted)).not.toEqual(expect.arrayContaining([6, 7, 12]));
  });

  it('are cited by nothing that decides in at least thirty cases', () => expect(counted('independent').length).toBeGreaterThanOrEqual(30));

  it('are cited by nothing that decides, or borne out by another source, in at least thirty of the forty', () =>
    expect([...counted('independent'), ...counted('other source')].filter(ofTheForty).length).toBeGreaterThanOrEqual(30));

  it('name no bearing source in vain', () => {
    for (const { statement, kind, supports } of judged) {
      if (statement.restsOn === undefined) continue;
      expect(kind, statement.says).toBe('other source');
      for (const id of statement.restsOn) expect(supports.flatMap((one) => one.sources), statement.says).toContain(id);
    }
  });
});

afterAll(() => {
  const line = (name: string, which: readonly number[]): string => `  ${name.padEnd(12)} ${String(which.filter(ofTheForty).length).padStart(2)} of the forty, ${String(which.filter((row) => !ofTheForty(row)).length).padStart(2)} more   ${which.join(', ')}`;
  process.stdout.write(`published statements, by what the verdict rests on\n${[...kinds.map((kind) => line(kind, counted(kind))), line('overridden', rows('overridden'))].join('\n')}\n  questions asked: ${judged.reduce((sum, one) => sum + one.answers.length, 0)}\n`);
});
