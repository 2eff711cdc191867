/** One hour's chilling by the Weinberger and Bennett count: 1 from 0 to 7.2 C. Source: as defined in chillR 0.77. */
export const chillingHour = (temperatureC: number): 0 | 1 => (temperatureC >= 0 && temperatureC <= 7.2 ? 1 : 0);

/**
 * One hour's chilling in Utah units.
 *
 * Steps are open below and closed above: 1.4 C gives 0, 1.41 C gives 0.5.
 * Source: Richardson, Seeley & Walker 1974, HortScience 9:331, steps as in chillR 0.77.
 */
export const utahUnit = (temperatureC: number): number => {
  if (temperatureC <= 1.4) return 0;
  if (temperatureC <= 2.4) return 0.5;
  if (temperatureC <= 9.1) return 1;
  if (temperatureC <= 12.4) return 0.5;
  if (temperatureC <= 15.9) return 0;
  if (temperatureC <= 18) return -0.5;
  return -1;
};

/**
 * One hour's warmth in growing degree hours.
 *
 * Source: Anderson, Richardson & Kesner 1986, Acta Hort. 184:71, constants as in chillR 0.77 (base 4, best 25, limit 36 C).
 */
export const growingDegreeHour = (temperatureC: number): number => {
  if (temperatureC < 4 || temperatureC > 36) return 0;
  if (temperatureC <= 25) return (21 / 2) * (1 + Math.cos(Math.PI + (Math.PI * (temperatureC - 4)) / 21));
  return 21 * (1 + Math.cos(Math.PI / 2 + ((Math.PI / 2) * (temperatureC - 25)) / 11));
};

/** What the Dynamic Model carries from one hour to the next. It must run from the first record: a slice alone gives other sums. */
export interface ChillState {
  /** Intermediate product that is still lost to warmth. */
  readonly product: number;
  /** Share of a full product that is banked, at the temperature of the hour before. */
  readonly share: number;
  /** Where the product tends to, and how fast, at the temperature of the hour before. */
  readonly target: number;
  readonly rate: number;
  /** Portions banked so far; never lost. */
  readonly portions: number;
  readonly started: boolean;
}

export const noChill: ChillState = { product: 0, share: 0, target: 0, rate: 0, portions: 0, started: false };

/**
 * The state after one more hour in the Dynamic Model of chilling.
 *
 * Use it hour by hour from the start of the chilling season; `portions` is the running sum.
 * @param before the state so far, `noChill` at first
 * @param temperatureC this hour's temperature, C
 * Source: Fishman, Erez & Couvillon 1987, J. Theor. Biol. 124:473; Erez et al. 1990, Acta Hort. 276:165; constants and
 * indexing as `Dynamic_Model` of chillR 0.77.
 */
export const chillAfterHour = (before: ChillState, temperatureC: number): ChillState => {
  const kelvin = temperatureC + 273;
  const ratio = Math.exp((1.6 * 277 * (kelvin - 277)) / kelvin);
  const share = ratio / (1 + ratio);
  const target = (139_500 / 2.567e18) * Math.exp((12_888.8 - 4_153.5) / kelvin);
  const rate = 2.567e18 * Math.exp(-12_888.8 / kelvin);
  if (!before.started) return { product: 0, share, target, rate, portions: 0, started: true };
  const product = before.target - (before.target - before.product) * Math.exp(-before.rate);
  // A full product is banked in this hour and only the rest goes into the next.
  if (product >= 1) {
    const banked = product * before.share;
    return { product: product - banked, share, target, rate, portions: before.portions + banked, started: true };
  }
  return { product, share, target, rate, portions: before.portions, started: true };
};
