import colors from 'picocolors';
import type { Assessment } from '../contract/types.generated.js';
import type { FactWord, Knowledge, Value } from '../knowledge/knowledge.js';
import { shownValue } from '../advice/message.js';
import { severity } from '../engine/verdict.js';
import { hanging } from './page/hanging.js';
import type { Page } from './page/page.js';
import { painted, verdictMarks as marks, verdictWords as words } from './verdictText.js';

type Verdict = Assessment['verdict'];

const sourcesText = (sources: Assessment['findings'][number]['sources']): string =>
  sources.map((source) => {
    const known = source.from === 'memory' ? ', recalled' : '';
    return source.id === 'common-practice' ? 'common practice' : source.author === undefined ? `${source.title.replace(/^\[(.*)\]$/, '$1')}${known}` : `${source.author}${source.year === undefined ? '' : ` ${source.year}`}${known}`;
  }).join('; ');

/** What a bare number would leave open. */
const unitOf = (word: FactWord | undefined): string => (word?.unit === 'mm' || word?.unit === '°C' ? ` ${word.unit}` : '');

/** A value as a person reads it, with its unit. */
const valueText = (value: Value, fact: string, knowledge: Knowledge): string => {
  const word = knowledge.facts[fact];
  const text = shownValue(value, word, knowledge);
  return typeof text === 'boolean' ? (text ? 'yes' : 'no') : `${text}${unitOf(word)}`;
};

const answerText = (answer: { readonly value?: unknown; readonly below?: number; readonly atLeast?: number }, fact: string, knowledge: Knowledge): string => {
  const shown = (value: Value): string => valueText(value, fact, knowledge);
  return answer.value !== undefined ? shown(answer.value as Value) : answer.atLeast === undefined ? (answer.below === undefined ? 'any' : `below ${shown(answer.below)}`) : answer.below === undefined ? `from ${shown(answer.atLeast)}` : `${shown(answer.atLeast)} to ${shown(answer.below)}`;
};

/** What an answer brings, and the worst that it still leaves open. */
const outcomeText = ({ verdict, range }: { readonly verdict: Verdict; readonly range?: readonly Verdict[] }): string => {
  const worst = range?.[1] ?? verdict;
  return `${painted(verdict)}${severity(worst) > severity(verdict) ? `, at worst ${words(worst)}` : ''}`;
};

const groupedAnswers = (answers: Assessment['questions'][number]['answers'], fact: string, knowledge: Knowledge): string => {
  const byOutcome = new Map<string, string[]>();
  for (const answer of answers) {
    const outcome = outcomeText(answer);
    byOutcome.set(outcome, [...(byOutcome.get(outcome) ?? []), answerText(answer, fact, knowledge)]);
  }
  return [...byOutcome].map(([outcome, values]) => `${values.join(', ')}: ${outcome}`).join('; ');
};

const span = ([least, most]: readonly [number, number], unit: string): string => `${least === most ? least : `${least} to ${most}`} ${unit}`;

const expectText = (expect: Assessment['expect']): readonly string[] => [
  ...(expect.closureYears === undefined ? [] : [`wound closed in ${span(expect.closureYears, 'years')}`]),
  ...(expect.dieBackMm === undefined ? [] : [`dies back ${span(expect.dieBackMm, 'mm')}`]),
  ...(expect.regrowth === undefined ? [] : [expect.regrowth.text.replace(/\.$/, '').replace(/^New/, 'new')]),
  ...(expect.wireMarksWeeks === undefined ? [] : [`wire begins to mark after ${span(expect.wireMarksWeeks, 'weeks of growth')}`]),
  ...(expect.recoveryWeeks === undefined ? [] : [`itself again after ${span(expect.recoveryWeeks, 'growing weeks')}`]),
];

/** Another value is worth a line where it makes things worse, or better for certain. */
const matters = (answer: { readonly verdict: Verdict; readonly range?: readonly Verdict[] }, verdict: Verdict): boolean =>
  severity(answer.verdict) > severity(verdict) || severity(answer.range?.[1] ?? answer.verdict) < severity(verdict);

const inOrder = (_: string, value: unknown): unknown => (typeof value === 'object' && value !== null ? Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1))) : value);

const mostAssumed = 5;

const worstOf = (assumption: { readonly otherwise: readonly { readonly verdict: Verdict }[] }): number => Math.max(...assumption.otherwise.map((answer) => severity(answer.verdict)));

export interface PrintOptions extends Page {
  /** All that is taken for granted, all sources and cautions, not only the first. */
  readonly full: boolean;
}

