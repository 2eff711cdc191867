import { describe, expect, test } from 'vitest';
import { checkProposal } from '../../src/knowledge/checkProposal.js';
import { type Issue, SparebudError } from '../../src/knowledge/error.js';
import { shipped } from '../shipped.js';

const refused = (written: unknown): readonly Issue[] => {
  try {
    checkProposal(written, shipped);
  } catch (cause) {
    if (cause instanceof SparebudError) return cause.issues;
    throw cause;
  }
  return [];
};

const good = { tree: { species: 'juniperus-chinensis' }, operation: { op: 'repot' } };

test('a species and an operation are enough', () => {
  expect(checkProposal(good, shipped)).toEqual(good);
});

test('a mistyped field says where it is, what was found and what was meant', () => {
  const [issue, ...others] = refused({ tree: { species: 'juniperus-chinensis', vigor: 'strong' }, operation: { op: 'repot' } });
  expect(others).toEqual([]);
  expect(issue).toMatchObject({ code: 'unknown-field', path: 'tree.vigor', found: 'vigor', help: 'did you mean `vigour`?' });
  expect(issue!.accepted).toContain('vigour');
});

test('a mistyped value says what is accepted', () => {
  const [issue] = refused({ ...good, tree: { ...good.tree, vigour: 'stron' } });
  expect(issue).toMatchObject({ code: 'not-allowed', path: 'tree.vigour', found: 'stron', accepted: ['strong', 'steady', 'weak'], help: 'did you mean `strong`?' });
});

test('a mistyped operation is an unknown operation, with what was meant', () => {
  const [issue, ...others] = refused({ ...good, operation: { op: 'repott' } });
  expect(others).toEqual([]);
  expect(issue).toMatchObject({ code: 'unknown-operation', path: 'operation.op', found: 'repott' });
  expect(issue!.help).toMatch(/did you mean .*`repot`/);
});

test('an unknown operation comes with the ids of all that there are, and the trade name that was meant', () => {
  const ids = Object.keys(shipped.operations);
  const [alias] = Object.keys(shipped.operations['strip-bark']!.aliases);
  for (const op of ['repott', 'water', `${alias!}x`, 3]) expect(refused({ ...good, operation: { op } })[0]).toMatchObject({ code: 'unknown-operation', accepted: ids });
  expect(refused({ ...good, operation: { op: `${alias!}x` } })[0]!.help).toContain(`\`${alias!}\``);
  expect(refused({ ...good, operation: { op: 'water' } })[0]!.help).toMatch(new RegExp(`accepted: ${ids[0]!}, ${ids[1]!}.*\\(${ids.length} in all\\)`));
});

test('of a long list only what is near is named', () => {
  const [near] = refused({ ...good, tree: { ...good.tree, traits: { 'budding.bareWod': 'good' } } });
  expect(near!.code).toBe('unknown-trait');
  expect(near!.accepted![0]).toBe('budding.bareWood');
  expect(near!.accepted!.length).toBeLessThanOrEqual(12);
  const [far] = refused({ ...good, tree: { ...good.tree, traits: { zzz: 'good' } } });
  expect(far!.accepted).toEqual([]);
  expect(far!.help).toMatch(/in all/);
});

test('a parameter that the operation does not take is refused, with those that it takes', () => {
  const [issue] = refused({ ...good, operation: { op: 'repot', finish: 'flush' } });
  expect(issue).toMatchObject({ code: 'unknown-parameter', path: 'operation.finish', found: 'finish' });
  expect(issue!.accepted).toEqual(expect.arrayContaining(['rootsRemoved', 'soilRemoved']));
});

test('a share that was written in per cent is out of bounds', () => {
  expect(refused({ ...good, operation: { op: 'repot', rootsRemoved: 30 } })).toMatchObject([{ code: 'out-of-bounds', path: 'operation.rootsRemoved', found: 30, accepted: ['0 to 1'], help: 'accepted: 0 to 1; 30 % is 0.3' }]);
});

