import type { Assessment } from '../contract/types.generated.js';
import type { Fired } from '../engine/evaluate.js';
import { groundsOf } from '../engine/explain.js';
import { judgementOf, severity } from '../engine/verdict.js';
import type { Read } from '../facts/asked.js';
import type { FactValue } from '../facts/factValue.js';
import type { Knowledge, Rule, SourceWord, Species, Value } from '../knowledge/knowledge.js';
import type { Judged } from './judge.js';
import { message, notKnown, paramsIn, ruleMessage, shownValue } from './message.js';

type Finding = Assessment['findings'][number];
type Strength = Finding['strength'];

/** What a grower calls the species: the name that the wording has for it, else its first common name in the language of the wording, else its accepted name. */
export const speciesLabel = ({ id, name, commonNames }: Species, { wording }: Knowledge): string => wording[`species.${id}`] ?? commonNames[wording['language'] ?? 'en']?.[0] ?? name;

const measured = new Set(['journal', 'standard', 'data', 'law']);
const handbook = new Set(['extension', 'agency']);

/** Evidence, not taste: measured and published, agreed by several handbooks, one opinion or practice; a step lower where another setting than a pot was studied. */
export const strengthOf = (sources: readonly SourceWord[]): Strength => {
  const read = sources.filter((source) => source.from === 'read');
  const best = read.filter((source) => measured.has(source.grade));
  const handbooks = read.filter((source) => handbook.has(source.grade));
  const level = best.length > 0 ? 2 : handbooks.length > 1 ? 1 : 0;
  const ground = best.length > 0 ? best : handbooks;
  const elsewhere = ground.length > 0 && !ground.some((source) => ['container', 'law', 'seed', 'practice'].includes(source.studied));
  return (['weak', 'fair', 'strong'] as const)[Math.max(0, level - (elsewhere ? 1 : 0))]!;
};

const shownSource = ({ id, title, author, year, from, studied }: SourceWord): Finding['sources'][number] => ({
  id, title, ...(author === undefined ? {} : { author }), ...(year === undefined ? {} : { year }), from, studied,
});

/** The pack that a trait came from, where it is looked at or sets a limit. */
const packOf = (trait: string, { traits }: Species): { readonly pack?: string } => {
  const pack = traits[trait]?.pack;
  return pack === undefined ? {} : { pack };
};

/** A fact as the text of a rule says it: of a trait on which sources disagree each value. */
const inText = (name: string, { value, among }: FactValue, knowledge: Knowledge): string | number | boolean => {
  const shown = (each: Value): string | number | boolean => knowledge.phases[String(each)]?.being ?? shownValue(each, knowledge.facts[name], knowledge);
  if (value !== undefined) return shown(value);
  return name.startsWith('species.') && Array.isArray(among) ? (among as readonly Value[]).map(shown).reduce((one, other) => message(knowledge, 'either', { one, other }).text) : notKnown;
};

const findingOf = (fired: Fired<Rule>, read: Read, knowledge: Knowledge, species: Species): Finding => {
  const { residual, fires, firm } = fired;
  const { rule } = residual;
  const params: Record<string, string | number | boolean> = {};
  for (const name of paramsIn(`${rule.title} ${rule.because}`)) {
    params[name] = name === 'species.name' ? speciesLabel(species, knowledge) : inText(name, read(name), knowledge);
  }
  const sources = rule.sources.map((id) => knowledge.sources[id]).filter((source) => source !== undefined);
  const grounds = groundsOf(fired).map(({ fact, limit, trait = fact.replace(/^species\./, '') }): Finding['facts'][number] => {
    const value = read(fact);
    return {
      fact: fact as Finding['facts'][number]['fact'],
      value: (value.value ?? null) as Finding['facts'][number]['value'],
      limit: { ...limit },
      from: value.from,
      ...packOf(trait, species),
      ...(value.plusMinus === undefined || value.plusMinus === 0 ? {} : { plusMinus: value.plusMinus }),
    };
  });
  return {
    rule: rule.id,
    verdict: rule.verdict,
    fires: fires === 'certainly' && (firm || rule.verdict === 'risky') ? 'certainly' : 'possibly',
    costs: rule.costs,
    title: ruleMessage(`${rule.id}.title`, rule.title, {}),
    because: ruleMessage(`${rule.id}.because`, rule.because, params),
    facts: grounds as Finding['facts'],
    sources: sources.map(shownSource),
    strength: strengthOf(sources),
    ...(rule.pack === undefined ? {} : { pack: rule.pack }),
    ...(residual.disputed.length === 0 ? {} : { disputed: [...residual.disputed] as NonNullable<Finding['disputed']> }),
  };
};

const stakes: readonly Rule['costs'][] = ['tree', 'branch', 'flowers', 'time', 'looks'];
const strengths: readonly Strength[] = ['strong', 'fair', 'weak'];

/** The findings, worst first. Left out: a milder one where a worse rule that covers it fires for certain, and one that only might fire where it could not make the verdict worse. */
export const findingsOf = (judged: Judged, knowledge: Knowledge, species: Species): readonly Finding[] => {
  const covered = new Set(judged.fired.filter((each) => each.fires === 'certainly' && each.firm).flatMap((each) => each.residual.rule.covers));
  const [sure] = judgementOf(judged.fired).range;
  const findings = judged.fired
    .filter((each) => !covered.has(each.residual.rule.id) && ((each.fires === 'certainly' && (each.firm || each.residual.rule.verdict === 'risky')) || severity(each.residual.rule.verdict) > severity(sure)))
    .map((each) => findingOf(each, judged.facts.read, knowledge, species));
  const order = (finding: Finding): readonly number[] => [finding.fires === 'certainly' ? 0 : 1, -severity(finding.verdict), stakes.indexOf(finding.costs), strengths.indexOf(finding.strength)];
  return findings.sort((a, b) => {
    const [x, y] = [order(a), order(b)];
    for (let i = 0; i < x.length; i++) if (x[i] !== y[i]) return x[i]! - y[i]!;
    return a.rule < b.rule ? -1 : 1;
  });
};

