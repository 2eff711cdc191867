import type { Value } from '../knowledge/knowledge.js';
import { healingRate } from './healing.js';
import type { Asked, Derive, Read } from './asked.js';
import { type FactValue, known, unknown } from './factValue.js';
import { workedNumber } from './workedNumber.js';
import { workOut } from './workOut.js';

const round = (value: number): number => Math.round(value * 1000) / 1000;

/** Shoots of the last two seasons are seldom thicker than a twig: an estimate that any size may yet belie. */
const twig = (read: Read, asked: Asked): FactValue | undefined => {
  if (!asked.operation.parameters.includes('woodAge') || !['this-year', 'last-year'].includes(read('cut.woodAge').value as string)) return undefined;
  return { state: 'estimated', value: asked.knowledge.growing.twigMm, among: { atLeast: 0.1, atMost: 2000 }, from: 'estimated' };
};

/** Diameter of what is cut into, where the structure tells it; else that of the trunk above the roots. */
const bearsMm = (read: Read, asked: Asked): FactValue => asked.built?.bearsMm(asked) ?? read('tree.trunkDiameterMm');

const ratioOf = (branch: FactValue, trunk: FactValue): FactValue | undefined =>
  branch.value === undefined || trunk.value === undefined ? undefined : workedNumber([branch, trunk], (a, b) => Math.min(2, a / Math.max(b, 0.1)));

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
    const each = asked.traits['form.arrangement']?.is === 'opposite' ? 2 : asked.traits['form.arrangement']?.is === 'whorled' ? 3 : 1;
    return known((nodes.value as number) * each, 'worked-out');
  },
  /* On a tree that sheds its leaves no bud left is taken to mean that nothing else is. */
  'cut.foliageLeft': (_, asked, told) => {
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
    return twig(read, asked);
  },
  'cut.branchToTrunk': (read, asked) => ratioOf(read('cut.branchDiameterMm'), bearsMm(read, asked)),
  'cut.leaderToTrunk': (read, asked) => ratioOf(read('cut.branchDiameterMm'), bearsMm(read, asked)),
  /** By area, as live oak's leaf mass goes with the section of its branches: Grabosky, Gilman & Harchick 2007, Urban For. Urban Green. 6:159. A rough model, so an estimate. */
  'cut.foliageShare': (read, asked) => {
    const tips = asked.knowledge.growing.tipsToFoliage[asked.operation.id];
    if (tips !== undefined) {
      const share = read('shoots.shareRemoved');
      return { ...share, value: round((share.value as number) * tips), from: share.state === 'known' ? 'worked-out' : share.from };
    }
    if (asked.operation.id === 'strip-bark' && read('deadwood.on').value === 'trunk') return known(0, 'worked-out');
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
    const ratio = read('cut.branchToTrunk');
    if (ratio.value === undefined) return unknown();
    const wider = asked.knowledge.growing.woundPerBranch['flush'] ?? 1;
    return { ...ratio, value: Math.min(1, round((wider * (ratio.value as number)) / Math.PI + (read('structure.gapNearShare').value as number))), from: 'worked-out' };
  },
};
