import type { Asked, Read } from '../asked.js';

/** The trunk's width, or where it is not told the widest and the thinnest that there is: the logged work is then as light, and as hard, as it can be. */
export const trunksOf = (read: Read, { knowledge }: Asked): readonly number[] => {
  const trunk = read('tree.trunkDiameterMm').value as number | undefined;
  if (trunk !== undefined) return [trunk];
  const [thinnest, widest] = knowledge.facts['tree.trunkDiameterMm']!.bounds!;
  return [widest, thinnest];
};
