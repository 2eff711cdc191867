const median = (numbers: readonly number[]): number => {
  const sorted = [...numbers].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2;
};

/** A whorl, and how many branches it has. */
export interface Whorl {
  readonly heightMm: number;
  readonly members: number;
}

/** Whorls that a second flush may have set within one year: close above the one below, and with few branches (practice). */
export const falseWhorls = (whorls: readonly Whorl[]): readonly Whorl[] => {
  if (whorls.length < 3) return [];
  const gaps = whorls.slice(1).map((whorl, i) => whorl.heightMm - whorls[i]!.heightMm);
  const [usualGap, usualMembers] = [median(gaps), median(whorls.map(({ members }) => members))];
  return whorls.slice(1).filter((whorl, i) => gaps[i]! < 0.6 * usualGap && whorl.members < 0.5 * usualMembers);
};

/** Years that whorls tell, a whorl a year: DeYoung 2016, Forest Measurements 4.2; with two to four years below the first (from memory) and the current shoot. */
export const whorlYears = (whorls: readonly Whorl[]): readonly [number, number] => {
  const years = whorls.length - falseWhorls(whorls).length;
  return [years + 2 + 1, years + 4 + 1];
};
