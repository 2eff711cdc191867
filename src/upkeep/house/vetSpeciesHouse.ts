import type { Fault } from '../../knowledge/check.js';
import type { Parts } from '../../knowledge/parts.js';
import { redundantTraits } from './redundantTraits.js';
import { speciesId } from './speciesId.js';

type Members = Readonly<Record<string, unknown>>;

const folders = { group: 'groups', genus: 'genera', taxon: 'taxa' } as const;

/** What is wrong with how species files are written, though they could be read: names, folders, ranges, traits that say nothing new. */
export const vetSpeciesHouse = (parts: Parts): readonly Fault[] =>
  [...parts.species].flatMap(([id, { rank, written }]): readonly Fault[] => {
    const file = `species/${folders[rank]}/${id}.yaml`;
    const name = written['name'] as string;
    const fault = (at: Fault['at'], code: Fault['code'], message: string, help: string): Fault => ({ code, file, at, path: at.join('.'), message, help });
    const faults: Fault[] = [];
    const words = name.split(/\s+/).length;
    if (rank === 'genus' && words > 1) faults.push(fault(['name'], 'not-allowed', `\`${name}\` is no genus`, 'a species stands in species/taxa/'));
    else if (rank === 'taxon' && words < 2) faults.push(fault(['name'], 'not-allowed', `\`${name}\` is no species`, 'a genus stands in species/genera/; a species has a genus and an epithet'));
    else if (rank !== 'group' && id !== speciesId(name) && id !== speciesId(name.replace('×', ' '))) faults.push(fault(['name'], 'not-allowed', `the file of \`${name}\` is called \`${id}\``, `call it ${speciesId(name)}.yaml`));
    const redundant = redundantTraits(id, parts);
    for (const [trait, value] of Object.entries((written['traits'] as Record<string, Members> | null | undefined) ?? {})) {
      const at = ['traits', trait];
      const { is } = value;
      if (redundant[trait] !== undefined) faults.push(fault(at, 'duplicate', `\`${trait}\` says what \`${redundant[trait]}\` says`, 'leave it out, or name a source of its own: `sparebud vet --mend` takes it out'));
      if (value['source'] !== undefined && value['sources'] !== undefined) faults.push(fault([...at, 'sources'], 'not-allowed', `\`${trait}\` has both \`source\` and \`sources\``, 'keep `sources`, with all of them'));
      if (parts.facts[`species.${trait}`]?.type === 'range' && Array.isArray(is) && is[0] > is[1]) faults.push(fault([...at, 'is'], 'not-allowed', `\`${is.join(', ')}\` runs backwards in \`${trait}\``, 'least first, then most'));
    }
    return faults;
  });
