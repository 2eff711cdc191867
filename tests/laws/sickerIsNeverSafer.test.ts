import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Proposal } from '../../src/contract/types.generated.js';
import { severity } from '../../src/engine/verdict.js';
import type { FactWord, Value } from '../../src/knowledge/knowledge.js';
import { shipped, stations } from '../shipped.js';
import { cases, patience } from './cases.js';
import { judgeWith } from './judged.js';
import { plausibleProposal, valueArbitrary } from './plausibleProposal.js';

/* Law 4: sicker is never safer, except where a rule that fires on the healthier tree declares it in `reverses`. */

const judge = judgeWith(shipped, stations);

interface Told {
  readonly under: 'tree' | 'operation';
  readonly step: string;
  readonly word: FactWord;
}

const told: readonly Told[] = (['tree', 'operation'] as const).flatMap((under) =>
  Object.values(shipped.facts).filter((word) => word.worse !== undefined && word.given?.startsWith(`${under}.`) === true).map((word) => ({ under, step: word.given!.slice(under.length + 1), word })));

const rank = (word: FactWord, value: Value): number => {
  const at = typeof value === 'number' ? value : word.values!.indexOf(value as string);
  return word.worse === 'high' ? at : -at;
};

/** The fact itself and all that is worked out of it, by `from` in shared/facts.yaml. */
const downstream = (id: string): ReadonlySet<string> => {
  const reached = new Set([id]);
  for (let before = 0; before !== reached.size;) {
    before = reached.size;
    for (const word of Object.values(shipped.facts)) if (word.from?.some((input) => reached.has(input)) === true) reached.add(word.id);
  }
  return reached;
};

const withFact = (proposal: Proposal, { under, step }: Told, value: Value): Proposal => ({ ...proposal, [under]: { ...proposal[under], [step]: value } }) as Proposal;

test('every fact that declares a worse side and that a proposal can tell is tried', () => {
  const steps = told.map((each) => each.step);
  for (const step of ['vigour', 'health', 'rootsRemoved', 'soilRemoved', 'foliageShare', 'shareRemoved', 'branchDiameterMm', 'branchToTrunk', 'girthShare', 'budsLeft', 'left', 'bend', 'lowestC', 'coldWeeks', 'warmWeeks']) expect(steps).toContain(step);
});

test.each(told.map((each): [string, Told] => [`${each.word.id} made worse never improves a verdict`, each]))('%s', async (_, each) => {
  const worsened = downstream(each.word.id);
  const op = each.under === 'tree' ? fc.constant(undefined) : fc.constantFrom(...Object.values(shipped.operations).filter((operation) => operation.parameters.includes(each.step)).map((operation) => operation.id));
  const proposals = op.chain((id) => plausibleProposal(shipped, stations, id === undefined ? {} : { op: id }));
  await fc.assert(
    fc.asyncProperty(proposals, valueArbitrary(each.word), valueArbitrary(each.word), async (proposal, one, other) => {
      fc.pre(one !== other);
      const [better, worse] = rank(each.word, one) < rank(each.word, other) ? [one, other] : [other, one];
      const [safer, sicker] = [await judge(withFact(proposal, each, better)), await judge(withFact(proposal, each, worse))];
      if (severity(sicker.verdict) >= severity(safer.verdict)) return;
      const left = safer.fired.filter((fired) => !sicker.fired.some((still) => still.residual.rule.id === fired.residual.rule.id && still.fires === fired.fires && still.firm === fired.firm));
      const declared = left.some((fired) => fired.residual.rule.reverses.some((fact) => worsened.has(fact)));
      const names = left.map((fired) => `${fired.residual.rule.id} (${fired.fires})`).join(', ');
      expect(declared, `${each.word.id} ${String(better)} -> ${String(worse)} turns ${safer.verdict} into ${sicker.verdict}: ${names} no longer fires and does not declare it in reverses`).toBe(true);
    }),
    { numRuns: cases(each.under === 'tree' ? 400 : 150) },
  );
}, patience(600_000));

/* Found by the long run: of two buds that were told beside green, the fewer came out safer. */
test('a beech cut back above green with no bud counted is judged no better than with one', async () => {
  const cut = (budsLeft: number): Proposal => ({ tree: { species: 'fagus-crenata' }, operation: { op: 'cut-back', foliageLeft: true, budsLeft }, date: '2024-05-21', where: { place: 'camp-crook-sd' } });
  const [none, one] = [await judge(cut(0)), await judge(cut(1))];
  expect(one.verdict).toBe('risky');
  expect(severity(none.verdict)).toBeGreaterThanOrEqual(severity(one.verdict));
});
