import type { Assessment } from '../../../src/contract/types.generated.js';
import { shipped } from '../../shipped.js';
import type { Ask } from './statement.js';

/** One thing that an answer hangs on, with the published sources that it names. */
export interface Support { readonly what: string; readonly sources: readonly string[] }

const unpublished = new Set(['common-practice', 'from-memory']);
const support = (what: string, sources: readonly string[]): Support => ({ what, sources: sources.filter((id) => !unpublished.has(id)) });

/** Traits that a condition looks at, as `species.x` or as a limit. */
const traitsIn = (written: unknown): readonly string[] =>
  Array.isArray(written) ? written.flatMap(traitsIn)
  : typeof written === 'object' && written !== null
    ? Object.entries(written).flatMap(([key, value]) => [...(key.startsWith('species.') ? [key.slice('species.'.length)] : key === 'trait' ? [String(value)] : []), ...traitsIn(value)])
    : [];

/** What an answer hangs on: rules that decide it, or whose silence does, the traits they look at, alerts, and follow-ups. */
export const decidedBy = (ask: Ask, assessment: Assessment): readonly Support[] => {
  const traits = shipped.species[assessment.basis.species]?.traits ?? {};
  const deciding = assessment.findings.filter((finding) => finding.verdict === assessment.verdict || finding.fires === 'possibly');
  const rules = [...new Set([...deciding.map((finding) => finding.rule), ...(ask.silent ?? [])])].map((id) => {
    const rule = shipped.rules[id];
    if (rule === undefined) throw new Error(`no rule ${id}`);
    return rule;
  });
  const looked = new Set([...rules.flatMap((rule) => traitsIn([rule.when, rule.unless])), ...(ask.traits ?? [])]);
  const facts = deciding.flatMap((finding) => finding.facts.map((fact) => fact.fact as string));
  const alerts = facts.includes('disease.inSeason') ? shipped.alerts.filter((alert) => alert.regions.some((region) => ask.where?.region?.startsWith(region))) : [];
  return [
    ...rules.map((rule) => support(`rule ${rule.id}`, rule.sources)),
    ...[...looked].map((trait) => support(`${assessment.basis.species} ${trait}`, traits[trait]?.sources ?? [])),
    ...(ask.follows ?? []).map((id) => support(`follow-up ${id}`, shipped.followUps[id]!.sources)),
    ...alerts.map((alert) => support(`alert ${alert.disease} in ${alert.regions.join(', ')}`, alert.sources)),
  ];
};
