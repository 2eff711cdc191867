import { Option } from 'commander';
import { SparebudError } from '../../knowledge/error.js';
import { didYouMean } from '../../knowledge/nearest.js';
import type { Units } from './inUnits.js';

const accepted: readonly Units[] = ['metric', 'imperial'];

const unitsOf = (written: string): Units => {
  const units = accepted.find((each) => each === written);
  if (units === undefined) throw new SparebudError([{ code: 'not-allowed', path: '--units', message: `\`${written.slice(0, 40)}\` is not allowed in \`--units\``, found: written, accepted, help: didYouMean(written, accepted) ?? `accepted: ${accepted.join(', ')}` }]);
  return units;
};

/** `--units`: what texts for people are printed in. */
export const unitsOption = (): Option => new Option('--units <units>', 'print in metric or imperial units; flags, files, JSON and pictures stay metric').argParser(unitsOf).default('metric');
