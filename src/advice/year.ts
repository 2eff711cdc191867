import type { Message, Proposal } from '../contract/types.generated.js';
import { severity } from '../engine/verdict.js';
import type { Rule, Value, Verdict } from '../knowledge/knowledge.js';
import { seasonCalendar, type Phase } from '../season/calendar.js';
import { type Day, dayOf, isoOf } from '../season/day.js';
import { winterChill } from '../season/chillByDay.js';
import { daylength } from '../season/daylength.js';
import { frostOfYear } from '../season/frostOfYear.js';
import { speciesLabel } from './findings.js';
import type { Outcome } from './judge.js';
import { message, ruleMessage, wordFor } from './message.js';
import { seasonTraits } from './prepare.js';
import type { Ready } from './ready.js';
import { setText } from './setText.js';
import { whereText } from './whereText.js';

/** Days on end of which the same is true. */
interface Run {
  readonly from: string;
  readonly to: string;
}

export interface YearRun extends Run {
  readonly verdict: Verdict;
  readonly settled: boolean;
  /** The rule that speaks loudest on the first of these days; absent where none speaks. */
  readonly because?: Message;
}

/** A year of one tree at one place, day by day. */
export interface Year {
  readonly schema: 'year/1';
  readonly species: string;
  readonly label: string;
  readonly from: string;
  readonly to: string;
  readonly phases: readonly (Run & { readonly phase: string; readonly label: string; readonly plusMinusDays: number })[];
  readonly frost: { readonly reliable: boolean; readonly last?: string; readonly first?: string; readonly lastOneInTen?: string; readonly firstOneInTen?: string; readonly lastAtRim?: string; readonly firstAtRim?: string };
  /** Hours of daylight on the first day of each month, where the latitude is known. */
  readonly daylengthH: readonly { readonly date: string; readonly hours: number }[];
  /** Dynamic chill portions of an ordinary winter, for a tree that sleeps through it, where temperatures are measured or told. */
  readonly chillPortions?: number;
  readonly operations: readonly { readonly op: string; readonly operation: Readonly<Record<string, Value>>; readonly label: string; readonly runs: readonly YearRun[] }[];
  readonly where: Message;
  readonly notices: readonly Message[];
}

const days = 365;

const runsOf = <Of>(each: readonly Of[], dates: readonly string[], same: (a: Of, b: Of) => boolean): readonly (Run & { readonly of: Of })[] => {
  const runs: { of: Of; readonly from: string; to: string }[] = [];
  each.forEach((of, i) => {
    const last = runs.at(-1);
    if (last !== undefined && same(last.of, of)) last.to = dates[i]!;
    else runs.push({ of, from: dates[i]!, to: dates[i]! });
  });
  return runs;
};

const stakes: readonly Rule['costs'][] = ['tree', 'branch', 'flowers', 'time', 'looks'];

/** The rule that speaks loudest: the worst, certain before possible, the dearest stake first. */
const loudest = ({ fired }: Outcome): Rule | undefined =>
  [...fired].sort((a, b) => severity(b.residual.rule.verdict) - severity(a.residual.rule.verdict) || Number(b.fires === 'certainly') - Number(a.fires === 'certainly') || stakes.indexOf(a.residual.rule.costs) - stakes.indexOf(b.residual.rule.costs))[0]?.residual.rule;

/** What one piece of work comes to on each day of a year. */
const strip = async (ready: Ready, on: readonly Day[], dates: readonly string[]): Promise<readonly YearRun[]> => {
  const outcomes = await ready.judge.verdictsOn(on);
  const same = (a: Outcome, b: Outcome): boolean => a === b || (a.verdict === b.verdict && a.settled === b.settled && loudest(a) === loudest(b));
  return runsOf(outcomes, dates, same).map(({ of, ...run }) => {
    const rule = loudest(of);
    return { ...run, verdict: of.verdict, settled: of.settled, ...(rule === undefined ? {} : { because: ruleMessage(`${rule.id}.title`, rule.title) }) };
  });
};

/** Each operation in its usual ways, or those that are asked for. */
const asked = (ready: Ready, operations: readonly Readonly<Record<string, Value>>[] | undefined): readonly Readonly<Record<string, Value>>[] =>
  operations ?? Object.values(ready.prepared.asked.knowledge.operations).flatMap((operation) => operation.usual.map((set) => ({ op: operation.id, ...set })));

/** A year of a tree: phases, frost, day length, and each operation's verdict day by day. */
export const yearOf = async (
  readyOf: (written: unknown) => Promise<Ready>,
  question: { readonly tree: Proposal['tree']; readonly where?: Proposal['where']; readonly from: string; readonly operations?: readonly Readonly<Record<string, Value>>[] },
): Promise<Year> => {
  const { tree, where, from } = question;
  const ask = async (operation: Readonly<Record<string, Value>>): Promise<Ready> => await readyOf({ tree, operation, date: from, ...(where === undefined ? {} : { where }) });
  const first = await ask({ op: 'feed' });
  const { asked: base, species } = first.prepared;
  const { knowledge, climate } = base;
  const start = dayOf(from);
  const on = Array.from({ length: days }, (_, i) => start + i);
  const dates = on.map(isoOf);
  const standing = tree.standing ?? 'outdoors';
  const calendar = seasonCalendar(climate, seasonTraits(base.traits), start, [], standing);
  const frost = Object.fromEntries(Object.entries(frostOfYear(calendar)).map(([name, day]) => [name, typeof day === 'number' ? isoOf(day) : day])) as unknown as Year['frost'];
  const seasons = on.map((day) => first.prepared.on(day).season(undefined, standing));
  const phases = runsOf(seasons, dates, (a, b) => a?.phase === b?.phase).flatMap(({ of, ...run }) => (of?.phase === undefined ? [] : [{ phase: of.phase as Phase, label: wordFor(of.phase, knowledge), plusMinusDays: Math.round(of.plusMinusDays), ...run }]));
  /* Only trees that sleep through winter need it, and two frost dates or a latitude do not tell it. */
  const sleeps = calendar.traits.model === 'deciduous' || calendar.traits.model === 'evergreen';
  const chill = sleeps && (climate.quality === 'station' || climate.quality === 'normals') ? winterChill(climate) : undefined;
  const months = dates.filter((date) => date.endsWith('-01'));
  const rows: Year['operations'][number][] = [];
  for (const operation of asked(first, question.operations)) {
    const { op, ...set } = operation;
    const word = knowledge.operations[op as string];
    const many = question.operations !== undefined || (word?.usual.length ?? 0) > 1;
    const ready = await ask(operation);
    rows.push({ op: ready.proposal.operation.op, operation, label: many && Object.keys(set).length > 0 ? `${word?.label ?? String(op)}, ${setText(set, knowledge)}` : (word?.label ?? String(op)), runs: await strip(ready, on, dates) });
  }
  const notes = [...new Set([...climate.notes, ...seasons.flatMap((season) => season?.notes ?? [])])].filter((note) => Object.hasOwn(knowledge.wording, `notice.${note}`));
  return {
    schema: 'year/1',
    species: species.id,
    label: speciesLabel(species, knowledge),
    from: dates[0]!,
    to: dates.at(-1)!,
    phases,
    frost,
    daylengthH: climate.latitude === undefined ? [] : months.map((date) => ({ date, hours: Math.round(daylength(dayOf(date), climate.latitude!) * 10) / 10 })),
    ...(chill === undefined ? {} : { chillPortions: Math.round(chill) }),
    operations: rows,
    where: whereText(climate, knowledge),
    notices: notes.map((note) => message(knowledge, `notice.${note}`)),
  };
};
