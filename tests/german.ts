import { createAdvisor } from '../src/advisor.js';
import { wordingFiles } from '../src/upkeep/wording/wordingFiles.js';
import { shipped, shippedRead, stations } from './shipped.js';

/** Every German text, as the files of shared/wording have it. */
export const german = Object.assign({}, ...wordingFiles(shippedRead.files).get('de')!.map(({ texts }) => texts)) as Readonly<Record<string, string>>;

export const germanAdvisor = createAdvisor(shipped, { places: stations, wording: german });
