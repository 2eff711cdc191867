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

  it('finds every day of two leap cycles and of the years around 1900 and 2000 again', () => {
    for (const [from, to] of [['1896-01-01', '1904-12-31'], ['1996-01-01', '2004-12-31'], ['2096-01-01', '2104-12-31']] as const) {
      for (let day = dayOf(from); day <= dayOf(to); day += 1) {
        const { year, yearDay } = yearAndYearDay(day);
        expect(dayAt(year, yearDay)).toBe(new Date(day * 86_400_000).toISOString().endsWith('-02-29T00:00:00.000Z') ? day - 1 : day);
      }
    }
  });

  it.each(['02-30', '13-01', '00-10', '4-1', '04-31', ''])('refuses `%s`', (text) => {
    expect(() => yearDayOfText(text)).toThrow(RangeError);
  });
});
