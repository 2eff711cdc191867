/** How far the outer wood is stretched where a round branch is bent to a radius: diameter over twice the radius, plain beam geometry. */
export const bendStrain = (branchMm: number, radiusMm: number): number => branchMm / (2 * radiusMm);

/** The radius of a bend by an angle that is spread over a length. */
export const bendRadiusMm = (angleDeg: number, lengthMm: number): number => lengthMm / ((angleDeg * Math.PI) / 180);
