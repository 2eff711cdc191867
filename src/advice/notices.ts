import type { Assessment } from '../contract/types.generated.js';
import type { Judged } from './judge.js';
import { message } from './message.js';
import { lookedAt, reaching } from './relevant.js';
import type { Prepared } from './prepare.js';
import { speciesLabel } from './findings.js';
import type { Residual } from '../engine/specialise.js';
import type { Rule } from '../knowledge/knowledge.js';

type Message = Assessment['notices'][number];

/** What else the reader should know of how the answer came about: a model out of its reach, a renamed id, an alert that wants a region. */
export const noticesOf = (prepared: Prepared, judged: Judged, rules: readonly Residual<Rule>[]): readonly Message[] => {
  const { asked, species, rootstock, renamedFrom } = prepared;
  const { knowledge, proposal, climate, day } = asked;
  const { read } = judged.facts;
  const looked = reaching(lookedAt(rules), judged.facts);
  const seasonal = [...looked].some((id) => id.startsWith('season.') || id.startsWith('place.') || id.startsWith('exposure.'));
  const notices: Message[] = [];
  const season = asked.season(proposal.tree.phase, read('tree.standing').value as string);
  if (seasonal) for (const note of new Set(day === undefined ? (season?.notes ?? []) : [...climate.notes, ...(season?.notes ?? [])])) if (`notice.${note}` in knowledge.wording) notices.push(message(knowledge, `notice.${note}`));
  if (renamedFrom !== undefined) notices.push(message(knowledge, 'notice.renamed', { from: renamedFrom, to: species.id }));
  if (species.rank === 'member') notices.push(message(knowledge, 'notice.from-parent', { asked: species.name, answered: knowledge.wording[`species.${species.parent!}`] ?? knowledge.species[species.parent!]!.name }));
  if (rootstock !== undefined) notices.push(message(knowledge, 'notice.rootstock', { species: speciesLabel(rootstock, knowledge) }));
  const own = Object.keys(proposal.tree.traits ?? {});
  if (own.length > 0) notices.push(message(knowledge, 'notice.own-traits', { traits: own.join(', ') }));
  const risks = asked.traits['pruning.diseaseRisks']?.is as readonly string[] | undefined;
  if (looked.has('disease.inSeason') && proposal.where?.region === undefined && knowledge.alerts.some((alert) => risks?.includes(alert.disease))) notices.push(message(knowledge, 'notice.region-untold'));
  if ((proposal.ignore ?? []).length > 0) notices.push(message(knowledge, 'notice.ignored', { rules: proposal.ignore!.join(', ') }));
  return notices;
};
