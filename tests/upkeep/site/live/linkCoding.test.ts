import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decodeLink, encodeLink, mostLetters } from '../../../../src/upkeep/site/live/linkCoding.js';
import { withoutEmpty } from '../../../../src/upkeep/site/live/withoutEmpty.js';

const text = fc.oneof(fc.string({ unit: 'binary', maxLength: 20 }), fc.constantFrom('2026-04-10', '04-20', 'true', 'null', '12', '-3', '{}', '"', '', 'a+b c&d=e%f.g', '#'));
const value = fc.oneof(text, fc.boolean(), fc.integer(), fc.double({ noNaN: true, noDefaultInfinity: true }).filter((number) => !Object.is(number, -0)), fc.array(fc.oneof(text, fc.integer()), { maxLength: 3 }), fc.dictionary(text, fc.integer(), { maxKeys: 3, noNullPrototype: true }));
const name = fc.oneof(fc.stringMatching(/^[a-z][A-Za-z0-9]{0,9}$/), fc.constantFrom('constructor', 'toString'));
const question = fc.dictionary(name, fc.oneof(value, fc.dictionary(name, value, { maxKeys: 3, noNullPrototype: true })), { maxKeys: 4, noNullPrototype: true });

describe('a link', () => {
  it('carries any question there and back', () => {
    fc.assert(fc.property(question, (asked) => {
      const link = encodeLink(asked);
      if (link.length <= mostLetters) expect(decodeLink(link)).toEqual({ kind: 'question', question: asked });
    }));
  });

  it('can be read by people', () => {
    expect(encodeLink({ tree: { species: 'Scots pine' }, operation: { op: 'repot', rootsRemoved: 0.3, exposeFlare: true }, date: '2026-04-10' }))
      .toBe('tree.species=Scots+pine&operation.op=repot&operation.rootsRemoved=0.3&operation.exposeFlare=true&date=2026-04-10');
  });

  it('of any letters is a question or a word about why it is none', () => {
    fc.assert(fc.property(fc.oneof(fc.string({ unit: 'binary' }), fc.stringMatching(/^[a-z.&=%"{0-9+_]{0,40}$/)), (fragment) => { expect(['question', 'fault']).toContain(decodeLink(fragment).kind); }));
    expect(decodeLink('a='.padEnd(mostLetters + 1, 'x'))).toMatchObject({ kind: 'fault' });
    expect(decodeLink('a=1&a=2')).toEqual({ kind: 'fault', why: 'it tells `a` twice' });
    expect(decodeLink('a=1&a.b=2')).toEqual({ kind: 'fault', why: 'it tells `a.b` twice' });
    expect(decodeLink('__proto__.x=1')).toMatchObject({ kind: 'fault' });
  });
});

it('a link does not carry what holds nothing', () => {
  expect(encodeLink(withoutEmpty({ tree: { species: 'a', trunk: { aim: {} } }, where: {}, meta: [] }))).toBe('tree.species=a&meta=%5B%5D');
});
