import { bendStrain } from '../structure/bend.js';
import type { Derive } from './asked.js';
import { known, unknown } from './factValue.js';
import { workStrain } from './strain.js';
import { workOut } from './workOut.js';

/** Facts of how much is done, of shoots, bends, flowers and cuttings. */
export const workFacts: Readonly<Record<string, Derive>> = {
  'work.strain': (read, asked) => workStrain(asked.operation, read),
  'bend.severity': (read, asked, told) => {
    const radiusMm = told('bend.radiusMm') as number | undefined;
    if (radiusMm === undefined) return undefined;
    const wood = read('cut.branchDiameterMm');
    if (wood.value === undefined) return unknown();
    const strain = bendStrain(wood.value as number, radiusMm);
    const { firm, severe } = asked.knowledge.growing.bendStrain;
    return known(strain >= severe ? 'severe' : strain >= firm ? 'firm' : 'gentle', 'worked-out');
  },
  'flowers.budsSet': (read, asked) => {
    const set = asked.traits['flowering.budSet']?.is as readonly string[] | undefined;
    if (read('tree.flower').value === 'bud') return known(true, 'given');
    if (set === undefined) return known(false, 'worked-out');
    return workOut([read('season.phase')], 'worked-out', (phase) => set.includes(phase as string));
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
