import type { Regulation } from '../knowledge/knowledge.js';
import type { Derive } from './asked.js';
import { known } from './factValue.js';

/** Members of the European Union, ISO 3166-1 (European Commission, recalled). */
const union = new Set('AT BE BG HR CY CZ DK EE FI FR DE GR HU IE IT LV LT LU MT NL PL PT RO SK SI ES SE'.split(' '));

/** What a record may be called, by the kind of law that it comes to. */
const kinds: Readonly<Record<string, RegExp>> = { invasive: /invasive/, protected: /protected/, trade: /trade|cites/i, quarantine: /quarantine|import|passport/ };

/** Facts of law: which kinds of law and list name the species where it stands; anywhere, where no region is told. */
export const lawFacts: Readonly<Record<string, Derive>> = {
  'law.names': (read, asked) => {
    const records = (asked.traits['hazards.regulated']?.is ?? []) as readonly Regulation[];
    const region = read('place.region');
    const here = records.filter((record) => {
      const where = String(record['where'] ?? '');
      return region.from !== 'given' || where === '' || where === 'world' || where.split(/[ ,;]+/).some((each) => (each === 'EU' && union.has(String(region.value).slice(0, 2))) || each === region.value || String(region.value).startsWith(`${each}-`) || each.startsWith(`${String(region.value)}-`));
    });
    return known(Object.keys(kinds).filter((kind) => here.some((record) => kinds[kind]!.test(String(record['what'])))), 'worked-out');
  },
};
