import type { Value } from '../knowledge/knowledge.js';
import type { Measure } from '../structure/measure.js';
import { diameterAt } from '../structure/trunkAt.js';
import { type GirthWound, woundedGirthAt } from '../structure/woundedGirth.js';
import { healingRate } from './healing.js';
import type { Asked, Derive, Read } from './asked.js';
import { branchAsked } from './branchAsked.js';
import { chopHeightMm, foliageAbove, greenBelow, newLeader } from './chop.js';
import { type FactValue, known, unknown } from './factValue.js';
import { takenToo } from './goneInSitting.js';
import { measured } from './measured.js';
import { workedNumber } from './workedNumber.js';
import { workOut } from './workOut.js';

const round = (value: number): number => Math.round(value * 1000) / 1000;

/** A cut that leaves nodes is made somewhere along the branch, where it is thinner than at its joint. */
const alongBranch = ({ operation }: Asked): boolean => operation.parameters.includes('nodesLeft');

/** A size of the branch that the work is on, or that is to lead after a chop; along the branch it is at most what it is at the joint. */
const ofBranchAsked = (asked: Asked, size: 'diameterMm' | 'aspectRatio'): FactValue | undefined => {
  const told: Measure | undefined = (asked.operation.id === 'trunk-chop' ? newLeader(asked) : branchAsked(asked))?.[size];
  if (told === undefined) return undefined;
  return alongBranch(asked) ? unknown({ atLeast: 0, atMost: round(told.atMost) }) : measured(told);
};

/** Shoots of the last two seasons are seldom thicker than a twig: an estimate that any size may yet belie. */
const twig = (read: Read, asked: Asked): FactValue | undefined => {
  if (!asked.operation.parameters.includes('woodAge') || !['this-year', 'last-year'].includes(read('cut.woodAge').value as string)) return undefined;
  return { state: 'estimated', value: asked.knowledge.growing.twigMm, among: { atLeast: 0.1, atMost: 2000 }, from: 'estimated' };
};

/** Diameter of what is cut into: the trunk just above the joint, or the branch that bears it; the trunk above the roots where nothing tells more. */
const bearsMm = (read: Read, asked: Asked): FactValue => {
  const branch = branchAsked(asked);
  const { structure } = asked;
  if (structure !== undefined && branch !== undefined && !branch.onTrunk) {
    const bearer = structure.branches.find(({ id }) => id === branch.from)?.diameterMm;
    return bearer === undefined ? unknown() : measured(bearer);
  }
  const heightMm = asked.operation.id === 'trunk-chop' ? chopHeightMm(asked) : (branch?.heightMm ?? asked.proposal.operation.heightMm);
  const trunk = structure?.trunks.find(({ id }) => id === (branch?.trunkId ?? structure.trunks[0]!.id));
  const here = trunk === undefined || heightMm === undefined ? undefined : diameterAt(trunk, heightMm);
  return here === undefined ? read('tree.trunkDiameterMm') : measured(here);
};

const ratioOf = (branch: FactValue, trunk: FactValue): FactValue | undefined =>
  branch.value === undefined || trunk.value === undefined ? undefined : workedNumber([branch, trunk], (a, b) => Math.min(2, a / Math.max(b, 0.1)));

/** The girth wounded at the level of a told branch: by this cut, the others of the sitting and old wounds that are still open, where arcs overlap counted once. */
const girthAtLevel = (read: Read, asked: Asked): FactValue | undefined => {
  const [branch, width] = [branchAsked(asked), read('wound.widthMm')];
  const { structure } = asked;
  if (structure === undefined || branch?.onTrunk !== true || width.value === undefined) return undefined;
  const trunk = structure.trunks.find(({ id }) => id === branch.trunkId)!;
  const trunkMm = diameterAt(trunk, branch.heightMm);
  if (trunkMm === undefined || trunkMm.value === 0) return undefined;
  const side = ({ azimuthDeg }: { readonly azimuthDeg?: number }): { readonly azimuthDeg?: number } => (azimuthDeg === undefined ? {} : { azimuthDeg });
  const others = takenToo(asked).filter((other) => other.branch.trunkId === trunk.id && other.branch.onTrunk).flatMap(({ branch: other, written }): readonly GirthWound[] => {
    const diameter = (written['branchDiameterMm'] as number | undefined) ?? other.diameterMm?.value;
    return diameter === undefined ? [] : [{ heightMm: other.heightMm, ...side(other), widthMm: diameter * (asked.knowledge.growing.woundPerBranch[(written['finish'] as string | undefined) ?? 'collar'] ?? 1) }];
  });
  const open = trunk === structure.trunks[0] ? structure.wounds.filter(({ closed }) => !closed) : [];
  const at = (widthMm: number, diameterMm: number): Measure => woundedGirthAt(branch.heightMm, diameterMm, [{ heightMm: branch.heightMm, ...side(branch), widthMm }, ...others, ...open]);
  const sure = at(width.value as number, trunkMm.value);
  const share = workedNumber([width, measured(trunkMm)], (widthMm, diameterMm) => at(widthMm, Math.max(diameterMm, 0.1)).value);
  return sure.atLeast === sure.atMost ? share : { ...share, state: 'estimated', among: { atLeast: round(sure.atLeast), atMost: round(Math.max(sure.atMost, (share.among as { readonly atMost: number } | undefined)?.atMost ?? 0)) }, from: 'estimated' };
};

