/* By definition: an inch is 25.4 mm, a foot 12 inches. */
const lengthsMm: Readonly<Record<string, number>> = { mm: 1, cm: 10, m: 1000, in: 25.4, '"': 25.4, ft: 304.8, "'": 304.8 };

const written = /^(-?\d+(?:\.\d+)?|(?:\d+[ -])?\d+\/[1-9]\d*) ?(%|°?[CF]|mm|cm|m|in|ft|"|')$/;

/** `1/2`, `1 1/2` or a decimal number. */
const numberOf = (text: string): number =>
  text.split(/(?<=\d)[ -]/).reduce((sum, part) => {
    const [above, below = '1'] = part.split('/');
    return sum + Number(above) / Number(below);
  }, 0);

const inUnit = (value: number, unit: string, wanted: string): number | undefined => {
  const mm = lengthsMm[unit];
  switch (wanted) {
    case 'share':
      return unit === '%' ? value / 100 : undefined;
    case '°C':
      return unit.endsWith('C') ? value : unit.endsWith('F') ? (value - 32) / 1.8 : undefined;
    case 'mm':
      return mm === undefined ? undefined : value * mm;
    case 'm':
      return mm === undefined ? undefined : (value * mm) / 1000;
    default:
      return undefined;
  }
};

/**
 * A number with a unit of its own, such as `40%`, `1/2in` or `28F`, in the unit that a proposal takes; undefined where it is none.
 *
 * @param wanted `share`, `mm`, `m` or `°C`
 */
export const measured = (text: string, wanted: string): number | undefined => {
  const [, number, unit] = written.exec(text) ?? [];
  const value = number === undefined ? undefined : inUnit(numberOf(number), unit!, wanted);
  return value === undefined ? undefined : Number(value.toPrecision(6));
};
