import { severity } from '../../engine/verdict.js';
import type { Verdict } from '../../knowledge/knowledge.js';
import { answerText } from './answer.js';
import type { Shift, Shifted } from './shiftBetween.js';

/** How many answers go from one verdict (or range) to another. */
export interface Move {
  readonly from: string;
  readonly to: string;
  readonly answers: number;
}

/** Answers that change for the same reason, or of the same species. */
export interface ShiftGroup {
  readonly id: string;
  readonly answers: number;
  readonly moves: readonly Move[];
  /** The other side of it: of a rule its species, of a species its rules; most first. */
  readonly across: readonly (readonly [string, number])[];
  /** A few of them, of different species, operations and moves as far as there are. */
  readonly examples: readonly Shifted[];
}

const counted = (keys: readonly string[]): readonly (readonly [string, number])[] => {
  const counts = new Map<string, number>();
  for (const key of keys) counts.set(key, (counts.get(key) ?? 0) + 1);
  return [...counts].sort(([a, m], [b, n]) => n - m || (a < b ? -1 : 1));
};

const moveOf = ({ before, after }: Shifted): string => `${answerText(before)}\n${answerText(after)}`;

/** The worst of the rules that fire otherwise: those that the change of the verdict goes back to. */
export const reasonsOf = ({ before, after, rules }: Shifted): readonly string[] => {
  const worst = (rule: string): number => Math.max(...[before, after].map((answer) => severity(((answer.rules[rule] ?? '').split(' ').at(-1) ?? '') as Verdict)));
  const most = Math.max(...rules.map(worst));
  return rules.filter((rule) => worst(rule) === most);
};

const examplesOf = (shifted: readonly Shifted[], most: number): readonly Shifted[] => {
  const chosen: Shifted[] = [];
  for (const keys of [[moveOf, (each: Shifted) => each.species, (each: Shifted) => each.operation], [moveOf], [(each: Shifted) => each.species], []] as const) {
    for (const each of shifted) {
      if (chosen.length >= most) return chosen;
      if (!chosen.includes(each) && keys.every((key) => chosen.every((other) => key(other) !== key(each)))) chosen.push(each);
    }
  }
  return chosen;
};

const grouped = (shift: Shift, idsOf: (each: Shifted) => readonly string[], acrossOf: (each: Shifted) => readonly string[], most: number): readonly ShiftGroup[] => {
  const groups = new Map<string, Shifted[]>();
  for (const each of shift.shifted) for (const id of idsOf(each)) groups.set(id, [...(groups.get(id) ?? []), each]);
  return [...groups]
    .map(([id, shifted]): ShiftGroup => ({
      id,
      answers: shifted.length,
      moves: counted(shifted.map(moveOf)).map(([move, answers]) => ({ from: move.split('\n')[0]!, to: move.split('\n')[1]!, answers })),
      across: counted(shifted.flatMap(acrossOf)),
      examples: examplesOf(shifted, most),
    }))
    .sort((a, b) => b.answers - a.answers || (a.id < b.id ? -1 : 1));
};

export const byRule = (shift: Shift): readonly ShiftGroup[] => grouped(shift, reasonsOf, (each) => [each.species], 3);
export const bySpecies = (shift: Shift): readonly ShiftGroup[] => grouped(shift, (each) => [each.species], reasonsOf, 1);
