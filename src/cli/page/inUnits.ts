/** The units that texts for people are printed in. */
export type Units = 'metric' | 'imperial';

const short = (value: number): string => String(Math.round(value * 10) / 10);

const sixteenths = (inches: number): string => {
  let [parts, whole] = [Math.round(inches * 16), 16];
  if (parts === 0) return 'under 1/16';
  while (parts % 2 === 0 && whole > 1) [parts, whole] = [parts / 2, whole / 2];
  return whole === 1 ? String(parts) : `${parts}/${whole}`;
};

/** Inches as a rule shows them: sixteenths below one, tenths above. */
const inches = (value: number): string => (value === 0 || Math.abs(value) >= 1 ? short(value) : value < 0 ? `-${sixteenths(-value)}` : sixteenths(value));

interface Imperial {
  readonly unit: string;
  readonly of: (value: number) => string;
}

/* By definition: an inch is 25.4 mm, a foot 12 inches, a mile 5280 feet. */
const imperial: Readonly<Record<string, Imperial>> = {
  mm: { unit: 'in', of: (mm) => inches(mm / 25.4) },
  cm: { unit: 'in', of: (cm) => inches(cm / 2.54) },
  m: { unit: 'ft', of: (m) => String(Math.round(m / 0.3048)) },
  km: { unit: 'mi', of: (km) => String(Math.round(km / 1.609344)) },
  '°C': { unit: '°F', of: (celsius) => String(Math.round(celsius * 1.8 + 32)) },
  'degree-days': { unit: 'degree-days F', of: (celsius) => String(Math.round(celsius * 1.8)) },
};

/* A number, or several that share one unit: `3 to 12 mm`, `120, 250, 400 mm`. A digit of a date or an id begins none; a colour may stand before. */
const measured = /(?<=^|[^\w.-]|\x1B\[\d+m)(-?\d+(?:\.\d+)?)((?:(?:, ?|–| to | or | and )-?\d+(?:\.\d+)?)*) (degree-days|mm|cm|km|m|°C)(?![\w-])/g;

/* Both ends of a range may come to the same. */
const once = (numbers: string): string => numbers.replace(/^(\S+(?: 1\/16)?)(?:–| to )\1$/, '$1');

/** A text with its lengths, distances and temperatures in the units asked for; it is written in metric ones. */
export const inUnits = (text: string, units: Units): string =>
  units === 'metric'
    ? text
    : text
      .replace(measured, (_, first: string, more: string, unit: string) => {
        const { unit: its, of } = imperial[unit]!;
        return `${once(`${first}${more}`.replace(/-?\d+(\.\d+)?/g, (number) => of(Number(number))))} ${its}`;
      })
      .replace(/\bin mm\b/g, 'in inches').replace(/\bin °C/g, 'in °F');
