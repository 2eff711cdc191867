import type { Issue } from '../knowledge/error.js';
import { structureIssue } from './toldIssues.js';
import type { Branch, Structure, ToldStructure, Trunk } from './tree.js';
import { diameterAt } from './trunkAt.js';

/** What measuring by hand may be off by. */
const slack = 1.1;

/** How high a trunk can reach: to the tree's height where it is told, else as far above its last point as its taper lets it, and never twice as high. */
const topOf = (trunk: Trunk, treeMm: number | undefined): number => {
  const [lowest, highest] = [trunk.points[0], trunk.points.at(-1)];
  const told = trunk.pointsTold ? (highest?.heightMm ?? 0) : 0;
  if (treeMm !== undefined) return Math.max(told, treeMm);
  if (lowest === undefined || highest === undefined || highest.heightMm === lowest.heightMm) return Infinity;
  const taper = (lowest.diameterMm - highest.diameterMm) / (highest.heightMm - lowest.heightMm);
  return highest.heightMm + (taper <= 0 ? highest.heightMm : Math.min(highest.heightMm, highest.diameterMm / taper));
};

/** The thickest that the trunk is at a height or below it. */
const thickestBelow = (trunk: Trunk, heightMm: number): number | undefined => {
  const here = diameterAt(trunk, heightMm)?.atMost;
  return here === undefined ? undefined : Math.max(here, ...trunk.points.filter((point) => point.heightMm <= heightMm).map((point) => point.diameterMm));
};

const branchIssues = (branch: Branch, at: string, structure: Structure): readonly Issue[] => {
  const issues: Issue[] = [];
  const trunk = structure.trunks.find((each) => each.id === branch.trunkId)!;
  const treeMm = structure.heightMm?.certainty === 'told' ? structure.heightMm.value : undefined;
  if (branch.onTrunk && branch.heightMm > topOf(trunk, treeMm) * 1.02) issues.push(structureIssue('impossible', `${at}.heightMm`, branch.heightMm, 'is above the top of its trunk', `the trunk ends at about ${Math.round(topOf(trunk, treeMm))} mm: look at the heights, or tell more points`));
  const bears = branch.onTrunk ? thickestBelow(trunk, branch.heightMm) : structure.branches.find((each) => each.id === branch.from)?.diameterMm?.atMost;
  if (branch.diameterMm !== undefined && bears !== undefined && branch.diameterMm.atLeast > bears * slack) issues.push(structureIssue('impossible', `${at}.${branch.diameterMm.certainty === 'told' ? 'diameterMm' : 'branchToTrunk'}`, Math.round(branch.diameterMm.value * 10) / 10, 'is thicker than what bears it', `what it grows from is ${Math.round(bears)} mm at most: measure again, or tell the trunk’s points`));
  const { lengthMm } = branch;
  if (lengthMm !== undefined && branch.budsAtMm.some((bud) => bud > lengthMm * slack)) issues.push(structureIssue('impossible', `${at}.budsAtMm`, branch.budsAtMm.at(-1), 'lies beyond the tip of the branch', `the branch is ${lengthMm} mm long`));
  if (lengthMm !== undefined && branch.foliageBackToMm !== undefined && branch.foliageBackToMm > lengthMm * slack) issues.push(structureIssue('impossible', `${at}.foliageBackToMm`, branch.foliageBackToMm, 'lies beyond the tip of the branch', `the branch is ${lengthMm} mm long`));
  return issues;
};

/** What cannot be in a structure as it was read: heights, diameters, lengths, shares and wounds that do not fit the tree. */
export const impossible = (structure: Structure, told: ToldStructure): readonly Issue[] => {
  const issues = (told.branches ?? []).flatMap(({ id }, i) => branchIssues(structure.branches.find((branch) => branch.id === id)!, `branches[${i}]`, structure));
  (told.trunks ?? []).forEach(({ from, atMm, points }, i) => {
    const parent = structure.trunks.find((trunk) => trunk.id === from);
    if (parent === undefined || atMm === undefined) return;
    if (atMm > topOf(parent, undefined) * 1.02) issues.push(structureIssue('impossible', `trunks[${i}].atMm`, atMm, 'is above the top of the trunk that it leaves', `that trunk ends at about ${Math.round(topOf(parent, undefined))} mm`));
    const [own, bears] = [points[0]?.diameterMm, thickestBelow(parent, atMm)];
    if (own !== undefined && bears !== undefined && own > bears * slack) issues.push(structureIssue('impossible', `trunks[${i}].points[0].diameterMm`, own, 'is thicker than the trunk that it leaves', `that trunk is ${Math.round(bears)} mm at most: let the thicker one be the main trunk`));
  });
  const shares = structure.branches.filter((branch) => branch.onTrunk && branch.foliageShare?.certainty === 'told').reduce((sum, branch) => sum + branch.foliageShare!.value, 0);
  if (shares > slack) issues.push(structureIssue('impossible', 'branches', undefined, `the shares of foliage come to ${Math.round(shares * 100)} % of the tree`, 'shares of the whole tree come to 1 at most, the top of the trunk among them'));
  structure.wounds.forEach(({ heightMm, widthMm }, i) => {
    const trunkMm = diameterAt(structure.trunks[0]!, heightMm)?.atMost;
    if (trunkMm !== undefined && widthMm > Math.PI * trunkMm * slack) issues.push(structureIssue('impossible', `wounds[${i}].widthMm`, widthMm, 'is wider than the trunk is round', `the trunk is ${Math.round(trunkMm)} mm thick there`));
  });
  return issues;
};
