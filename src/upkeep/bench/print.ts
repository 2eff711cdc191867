export const print = (line: string): boolean => process.stdout.write(`${line}\n`);

const figure = (value: number): string => (value >= 100 ? value.toFixed(0) : value >= 10 ? value.toFixed(1) : value.toFixed(2));

/** A line of what was measured: milliseconds if no other unit is said. */
export const printMeasured = (what: string, value: number, unit = 'ms'): boolean => print(`  ${what.padEnd(72)} ${figure(value).padStart(7)} ${unit}`);

/** What an aim asks for. */
export type Aim = { readonly atLeast: number } | { readonly atMost: number };

/** An aim beside what was measured: at least, or at most, so much. Where it is missed, why, as a profile showed it. */
export const printAim = (what: string, measured: number, aim: Aim, unit: string, why = ''): boolean => {
  const [met, asked] = 'atLeast' in aim ? [measured >= aim.atLeast, `at least ${aim.atLeast}`] : [measured <= aim.atMost, `at most ${aim.atMost}`];
  print(`  ${met ? 'met   ' : 'missed'} ${what}: ${figure(measured)} ${unit}, ${asked} asked`);
  return met || why === '' || print(`         ${why}`);
};
