import type { Assessment } from '../contract/types.generated.js';
import type { Asked, Read } from '../facts/asked.js';
import { healingRate } from '../facts/healing.js';
import { daysInYear } from '../season/yearDay.js';
import { weeksToMark } from '../structure/weeksToMark.js';
import { message } from './message.js';

type Expect = Assessment['expect'];

const likely = { sure: 'sure', good: 'likely', fair: 'unsure', poor: 'unlikely', none: 'none' } as const;

/** Years to a tenth; past two centuries nobody counts. */
const years = (value: number): number => Math.round(Math.min(200, value) * 10) / 10;

/** Weeks of growth after which wire marks: from measured thickening where it is told, since last season's ring is the tree's own; else from what growers find with its kind. */
const wireMarks = ({ knowledge, proposal, traits, day, grownDays }: Asked, read: Read): [number, number] | undefined => {
  const { depthMm, peak } = knowledge.growing.wireMark;
  const season = day === undefined ? undefined : grownDays(day - daysInYear, day, read('tree.standing').value as string);
  const ring = read('tree.ringMm').value as number | undefined;
  if (proposal.tree.trunk?.thickenedMm !== undefined && ring !== undefined && ring > 0 && season !== undefined && season.days > 0) {
    const { mean, atPeak } = weeksToMark(ring, season.days / 7, depthMm, peak);
    return [Math.round(atPeak), Math.round(mean)];
  }
  const usual = traits['wood.markingWeeks']?.is as number | undefined;
  return usual === undefined ? undefined : [Math.round(usual / peak), usual];
};

/** What to expect of the work: how long wounds stay open, how far wood dries back, when the tree is itself again, whether shoots come. */
export const expectationsOf = (asked: Asked, read: Read): Expect => {
  const { operation, knowledge, traits } = asked;
  const expect: Expect = {};
  const width = operation.leavesWound && operation.parameters.includes('branchDiameterMm') ? (read('wound.widthMm').value as number | undefined) : undefined;
  if (width !== undefined) {
    const rate = healingRate(read, asked);
    if (rate.leastMm > 0) expect.closureYears = [years(width / (2 * rate.mostMm)), years(width / (2 * rate.leastMm))];
  }
  const dieBack = traits['healing.dieBackMm']?.is as readonly [number, number] | undefined;
  if (dieBack !== undefined && ['cut-back', 'trunk-chop', 'remove-branch'].includes(operation.id)) expect.dieBackMm = [dieBack[0], dieBack[1]];
  const strain = read('work.strain').value as string | undefined;
  const weeks = strain === undefined ? undefined : knowledge.growing.recoveryWeeks[strain];
  if (weeks !== undefined && weeks[1] > 2) {
    const slower = 1 / (knowledge.growing.vigour[read('tree.vigour').value as string] ?? 1);
    expect.recoveryWeeks = [Math.round(weeks[0] * slower), Math.round(weeks[1] * slower)];
  }
  if (operation.id === 'wire') {
    const mark = wireMarks(asked, read);
    if (mark !== undefined) expect.wireMarksWeeks = mark;
  }
  if (operation.id === 'cut-back' || operation.id === 'trunk-chop') {
    const budding = read('cut.rebudding').value as keyof typeof likely | undefined;
    const below = read('cut.below').value as string | undefined;
    if (budding !== undefined) {
      expect.backBudding = likely[budding];
      if (below !== undefined) expect.regrowth = message(knowledge, 'expect.regrowth', { below: message(knowledge, `expect.below.${below}`).text, budding: message(knowledge, `expect.budding.${likely[budding]}`).text });
    }
  }
  return expect;
};
