import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { inUnits } from '../../../src/cli/page/inUnits.js';
import { german } from '../../german.js';
import { shipped } from '../../shipped.js';

const imperial = (text: string): string => inUnits(text, 'imperial');
const metric = /(?<![\w-])(mm|cm|km|°C)(?![\w-])|\d m\b/;

/* 1 in = 25.4 mm, 1 ft = 0.3048 m, 1 mi = 1.609344 km, F = 1.8 C + 32: exact by definition (NIST SP 811, appendix B, from memory). */
test.each([
  ['dies back 3 to 12 mm', 'dies back 1/8 to 1/2 in'],
  ['dies back 1 to 2 mm', 'dies back 1/16 in'],
  ['a cut of 25.4 mm', 'a cut of 1 in'],
  ['a cut of 25 mm', 'a cut of 1 in'],
  ['a cut of 60 mm', 'a cut of 2.4 in'],
  ['0 mm', '0 in'],
  ['0.4 to 1 mm', 'under 1/16 to 1/16 in'],
  ['levels at about 120, 250, 400 mm', 'levels at about 4.7, 9.8, 15.7 in'],
  ['3–12 mm', '1/8–1/2 in'],
  ['450 mm tall, 40 mm across', '17.7 in tall, 1.6 in across'],
  ['for each 2.5 cm of trunk', 'for each 1 in of trunk'],
  ['soil colder than 6 °C', 'soil colder than 43 °F'],
  ['nights near -8.5 °C are', 'nights near 17 °F are'],
  ['Roots die near -9 °C; -17.8 °C is expected.', 'Roots die near 16 °F; 0 °F is expected.'],
  ['Koeln (Cologne), 42 km away; dates within about 10 days', 'Koeln (Cologne), 26 mi away; dates within about 10 days'],
  ['1500 m', '4921 ft'],
  ['120 degree-days', '216 degree-days F'],
  ['How thick is it, in mm?', 'How thick is it, in inches?'],
  ['How cold is the night, in °C?', 'How cold is the night, in °F?'],
  ['\u001B[2m12 mm wide\u001B[22m', '\u001B[2m1/2 in wide\u001B[22m'],
])('`%s` reads `%s`', (written, read) => {
  expect(imperial(written)).toBe(read);
});

it('leaves dates, counts and names alone', () => {
  for (const text of ['2027-03-06 to 2027-04-20 (give or take 10 days)', 'wound/girth-half', 'Cs137 and C3 plants', 'take 3 of 12 branches', 'operation.stubMm=12', 'strain: a hard job (4) on 0.4 still owed, 4.4 together']) expect(imperial(text)).toBe(text);
});

it('begins no list with the end of a date', () => {
  expect(imperial('on 2027-03-20, 30 mm of trunk')).toBe('on 2027-03-20, 1.2 in of trunk');
});

describe('every text that a person is shown', () => {
  const texts = [
    ...Object.entries(shipped.wording),
    ...Object.values(shipped.rules).flatMap(({ id, title, because, unless }) => [[`${id}.title`, title], [`${id}.because`, because], ...unless.map((each, i) => [`${id}.unless.${i}`, each.because])] as const),
  ].map(([id, text]) => [id, text!.replaceAll(/\{[^}]+\}/g, '12')] as const);

  it('has no metric unit left', () => {
    /* The pictures, which stay metric. */
    const left = texts.filter(([id, text]) => id !== 'tree.gaps' && metric.test(imperial(text)));
    expect(left).toEqual([]);
    expect(texts.filter(([, text]) => metric.test(text)).length).toBeGreaterThan(60);
  });

  it('writes temperatures one way, in either language', () => {
    const written = [...texts, ...Object.entries(german)].filter(([, text]) => /°C/.test(text));
    expect(written.length).toBeGreaterThan(40);
    expect([...texts, ...Object.entries(german)].filter(([, text]) => /(?:\d|\}|Grad|degrees) C\b/.test(text))).toEqual([]);
  });
});

it('is off by no more than its rounding, for any thickness', () => {
  fc.assert(fc.property(fc.double({ min: 0, max: 3000, noNaN: true }).map((value) => Math.round(value * 10) / 10), (mm) => {
    const read = imperial(`${mm} mm`).replace(' in', '').replace('under 1/16', '0');
    const [parts, whole = '1'] = read.split('/');
    const back = (Number(parts) / Number(whole)) * 25.4;
    expect(Math.abs(back - mm)).toBeLessThanOrEqual((mm < 25.4 ? 25.4 / 32 : 25.4 / 20) + 1e-9);
  }));
});

it('changes nothing where metric is asked for', () => {
  fc.assert(fc.property(fc.string(), (text) => { expect(inUnits(text, 'metric')).toBe(text); }));
});
