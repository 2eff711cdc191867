import { severity } from '../structure/severity.js';
import type { Asked, Derive, OfLogged, Read } from './asked.js';
import { assumed, type FactValue, known, unknown } from './factValue.js';
import { type LogEntry, sameSitting } from './logEntries.js';
import { loggedStrain, type Strain, workStrain } from './strain.js';
import { workedNumber } from './workedNumber.js';
import { workOut } from './workOut.js';

/** The trunk's width, or where it is not told the widest and the thinnest that there is: the logged work is then as light, and as hard, as it can be. */
export const trunksOf = (read: Read, { knowledge }: Asked): readonly number[] => {
  const trunk = read('tree.trunkDiameterMm').value as number | undefined;
  if (trunk !== undefined) return [trunk];
  const [thinnest, widest] = knowledge.facts['tree.trunkDiameterMm']!.bounds!;
  return [widest, thinnest];
};

const thousandth = (share: number): number => Math.round(1000 * share) / 1000;

type Share = 'sitting.foliageShare' | 'sitting.cutAreaShare';

/** Work of one day as far as it hangs together. */
interface Sitting {
  readonly ops: readonly string[];
  readonly strains: readonly Strain[];
  readonly foliageShare: number;
  readonly cutAreaShare: number;
}

/** Foliage or cut surfaces of logged work, as far as its entries, or the measures of a branch that they name, tell. A branch that goes with its bearer takes no more of either. */
const taken = (entries: readonly LogEntry[], asked: Asked, ofLogged: OfLogged, trunkMm: number, fact: Share): readonly FactValue[] =>
  entries.flatMap((entry) => {
    const branch = asked.built?.branchNamed(asked, entry.written['branch']);
    if (branch !== undefined && asked.built!.goesWithBearer(branch, entries, asked)) return [];
    const share = ofLogged(entry, trunkMm)(fact);
    return share.state === 'known' || (share.state === 'estimated' && branch !== undefined) ? [share] : [];
  });

const sum = (shares: readonly FactValue[]): number => shares.reduce((all, { value }) => all + (value as number), 0);

/** Logged work of one day. */
export const loggedSitting = (entries: readonly LogEntry[], asked: Asked, ofLogged: OfLogged, trunkMm: number): Sitting => ({
  ops: entries.map(({ op }) => op),
  strains: entries.map((entry) => loggedStrain(entry, ofLogged, trunkMm)),
  foliageShare: sum(taken(entries, asked, ofLogged, trunkMm, 'sitting.foliageShare')),
  cutAreaShare: sum(taken(entries, asked, ofLogged, trunkMm, 'sitting.cutAreaShare')),
});

/** Hard jobs of a sitting. Jobs that are light each, but take together as much as would make one of them hard, are one hard job. */
const hardJobs = ({ ops, strains, ...shares }: Sitting, { knowledge }: Asked): number => {
  const together = ops.some((op) => (['foliageShare', 'cutAreaShare'] as const).some((share) => thousandth(shares[share]) >= (knowledge.operations[op]?.strain.hardFrom?.[`sitting.${share}`] ?? Infinity)));
  return Math.max(strains.filter((strain) => strain === 'hard').length, together ? 1 : 0);
};

/** What a sitting asks of the tree, by `strain` of shared/growing.yaml (practice): each hard job its points, light ones theirs once together. */
export const sittingPoints = (sitting: Sitting, asked: Asked): number => {
  const { light, hard } = asked.knowledge.growing.strain;
  const all = hardJobs(sitting, asked);
  /* A light job that the others made hard is not light besides. */
  const each = sitting.strains.filter((strain) => strain === 'hard').length;
  return all * hard + (all === each && sitting.strains.includes('light') ? light : 0);
};

/** Foliage that the work itself takes. */
const ownFoliage = (read: Read, { operation, knowledge }: Asked): FactValue =>
  operation.parameters.includes('foliageShare') || operation.leaves.takesBranch === true || knowledge.growing.tipsToFoliage[operation.id] !== undefined ? read('cut.foliageShare') : known(0, 'worked-out');

