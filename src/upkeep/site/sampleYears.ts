import type { Advisor } from '../../advisor.js';
import type { Year } from '../../advice/year.js';
import type { Species } from '../../knowledge/knowledge.js';

/** Where a kind of tree is at home, roughly, so that its year shows something: by the model of its season. */
const places: Readonly<Record<string, string>> = { 'mild-evergreen': 'palermo-italy', tropical: 'naha-japan', 'dry-deciduous': 'naha-japan' };
const elsewhere = 'koeln-cologne-germany';

/** The year 2027 of every taxon, as a strong tree outdoors at a place where its kind is at home. */
export const sampleYears = async (advisor: Advisor, only: (species: Species) => boolean = () => true): Promise<ReadonlyMap<string, Year>> => {
  const years = new Map<string, Year>();
  for (const species of Object.values(advisor.knowledge.species)) {
    if (species.rank !== 'taxon' || !only(species)) continue;
    const place = places[String(species.traits['season.model']?.is)] ?? elsewhere;
    years.set(species.id, await advisor.year({ tree: { species: species.id, vigour: 'strong' }, where: { place }, from: '2027-01-01' }));
  }
  return years;
};