/** What is left below the cut to grow from, of what was told of foliage, buds and the age of the wood. */
const below = (read: Read, asked: Asked): FactValue => {
  const buds = read('cut.budsLeft');
  const told = buds.state === 'known' ? (buds.value as number) : undefined;
  const leafless = asked.traits['form.leafHabit']?.is === 'deciduous';
  const wood = asked.operation.parameters.includes('woodAge') ? read('cut.woodAge') : known('old', 'worked-out');
  return workOut([read('cut.foliageLeft').value === undefined ? { ...read('cut.foliageLeft'), value: 'untold' } : read('cut.foliageLeft'), wood.value === undefined ? { ...wood, value: 'untold' } : wood], 'worked-out', (foliage, age): Value => {
    /* On a tree that sheds its leaves what is green below a cut stands on the buds that are told, however few. */
    if (told !== undefined && leafless && foliage === true) return 'buds';
    if (told !== undefined && told >= 1 && (leafless || foliage === false)) return 'buds';
    if (foliage === true) return 'foliage';
    if (told !== undefined && told >= 1) return 'untold';
    const young = age === 'this-year' || age === 'last-year';
    if (foliage === false) return told === undefined && young ? 'buds' : 'bare';
    if (told === 0) return leafless ? 'bare' : 'untold';
    return young ? 'buds' : 'untold';
  });
};

/** What may be there where nothing tells it for certain: buds that are told rule out bare wood, and foliage may yet stand beside them. */
const untoldBelow = (fact: FactValue, leafless: boolean, buds: number | undefined): FactValue =>
  fact.value !== 'untold' ? fact : unknown(buds !== undefined && buds >= 1 ? ['foliage', 'buds'] : buds === 0 && !leafless ? ['foliage', 'bare'] : ['foliage', 'buds', 'bare']);

/** Told that nothing green is left, and nothing of buds or young wood: none are taken to be there. */
const bareByWord = (read: Read): FactValue | undefined =>
  read('cut.foliageLeft').value === false && read('cut.woodAge').value === 'old' ? { state: 'assumed', value: 0, from: 'assumed' } : undefined;

