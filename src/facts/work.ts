import type { Asked, Derive } from './asked.js';
import { known, unknown } from './factValue.js';
import { type LogEntry, sameSitting } from './logEntries.js';
import { strainOf, workStrain } from './strain.js';
import { workOut } from './workOut.js';

/** Foliage that earlier work of the same day took, as far as the log tells. */
const foliageTaken = (entry: LogEntry, asked: Asked): number => {
  const share = entry.written['foliageShare'] as number | undefined;
  const tips = asked.knowledge.growing.tipsToFoliage[entry.op];
  return share ?? (tips === undefined ? 0 : ((entry.written['shareRemoved'] as number | undefined) ?? 0) * tips);
};

/** Facts of how much is done, of shoots, bends, flowers and cuttings. */
export const workFacts: Readonly<Record<string, Derive>> = {
  'work.strain': (read, asked) => workStrain(asked.operation, read),
  'sitting.hardOperations': (read, asked) => {
    const before = sameSitting(asked.proposal, asked.day).filter((entry) => strainOf(asked, entry) === 'hard').length;
    return workOut([read('work.strain')], 'worked-out', (strain) => before + (strain === 'hard' ? 1 : 0));
  },
  'sitting.foliageShare': (read, asked) => {
    const before = sameSitting(asked.proposal, asked.day).reduce((sum, entry) => sum + foliageTaken(entry, asked), 0);
    if (!asked.operation.parameters.includes('foliageShare') && asked.knowledge.growing.tipsToFoliage[asked.operation.id] === undefined) return known(Math.min(1, before), 'worked-out');
    const share = read('cut.foliageShare');
    return { ...share, value: Math.min(1, Math.round((before + (share.value as number)) * 1000) / 1000) };
  },
  'bend.severity': (read, asked, told) => {
    const radiusMm = told('bend.radiusMm') as number | undefined;
    if (radiusMm === undefined) return undefined;
    const wood = read('cut.branchDiameterMm');
    if (wood.value === undefined) return unknown();
    /* Strain of the outer fibre of a round bar bent to a radius: diameter / (2 x radius), plain beam geometry. */
    const strain = (wood.value as number) / (2 * radiusMm);
    const { firm, severe } = asked.knowledge.growing.bendStrain;
    return known(strain >= severe ? 'severe' : strain >= firm ? 'firm' : 'gentle', 'worked-out');
  },
  'flowers.budsSet': (read, asked) => {
    const set = asked.traits['flowering.budSet']?.is as readonly string[] | undefined;
    if (read('tree.flower').value === 'bud') return known(true, 'given');
    return workOut([read('season.phase')], 'worked-out', (phase) => set?.includes(phase as string) === true);
  },
  'aim.flowers': (_, asked) => known(asked.traits['flowering.grownFor']?.is === true ? 'yes' : 'no', 'worked-out'),
  'aim.trunkGainMm': (read, asked) => {
    const aimed = asked.proposal.tree.aim?.trunkDiameterMm;
    const trunk = read('tree.trunkDiameterMm');
    if (aimed === undefined) return undefined;
    return trunk.value === undefined ? unknown() : known(Math.max(0, aimed - (trunk.value as number)), 'worked-out');
  },
  'cuttings.rooting': (read) => {
    const traits = { softwood: 'softwood', 'semi-ripe': 'semiRipe', hardwood: 'hardwood', root: 'root' } as const;
    const woods = Object.keys(traits) as (keyof typeof traits)[];
    const rooting = woods.map((wood) => read(`species.propagation.${traits[wood]}`));
    return workOut([read('cuttings.wood'), ...rooting], 'worked-out', (wood, ...each) => each[woods.indexOf(wood as keyof typeof traits)]!);
  },
};
