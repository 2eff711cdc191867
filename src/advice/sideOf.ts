const sides = ['front', 'front-left', 'left', 'back-left', 'back', 'back-right', 'right', 'front-right'];

/** A side of the tree by its name, from its azimuth. */
export const sideOf = (azimuthDeg: number): string => sides[Math.round(azimuthDeg / 45) % 8]!;
