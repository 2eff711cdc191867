import type { Contender } from './contender.js';
import { wholeRules } from './wholeRules.js';

/** json-rules-engine, an engine for each operation, with the rules that name it. */
export const enginePerOperation: Contender = () => {
  const engines = new Map<string, ReturnType<typeof wholeRules>>();
  return ({ knowledge, operation }) => {
    const engine = engines.get(operation) ?? wholeRules(Object.values(knowledge.rules).filter(({ operations }) => operations === 'all' || operations.includes(operation)), () => []);
    engines.set(operation, engine);
    return ({ whole }) => engine(whole);
  };
};
