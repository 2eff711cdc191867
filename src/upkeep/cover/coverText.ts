import type { Cover, CoverCell } from './coverOver.js';

const grouped = <Entry>(entries: readonly Entry[], keyOf: (entry: Entry) => string): ReadonlyMap<string, readonly Entry[]> => {
  const groups = new Map<string, Entry[]>();
  for (const entry of entries) groups.set(keyOf(entry), [...(groups.get(keyOf(entry)) ?? []), entry]);
  return groups;
};

/** By operation, then the groups that share the same phases. */
const places = (cells: readonly CoverCell[]): readonly string[] =>
  [...grouped(cells, ({ operation }) => operation)].flatMap(([operation, of]) => {
    const phasesOf = [...grouped(of, ({ group }) => group)].map(([group, own]) => ({ group, phases: own.map(({ phase }) => phase).sort().join(', ') }));
    return [`  ${operation}`, ...[...grouped(phasesOf, ({ phases }) => phases)].map(([phases, own]) => `    ${phases}: ${own.map(({ group }) => group).join(', ')}`)];
  });

const share = (count: number, all: number): string => `${all === 0 ? 0 : Math.round((100 * count) / all)} %`;

/** Where the rules speak, for a terminal. */
export const coverText = ({ proposals, cells, never, shadowed, untouched }: Cover): string => {
  const silent = cells.filter((cell) => cell.silent === cell.asked);
  const unsure = cells.filter((cell) => cell.silent < cell.asked && cell.silent + cell.onlyPossibly === cell.asked);
  const lines = [`${proposals} proposals, ${cells.length} cells of operation, group and phase`, '', 'by operation: no rule speaks, rules speak only possibly'];
  for (const [operation, of] of grouped(cells, (cell) => cell.operation)) {
    const sum = (count: (cell: CoverCell) => number): number => of.reduce((total, cell) => total + count(cell), 0);
    const asked = sum((cell) => cell.asked);
    lines.push(`  ${operation.padEnd(20)} ${share(sum((cell) => cell.silent), asked).padStart(5)} ${share(sum((cell) => cell.onlyPossibly), asked).padStart(5)}`);
  }
  const section = (title: string, all: readonly unknown[], body: readonly string[]): number => lines.push('', `${title}: ${all.length}`, ...body);
  section('cells in which no rule ever speaks', silent, places(silent));
  section('cells in which rules speak only possibly', unsure, places(unsure));
  section('rules that never fire for certain', Object.keys(never), Object.entries(never).map(([rule, possibly]) => `  ${rule.padEnd(36)} possibly ${possibly}`));
  section('rules that fire and never decide', shadowed, shadowed.map(({ rule, fires, by }) => `  ${rule.padEnd(36)} fires ${fires}; beside ${Object.entries(by).sort(([, a], [, b]) => b - a).slice(0, 3).map(([other, count]) => `${other} ${count}`).join(', ')}`));
  section('thresholds that no example touches on some side', untouched, untouched.map(({ rule, fact, limit, missing }) => `  ${rule.padEnd(36)} ${fact}: none ${missing.join(', ')} ${limit}`));
  return `${lines.join('\n')}\n`;
};
