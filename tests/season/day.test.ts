import { describe, expect, it } from 'vitest';
import { dayOf, isoOf } from '../../src/season/day.js';

describe('days', () => {
  it('count from the first of January 1970', () => {
    expect(dayOf('1970-01-01')).toBe(0);
    expect(dayOf('2000-03-01')).toBe(11017);
    expect(isoOf(0)).toBe('1970-01-01');
  });

  it('go there and back through leap years and centuries', () => {
    for (const iso of ['2024-02-29', '2100-02-28', '1969-12-31', '0099-05-06', '2026-12-31']) expect(isoOf(dayOf(iso))).toBe(iso);
  });

  it.each(['2026-02-29', '2026-13-01', '2026-00-10', '2026-4-1', '26-04-01', '2026-04-31', 'today', ''])('refuse `%s`', (text) => {
    expect(() => dayOf(text)).toThrow(RangeError);
  });
});
