import { execFileSync } from 'node:child_process';
import { median } from './timing.js';

/** A cold start in a fresh process, in milliseconds. */
export interface ColdStart {
  readonly imports: number;
  readonly firstAnswer: number;
  readonly whole: number;
}

const script = `
  const started = performance.now();
  const [{ createAdvisor }, { knowledge }, { places }] = await Promise.all([import('sparebud'), import('sparebud/knowledge'), import('sparebud/places')]);
  const imported = performance.now();
  await createAdvisor(knowledge, { places }).assess({ tree: { species: 'acer-buergerianum', vigour: 'strong' }, operation: { op: 'repot', rootsRemoved: 0.3 }, date: '2026-03-15', where: { place: 'koeln-cologne-germany' } });
  const answered = performance.now();
  process.stdout.write(JSON.stringify({ imports: imported - started, firstAnswer: answered - imported, whole: answered - started }));
`;

const starts = 7;

/** Import, knowledge and first answer of the built package in fresh Node processes; Node's own start is not counted. */
export const coldStart = (): ColdStart => {
  const each = Array.from({ length: starts }, () => JSON.parse(execFileSync(process.execPath, ['--input-type=module', '--eval', script], { encoding: 'utf8' })) as ColdStart);
  return { imports: median(each.map(({ imports }) => imports)), firstAnswer: median(each.map(({ firstAnswer }) => firstAnswer)), whole: median(each.map(({ whole }) => whole)) };
};
