import { describe, expect, test } from 'vitest';
import { factsOf } from './factsOf.js';

const strain = async (operation: Readonly<Record<string, unknown>>, tree: Readonly<Record<string, unknown>> = {}): Promise<unknown> => {
  const fact = (await factsOf({ tree: { species: 'acer-palmatum', ...tree }, operation }))('work.strain');
  return fact.value ?? fact.among;
};

describe('how hard work is on a tree', () => {
  test.each([
    [{ op: 'repot', rootsRemoved: 0.1, soilRemoved: 'some' }, 'light'],
    [{ op: 'repot', rootsRemoved: 0.4, soilRemoved: 'some' }, 'hard'],
    [{ op: 'repot', rootsRemoved: 0.1, soilRemoved: 'all' }, 'hard'],
    [{ op: 'trunk-chop' }, 'hard'],
    [{ op: 'collect' }, 'hard'],
    [{ op: 'slip-pot' }, 'none'],
    [{ op: 'feed' }, 'none'],
    [{ op: 'wire', bend: 'gentle' }, 'none'],
    [{ op: 'wire', bend: 'firm' }, 'light'],
    [{ op: 'wire', bend: 'severe' }, 'hard'],
    [{ op: 'defoliate', shareRemoved: 0.3 }, 'light'],
    [{ op: 'defoliate', shareRemoved: 1 }, 'hard'],
    [{ op: 'trim', shareRemoved: 0.01 }, 'none'],
    [{ op: 'trim', shareRemoved: 0.2 }, 'light'],
    [{ op: 'trim', shareRemoved: 1 }, 'hard'],
  ])('%j is %s', async (operation, expected) => {
    expect(await strain(operation)).toBe(expected);
  });

  test('a bend that is not told may be anything', async () => {
    expect(await strain({ op: 'wire' })).toEqual(['none', 'light', 'hard']);
  });

  test('a bend is worked out of its radius and the wood: 2 mm round 100 mm is gentle, 20 mm round 100 mm severe', async () => {
    expect(await strain({ op: 'wire', radiusMm: 200, branchDiameterMm: 2 })).toBe('none');
    expect(await strain({ op: 'wire', radiusMm: 100, branchDiameterMm: 20 })).toBe('hard');
  });
});

test('a share of growing tips is not a share of foliage', async () => {
  const share = async (op: string): Promise<number> => (await factsOf({ tree: { species: 'acer-palmatum' }, operation: { op, shareRemoved: 0.5 } }))('sitting.foliageShare').value as number;
  expect(await share('pinch')).toBeLessThan(0.5);
  expect(await share('defoliate')).toBe(0.5);
});
