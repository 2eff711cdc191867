import type { Assessment } from '../../../src/contract/types.generated.js';
import { shipped } from '../../shipped.js';
import type { Ask } from './statement.js';

const unpublished = new Set(['common-practice', 'from-memory']);

const ofRule = (id: string): readonly string[] => {
  const rule = shipped.rules[id];
  if (rule === undefined) throw new Error(`no rule ${id}`);
  return rule.sources;
};

/** Published sources that a verdict rests on: of the rules that decide it (or whose silence does), of the traits they look at, of alerts and follow-ups. */
export const restsOn = (ask: Ask, assessment: Assessment): ReadonlySet<string> => {
  const traits = shipped.species[assessment.basis.species]?.traits ?? {};
  const deciding = assessment.findings.filter((finding) => finding.verdict === assessment.verdict || finding.fires === 'possibly');
  const facts = deciding.flatMap((finding) => finding.facts.map((fact) => fact.fact as string));
  const looked = [...facts.filter((fact) => fact.startsWith('species.')).map((fact) => fact.slice('species.'.length)), ...(ask.traits ?? [])];
  const alerts = facts.includes('disease.inSeason') ? shipped.alerts.filter((alert) => alert.regions.some((region) => ask.where?.region?.startsWith(region))) : [];
  const all = [
    ...deciding.flatMap((finding) => ofRule(finding.rule)),
    ...(ask.silent ?? []).flatMap(ofRule),
    ...looked.flatMap((trait) => traits[trait]?.sources ?? []),
    ...(ask.follows ?? []).flatMap((id) => shipped.followUps[id]!.sources),
    ...alerts.flatMap((alert) => alert.sources),
  ];
  return new Set(all.filter((id) => !unpublished.has(id)));
};
