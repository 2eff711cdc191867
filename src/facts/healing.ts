import type { Asked, Read } from './asked.js';
import type { FactState } from './factValue.js';

/**
 * How far callus grows in from each side of a wound in a year, least and most, in mm, on this tree as it stands.
 *
 * The species' figure is for open ground; pots and vigour slow it by the factors of shared/growing.yaml (practice). Where last season's thickening
 * was measured it takes their place, since closing follows the stem's radial growth: Neely 1979, J. Arboric. 5(6):135.
 */
export const healingRate = (read: Read, asked: Asked): { readonly leastMm: number; readonly mostMm: number; readonly state: FactState } => {
  const { growing } = asked.knowledge;
  const ring = asked.proposal.tree.trunk?.thickenedMm;
  if (ring !== undefined && ring > 0) {
    const each = (ring / 2) * growing.callusPerRing;
    return { leastMm: each * 0.7, mostMm: each * 1.3, state: 'known' };
  }
  const [place, vigour] = [read('tree.growing'), read('tree.vigour')];
  const [least, most] = (asked.traits['healing.ingrowthMm']?.is ?? [1, 2]) as readonly [number, number];
  const factor = (growing.growing[place.value as string] ?? 1) * (growing.vigour[vigour.value as string] ?? 1);
  const state = place.state === 'assumed' || vigour.state === 'assumed' ? 'assumed' : 'known';
  return { leastMm: least * factor, mostMm: most * factor, state };
};