/** An assessment for a person: the verdict first, why, what it depends on, what is better, what comes after. */
export const printAssessment = (assessment: Assessment, knowledge: Knowledge, { full, ...page }: PrintOptions): string => {
  const out: string[] = [];
  const heading = (text: string): void => { out.push('', colors.bold(text)); };
  const { verdict, findings, questions, assumed, alternatives, after, prunings, cautions, notices, basis, proposal } = assessment;
  const asked = proposal as { readonly operation: { readonly op: string }; readonly date?: string };
  const species = knowledge.species[basis.species];
  const title = `${knowledge.operations[asked.operation.op]?.label ?? asked.operation.op}, ${species?.commonNames['en']?.[0] ?? species?.name ?? basis.species}${species?.commonNames['en'] === undefined ? '' : ` (${species.name})`}${asked.date === undefined ? '' : `, ${asked.date}`}`;
  out.push(hanging(`${marks[verdict].paint(colors.bold(`${marks[verdict].mark} ${words(verdict).toUpperCase()}`))}  `, title, page));
  if (!assessment.settled) out.push(hanging('  ', `Not settled: ${words(assessment.range[0]!)} at best, ${words(assessment.range[1]!)} at worst.`, page));
  if (findings.length === 0) out.push(hanging('  ', assessment.summary.text, page));
  const shown = full ? findings : findings.slice(0, 4);
  for (const finding of shown) {
    out.push('');
    out.push(hanging(`${marks[finding.verdict].paint(marks[finding.verdict].mark)} `, `${colors.bold(finding.title.text)}${finding.fires === 'possibly' ? ' (perhaps)' : ''}: ${knowledge.wording[`costs.${finding.costs}`] ?? finding.costs}`, page));
    out.push(hanging('  ', finding.because.text, page));
    const disputed = finding.disputed === undefined ? '' : `; sources disagree on ${finding.disputed.map((id) => knowledge.facts[id]?.meaning ?? id).join(', ')}`;
    out.push(hanging('  ', colors.dim(`${finding.strength} evidence: ${sourcesText(finding.sources)}${disputed}`), { ...page, units: 'metric' }));
  }
  if (findings.length > shown.length) out.push('', hanging('  ', colors.dim(`${findings.length - shown.length} more with --full`), page));
  if (questions.length > 0) {
    heading('What would settle it');
    for (const question of questions) out.push(hanging('? ', `${question.ask.text}${question.answers.length === 0 ? '' : ` ${groupedAnswers(question.answers, question.fact, knowledge)}`}`, page));
  }
  const worth = full ? assumed : assumed.map((each) => ({ ...each, otherwise: each.otherwise.filter((answer) => matters(answer, verdict)) })).filter((each) => each.otherwise.length > 0).sort((a, b) => worstOf(b) - worstOf(a)).slice(0, mostAssumed);
  if (worth.length > 0) {
    heading('Taken for granted');
    for (const each of worth) {
      const value = each.value === null ? 'not known' : valueText(each.value as Value, each.fact, knowledge);
      out.push(hanging('- ', `${knowledge.facts[each.fact]?.label ?? knowledge.facts[each.fact]?.meaning ?? each.fact}: ${value} (${groupedAnswers(each.otherwise as Assessment['questions'][number]['answers'], each.fact, knowledge)})`, page));
    }
  }
  const ways = assessment.changes.filter((change) => 'operation' in change.patch);
  const said = new Set(ways.map((change) => JSON.stringify({ ...(proposal as { readonly operation: object }).operation, ...(change.patch['operation'] as object) }, inOrder)));
  const others = alternatives.filter((alternative) => !said.has(JSON.stringify(alternative.operation, inOrder)));
  if (ways.length + others.length > 0) {
    heading('Better');
    for (const change of ways) out.push(hanging('- ', `the same, ${change.why.text}: ${painted(change.verdict)}`, page));
    for (const alternative of others) out.push(hanging('- ', `${alternative.why.text}: ${painted(alternative.verdict)}`, page));
  }
  if (assessment.windows.length > 0) {
    heading('When');
    for (const window of assessment.windows) out.push(hanging('- ', `${window.from} to ${window.to} (give or take ${Math.round(window.plusMinusDays)} days)${window.phase === undefined ? '' : `, ${knowledge.phases[window.phase]?.label ?? window.phase}`}: ${painted(window.verdict)}`, page));
  }
  const expect = expectText(assessment.expect);
  if (expect.length > 0 && verdict !== 'advise-against') {
    heading('Expect');
    out.push(hanging('- ', `${expect.join('; ')}.`, page));
  }
  if (after.length > 0 && (full || verdict !== 'advise-against')) {
    heading('After');
    for (const each of after) out.push(hanging('- ', `${each.from === undefined ? '' : each.from === each.to ? `${each.from}: ` : `${each.from} to ${each.to!}: `}${each.do.text}`, page));
  }
  if (prunings.length > 0) {
    heading('Prunings');
    out.push(hanging('- ', `What is cut off may be struck as ${prunings.map((each) => String((each.operation as { readonly wood?: unknown }).wood)).join(' or ')} cuttings.`, page));
  }
  if (cautions.length > 0) {
    heading('Caution');
    for (const caution of cautions) out.push(hanging('- ', caution.text, page));
  }
  for (const notice of notices) out.push('', hanging('i ', notice.text, page));
  const phase = basis.phase === undefined ? 'phase not known' : `${knowledge.phases[basis.phase]?.label ?? basis.phase} (${basis.phaseFrom === 'seen' ? 'seen' : 'by the season'})`;
  out.push('', hanging('', colors.dim(`Stands on: ${phase}; ${basis.where.text}; traits of the ${basis.traitsFrom}; knowledge ${basis.knowledge}`), page));
  return `${out.join('\n')}\n`;
};
