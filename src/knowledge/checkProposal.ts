import { utc } from '@date-fns/utc';
import { isValid, parseISO } from 'date-fns';
import { proposalErrors } from '../contract/validators.js';
import type { Proposal } from '../contract/types.generated.js';
import { type Issue, SparebudError } from './error.js';
import type { Knowledge, Value } from './knowledge.js';
import { schemaIssues } from './schemaIssues.js';

/** The same dates come again and again; past so many that were found real they are forgotten. */
const mostKept = 4096;
const real = new Set<string>();

/** Whether an ISO date of any exactness is one of the calendar. */
const realDate = (iso: string): boolean => {
  if (real.has(iso)) return true;
  if (!isValid(parseISO(iso, { in: utc }))) return false;
  if (real.size >= mostKept) real.clear();
  real.add(iso);
  return true;
};

/** The issue of a date that is in no calendar, or none. */
export const noSuchDay = (path: string, iso: string): readonly Issue[] =>
  realDate(iso) ? [] : [{ code: 'bad-date', path, message: `\`${path.endsWith('Frost') ? iso.slice(5) : iso}\` in \`${path}\` is not a day of the calendar`, found: iso, help: 'look at the month and the day' }];

const dateIssues = (proposal: Proposal): readonly Issue[] => {
  const told: [string, string | undefined][] = [['date', proposal.date]];
  if (proposal.tree.lastRepotted !== 'never') told.push(['tree.lastRepotted', proposal.tree.lastRepotted]);
  (proposal.tree.log ?? []).forEach((entry, i) => told.push([`tree.log[${i}].date`, entry['date'] as string | undefined]));
  (proposal.where?.daily ?? []).forEach((reading, i) => told.push([`where.daily[${i}].date`, reading.date]));
  for (const frost of ['lastFrost', 'firstFrost'] as const) if (proposal.where?.[frost] !== undefined) told.push([`where.${frost}`, `2024-${proposal.where[frost]}`]);
  return told.flatMap(([path, iso]) => (iso === undefined ? [] : noSuchDay(path, iso)));
};

const whereIssues = (proposal: Proposal): readonly Issue[] => {
  const { where } = proposal;
  if (where === undefined) return [];
  const issues: Issue[] = [];
  const pairs = [['latitude', 'longitude', false], ['monthlyMinC', 'monthlyMaxC', true]] as const;
  for (const [one, other, both] of pairs) {
    if (both && (where[one] === undefined) !== (where[other] === undefined)) {
      const missing = where[one] === undefined ? one : other;
      issues.push({ code: 'missing', path: `where.${missing}`, message: `\`${missing}\` is missing in \`where\``, help: `tell both ${one} and ${other}` });
    }
  }
  where.monthlyMinC?.forEach((min, i) => {
    const max = where.monthlyMaxC?.[i];
    if (max !== undefined && max < min) issues.push({ code: 'impossible', path: `where.monthlyMaxC[${i}]`, message: `\`${max}\` in \`where.monthlyMaxC[${i}]\` is below the minimum of that month`, found: max, help: 'look whether minima and maxima are swapped' });
  });
  return issues;
};

const unaliased = (operation: Readonly<Record<string, unknown>>, knowledge: Knowledge): Readonly<Record<string, unknown>> => {
  const called = operation['op'];
  if (typeof called !== 'string' || Object.hasOwn(knowledge.operations, called)) return operation;
  for (const word of Object.values(knowledge.operations)) {
    const set: Readonly<Record<string, Value>> | undefined = Object.hasOwn(word.aliases, called) ? word.aliases[called] : undefined;
    if (set !== undefined) return { ...set, ...operation, op: word.id };
  }
  return operation;
};

/** Far more than any tree needs; past it a proposal is refused before it is looked at. */
const deepest = 40;

const tooDeep = (value: unknown, depth = 0): boolean => depth > deepest || (typeof value === 'object' && value !== null && Object.values(value).some((member) => tooDeep(member, depth + 1)));

const objectAt = (value: unknown): Readonly<Record<string, unknown>> | undefined => (typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Readonly<Record<string, unknown>>) : undefined);

/**
 * A proposal as it will be judged: checked, trade names of operations resolved.
 *
 * @throws SparebudError with every issue at once
 */
export const checkProposal = (written: unknown, knowledge: Knowledge): Proposal => {
  const top = objectAt(written);
  if (top === undefined) throw new SparebudError([{ code: 'wrong-type', path: '', message: `a proposal is an object, found ${written === null ? 'null' : Array.isArray(written) ? 'a list' : typeof written}`, help: 'give at least { tree: { species }, operation: { op } }' }]);
  if (tooDeep(written)) throw new SparebudError([{ code: 'too-large', path: '', message: `nested more than ${deepest} deep`, help: 'a proposal needs far less' }]);
  const operation = objectAt(top['operation']);
  const tree = objectAt(top['tree']);
  const log = Array.isArray(tree?.['log']) ? (tree['log'] as readonly unknown[]).map((entry) => (objectAt(entry) === undefined ? entry : unaliased(entry as Readonly<Record<string, unknown>>, knowledge))) : undefined;
  const named = {
    ...top,
    ...(operation === undefined ? {} : { operation: unaliased(operation, knowledge) }),
    ...(tree === undefined || log === undefined ? {} : { tree: { ...tree, log } }),
  };
  const errors = proposalErrors(named);
  if (errors.length > 0) throw new SparebudError(schemaIssues(errors));
  const proposal = named as unknown as Proposal;
  const issues = [...dateIssues(proposal), ...whereIssues(proposal)];
  if (issues.length > 0) throw new SparebudError(issues);
  return proposal;
};
