import type { Proposal } from '../contract/types.generated.js';
import { askedErrors } from './askedErrors.js';
import { type Issue, SparebudError } from './error.js';
import type { Knowledge } from './knowledge.js';
import { schemaIssues } from './schemaIssues.js';
import { datesIn, deepest, missingBeside, namedProposal, objectAt, realDate, soundProposal, swappedMonths, tooDeep } from './soundProposal.js';

/** The issue of a date that is in no calendar, or none. */
export const noSuchDay = (path: string, iso: string): readonly Issue[] =>
  realDate(iso) ? [] : [{ code: 'bad-date', path, message: `\`${path.endsWith('Frost') ? iso.slice(5) : iso}\` in \`${path}\` is not a day of the calendar`, found: iso, help: 'look at the month and the day' }];

const whereIssues = ({ where = {} }: Proposal): readonly Issue[] => {
  const missing = missingBeside(where);
  return [
    ...(missing === undefined ? [] : [{ code: 'missing' as const, path: `where.${missing}`, message: `\`${missing}\` is missing in \`where\``, help: 'tell both monthlyMinC and monthlyMaxC' }]),
    ...swappedMonths(where).map((i) => ({ code: 'impossible' as const, path: `where.monthlyMaxC[${i}]`, message: `\`${where.monthlyMaxC![i]}\` in \`where.monthlyMaxC[${i}]\` is below the minimum of that month`, found: where.monthlyMaxC![i], help: 'look whether minima and maxima are swapped' })),
  ];
};

const issuesOf = (written: unknown, knowledge: Knowledge): readonly Issue[] => {
  const top = objectAt(written);
  if (top === undefined) return [{ code: 'wrong-type', path: '', message: `a proposal is an object, found ${written === null ? 'null' : Array.isArray(written) ? 'a list' : typeof written}`, help: 'give at least { tree: { species }, operation: { op } }' }];
  if (tooDeep(written)) return [{ code: 'too-large', path: '', message: `nested more than ${deepest} deep`, help: 'a proposal needs far less' }];
  const named = namedProposal(top, knowledge);
  const errors = askedErrors(named, knowledge);
  if (errors.length > 0) return schemaIssues(errors);
  const proposal = named as unknown as Proposal;
  return [...datesIn(proposal).flatMap(([path, iso]) => noSuchDay(path, iso)), ...whereIssues(proposal)];
};

/**
 * A proposal as it will be judged: checked, trade names of operations resolved.
 *
 * @throws SparebudError with every issue at once
 */
export const checkProposal = (written: unknown, knowledge: Knowledge): Proposal => {
  const sound = soundProposal(written, knowledge);
  if (sound === undefined) throw new SparebudError(issuesOf(written, knowledge));
  return sound;
};
