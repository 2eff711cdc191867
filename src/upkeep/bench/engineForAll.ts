import type { Contender } from './contender.js';
import { wholeRules } from './wholeRules.js';

/** json-rules-engine, one engine with every rule, each of which also asks whether it names the operation. */
export const engineForAll: Contender = () => {
  let engine: ReturnType<typeof wholeRules> | undefined;
  return ({ knowledge, operation }) => {
    engine ??= wholeRules(Object.values(knowledge.rules), ({ operations }) => (operations === 'all' ? [] : [{ fact: 'operation', operator: 'in', value: operations }]));
    const asked = engine;
    return ({ whole }) => asked({ ...whole, operation: [operation] });
  };
};