test.each([['15.6.2027', '2027-06-15'], ['5. 6. 2027', '2027-06-05'], ['2027-6-5', '2027-06-05'], ['2027/06/15', '2027-06-15']])('a day written as %s is told as ISO 8601 writes it', (date, iso) => {
  expect(refused({ ...good, date })).toMatchObject([{ code: 'bad-date', path: 'date', found: date, help: `did you mean \`${iso}\`? write it as YYYY-MM-DD` }]);
});

test('a day that may be read two ways, or with a year too much, is not guessed', () => {
  expect(refused({ ...good, date: '3/5/2027', where: { lastFrost: '15.4.2027' } }).map(({ help }) => help)).toEqual(['write it as YYYY-MM-DD', 'write it as MM-DD, the usual last frost of the cold season']);
});

test.each([['51,1', 51.1], ['40 %', 0.4], ['0.3', 0.3]])('a number that came as the text `%s` is told as a number', (rootsRemoved, meant) => {
  expect(refused({ ...good, operation: { op: 'repot', rootsRemoved } })).toMatchObject([{ code: 'wrong-type', help: `did you mean the number ${meant}?` }]);
});

test('a list that is too short says how much it may hold', () => {
  expect(refused({ ...good, where: { monthlyMinC: [1, 2], monthlyMaxC: [3, 4] } })[0]).toMatchObject({ path: 'where.monthlyMinC', message: '`[1,2]` holds too few entries in `where.monthlyMinC`', help: 'accepted: at least 12' });
});

test('a number in quotes is a text', () => {
  expect(refused({ ...good, operation: { op: 'repot', rootsRemoved: '0.3' } })).toMatchObject([{ code: 'wrong-type', path: 'operation.rootsRemoved', found: '0.3', accepted: ['number'] }]);
});

test('all that is wrong is said at once', () => {
  const issues = refused({ tree: { species: 'juniperus-chinensis', health: 'fine', colour: 'green' }, operation: { op: 'repot', rootsRemoved: 2 }, date: 'soon' });
  expect(issues.map((issue) => issue.path).sort()).toEqual(['date', 'operation.rootsRemoved', 'tree.colour', 'tree.health']);
});

test('what is missing is named', () => {
  expect(refused({}).map(({ code, path }) => ({ code, path }))).toEqual([{ code: 'missing', path: 'tree' }, { code: 'missing', path: 'operation' }]);
  expect(refused({ tree: {}, operation: {} }).map((issue) => issue.path).sort()).toEqual(['operation.op', 'tree.species']);
});

test('what is no object is refused in words', () => {
  for (const [value, word] of [[null, 'null'], [[], 'a list'], ['repot', 'string'], [3, 'number'], [undefined, 'undefined']] as const) expect(refused(value)[0]).toMatchObject({ code: 'wrong-type', message: `a proposal is an object, found ${word}` });
});

describe('dates', () => {
  test.each(['2026-02-29', '2026-13-01', '2026-00-10', '2026-04-31', '2100-02-29', '26-04-01', '2026-4-1', '01.04.2026', ''])('`%s` is not a day of the calendar', (date) => {
    expect(refused({ ...good, date })).toMatchObject([{ code: 'bad-date', path: 'date', found: date }]);
  });

  test.each(['2024-02-29', '2000-02-29', '2026-12-31'])('`%s` is', (date) => {
    expect(refused({ ...good, date })).toEqual([]);
  });

  test('a date of the log, of the last repotting and of a frost is looked at as well', () => {
    const issues = refused({ tree: { species: 'juniperus-chinensis', lastRepotted: '2025-13', log: [{ op: 'repot', date: '2025-02-30' }] }, operation: { op: 'repot' }, where: { lastFrost: '04-31', firstFrost: '10-10' } });
    expect(issues.map(({ code, path }) => `${code} ${path}`).sort()).toEqual(['bad-date tree.lastRepotted', 'bad-date tree.log[0].date', 'bad-date where.lastFrost']);
  });

  test('the last repotting may be a year, a month, a day or never', () => {
    for (const lastRepotted of ['2024', '2024-03', '2024-03-10', 'never']) expect(refused({ ...good, tree: { ...good.tree, lastRepotted } })).toEqual([]);
  });
});

