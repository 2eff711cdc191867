import { readFileSync } from 'node:fs';
import { parse } from 'yaml';
import type { Knowledge } from '../knowledge/knowledge.js';
import { dayOf, isoOf } from '../season/day.js';

export type Proposal = Readonly<Record<string, unknown>>;

type Axis = readonly unknown[];

/** The axes of tests/corpus.yaml. */
interface Axes {
  readonly most: number;
  readonly year: number;
  readonly days: readonly number[];
  readonly where: readonly Readonly<Record<string, unknown>>[];
  readonly parameters: Readonly<Record<string, Axis>>;
  readonly structures: Readonly<Record<string, { readonly trunks: readonly { readonly id: string }[]; readonly branches: readonly { readonly id: string }[] }>>;
  readonly [axis: string]: unknown;
}

const fields = ['vigour', 'health', 'stage', 'growing', 'standing', 'rootState', 'flower', 'origin', 'ageYears'] as const;

const logs: Readonly<Record<string, (ago: (days: number) => string) => readonly Readonly<Record<string, unknown>>[]>> = {
  wired: (ago) => [{ op: 'wire', date: ago(400) }],
  'wired-lately': (ago) => [{ op: 'wire', date: ago(15) }],
  'leaves-just-taken': (ago) => [{ op: 'defoliate', date: ago(20) }],
  'candles-just-cut': (ago) => [{ op: 'candle-cut', date: ago(25) }],
  divided: (ago) => [{ op: 'divide', date: ago(60) }],
  'same-day': (ago) => [{ op: 'trunk-chop', date: ago(0) }, { op: 'wire', bend: 'severe', date: ago(0) }],
  hard: (ago) => [{ op: 'trunk-chop', date: ago(30) }],
  stub: (ago) => [{ op: 'remove-branch', finish: 'stub', date: ago(60) }],
  defoliated: (ago) => [{ op: 'defoliate', date: ago(300) }],
  collected: (ago) => [{ op: 'collect', date: ago(150) }],
  candles: (ago) => [{ op: 'candle-cut', date: ago(340) }],
  'over-worked': (ago) => [{ op: 'repot', rootsRemoved: 0.4, date: ago(60) }, { op: 'trunk-chop', date: ago(45) }, { op: 'defoliate', date: ago(30) }, { op: 'wire', bend: 'severe', date: ago(12) }],
  stripped: (ago) => [{ op: 'strip-bark', girthShare: 0.2, on: 'trunk', date: ago(200) }],
};

/** A sequence of small whole numbers, the same each time: a mixed congruential generator (Numerical Recipes' constants). */
const sequence = (seed: number): ((below: number) => number) => {
  let state = seed >>> 0;
  return (below) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * below);
  };
};

/** Proposals over every species, operation and month, with the other axes turned so that pairs of their values meet; the same each time. */
export const corpus = (knowledge: Knowledge, path: string): readonly Proposal[] => {
  const axes = parse(readFileSync(path, 'utf8')) as Axes;
  const species = Object.values(knowledge.species).filter((each) => each.rank === 'taxon').map((each) => each.id);
  const next = sequence(20260301);
  const pick = (axis: Axis): unknown => axis[next(axis.length)];
  const valuesOf = (name: string): Axis => {
    const word = Object.values(knowledge.facts).find((fact) => fact.given === `operation.${name}`);
    return axes.parameters[name] ?? ['unknown', ...(word?.values ?? (word?.type === 'boolean' ? [true, false] : (word?.tries ?? [])))];
  };
  const proposals: Proposal[] = [];
  const total = species.length * Object.keys(knowledge.operations).length * 12;
  const keep = Math.min(1, axes.most / total);
  let count = 0;
  for (const operation of Object.values(knowledge.operations)) {
    for (const id of species) {
      for (let month = 1; month <= 12; month++) {
        count++;
        if (Math.floor(count * keep) === Math.floor((count - 1) * keep)) continue;
        const date = `${axes.year}-${String(month).padStart(2, '0')}-${String(pick(axes.days)).padStart(2, '0')}`;
        const ago = (days: number): string => isoOf(dayOf(date) - days);
        const tree: Record<string, unknown> = { species: id };
        for (const field of fields) {
          const value = pick(axes[field] as Axis);
          if (value !== 'unknown') tree[field] = value;
        }
        const [trunk, flowers, repotted, log, aim] = [pick(axes['trunk'] as Axis), pick(axes['flowers'] as Axis), pick(axes['lastRepotted'] as Axis), pick(axes['log'] as Axis), pick(axes['aimMm'] as Axis)];
        const [told, style] = [pick(axes['structure'] as Axis) as string, pick(axes['style'] as Axis)];
        const structure = axes.structures[told];
        if (structure !== undefined) tree['structure'] = structure;
        else if (trunk !== 'unknown') tree['trunk'] = { diameterMm: trunk };
        if (repotted !== 'unknown') tree['lastRepotted'] = repotted === 'never' ? 'never' : ago(repotted as number);
        const aims = { ...(flowers === 'unknown' ? {} : { flowers }), ...(aim === 'unknown' ? {} : { trunkDiameterMm: aim }), ...(structure === undefined || style === 'unknown' ? {} : { style }) };
        if (Object.keys(aims).length > 0) tree['aim'] = aims;
        if (log !== 'unknown') tree['log'] = logs[log as string]!(ago);
        const asked: Record<string, unknown> = { op: operation.id };
        for (const name of operation.parameters) {
          const value = name !== 'branch' ? pick(valuesOf(name)) : structure === undefined ? undefined : pick([...structure.branches, ...structure.trunks.slice(1)].map((each) => each.id));
          if (value !== 'unknown' && value !== undefined) asked[name] = value;
        }
        proposals.push({ tree, operation: asked, date, where: pick(axes.where) });
      }
    }
  }
  return proposals;
};
