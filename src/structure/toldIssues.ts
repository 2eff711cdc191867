import { type Issue, type IssueCode } from '../knowledge/error.js';
import { didYouMean } from '../knowledge/nearest.js';
import type { ToldStructure } from './tree.js';

type Trunks = NonNullable<ToldStructure['trunks']>;
type Branches = NonNullable<ToldStructure['branches']>;

/** A thing that is wrong in a told structure, by the field that holds it. */
export const structureIssue = (code: IssueCode, at: string, found: unknown, says: string, help: string): Issue => {
  const path = `tree.structure.${at}`;
  return { code, path, found, message: `${typeof found === 'string' || typeof found === 'number' ? `\`${String(found).slice(0, 80)}\` ` : ''}in \`${path}\` ${says}`, help };
};

/** Ids that go round from one to the next and never come to a trunk. */
const inCircle = (id: string, parentOf: ReadonlyMap<string, string | undefined>): boolean => {
  const seen = new Set<string>();
  for (let at: string | undefined = id; at !== undefined; at = parentOf.get(at)) {
    if (seen.has(at)) return at === id;
    seen.add(at);
  }
  return false;
};

const idIssues = (trunks: Trunks, branches: Branches, mainId: string): readonly Issue[] => {
  const issues: Issue[] = [];
  const all = [...trunks.map(({ id, from }, i) => ({ id, from, at: `trunks[${i}]` })), ...branches.map(({ id, from }, i) => ({ id, from, at: `branches[${i}]` }))];
  const ids = new Set(all.map(({ id }) => id));
  const trunkIds = new Set([mainId, ...trunks.map(({ id }) => id)]);
  const parentOf = new Map(all.map(({ id, from }) => [id, from]));
  const seen = new Set<string>();
  for (const { id, from, at } of all) {
    if (seen.has(id)) issues.push(structureIssue('duplicate', `${at}.id`, id, 'is told twice', 'give each trunk and branch an id of its own'));
    seen.add(id);
    if (from === undefined) continue;
    const accepted = at.startsWith('trunks') ? trunkIds : new Set([...ids, ...trunkIds]);
    if (!accepted.has(from)) issues.push({ ...structureIssue('unknown-name', `${at}.from`, from, `is no ${at.startsWith('trunks') ? 'trunk' : 'trunk or branch'} of this tree`, didYouMean(from, accepted) ?? 'name what it grows from, or leave it out for the main trunk'), accepted: [...accepted].slice(0, 50) });
    else if (inCircle(id, parentOf)) issues.push(structureIssue('circle', `${at}.from`, from, 'goes round in a circle', 'let what it grows from end at a trunk'));
  }
  return issues;
};

/** What is wrong with the names in a told structure, and with its trunks' points, before anything is worked out of it. */
export const toldIssues = ({ trunks = [], branches = [] }: ToldStructure, mainId: string): readonly Issue[] => [
  ...idIssues(trunks, branches, mainId),
  ...trunks.flatMap(({ points }, i) => points.flatMap(({ heightMm }, j) =>
    points.findIndex((other) => other.heightMm === heightMm) < j ? [structureIssue('duplicate', `trunks[${i}].points[${j}].heightMm`, heightMm, 'is the height of two points', 'keep one diameter for each height: the mean of two measured across')] : [])),
];
