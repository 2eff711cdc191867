import { readdirSync, readFileSync } from 'node:fs';
import { parse } from 'acorn';
import { expect, test } from 'vitest';
import { leanEngine } from '../../src/upkeep/package/leanEngine.js';
import { root } from '../shipped.js';

/* What dist/browser holds of json-rules-engine; that it answers as the whole engine does is tried where browsers and workers answer. */
const folder = `${root}node_modules/json-rules-engine/dist`;
const source = (name: string): string => readFileSync(`${folder}/${name}`, 'utf8');

test('each file of the engine becomes a module of today', () => {
  for (const name of readdirSync(folder).filter((each) => each !== 'debug.js')) {
    const lean = leanEngine(source(name));
    expect(() => parse(lean, { ecmaVersion: 2022, sourceType: 'module' }), name).not.toThrow();
    expect(lean, name).not.toMatch(/_classCallCheck|_createClass|require\(|exports\./);
  }
});

test('a method that no answer needs says so where it is called, the others stay as they are', () => {
  const lean = leanEngine(source('engine.js'));
  expect(lean).toMatch(/\nstop\(\) \{ throw new Error\('not in this build'\); \}/);
  expect(lean).toContain('return this.facts.get(factId);');
});

test('a class calls the one that it extends with what that was given', () => {
  expect(leanEngine(source('errors.js'))).toContain('(super(...props), this)');
  expect(leanEngine(source('rule.js'))).toContain('(super(), this)');
});

test('a file that is written otherwise than expected is refused, and not shipped half', () => {
  expect(() => leanEngine(source('fact.js').replace('_createClass(Fact, [', '_createClass(Fact, own, ['))).toThrow('the methods of Fact were to be a list');
  expect(() => leanEngine(`${source('fact.js')}\nexports.more = function () { exports.default(); };`)).toThrow('written otherwise than expected');
});
