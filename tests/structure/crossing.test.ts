import { describe, expect, test } from 'vitest';
import { areParallel } from '../../src/structure/areParallel.js';
import { meetingOf } from '../../src/structure/crossing.js';
import { readStructure } from '../../src/structure/readStructure.js';
import type { Branch, Structure, ToldStructure } from '../../src/structure/tree.js';

type Told = NonNullable<ToldStructure['branches']>[number];

const two = (one: Partial<Told>, other: Partial<Told>): readonly [Structure, Branch, Branch] => {
  const structure = readStructure({
    trunks: [{ id: 't', points: [{ heightMm: 150, diameterMm: 34 }, { heightMm: 200, diameterMm: 32 }] }],
    branches: [{ id: 'a', heightMm: 150, azimuthDeg: 80, lengthMm: 160, pitchDeg: 35, diameterMm: 8, ...one }, { id: 'b', heightMm: 200, azimuthDeg: 100, lengthMm: 160, pitchDeg: -10, diameterMm: 6, ...other }],
  });
  return [structure, structure.branches[0]!, structure.branches[1]!];
};

describe('a rising branch under a hanging one', () => {
  test('passes it at a distance, and crosses it as seen from the front', () => {
    const meeting = meetingOf(...two({}, {}))!;
    expect(meeting.apartMm).toBeCloseTo(23.7, 1);
    expect(meeting.crossesInView).toBe(true);
    expect(meeting.touches).toBe(false);
  });

  test('tangles with it once both carry pads', () => expect(meetingOf(...two({ padMm: 20 }, { padMm: 20 }))!.touches).toBe(true));

  test('further round the trunk keeps clear, and still crosses in view', () => {
    const meeting = meetingOf(...two({ azimuthDeg: 60 }, { azimuthDeg: 120 }))!;
    expect(meeting.apartMm).toBeCloseTo(47.5, 1);
    expect(meeting.crossesInView).toBe(true);
  });

  test('is not told of where a length is missing', () => {
    const structure = readStructure({ trunks: [{ id: 't', points: [{ heightMm: 0, diameterMm: 34 }] }], branches: [{ id: 'a', heightMm: 150, azimuthDeg: 80, pitchDeg: 35 }, { id: 'b', heightMm: 200, azimuthDeg: 100, lengthMm: 160, pitchDeg: -10 }] });
    expect(meetingOf(structure, structure.branches[0]!, structure.branches[1]!)).toBeUndefined();
  });
});

describe('branches one above the other', () => {
  const above = (gapMm: number): readonly [Structure, Branch, Branch] => two({ azimuthDeg: 90, pitchDeg: 20, heightMm: 150 }, { azimuthDeg: 80, pitchDeg: 18, heightMm: 150 + gapMm });

  test('do not cross, and are no parallels where the gap is wide', () => {
    const [structure, a, b] = above(40);
    expect(meetingOf(structure, a, b)!.crossesInView).toBe(false);
    expect(areParallel(a, b)).toBe(false);
  });

  test('are parallels where it is narrow', () => {
    const [, a, b] = above(31);
    expect(areParallel(a, b)).toBe(true);
  });
});

test('the least distance is what trying every pair of places finds', () => {
  const [structure, a, b] = two({}, {});
  const at = ({ azimuthDeg, heightMm, pitchDeg }: Branch, trunkMm: number, t: number): readonly [number, number, number] => {
    const [side, pitch] = [(azimuthDeg! * Math.PI) / 180, (pitchDeg! * Math.PI) / 180];
    const out = trunkMm / 2 + 160 * t * Math.cos(pitch);
    return [-out * Math.sin(side), -out * Math.cos(side), heightMm + 160 * t * Math.sin(pitch)];
  };
  let least = Infinity;
  for (let i = 0; i <= 400; i++) for (let j = 0; j <= 400; j++) {
    const [p, q] = [at(a, 34, i / 400), at(b, 32, j / 400)];
    least = Math.min(least, Math.hypot(p[0] - q[0], p[1] - q[1], p[2] - q[2]));
  }
  expect(meetingOf(structure, a, b)!.apartMm).toBeCloseTo(least, 1);
});
