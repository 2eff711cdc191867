import type { Assessment } from '../contract/types.generated.js';
import type { Residual } from '../engine/specialise.js';
import type { Knowledge, Rule } from '../knowledge/knowledge.js';
import type { Judged } from './judge.js';
import type { Prepared } from './prepare.js';
import { whereText } from './whereText.js';

type Basis = Assessment['basis'];

const rankOf = (prepared: Prepared): Basis['traitsFrom'] => {
  const { species, asked } = prepared;
  const answering = species.rank === 'member' ? asked.knowledge.species[species.parent ?? ''] : species;
  return answering?.rank === 'genus' || answering?.rank === 'group' ? answering.rank : 'taxon';
};

/** The name of some knowledge: its version and the beginning of its hash. */
export const knowledgeName = ({ version, hash }: Knowledge): string => `${version}+${hash.slice(0, 7)}`;

/** What the answer stands on: species, phase, place and knowledge. */
export const basisOf = (prepared: Prepared, judged: Judged, rules: readonly Residual<Rule>[]): Basis => {
  const { asked, species, rootstock } = prepared;
  const phase = judged.facts.read('season.phase');
  const own = Object.keys(asked.proposal.tree.traits ?? {});
  const ignored = rules.map((residual) => residual.rule.id).filter((id) => asked.proposal.ignore?.includes(id));
  return {
    species: species.id,
    ...(species.id === asked.proposal.tree.species ? {} : { asked: asked.proposal.tree.species }),
    traitsFrom: rankOf(prepared),
    ...(rootstock === undefined ? {} : { rootstock: rootstock.id }),
    ...(own.length === 0 ? {} : { own }),
    ...(phase.value === undefined ? {} : { phase: phase.value as string }),
    phaseFrom: phase.from === 'given' || phase.from === 'seen' ? 'seen' : phase.value === undefined ? 'none' : 'season',
    where: whereText(asked.climate, asked.knowledge),
    knowledge: knowledgeName(asked.knowledge),
    ...(asked.knowledge.packs === undefined ? {} : { packs: asked.knowledge.packs.map(({ namespace, version }) => ({ namespace, ...(version === undefined ? {} : { version }) })) }),
    ...(ignored.length === 0 ? {} : { ignored }),
  };
};
