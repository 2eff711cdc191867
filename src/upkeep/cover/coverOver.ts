import { readyFor } from '../../advice/ready.js';
import { severity } from '../../engine/verdict.js';
import type { Knowledge, Rule } from '../../knowledge/knowledge.js';
import type { Station } from '../../season/station.js';
import { thresholdsOf } from '../thresholdsOf.js';

/** What the rules say of one operation on the species of one group in one phase. */
export interface CoverCell {
  readonly operation: string;
  readonly group: string;
  readonly phase: string;
  readonly asked: number;
  /** So many times no rule spoke at all; and so many times only rules that something unknown could make fire. */
  readonly silent: number;
  readonly onlyPossibly: number;
}

/** Where the rules speak over many proposals, and which of them never have the word. */
export interface Cover {
  readonly proposals: number;
  readonly cells: readonly CoverCell[];
  /** Rules that never fire for certain, with how often they fire possibly. */
  readonly never: Readonly<Record<string, number>>;
  /** Rules that fire for certain and never decide: each time another covers them or is worse; with those others and how often. */
  readonly shadowed: readonly { readonly rule: string; readonly fires: number; readonly by: Readonly<Record<string, number>> }[];
  /** Thresholds that no example stands at, or on one side of. */
  readonly untouched: readonly { readonly rule: string; readonly fact: string; readonly limit: string; readonly missing: readonly string[] }[];
}

/** The group that a species belongs to. */
const groupOf = (id: string, knowledge: Knowledge): string => {
  const parent = knowledge.species[id]?.parent;
  return parent === undefined ? id : groupOf(parent, knowledge);
};

/** The rules that leave another without a word: a worse verdict, or one that covers it. */
const shades = (rule: Rule, certain: readonly Rule[]): readonly string[] =>
  certain.filter((other) => severity(other.verdict) > severity(rule.verdict) || other.covers.includes(rule.id)).map((other) => other.id);

/** Asks every proposal, and counts where rules speak. */
export const coverOver = async (knowledge: Knowledge, stations: readonly Station[], proposals: readonly unknown[]): Promise<Cover> => {
  const ready = readyFor(knowledge, stations);
  const cells = new Map<string, { operation: string; group: string; phase: string; asked: number; silent: number; onlyPossibly: number }>();
  const rules = new Map(Object.keys(knowledge.rules).map((id) => [id, { certainly: 0, possibly: 0, shaded: 0, by: {} as Record<string, number> }]));
  for (const proposal of proposals) {
    const { prepared, judge } = await ready(proposal);
    const { fired, facts } = await judge();
    const [operation, group, phase] = [prepared.asked.operation.id, groupOf(prepared.species.id, knowledge), String(facts.read('season.phase').value ?? 'unknown')];
    const key = `${operation} ${group} ${phase}`;
    const cell = cells.get(key) ?? { operation, group, phase, asked: 0, silent: 0, onlyPossibly: 0 };
    cells.set(key, cell);
    cell.asked++;
    if (fired.length === 0) cell.silent++;
    else if (fired.every(({ fires }) => fires === 'possibly')) cell.onlyPossibly++;
    const certain = fired.filter(({ fires }) => fires === 'certainly').map(({ residual }) => residual.rule);
    for (const { residual: { rule }, fires } of fired) {
      const count = rules.get(rule.id)!;
      count[fires]++;
      if (fires === 'possibly') continue;
      const others = shades(rule, certain);
      if (others.length > 0) count.shaded++;
      for (const other of others) count.by[other] = (count.by[other] ?? 0) + 1;
    }
  }
  return {
    proposals: proposals.length,
    cells: [...cells.values()],
    never: Object.fromEntries([...rules].filter(([, { certainly }]) => certainly === 0).map(([id, { possibly }]) => [id, possibly])),
    shadowed: [...rules].filter(([, { certainly, shaded }]) => certainly > 0 && shaded === certainly).map(([rule, { certainly, by }]) => ({ rule, fires: certainly, by })),
    untouched: Object.values(knowledge.rules).flatMap((rule) =>
      thresholdsOf(rule, knowledge, true).filter(({ missing }) => missing.length > 0).map(({ test, text, missing }) => ({ rule: rule.id, fact: test.fact, limit: text, missing })),
    ),
  };
};
