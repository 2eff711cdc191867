import colors from 'picocolors';
import type { Plan, PlanStep } from '../advice/plan/plan.js';
import type { Assessment, Proposal } from '../contract/types.generated.js';
import type { Knowledge } from '../knowledge/knowledge.js';
import { hanging } from './hanging.js';
import { painted, verdictMarks, verdictWords } from './verdictText.js';

const percent = (share: number): string => `${Math.round(share * 100)} %`;

const operationOf = (assessment: Assessment): Proposal['operation'] => (assessment.proposal as unknown as Proposal).operation;

/** What a sitting takes and asks, in one line. */
const sittingText = ({ sitting }: PlanStep): string => {
  const { foliageShare, cutAreaShare, rootsRemoved, strain } = sitting;
  const owed = strain.before === 0 ? `asks ${strain.asks}` : `asks ${strain.asks}, ${strain.before} still owed: ${strain.sum}`;
  return [
    ...(foliageShare === undefined ? [] : [`foliage ${percent(foliageShare)}`]),
    ...(rootsRemoved === undefined ? [] : [`roots ${percent(rootsRemoved)}`]),
    ...(cutAreaShare === undefined ? [] : [`cuts ${percent(cutAreaShare)} of the trunk's section`]),
    `strain: ${owed}`,
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
export const printPlan = (plan: Plan, knowledge: Knowledge, width: number): string => {
  const { mark, paint } = verdictMarks[plan.verdict];
  const out: string[] = [hanging(`${paint(colors.bold(`${mark} ${verdictWords(plan.verdict).toUpperCase()}`))}  `, plan.because.text, width + 20)];
  for (const step of plan.steps) {
    out.push('', `${colors.bold(step.date)}  ${painted(step.sitting.verdict)}`);
    for (const assessment of step.operations) {
      const operation = operationOf(assessment);
      const label = `${knowledge.operations[operation.op]?.label ?? operation.op}${operation.branch === undefined ? '' : ` (${operation.branch})`}`;
      const why = assessment.findings.filter((finding) => finding.fires === 'certainly').slice(0, 2).map((finding) => finding.title.text).join('; ') || assessment.summary.text.replace(/\.$/, '');
      out.push(hanging(`  ${verdictMarks[assessment.verdict].paint(verdictMarks[assessment.verdict].mark)} `, assessment.verdict === 'allowed' ? label : `${label}: ${why}`, width + 4));
    }
    out.push(hanging('  ', colors.dim(sittingText(step)), width + 8));
  }
  out.push('', hanging('', `Strain at its most: ${plan.strain.most} on ${plan.strain.on} (a hard job asks 4, a light one 1; growth makes it good).`, width));
  out.push(hanging('', `The tree after it: ${treeText(plan)}.`, width));
  if (plan.changes.length > 0) {
    out.push('', colors.bold('Better'));
    for (const change of plan.changes) out.push(hanging('- ', `${change.why.text}: ${painted(change.verdict)}`, width));
  }
  return `${out.join('\n')}\n`;
};
