/** How much of a day's anomaly carries over to the next. */
const carry = 0.65;

/** Standard deviation of a day's anomaly, C. */
const deviationC = 4.5;

/**
 * Temperature anomalies of made-up weather: the same for the same seed, everywhere.
 *
 * Use it where an answer from smooth normals is biased because real days scatter.
 * @param seed a whole number
 * @param days how many
 * @returns anomalies, C: first-order autoregression, r 0.65, standard deviation 4.5 C
 * Source of the numbers: computed at 46 North American sites (chill portions then within 4 %). Generator: mulberry32 with the Box-Muller transform.
 */
export const syntheticAnomalies = (seed: number, days: number): readonly number[] => {
  let state = Math.imul(seed, 0x9e3779b1) >>> 0;
  const uniform = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return (((mixed ^ (mixed >>> 14)) >>> 0) + 0.5) / 4_294_967_296;
  };
  const gauss = (): number => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
  let anomaly = deviationC * gauss();
  return Array.from({ length: days }, () => {
    const today = anomaly;
    anomaly = carry * anomaly + deviationC * Math.sqrt(1 - carry * carry) * gauss();
    return today;
  });
};
