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

/** These modules of the package and all of its own that they import; `later` for those too that they import only when they are asked. */
const comesTo = (names: readonly string[], later: boolean): ReadonlySet<string> => {
  const reached = new Set(names);
  for (const name of reached) {
    const from = (node: { readonly source?: AnyNode | null }): void => {
      const source = node.source?.type === 'Literal' ? String(node.source.value) : '';
      if (source.startsWith('.')) reached.add(join(dirname(name), source));
    };
    simple(parse(read(name), { ecmaVersion: 2023, sourceType: 'module' }), { ImportDeclaration: from, ExportNamedDeclaration: from, ...(later ? { ImportExpression: from } : {}) });
  }
  return reached;
};
const { exports } = JSON.parse(read('package.json')) as { readonly exports: Readonly<Record<string, string | Readonly<Record<string, string>>>> };
/** The file that an entry point is, in Node or anywhere else; `*` where it is one of many. */
const targetOf = (entry: string, where: 'node' | 'default'): string => {
  const target = exports[entry]!;
  return (typeof target === 'string' ? target : (target[where] ?? target['default']!)).slice('./'.length);
};

/* Every module that an app in a browser can come to: those of the entry points anywhere but in Node, and what they import. */
const elsewhere = Object.keys(exports).filter((entry) => entry !== './node').map((entry) => targetOf(entry, 'default').split('*'));
const forBrowsers = comesTo(packedFiles.filter((name) => name.endsWith('.js') && elsewhere.some(([before, after]) => (after === undefined ? name === before : name.startsWith(before!) && name.endsWith(after)))), true);

test('the tree of syntax shows what a strict content policy stops', () => {
  for (const code of ['eval("1")', 'new Function("a")', 'const f = globalThis.Function; Function("a")', "import 'node:vm'", "export { a } from 'vm'", "await import('node:fs')", 'await import(name)', 'setTimeout("a")', 'require("vm")', 'process.env']) expect(forbidden(code), code).not.toEqual([]);
  expect(forbidden("import a from './a.js'; const evaluate = { eval: 1 }; export const b = () => import('./b.js');")).toEqual([]);
});

test('no module that a browser comes to writes code at run time, or asks for Node or another package', () => {
  expect(forBrowsers.size).toBeGreaterThan(40);
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

test('in Node a first answer takes few files: each costs more to find than to read', () => {
  const files = comesTo(['.', './knowledge', './places'].map((entry) => targetOf(entry, 'node')), false);
  expect(files.size).toBeLessThanOrEqual(20);
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
  for (const target of Object.values(exports).flatMap((each) => (typeof each === 'string' ? [each] : Object.values(each)))) {
    const [before, after] = target.slice('./'.length).split('*') as [string, string | undefined];
    expect(packedFiles.some((name) => (after === undefined ? name === before : name.startsWith(before) && name.endsWith(after))), target).toBe(true);
  }
});
