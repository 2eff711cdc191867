import { describe, expect, it } from 'vitest';
import { hourlyTemperatures } from '../../../src/season/hourlyTemperatures.js';
import { dayOf } from '../../../src/season/day.js';
import { daylength } from '../../../src/season/daylength.js';

// Against: the Linvill curve as in chillR 0.77 with "+1" in both logarithms, worked out independently for latitude 50, days 100 to 102 (minima 2, 3, 1; maxima 14, 12, 15).
describe('the hours of a day', () => {
  const at = (date: string, minC: number, maxC: number) => ({ minC, maxC, daylengthH: daylength(dayOf(date), 50) });
  const hours = hourlyTemperatures(at('2023-04-10', 2, 14), at('2023-04-11', 3, 12), at('2023-04-12', 1, 15));

  it('follow the worked example to a twentieth of a degree', () => {
    const worked = [4.721, 4.303, 3.940, 3.618, 3.328, 3.066, 4.184, 5.761, 7.249, 8.600, 9.770, 10.721, 11.424, 11.855, 12.000, 11.855, 11.424, 10.721, 9.770, 8.164, 6.274, 5.087, 4.220, 3.536];
    worked.forEach((temperature, hour) => expect(Math.abs((hours[hour] ?? 99) - temperature), `hour ${hour}`).toBeLessThan(0.05));
  });

  it('never fall below the minima around them nor rise above the maximum', () => {
    expect(Math.min(...hours)).toBeGreaterThanOrEqual(1);
    expect(Math.max(...hours)).toBeLessThanOrEqual(12 + 1e-9);
  });

  it('are the mean all day where the sun does not rise or set', () => {
    const dark = { minC: -20, maxC: -10, daylengthH: 0 };
    expect(hourlyTemperatures(dark, dark, dark)).toEqual(new Array(24).fill(-15));
  });
});
