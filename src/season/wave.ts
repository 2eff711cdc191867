import { midwinter } from './growingYear.js';
import { daysInYear, monthLengths } from './yearDay.js';

const perDay = (2 * Math.PI) / daysInYear;

/**
 * Twelve monthly averages of one cosine wave, January first; `smoothYear` gives the wave back.
 *
 * Averages, not values of mid-month, and placed by the season: months are of unequal length, and waves through their middles would differ between the hemispheres.
 * @param mean the year's mean
 * @param halfRange how far the warmest day lies above it
 * @param warmest season day (days since midwinter) on which it is warmest
 * @param south hemisphere
 */
export const wave = (mean: number, halfRange: number, warmest: number, south: boolean): readonly number[] => {
  let from = -midwinter(south) - warmest;
  return monthLengths.map((length) => {
    const to = from + length;
    const average = (Math.sin(perDay * to) - Math.sin(perDay * from)) / (perDay * length);
    from = to;
    return mean + halfRange * average;
  });
};
