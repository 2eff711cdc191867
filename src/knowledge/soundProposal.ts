import type { Proposal } from '../contract/types.generated.js';
import { askedErrors } from './askedErrors.js';
import type { Knowledge, Value } from './knowledge.js';

type Members = Readonly<Record<string, unknown>>;

/** The same dates come again and again; past so many that were found real they are forgotten. */
const mostKept = 4096;
const real = new Set<string>();

/** Whether an ISO date of any exactness is one of the calendar, in UTC, as ECMAScript reads a date without a time; an engine that takes 30 February for a day in March gives another text back. */
export const realDate = (iso: string): boolean => {
  if (real.has(iso)) return true;
  const ms = Date.parse(iso);
  if (Number.isNaN(ms) || !new Date(ms).toISOString().startsWith(iso)) return false;
  if (real.size >= mostKept) real.clear();
  real.add(iso);
  return true;
};

/** Every date that a proposal tells, by the field that holds it; frosts in a leap year. */
export const datesIn = ({ date, tree, where }: Proposal): readonly (readonly [path: string, iso: string])[] => {
  const told: [string, string | undefined][] = [['date', date]];
  if (tree.lastRepotted !== 'never') told.push(['tree.lastRepotted', tree.lastRepotted]);
  (tree.log ?? []).forEach((entry, i) => told.push([`tree.log[${i}].date`, entry['date'] as string | undefined]));
  (where?.daily ?? []).forEach((reading, i) => told.push([`where.daily[${i}].date`, reading.date]));
  for (const frost of ['lastFrost', 'firstFrost'] as const) if (where?.[frost] !== undefined) told.push([`where.${frost}`, `2024-${where[frost]}`]);
  return told.filter((each): each is [string, string] => each[1] !== undefined);
};

/** The months whose highest is told below their lowest. */
export const swappedMonths = ({ monthlyMinC: lowest, monthlyMaxC: highest }: NonNullable<Proposal['where']>): readonly number[] => (highest ?? []).flatMap((max, i) => (lowest !== undefined && max < lowest[i]! ? [i] : []));

/** Of two fields that are told together or not at all, the one that is missing. */
export const missingBeside = (where: NonNullable<Proposal['where']>): 'monthlyMinC' | 'monthlyMaxC' | undefined =>
  (where.monthlyMinC === undefined) === (where.monthlyMaxC === undefined) ? undefined : where.monthlyMinC === undefined ? 'monthlyMinC' : 'monthlyMaxC';

const unaliased = (operation: Members, { operations }: Knowledge): Members => {
  const called = operation['op'];
  if (typeof called !== 'string' || Object.hasOwn(operations, called)) return operation;
  for (const word of Object.values(operations)) {
    const set: Readonly<Record<string, Value>> | undefined = Object.hasOwn(word.aliases, called) ? word.aliases[called] : undefined;
    if (set !== undefined) return { ...set, ...operation, op: word.id };
  }
  return operation;
};

/** Far more than any tree needs; past it a proposal is refused before it is looked at. */
export const deepest = 40;

export const tooDeep = (value: unknown, depth = 0): boolean => depth > deepest || (typeof value === 'object' && value !== null && Object.values(value).some((member) => tooDeep(member, depth + 1)));

export const objectAt = (value: unknown): Members | undefined => (typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Members) : undefined);

/** A proposal in which operations are called by their ids, not yet checked. */
export const namedProposal = (top: Members, knowledge: Knowledge): Members => {
  const operation = objectAt(top['operation']);
  const tree = objectAt(top['tree']);
  const log = Array.isArray(tree?.['log']) ? (tree['log'] as readonly unknown[]).map((entry) => (objectAt(entry) === undefined ? entry : unaliased(entry as Members, knowledge))) : undefined;
  return {
    ...top,
    ...(operation === undefined ? {} : { operation: unaliased(operation, knowledge) }),
    ...(tree === undefined || log === undefined ? {} : { tree: { ...tree, log } }),
  };
};

/** A proposal as it will be judged, trade names of operations resolved; undefined where anything is wrong with it, which `checkProposal` then says. */
export const soundProposal = (written: unknown, knowledge: Knowledge): Proposal | undefined => {
  const top = objectAt(written);
  if (top === undefined || tooDeep(written)) return undefined;
  const named = namedProposal(top, knowledge);
  if (askedErrors(named, knowledge).length > 0) return undefined;
  const proposal = named as unknown as Proposal;
  const { where = {} } = proposal;
  return datesIn(proposal).every(([, iso]) => realDate(iso)) && missingBeside(where) === undefined && swappedMonths(where).length === 0 ? proposal : undefined;
};
