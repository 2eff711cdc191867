import { describe, expect, it } from 'vitest';
import { dayOf } from '../../src/season/day.js';
import { dayAt, wrapYear, yearAndYearDay, yearDayOfText } from '../../src/season/yearDay.js';

describe("the model's year of 365 days", () => {
  it('puts a date in the same place in every year', () => {
    expect(yearAndYearDay(dayOf('2023-12-31'))).toEqual({ year: 2023, yearDay: 364 });
    expect(yearAndYearDay(dayOf('2024-12-31'))).toEqual({ year: 2024, yearDay: 364 });
    expect(yearAndYearDay(dayOf('2024-03-01')).yearDay).toBe(yearAndYearDay(dayOf('2023-03-01')).yearDay);
  });

  it('lets 29 February stand with the 28th', () => {
    expect(yearAndYearDay(dayOf('2024-02-29')).yearDay).toBe(58);
    expect(yearDayOfText('02-29')).toBe(58);
  });

  it('finds the day of a place again, also beyond the year', () => {
    expect(dayAt(2024, 59)).toBe(dayOf('2024-03-01'));
    expect(dayAt(2024, 365)).toBe(dayOf('2025-01-01'));
    expect(dayAt(2024, -1)).toBe(dayOf('2023-12-31'));
    expect(wrapYear(-1)).toBe(364);
  });

  it.each(['02-30', '13-01', '00-10', '4-1', '04-31', ''])('refuses `%s`', (text) => {
    expect(() => yearDayOfText(text)).toThrow(RangeError);
  });
});
