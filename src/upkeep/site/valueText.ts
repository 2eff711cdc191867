import { longAgo } from '../../facts/longAgo.js';
import type { FactWord, Knowledge } from '../../knowledge/knowledge.js';

/** A value as a grower reads it, none of it rounded away: shares in per cent, phases by their names, with its unit. */
export const valueText = (value: unknown, word: FactWord | undefined, { phases }: Knowledge): string => {
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value !== 'number') return phases[String(value)]?.label ?? String(value).replaceAll('-', ' ');
  if (word?.unit === 'days' && value >= longAgo) return 'long ago';
  const unit = word?.unit === undefined ? '' : ` ${word.unit === 'share' ? '%' : word.unit}`;
  return `${word?.unit === 'share' ? Math.round(value * 1e6) / 1e4 : value}${unit}`;
};