/** Facts of cuts and wounds. */
export const cutFacts: Readonly<Record<string, Derive>> = {
  'cut.nodesLeft': bareByWord,
  'cut.budsLeft': (read, asked) => {
    const nodes = read('cut.nodesLeft');
    if (nodes.state !== 'known') return bareByWord(read);
    /* On an evergreen a node behind the last green carries no bud that shows. */
    if (asked.traits['form.leafHabit']?.is === 'evergreen' && greenBelow(asked, nodes.value as number) === false) return known(0, 'worked-out');
    const each = asked.traits['form.arrangement']?.is === 'opposite' ? 2 : asked.traits['form.arrangement']?.is === 'whorled' ? 3 : 1;
    return known((nodes.value as number) * each, 'worked-out');
  },
  /* On a tree that sheds its leaves no bud left is taken to mean that nothing else is. */
  'cut.foliageLeft': (_, asked, told) => {
    const green = greenBelow(asked, told('cut.nodesLeft') as number | undefined);
    if (green !== undefined) return known(green, 'worked-out');
    const none = (told('cut.budsLeft') ?? told('cut.nodesLeft')) === 0 && asked.traits['form.leafHabit']?.is === 'deciduous';
    return none ? { state: 'assumed', value: false, from: 'assumed' } : undefined;
  },
  /* Told that nothing green is left, and not how old the wood is: old wood is taken. */
  'cut.woodAge': (read) => (read('cut.foliageLeft').value === false ? { state: 'assumed', value: 'old', from: 'assumed' } : undefined),
  'cut.below': (read, asked) => {
    const buds = read('cut.budsLeft');
    return untoldBelow(below(read, asked), asked.traits['form.leafHabit']?.is === 'deciduous', buds.state === 'known' ? (buds.value as number) : undefined);
  },
  'cut.rebudding': (read, asked) => {
    const trait = read(asked.operation.id === 'trunk-chop' ? 'species.budding.stump' : 'species.budding.bareWood');
    return workOut([read('cut.below'), trait], 'worked-out', (left, budding) => (left === 'bare' ? budding : 'sure'));
  },
  'cut.branchDiameterMm': (read, asked, told) => {
    const ratio = told('cut.branchToTrunk') as number | undefined;
    const trunk = bearsMm(read, asked);
    if (ratio !== undefined && trunk.value !== undefined) return workedNumber([trunk], (diameter) => ratio * diameter);
    return ofBranchAsked(asked, 'diameterMm') ?? twig(read, asked);
  },
  'cut.branchToTrunk': (read, asked, told) =>
    (told('cut.branchDiameterMm') === undefined ? ofBranchAsked(asked, 'aspectRatio') : undefined) ?? ratioOf(read('cut.branchDiameterMm'), bearsMm(read, asked)),
  'cut.leaderToTrunk': (read, asked) => ratioOf(read('cut.branchDiameterMm'), bearsMm(read, asked)),
  /** By area, as live oak's leaf mass goes with the section of its branches: Grabosky, Gilman & Harchick 2007, Urban For. Urban Green. 6:159. A rough model, so an estimate. */
  'cut.foliageShare': (read, asked) => {
    const tips = asked.knowledge.growing.tipsToFoliage[asked.operation.id];
    if (tips !== undefined) {
      const share = read('shoots.shareRemoved');
      const branch = branchAsked(asked)?.foliageShare;
      if (branch !== undefined) return workedNumber([share, measured(branch)], (taken, of) => taken * tips * of);
      return { ...share, value: round((share.value as number) * tips), from: share.state === 'known' ? 'worked-out' : share.from };
    }
    if (asked.operation.id === 'trunk-chop') return foliageAbove(asked);
    if (asked.operation.leaves.takesBranch !== true) return undefined;
    const branch = branchAsked(asked)?.foliageShare;
    if (branch !== undefined) return measured(branch);
    if (asked.operation.id !== 'remove-branch') return undefined;
    const ratio = read('cut.branchToTrunk');
    if (ratio.value === undefined) return undefined;
    const share = Math.min(1, (ratio.value as number) ** 2);
    return { state: 'estimated', value: round(share), among: { atLeast: 0, atMost: 1 }, from: 'estimated' };
  },
  'cut.stubDry': (read, asked) => {
    const age = read('history.stubAgeDays');
    return age.state === 'known' ? known((age.value as number) >= asked.knowledge.growing.stubDryDays, 'log') : undefined;
  },
  'wound.widthMm': (read, asked) => {
    if (asked.operation.id === 'trunk-chop') {
      const trunk = bearsMm(read, asked);
      return trunk.value === undefined ? unknown() : { ...trunk, from: 'worked-out' };
    }
    const [branch, finish] = [read('cut.branchDiameterMm'), read('cut.finish')];
    if (branch.value === undefined) return unknown();
    return workedNumber([branch, { ...finish, value: asked.knowledge.growing.woundPerBranch[finish.value as string] ?? 1 }], (diameter, wider) => diameter * wider);
  },
  'wound.closureYears': (read, asked) => {
    const width = read('wound.widthMm');
    if (width.value === undefined) return unknown();
    const rate = healingRate(read, asked);
    return { state: width.state === 'known' ? rate.state : width.state, value: rate.leastMm + rate.mostMm > 0 ? round(Math.min(200, (width.value as number) / (rate.leastMm + rate.mostMm))) : 200, from: 'worked-out' };
  },
  'wound.girthShare': (read, asked) => {
    if (asked.operation.id === 'strip-bark') {
      const on = read('deadwood.on');
      return on.value === 'branch' ? known(0, 'worked-out') : undefined;
    }
    const told = girthAtLevel(read, asked);
    if (told !== undefined) return told;
    const ratio = read('cut.branchToTrunk');
    if (ratio.value === undefined) return unknown();
    const wider = asked.knowledge.growing.woundPerBranch['flush'] ?? 1;
    return { ...ratio, value: Math.min(1, round((wider * (ratio.value as number)) / Math.PI + (read('structure.gapNearShare').value as number))), from: 'worked-out' };
  },
};
