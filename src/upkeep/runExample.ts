import { evaluate } from '../engine/evaluate.js';
import { type Folds, specialise } from '../engine/specialise.js';
import { type FactValue, known, unknown } from '../facts/factValue.js';
import type { Knowledge, Rule, RuleExample, Trait, Value } from '../knowledge/knowledge.js';

export const exampleOperation = (rule: Rule, example: RuleExample, knowledge: Knowledge): string =>
  example.operation ?? (rule.operations === 'all' ? Object.keys(knowledge.operations)[0]! : rule.operations[0]!);

/** The traits of the species that an example names, with those that it sets itself. */
export const exampleTraits = (example: RuleExample, knowledge: Knowledge): Readonly<Record<string, Trait>> => {
  const species = knowledge.species[String(example.given['species'] ?? '')];
  const own = Object.entries(example.given).filter(([id]) => id.startsWith('species.'));
  return { ...species?.traits, ...Object.fromEntries(own.map(([id, value]): [string, Trait] => [id.slice('species.'.length), { is: value, sources: [], level: 'example' }])) };
};

/** What an example of a rule really does: its facts are known, all others unknown. */
export const runExample = async (rule: Rule, example: RuleExample, knowledge: Knowledge, folds: Folds): Promise<RuleExample['fires']> => {
  const operation = exampleOperation(rule, example, knowledge);
  if (rule.operations !== 'all' && !rule.operations.includes(operation)) return 'never';
  const traits = exampleTraits(example, knowledge);
  const residual = await specialise(rule, operation, traits, knowledge, folds);
  if (residual === undefined) return 'never';
  const read = (id: string): FactValue => {
    const given = example.given[id] as Value | undefined;
    if (given !== undefined) return known(given, 'given');
    const trait = id.startsWith('species.') ? traits[id.slice('species.'.length)] : undefined;
    if (trait?.either !== undefined) return unknown(trait.either);
    const word = knowledge.facts[id];
    return unknown(word?.type === 'boolean' ? [true, false] : word?.type === 'choice' ? word.values : undefined);
  };
  return (await evaluate([residual], read))[0]?.fires ?? 'never';
};
