import type { Derive } from './asked.js';
import { type FactValue, known, type Span, unknown } from './factValue.js';
import { foliageTaken, sameSitting } from './logEntries.js';
import { type Strain, strainOf, workStrain } from './strain.js';
import { strainPoints, strainStill } from './strainPoints.js';
import { workOut } from './workOut.js';

/** What a number may be, at least and at most. */
const spanOf = ({ value, among }: FactValue): Span => {
  if (Array.isArray(among)) return { atLeast: Math.min(...(among as readonly number[])), atMost: Math.max(...(among as readonly number[])) };
  return among === undefined ? { atLeast: value as number, atMost: value as number } : (among as Span);
};

/** Two numbers added, each as well known as it is. */
const addUp = (one: FactValue, other: FactValue): FactValue => {
  const sum = (a: number, b: number): number => Math.round((a + b) * 10) / 10;
  const [a, b] = [spanOf(one), spanOf(other)];
  const among = { atLeast: sum(a.atLeast, b.atLeast), atMost: sum(a.atMost, b.atMost) };
  if (one.value === undefined || other.value === undefined) return unknown(among);
  const value = sum(one.value as number, other.value as number);
  if (among.atLeast !== among.atMost) return { state: 'estimated', value, among, from: 'estimated' };
  return { state: one.state === 'assumed' || other.state === 'assumed' ? 'assumed' : 'known', value, from: 'worked-out' };
};

/** Facts of how much is done, of shoots, bends, flowers and cuttings. */
export const workFacts: Readonly<Record<string, Derive>> = {
  'work.strain': (read, asked) => workStrain(asked.operation, read),
  'sitting.hardOperations': (read, asked) => {
    const before = sameSitting(asked.proposal, asked.day).filter((entry) => strainOf(asked, entry) === 'hard').length;
    return workOut([read('work.strain')], 'worked-out', (strain) => before + (strain === 'hard' ? 1 : 0));
  },
  'sitting.strain': (read, asked) => {
    const before = sameSitting(asked.proposal, asked.day);
    return workOut([read('work.strain')], 'worked-out', (strain) => strainPoints(before, asked, strain as Strain));
  },
  'history.strain': strainStill,
  'sitting.strainSum': (read) => addUp(read('sitting.strain'), read('history.strain')),
  'sitting.foliageShare': (read, asked) => {
    const before = sameSitting(asked.proposal, asked.day).reduce((sum, entry) => sum + foliageTaken(entry, asked.knowledge), 0);
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
