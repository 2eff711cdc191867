export const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;
export const meanAbsolute = (values: readonly number[]): number => mean(values.map(Math.abs));
export const median = (values: readonly number[]): number => {
  const sorted = [...values].sort((a, b) => a - b);
  const half = sorted.length / 2;
  return ((sorted[Math.ceil(half) - 1] ?? Number.NaN) + (sorted[Math.floor(half)] ?? Number.NaN)) / 2;
};
export const shareWithin = (values: readonly number[], limit: number): number =>
  values.filter((value) => Math.abs(value) <= limit).length / values.length;
