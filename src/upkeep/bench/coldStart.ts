import { execFileSync } from 'node:child_process';
import { median } from './timing.js';

/** A cold start in a fresh process, in milliseconds. */
export interface ColdStart {
  readonly advisor: number;
  readonly knowledge: number;
  readonly firstAnswer: number;
  readonly whole: number;
}

const script = `
  const started = performance.now();
  const { createAdvisor } = await import('sparebud');
  const advisor = performance.now();
  const [{ knowledge }, { places }] = await Promise.all([import('sparebud/knowledge'), import('sparebud/places')]);
  const imported = performance.now();
  await createAdvisor(knowledge, { places }).assess({ tree: { species: 'acer-buergerianum', vigour: 'strong' }, operation: { op: 'repot', rootsRemoved: 0.3 }, date: '2026-03-15', where: { place: 'koeln-cologne-germany' } });
  const answered = performance.now();
  process.stdout.write(JSON.stringify({ advisor: advisor - started, knowledge: imported - advisor, firstAnswer: answered - imported, whole: answered - started }));
`;

const starts = 7;

/** Import, knowledge and first answer of the built package in fresh Node processes; Node's own start is not counted. */
export const coldStart = (): ColdStart => {
  const each = Array.from({ length: starts }, () => JSON.parse(execFileSync(process.execPath, ['--input-type=module', '--eval', script], { encoding: 'utf8' })) as ColdStart);
  const of = (part: keyof ColdStart): number => median(each.map((start) => start[part]));
  return { advisor: of('advisor'), knowledge: of('knowledge'), firstAnswer: of('firstAnswer'), whole: of('whole') };
};
