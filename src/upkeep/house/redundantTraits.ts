import { isDeepStrictEqual } from 'node:util';
import { chainOf } from '../../knowledge/flatten.js';
import type { Parts } from '../../knowledge/parts.js';

type Members = Readonly<Record<string, unknown>>;

const traitsIn = (id: string, parts: Parts): Readonly<Record<string, Members>> => (parts.species.get(id)?.written['traits'] as Record<string, Members> | null | undefined) ?? {};
const sourcesOf = ({ source, sources }: Members): readonly string[] => [...((sources as readonly string[] | undefined) ?? []), ...(source === undefined ? [] : [source as string])];

/**
 * Traits that a species file repeats from its parent, by the level that says them first: the same value, with no source or note of its own.
 * A published source is one's own: it says so of this very species.
 */
export const redundantTraits = (id: string, parts: Parts): Readonly<Record<string, string>> => {
  const above = chainOf(id, parts.species).slice(0, -1).reverse();
  const found: Record<string, string> = {};
  for (const [name, trait] of Object.entries(traitsIn(id, parts))) {
    const level = above.find((other) => Object.hasOwn(traitsIn(other, parts), name));
    if (level === undefined) continue;
    const told = traitsIn(level, parts)[name]!;
    const adds = (trait['note'] !== undefined && trait['note'] !== told['note']) || sourcesOf(trait).some((source) => parts.sources[source]?.from === 'read' || !sourcesOf(told).includes(source));
    if (!adds && isDeepStrictEqual([trait['is'], trait['either']], [told['is'], told['either']])) found[name] = level;
  }
  return found;
};