/** What the work itself cuts, as a share of the trunk's section. */
const ownCutArea = (read: Read, asked: Asked): FactValue => {
  const { operation, knowledge } = asked;
  if (!operation.leavesWound || !operation.parameters.includes('branchDiameterMm')) return known(0, 'worked-out');
  /* Where the trunk is told point by point, the ratio is to the trunk at the joint, the section to the trunk above the roots. */
  const [branch, trunk] = [read('cut.branchDiameterMm'), read('tree.trunkDiameterMm')];
  if (asked.built?.branchNamed(asked, asked.proposal.operation.branch) !== undefined && branch.value !== undefined && trunk.value !== undefined) return workedNumber([branch, trunk], (cutMm, trunkMm) => severity([cutMm], trunkMm));
  const ratio = read('cut.branchToTrunk');
  if (ratio.value === undefined) return assumed(knowledge.facts['sitting.cutAreaShare']!.assume!['default']!);
  return { ...ratio, value: (ratio.value as number) ** 2, from: 'worked-out' };
};

/** The work that is asked about by itself, without the rest of its sitting. */
const alone = (read: Read, asked: Asked): Read => (id) => {
  switch (id) {
    case 'sitting.foliageShare':
      return ownFoliage(read, asked);
    case 'sitting.cutAreaShare':
      return ownCutArea(read, asked);
    default:
      return read(id);
  }
};

/** A figure of the whole sitting: work of the log on the same day, and the work that is asked about. */
const ofSitting = (read: Read, asked: Asked, ofLogged: OfLogged, figure: (sitting: Sitting) => number): FactValue => {
  const before = sameSitting(asked.proposal, asked.day);
  const ops = [...before.map(({ op }) => op), asked.operation.id];
  if (before.length === 0) return workOut([read('work.strain')], 'worked-out', (strain) => figure({ ops, strains: [strain as Strain], foliageShare: 0, cutAreaShare: 0 }));
  const own = workStrain(asked.operation, alone(read, asked));
  const [ownFoliageShare, ownCutAreaShare] = [ownFoliage(read, asked).value as number, ownCutArea(read, asked).value as number];
  return oneOf(trunksOf(read, asked).map((trunkMm) => {
    const { strains, foliageShare, cutAreaShare } = loggedSitting(before, asked, ofLogged, trunkMm);
    const shares = { foliageShare: foliageShare + ownFoliageShare, cutAreaShare: cutAreaShare + ownCutAreaShare };
    return workOut([own], 'worked-out', (strain) => figure({ ops, strains: [...strains, strain as Strain], ...shares }));
  }));
};

/** One of several numbers, whichever it turns out to be. */
const oneOf = (facts: readonly FactValue[]): FactValue => {
  const values = [...new Set(facts.flatMap(({ value, among }) => (value === undefined ? (among as readonly number[]) : [value as number])))];
  return values.length === 1 ? facts[0]! : unknown(values.sort((a, b) => a - b));
};

/** What the work itself takes, and with it what work of the same day takes: unknown where that hangs on a trunk that is not told. */
const withEarlier = (own: FactValue, fact: Share, atMost: number, read: Read, asked: Asked, ofLogged: OfLogged): FactValue => {
  const entries = sameSitting(asked.proposal, asked.day);
  if (entries.length === 0) return { ...own, value: Math.min(atMost, thousandth(own.value as number)) };
  const together = trunksOf(read, asked).map((trunkMm): FactValue => {
    const others = taken(entries, asked, ofLogged, trunkMm, fact);
    const value = Math.min(atMost, thousandth(sum([own, ...others])));
    return [own, ...others].some(({ state }) => state === 'estimated') ? workedNumber([own, ...others], (...shares) => Math.min(atMost, shares.reduce((all, share) => all + share, 0))) : { ...own, value };
  });
  const [least, most] = [together[0]!, together.at(-1)!];
  return least.value === most.value ? least : unknown({ atLeast: least.value as number, atMost: most.value as number });
};

/** Facts of a sitting as a whole: of the work that is asked about, and of work in the log on the same day. */
export const sittingFacts: Readonly<Record<string, Derive>> = {
  'sitting.hardOperations': (read, asked, _, ofLogged) => ofSitting(read, asked, ofLogged, (sitting) => hardJobs(sitting, asked)),
  'sitting.strain': (read, asked, _, ofLogged) => ofSitting(read, asked, ofLogged, (sitting) => sittingPoints(sitting, asked)),
  'sitting.foliageShare': (read, asked, _, ofLogged) => withEarlier(ownFoliage(read, asked), 'sitting.foliageShare', 1, read, asked, ofLogged),
  /** Cut surfaces added up over the trunk's section: BS 3998, draft of 2008, annex E (quoted). */
  'sitting.cutAreaShare': (read, asked, _, ofLogged) => withEarlier(ownCutArea(read, asked), 'sitting.cutAreaShare', 5, read, asked, ofLogged),
};
