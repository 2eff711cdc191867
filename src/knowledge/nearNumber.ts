/** The number that a text may have meant: one in quotes, one with a decimal comma, a share in hundredths. */
export const nearNumber = (written: string): number | undefined => {
  const [, number, hundredths] = /^(-?\d+(?:[.,]\d+)?)( ?%)?$/.exec(written.trim()) ?? [];
  if (number === undefined) return undefined;
  const value = Number(number.replace(',', '.'));
  return hundredths === undefined ? value : Number((value / 100).toPrecision(6));
};
