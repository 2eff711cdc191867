import { cautionsOf } from '../../advice/cautions.js';
import { readyFor } from '../../advice/ready.js';
import { testsOf } from '../../engine/condition.js';
import { ruleCondition } from '../../engine/ruleCondition.js';
import { deriveFacts } from '../../facts/deriveFacts.js';
import type { Caution, Knowledge } from '../../knowledge/knowledge.js';

/** Whether it turns on what the tree is, and not only on the work. */
const turnsOnSpecies = (caution: Caution): boolean => testsOf(ruleCondition(caution)).some(({ fact }) => fact.startsWith('species.') || fact.startsWith('law.'));

/** What is to be heeded because of the tree itself, by the id of the species, where nothing else is told: asked as an answer asks it, once for each kind of work that is needed. */
export const speciesCautions = async (knowledge: Knowledge): Promise<ReadonlyMap<string, readonly string[]>> => {
  const ready = readyFor(knowledge, []);
  const asked = new Map<string, Set<string>>();
  for (const { id, operations } of Object.values(knowledge.cautions).filter(turnsOnSpecies)) {
    const op = (operations === 'all' ? Object.keys(knowledge.operations) : operations)[0]!;
    asked.set(op, (asked.get(op) ?? new Set()).add(id));
  }
  const bySpecies = new Map<string, readonly string[]>();
  for (const species of Object.keys(knowledge.species)) {
    const said: string[] = [];
    for (const [op, ids] of asked) {
      const { prepared, residuals } = await ready({ tree: { species }, operation: { op } });
      said.push(...(await cautionsOf(residuals.cautions.filter(({ rule }) => ids.has(rule.id)), deriveFacts(prepared.asked).read, knowledge)).map(({ text }) => text));
    }
    bySpecies.set(species, said);
  }
  return bySpecies;
};
