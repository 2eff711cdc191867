const radians = Math.PI / 180;

/** Degrees brought into 0 to below 360, and to a millionth, so that turning a tree moves nothing across a limit. */
export const turned = (degrees: number): number => {
  const fine = Math.round((degrees % 360) * 1e6) / 1e6;
  return (fine < 0 ? fine + 360 : fine) % 360 + 0;
};

/** How far two directions stand apart, 0 to 180 degrees. */
export const angleBetween = (a: number, b: number): number => {
  const apart = turned(a - b);
  return apart > 180 ? 360 - apart : apart;
};

/** The direction of an azimuth from the front: `x` to the viewer's right, `y` to the back. */
export const directionOf = (azimuthDeg: number): { readonly x: number; readonly y: number } => ({ x: -Math.sin(azimuthDeg * radians), y: -Math.cos(azimuthDeg * radians) });

/** The azimuth of a direction. */
export const azimuthOf = ({ x, y }: { readonly x: number; readonly y: number }): number => turned(Math.atan2(-x, -y) / radians);
