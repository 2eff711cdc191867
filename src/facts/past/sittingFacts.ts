import type { DerivePast, Read } from '../asked.js';
import { type FactValue, unknown } from '../factValue.js';
import { ownShares, thousandth } from '../ownShares.js';
import { hardJobs, sittingPoints } from '../sittingPoints.js';
import { type Strain, workStrain } from '../strain.js';
import { workedNumber } from '../workedNumber.js';
import { workOut } from '../workOut.js';
import { sameSitting } from './logEntries.js';
import { loggedSitting, sum, taken } from './loggedSitting.js';
import { trunksOf } from './trunksOf.js';

type Share = keyof typeof ownShares;

/** One of several numbers, whichever it turns out to be. */
const oneOf = (facts: readonly FactValue[]): FactValue => {
  const values = [...new Set(facts.flatMap(({ value, among }) => (value === undefined ? (among as readonly number[]) : [value as number])))];
  return values.length === 1 ? facts[0]! : unknown(values.sort((a, b) => a - b));
};

/** A figure of the whole sitting. */
const figure = (of: (...sitting: Parameters<typeof sittingPoints>) => number): DerivePast => (read, asked, ofLogged) => {
  const before = sameSitting(asked.proposal, asked.day);
  if (before.length === 0) return undefined;
  const ops = [...before.map(({ op }) => op), asked.operation.id];
  const ownOf = (fact: Share): FactValue => ownShares[fact].own(read, asked);
  /* The work that is asked about by itself, without the rest of its sitting. */
  const alone: Read = (id) => (id in ownShares ? ownOf(id as Share) : read(id));
  const own = workStrain(asked.operation, alone);
  const [ownFoliage, ownCutArea] = [ownOf('sitting.foliageShare').value as number, ownOf('sitting.cutAreaShare').value as number];
  return oneOf(trunksOf(read, asked).map((trunkMm) => {
    const { strains, foliageShare, cutAreaShare } = loggedSitting(before, asked, ofLogged, trunkMm);
    const shares = { foliageShare: foliageShare + ownFoliage, cutAreaShare: cutAreaShare + ownCutArea };
    return workOut([own], 'worked-out', (strain) => of({ ops, strains: [...strains, strain as Strain], ...shares }, asked));
  }));
};

/** What the work itself takes, and with it what work of the same day takes: unknown where that hangs on a trunk that is not told. */
const share = (fact: Share): DerivePast => (read, asked, ofLogged) => {
  const entries = sameSitting(asked.proposal, asked.day);
  if (entries.length === 0) return undefined;
  const { own: ownOf, atMost } = ownShares[fact];
  const own = ownOf(read, asked);
  const together = trunksOf(read, asked).map((trunkMm): FactValue => {
    const all = [own, ...taken(entries, asked, ofLogged, trunkMm, fact)];
    if (all.some(({ state }) => state === 'estimated')) return workedNumber(all, (...shares) => Math.min(atMost, shares.reduce((one, other) => one + other, 0)));
    return { ...own, value: Math.min(atMost, thousandth(sum(all))) };
  });
  const [least, most] = [together[0]!, together.at(-1)!];
  return least.value === most.value ? least : unknown({ atLeast: least.value as number, atMost: most.value as number });
};

/** Facts of a sitting as a whole: of the work that is asked about, and of work in the log on the same day. */
export const sittingFacts: Readonly<Record<string, DerivePast>> = {
  'sitting.hardOperations': figure(hardJobs),
  'sitting.strain': figure(sittingPoints),
  'sitting.foliageShare': share('sitting.foliageShare'),
  'sitting.cutAreaShare': share('sitting.cutAreaShare'),
};
