import fc from 'fast-check';
import type { Proposal } from '../../src/contract/types.generated.js';

type Told = NonNullable<Proposal['tree']['structure']>;
export type Tree = Proposal['tree'] & { readonly structure: Told & { readonly branches: NonNullable<Told['branches']> } };

const branch = fc.record(
  { heightMm: fc.integer({ min: 30, max: 400 }), azimuthDeg: fc.integer({ min: 0, max: 359 }), diameterMm: fc.integer({ min: 2, max: 18 }), lengthMm: fc.integer({ min: 30, max: 300 }), pitchDeg: fc.integer({ min: -60, max: 80 }), role: fc.constantFrom('keep' as const, 'sacrifice' as const, 'leader' as const), dead: fc.boolean() },
  { requiredKeys: ['heightMm', 'diameterMm'] },
);

/** A tree of an invented grower, half measured: some branches without a side, a length or a role, some old wounds. */
export const plausibleTree: fc.Arbitrary<Tree> = fc.record({
  species: fc.constantFrom('acer-palmatum', 'pinus-thunbergii', 'juniperus-chinensis', 'ulmus-parvifolia'),
  vigour: fc.constantFrom('weak' as const, 'steady' as const, 'strong' as const),
  trunk: fc.constant({ heightMm: 500 }),
  aim: fc.constantFrom({}, { heightMm: 700, trunkDiameterMm: 80 }, { style: 'literati' as const }, { style: 'broom' as const }),
  structure: fc.record({
    frontAzimuthDeg: fc.integer({ min: 0, max: 359 }),
    trunks: fc.constantFrom(...[0, 8].map((side) => [{ id: 'trunk', points: [{ heightMm: 0, diameterMm: 48 }, { heightMm: 90, diameterMm: 36, sideMm: side * 3 }, { heightMm: 140, diameterMm: 40 }, { heightMm: 300, diameterMm: 24, sideMm: -side * 2, backMm: side }, { heightMm: 450, diameterMm: 12 }] }])),
    branches: fc.array(branch, { minLength: 2, maxLength: 8 }).map((all) => all.map((each, i) => ({ id: `b${i}`, ...each }))),
    wounds: fc.array(fc.record({ heightMm: fc.integer({ min: 20, max: 400 }), azimuthDeg: fc.integer({ min: 0, max: 359 }), widthMm: fc.integer({ min: 2, max: 15 }), closed: fc.boolean() }, { requiredKeys: ['heightMm', 'widthMm'] }), { maxLength: 3 }),
  }),
}) as fc.Arbitrary<Tree>;
