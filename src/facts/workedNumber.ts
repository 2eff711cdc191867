import type { FactState, FactValue, Span } from './factValue.js';

const rising: readonly FactState[] = ['known', 'assumed', 'estimated'];

const spanOf = ({ value, state, among }: FactValue): Span => {
  if (state !== 'estimated') return { atLeast: value as number, atMost: value as number };
  return (among as Span | undefined) ?? { atLeast: -Infinity, atMost: Infinity };
};

/** A number worked out from others, as well known as the least of them: where some are estimated, with the bounds that theirs allow. Unknown where one is. */
export const workedNumber = (inputs: readonly FactValue[], work: (...numbers: readonly number[]) => number): FactValue => {
  if (inputs.some(({ value }) => value === undefined)) return { state: 'unknown', from: 'unknown' };
  const fine = (value: number): number => Math.round(value * 1000) / 1000;
  const value = fine(work(...inputs.map((input) => input.value as number)));
  const state = inputs.reduce<FactState>((least, input) => (rising.indexOf(input.state) > rising.indexOf(least) ? input.state : least), 'known');
  if (state !== 'estimated') return { state, value, from: 'worked-out' };
  let corners: readonly (readonly number[])[] = [[]];
  for (const { atLeast, atMost } of inputs.map(spanOf)) corners = corners.flatMap((corner) => (atLeast === atMost ? [[...corner, atLeast]] : [[...corner, atLeast], [...corner, atMost]]));
  const ends = corners.map((corner) => work(...corner));
  return ends.every(Number.isFinite) ? { state, value, among: { atLeast: fine(Math.min(...ends)), atMost: fine(Math.max(...ends)) }, from: 'estimated' } : { state, value, from: 'estimated' };
};
