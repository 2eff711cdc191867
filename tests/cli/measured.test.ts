import { expect, test } from 'vitest';
import { measured } from '../../src/cli/measured.js';

/* By definition: an inch is 25.4 mm, a foot 304.8 mm, 32 °F is 0 °C and 212 °F is 100 °C. */
test.each([
  ['40%', 'share', 0.4], ['57 %', 'share', 0.57], ['12mm', 'mm', 12], ['1.5 cm', 'mm', 15], ['2in', 'mm', 50.8], ['1/2in', 'mm', 12.7], ['1 1/2"', 'mm', 38.1], ['1-1/2 in', 'mm', 38.1], ['2ft', 'mm', 609.6],
  ['32F', '°C', 0], ['212°F', '°C', 100], ['-5C', '°C', -5], ['1000ft', 'm', 304.8],
])('`%s` is told as a number in %s', (text, unit, value) => {
  expect(measured(text, unit)).toBe(value);
});

test.each([['2in', 'share'], ['40%', 'mm'], ['28F', 'mm'], ['12', 'mm'], ['1/0in', 'mm'], ['thick', 'mm'], ['3 days', 'days']])('`%s` is no number in %s', (text, unit) => {
  expect(measured(text, unit)).toBeUndefined();
});