describe('places', () => {
  const min = Array(12).fill(2) as number[];

  test('minima without maxima are refused', () => {
    expect(refused({ ...good, where: { monthlyMinC: min } })).toMatchObject([{ code: 'missing', path: 'where.monthlyMaxC' }]);
  });

  test('a month whose maximum lies below its minimum is refused', () => {
    expect(refused({ ...good, where: { monthlyMinC: min, monthlyMaxC: [...Array(11).fill(9), 1] } })).toMatchObject([{ code: 'impossible', path: 'where.monthlyMaxC[11]', found: 1 }]);
  });

  test('eleven months are no year', () => {
    expect(refused({ ...good, where: { monthlyMinC: min.slice(1), monthlyMaxC: min } })[0]).toMatchObject({ path: 'where.monthlyMinC' });
  });
});

describe('trade names', () => {
  const operation = (written: Readonly<Record<string, unknown>>): unknown => checkProposal({ ...good, operation: written }, shipped).operation;

  test('a trade name sets the parameters that it means', () => {
    expect(operation({ op: 'flush cut' })).toEqual({ op: 'remove-branch', finish: 'flush' });
    expect(operation({ op: 'jin' })).toEqual({ op: 'strip-bark', on: 'branch' });
    expect(operation({ op: 'decandling' })).toEqual({ op: 'candle-cut' });
    expect(operation({ op: 'bare-root', rootsRemoved: 0.2 })).toEqual({ op: 'repot', soilRemoved: 'all', rootsRemoved: 0.2 });
  });

  test('a parameter that is told beats the one that the name sets', () => {
    expect(operation({ op: 'flush cut', finish: 'collar' })).toEqual({ op: 'remove-branch', finish: 'collar' });
  });

  test('every trade name of every operation is understood, in a log as well', () => {
    for (const word of Object.values(shipped.operations)) {
      for (const [alias, set] of Object.entries(word.aliases)) {
        expect(operation({ op: alias })).toEqual({ op: word.id, ...set });
        const { tree } = checkProposal({ ...good, tree: { ...good.tree, log: [{ op: alias, date: '2025-03' }] } }, shipped);
        expect(tree.log).toEqual([{ op: word.id, ...set, date: '2025-03' }]);
      }
    }
  });

  test('names that every object has are no operations', () => {
    for (const op of ['__proto__', 'constructor', 'toString', 'hasOwnProperty']) expect(refused({ ...good, operation: { op } })).toMatchObject([{ code: 'unknown-operation', path: 'operation.op' }]);
  });
});

describe('hostile input', () => {
  test('nesting without end is refused before it is looked at', () => {
    let deep: unknown = 1;
    for (let i = 0; i < 20_000; i++) deep = { meta: deep };
    expect(refused({ ...good, meta: deep })).toMatchObject([{ code: 'too-large' }]);
  });

  test('a value that contains itself is refused', () => {
    const circle: Record<string, unknown> = {};
    circle['meta'] = circle;
    expect(refused({ ...good, meta: circle })).toMatchObject([{ code: 'too-large' }]);
  });

  test('keys of prototypes change nothing and are refused', () => {
    const written: unknown = JSON.parse('{"tree":{"species":"juniperus-chinensis","__proto__":{"vigour":"weak"}},"operation":{"op":"repot","constructor":{"prototype":{"polluted":true}}}}');
    expect(refused(written).length).toBeGreaterThan(0);
    expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
    expect(({} as Record<string, unknown>)['vigour']).toBeUndefined();
  });

  test('a very long word is cut short in what is said of it', () => {
    const [issue] = refused({ ...good, operation: { op: 'x'.repeat(50_000) } });
    expect(issue!.message.length).toBeLessThan(300);
    expect(issue!.help!.length).toBeLessThan(1_000);
  });

  test('thousands of faults are found in good time', () => {
    const started = performance.now();
    refused({ ...good, tree: { ...good.tree, log: Array.from({ length: 2_000 }, (_, i) => ({ op: `unknown-${i}`, date: 'soon' })) } });
    expect(performance.now() - started).toBeLessThan(10_000);
  });
});
