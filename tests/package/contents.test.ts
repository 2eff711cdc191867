import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { type AnyNode, parse } from 'acorn';
import { simple } from 'acorn-walk';
import { expect, test } from 'vitest';
import { packed, packedFiles, tarballBytes } from './packed.js';

const read = (name: string): string => readFileSync(join(packed, name), 'utf8');

/** What a strict content policy or a browser stops, found in the syntax tree. */
const forbidden = (code: string): readonly string[] => {
  const found: string[] = [];
  const isName = (node: AnyNode, name: string): boolean => node.type === 'Identifier' && node.name === name;
  simple(parse(code, { ecmaVersion: 2023, sourceType: 'module' }), {
    Identifier: (node) => { if (['eval', 'Function', 'require', 'process', 'Buffer', '__dirname'].includes(node.name)) found.push(node.name); },
    MemberExpression: (node) => { if (!node.computed && node.property.type === 'Identifier' && node.property.name === 'constructor' && node.object.type === 'FunctionExpression') found.push('constructor of a function'); },
    CallExpression: (node) => { if (isName(node.callee as AnyNode, 'setTimeout') && node.arguments[0]?.type === 'Literal') found.push('setTimeout of text'); },
    ImportDeclaration: (node) => { if (!String(node.source.value).startsWith('.')) found.push(`import of ${String(node.source.value)}`); },
    ExportNamedDeclaration: (node) => { if (node.source != null && !String(node.source.value).startsWith('.')) found.push(`import of ${String(node.source.value)}`); },
    ImportExpression: (node) => { if (node.source.type !== 'Literal' || !String(node.source.value).startsWith('.')) found.push('import of what is not here'); },
  });
  return found;
};

/* Every module that an app in a browser can come to: those of the entry points anywhere but in Node, and what they import. */
const manifest = JSON.parse(read('package.json')) as { readonly exports: Readonly<Record<string, string | Readonly<Record<string, string>>>> };
const elsewhere = Object.entries(manifest.exports).flatMap(([name, target]) => (typeof target === 'string' || name === './node' ? [] : [target['default']!.slice('./'.length)]));
const forBrowsers = new Set(packedFiles.filter((name) => elsewhere.some((target) => name.startsWith(target.split('*')[0]!) && name.endsWith(target.split('*').at(-1)!))));
for (const name of forBrowsers) {
  const from = (node: { readonly source?: AnyNode | null }): void => { if (node.source?.type === 'Literal') forBrowsers.add(join(dirname(name), String(node.source.value))); };
  simple(parse(read(name), { ecmaVersion: 2023, sourceType: 'module' }), { ImportDeclaration: from, ImportExpression: from, ExportNamedDeclaration: from });
}

test('the tree of syntax shows what a strict content policy stops', () => {
  for (const code of ['eval("1")', 'new Function("a")', 'const f = globalThis.Function; Function("a")', "import 'node:vm'", "export { a } from 'vm'", "await import('node:fs')", 'await import(name)', 'setTimeout("a")', 'require("vm")', 'process.env']) expect(forbidden(code), code).not.toEqual([]);
  expect(forbidden("import a from './a.js'; const evaluate = { eval: 1 }; export const b = () => import('./b.js');")).toEqual([]);
});

test('no module that a browser comes to writes code at run time, or asks for Node or another package', () => {
  expect(forBrowsers.size).toBeGreaterThan(50);
  for (const name of forBrowsers) {
    const allowed = name.startsWith('dist/browser/') ? ['process'] : [];
    expect(forbidden(read(name)).filter((each) => !allowed.includes(each)), name).toEqual([]);
  }
});

test('where `process` is named, it is first asked whether there is one', () => {
  for (const name of forBrowsers) {
    /* A method may be called so. */
    const named = /(?<![.\w])process\b(?!\()/.test(read(name));
    if (named) expect(read(name), name).toMatch(/typeof process<"u"&&process\.env&&process\.env\.DEBUG/);
  }
});

test('it holds what an app needs, and nothing of ours', () => {
  expect(packedFiles.filter((name) => !/^(?:dist\/|schemas\/.*\.schema\.json$|README\.md$|CHANGELOG\.md$|LICENSE$|LICENSE-DATA$|package\.json$)/.test(name))).toEqual([]);
  expect(packedFiles.filter((name) => /test|\.map$|\.yaml$|bench|Main\.|upkeep\/(?:site|package|fold)\//.test(name))).toEqual([]);
  expect(tarballBytes).toBeLessThan(720_000);
});

test('what it bundles is named with its licence', () => {
  for (const build of ['browser', 'parts']) {
    const notices = read(`dist/${build}/LICENSES.txt`);
    for (const name of ['json-rules-engine', 'date-fns', '@date-fns/utc', 'suncalc', '@noble/hashes']) expect(notices).toMatch(new RegExp(`^${name} [0-9.]+ \\(`, 'm'));
    for (const name of ['jsonpath-plus', 'eventemitter2', 'hash-it', 'ajv', 'yaml']) expect(notices).not.toMatch(new RegExp(`^${name} `, 'm'));
    expect(notices.match(/copyright/gi)!.length).toBeGreaterThanOrEqual(4);
  }
});

test('every entry point is there, with its types', () => {
  for (const target of Object.values(manifest.exports).flatMap((each) => (typeof each === 'string' ? [each] : Object.values(each)))) {
    const [before, after] = target.slice('./'.length).split('*') as [string, string | undefined];
    expect(packedFiles.some((name) => (after === undefined ? name === before : name.startsWith(before) && name.endsWith(after))), target).toBe(true);
  }
});
