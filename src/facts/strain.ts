import type { OperationWord, Value } from '../knowledge/knowledge.js';
import type { Read } from './asked.js';
import type { FactState, FactValue, Span } from './factValue.js';

export type Strain = 'none' | 'light' | 'hard';
const rising: readonly Strain[] = ['none', 'light', 'hard'];

/** How hard a piece of work may be: the bands that shared/operations.yaml draws over shares, widths and kinds of work. */
const bands = (operation: OperationWord): readonly { readonly fact: string; readonly strain: Strain; readonly from?: number; readonly among?: readonly string[] }[] => [
  ...Object.entries(operation.strain.lightFrom ?? {}).map(([fact, from]) => ({ fact, strain: 'light' as const, from })),
  ...Object.entries(operation.strain.hardFrom ?? {}).map(([fact, from]) => ({ fact, strain: 'hard' as const, from })),
  ...Object.entries(operation.strain.lightFor ?? {}).map(([fact, among]) => ({ fact, strain: 'light' as const, among })),
  ...Object.entries(operation.strain.hardFor ?? {}).map(([fact, among]) => ({ fact, strain: 'hard' as const, among })),
];

const reaches = (band: { readonly from?: number; readonly among?: readonly string[] }, value: Value): boolean =>
  band.from === undefined ? (band.among ?? []).includes(value as string) : (value as number) >= band.from;

const harder = (a: Strain, b: Strain): Strain => (rising.indexOf(a) >= rising.indexOf(b) ? a : b);

/** The strain of work: of the values it has, and of those that it may still have. */
export const workStrain = (operation: OperationWord, read: Read): FactValue => {
  let least: Strain = operation.strain.least;
  let most: Strain = least;
  let state: FactState = 'known';
  for (const band of bands(operation)) {
    if (band.strain === least || harder(least, band.strain) === least) continue;
    const fact = read(band.fact);
    if (fact.value !== undefined) {
      if (reaches(band, fact.value)) {
        least = harder(least, band.strain);
        most = harder(most, band.strain);
      }
      if (fact.state === 'estimated' || (fact.state === 'assumed' && state === 'known')) state = fact.state;
    } else if (band.from !== undefined ? ((fact.among as Span | undefined)?.atMost ?? Infinity) >= band.from : fact.among === undefined || (fact.among as readonly Value[]).some((value) => reaches(band, value))) {
      most = harder(most, band.strain);
    }
  }
  if (least === most) return state === 'estimated' ? { state, value: least, among: rising.slice(rising.indexOf(operation.strain.least)), from: 'worked-out' } : { state, value: least, from: 'worked-out' };
  return { state: 'unknown', among: rising.slice(rising.indexOf(least), rising.indexOf(most) + 1), from: 'unknown' };
};
