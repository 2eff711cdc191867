import type { Assessment } from '../../../src/contract/types.generated.js';
import { shipped } from '../../shipped.js';
import type { Ask } from './statement.js';

const unpublished = new Set(['common-practice', 'from-memory']);

const ofRule = (id: string): readonly string[] => {
  const rule = shipped.rules[id];
  if (rule === undefined) throw new Error(`no rule ${id}`);
  return rule.sources;
};

const published = (sources: readonly string[]): ReadonlySet<string> => new Set(sources.filter((id) => !unpublished.has(id)));
const deciding = (assessment: Assessment): Assessment['findings'] => assessment.findings.filter((finding) => finding.verdict === assessment.verdict || finding.fires === 'possibly');
const facts = (assessment: Assessment): readonly string[] => deciding(assessment).flatMap((finding) => finding.facts.map((fact) => fact.fact as string));

/** Published sources of each trait that a verdict looks at. */
export const traitsRestOn = (ask: Ask, assessment: Assessment): readonly ReadonlySet<string>[] => {
  const traits = shipped.species[assessment.basis.species]?.traits ?? {};
  const looked = [...facts(assessment).filter((fact) => fact.startsWith('species.')).map((fact) => fact.slice('species.'.length)), ...(ask.traits ?? [])];
  return looked.map((trait) => published(traits[trait]?.sources ?? []));
};

/** Published sources that a verdict rests on: of those traits, of the rules that decide it (or whose silence does), of alerts and follow-ups. */
export const restsOn = (ask: Ask, assessment: Assessment): ReadonlySet<string> => {
  const alerts = facts(assessment).includes('disease.inSeason') ? shipped.alerts.filter((alert) => alert.regions.some((region) => ask.where?.region?.startsWith(region))) : [];
  return new Set([
    ...traitsRestOn(ask, assessment).flatMap((sources) => [...sources]),
    ...published([
      ...deciding(assessment).flatMap((finding) => ofRule(finding.rule)),
      ...(ask.silent ?? []).flatMap(ofRule),
      ...(ask.follows ?? []).flatMap((id) => shipped.followUps[id]!.sources),
      ...alerts.flatMap((alert) => alert.sources),
    ]),
  ]);
};
