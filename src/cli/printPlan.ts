import colors from 'picocolors';
import type { Plan, PlanStep } from '../advice/plan/plan.js';
import { workLabel } from '../advice/plan/workLabel.js';
import type { Proposal } from '../contract/types.generated.js';
import type { Knowledge } from '../knowledge/knowledge.js';
import { hanging } from './page/hanging.js';
import type { Page } from './page/page.js';
import { painted, verdictMarks, verdictWords } from './verdictText.js';

const percent = (share: number): string => `${Math.round(share * 100)} %`;

const times = (count: number, one: string, many: string): readonly string[] => (count === 0 ? [] : [count === 1 ? one : `${count} ${many}`]);

/** What a sitting asks, in words and points, and what it comes to with what is owed. */
const strainText = ({ before, asks, sum }: PlanStep['sitting']['strain'], { growing }: Knowledge): string => {
  const { hard, light } = growing.strain;
  const work = [...times(Math.floor(asks / hard), 'a hard job', 'hard jobs'), ...(asks % hard >= light ? ['light work'] : [])].join(' and ') || 'nothing';
  const own = asks === 0 ? work : `${work} (${asks})`;
  return before === 0 ? `strain: ${own}` : `strain: ${own} on ${before} still owed, ${sum} together`;
};

/** What a sitting takes and asks, in one line. */
const sittingText = ({ sitting }: PlanStep, knowledge: Knowledge): string => {
  const { foliageShare, cutAreaShare, rootsRemoved, strain } = sitting;
  return [
    ...(foliageShare === undefined ? [] : [`foliage ${percent(foliageShare)}`]),
    ...(rootsRemoved === undefined ? [] : [`roots ${percent(rootsRemoved)}`]),
    ...(cutAreaShare === undefined ? [] : [`cuts ${percent(cutAreaShare)} of the trunk's section`]),
    strainText(strain, knowledge),
  ].join('; ');
};

const treeText = ({ treeAfter }: Plan): string => {
  const { log = [], lastRepotted, growing, standing, structure } = treeAfter;
  return [
    `log of ${log.length}`,
    ...(lastRepotted === undefined ? [] : [`last repotted ${lastRepotted}`]),
    ...(growing === undefined ? [] : [`in ${growing === 'ground' ? 'the ground' : `a ${growing.replaceAll('-', ' ')}`}`]),
    ...(standing === undefined ? [] : [`standing ${standing === 'outdoors' ? standing : `in a ${standing.replaceAll('-', ' ')}`}`]),
    ...(structure?.branches === undefined ? [] : [`branches ${structure.branches.filter((branch) => branch.dead !== true).length}, wounds ${(structure.wounds ?? []).length}`]),
  ].join('; ');
};

/** A plan for a person: the verdict, each sitting with what it takes and why, what would do instead, and the tree after it. */
export const printPlan = (plan: Plan, knowledge: Knowledge, page: Page): string => {
  const { mark, paint } = verdictMarks[plan.verdict];
  const out: string[] = [hanging(`${paint(colors.bold(`${mark} ${verdictWords(plan.verdict).toUpperCase()}`))}  `, plan.because.text, page)];
  for (const step of plan.steps) {
    out.push('', `${colors.bold(step.date)}  ${painted(step.sitting.verdict)}`);
    for (const assessment of step.operations) {
      const label = workLabel((assessment.proposal as unknown as Proposal).operation, knowledge);
      const why = assessment.findings.filter((finding) => finding.fires === 'certainly').slice(0, 2).map((finding) => finding.title.text).join('; ') || assessment.summary.text.replace(/\.$/, '');
      out.push(hanging(`  ${verdictMarks[assessment.verdict].paint(verdictMarks[assessment.verdict].mark)} `, assessment.verdict === 'allowed' ? label : `${label}: ${why}`, page));
    }
    out.push(hanging('  ', colors.dim(sittingText(step, knowledge)), page));
  }
  out.push('', hanging('', `Strain at its most: ${plan.strain.most} on ${plan.strain.on} (a hard job asks ${knowledge.growing.strain.hard}, light work ${knowledge.growing.strain.light}; ${knowledge.growing.strain.halvesInGrowingDays} growing days halve it on a steady tree).`, page));
  out.push(hanging('', `The tree after it: ${treeText(plan)}.`, page));
  if (plan.changes.length > 0) {
    out.push('', colors.bold('Better'));
    for (const change of plan.changes) out.push(hanging('- ', `${change.why.text}: ${painted(change.verdict)}`, page));
  }
  return `${out.join('\n')}\n`;
};
