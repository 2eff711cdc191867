import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mergePatch } from '../../src/index.js';

describe('a change that is taken up', () => {
  /* RFC 7396, appendix A (as other implementations' tests quote it). */
  test.each([
    ['{"a":"b"}', '{"a":"c"}', '{"a":"c"}'],
    ['{"a":"b"}', '{"b":"c"}', '{"a":"b","b":"c"}'],
    ['{"a":"b"}', '{"a":null}', '{}'],
    ['{"a":"b","b":"c"}', '{"a":null}', '{"b":"c"}'],
    ['{"a":["b"]}', '{"a":"c"}', '{"a":"c"}'],
    ['{"a":"c"}', '{"a":["b"]}', '{"a":["b"]}'],
    ['{"a":{"b":"c"}}', '{"a":{"b":"d","c":null}}', '{"a":{"b":"d"}}'],
    ['{"a":[{"b":"c"}]}', '{"a":[1]}', '{"a":[1]}'],
    ['["a","b"]', '["c","d"]', '["c","d"]'],
    ['{"a":"b"}', '["c"]', '["c"]'],
    ['{"a":"foo"}', 'null', 'null'],
    ['{"a":"foo"}', '"bar"', '"bar"'],
    ['{"e":null}', '{"a":1}', '{"e":null,"a":1}'],
    ['[1,2]', '{"a":"b","c":null}', '{"a":"b"}'],
    ['{}', '{"a":{"bb":{"ccc":null}}}', '{"a":{"bb":{}}}'],
  ])('%s with %s is %s', (target, patch, result) => {
    expect(mergePatch(JSON.parse(target), JSON.parse(patch))).toEqual(JSON.parse(result));
  });

  test('leaves the proposal that it was made of as it is, and reaches no prototype', () => {
    fc.assert(fc.property(fc.jsonValue(), fc.jsonValue(), (target, patch) => {
      const before = JSON.stringify(target);
      mergePatch(target, patch);
      expect(JSON.stringify(target)).toBe(before);
    }));
    expect(mergePatch({}, JSON.parse('{"__proto__":{"allowed":true}}'))).toEqual({});
    expect(({} as { readonly allowed?: unknown }).allowed).toBeUndefined();
  });
});
