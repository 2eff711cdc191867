import { type Test, testsOf } from '../../engine/condition.js';
import { parseCondition } from '../../engine/parseCondition.js';
import { ruleCondition } from '../../engine/ruleCondition.js';
import type { Folds } from '../../engine/specialise.js';
import type { FactWord, Knowledge, Rule, RuleExample, Value, WrittenCondition } from '../../knowledge/knowledge.js';
import { mutantsOf, stepOf } from '../mutate/mutantsOf.js';
import { runExample } from '../runExample.js';
import { limitIn, thresholdsOf } from '../thresholdsOf.js';

/** An example that a rule lacks: what the rule does now, which a person has to confirm, and why it is wanted. */
export interface Draft {
  readonly example: RuleExample;
  readonly why: string;
}

type Given = RuleExample['given'];

const without = (given: Given, fact: string): Given => Object.fromEntries(Object.entries(given).filter(([id]) => id !== fact));

const within = (value: number, word: FactWord | undefined): boolean => word?.bounds === undefined || (value >= word.bounds[0] && value <= word.bounds[1]);

/** Values of one fact worth trying in an example: all of a choice, each side of each limit of a number. */
const valuesFor = (test: Test, rule: Rule, given: Given, knowledge: Knowledge): readonly Value[] => {
  const word = knowledge.facts[test.fact];
  switch (word?.type) {
    case 'boolean':
      return [true, false];
    case 'choice':
      return word.values ?? [];
    case 'number': {
      const limit = limitIn(test, rule, { given, fires: 'never' }, knowledge);
      const step = stepOf(word);
      return limit === undefined ? [] : [limit + step, limit, limit - step].map((value) => Math.round(value * 1e6) / 1e6).filter((value) => within(value, word));
    }
    case 'list':
      return 'is' in test.limit && typeof test.limit.is === 'string' ? [[test.limit.is], []] : [];
    case 'text':
      return 'is' in test.limit ? [...[test.limit.is].flat(), 'elsewhere'] : [];
    case 'range':
    case 'records':
    case undefined:
      return [];
  }
};

/** Finds the examples that a rule still lacks: each outcome, each side of each threshold, and one that tells the rule from each way to put it wrong. */
export const draftExamples = async (rule: Rule, knowledge: Knowledge, folds: Folds): Promise<readonly Draft[]> => {
  const drafts: Draft[] = [];
  const tests = testsOf(ruleCondition(rule));
  const does = async (given: Given, as = rule, operation?: string): Promise<RuleExample['fires']> => await runExample(as, { given, fires: 'never', ...(operation === undefined ? {} : { operation }) }, knowledge, folds);
  const whole = (): Rule => ({ ...rule, examples: [...rule.examples, ...drafts.map(({ example }) => example)] });
  const add = (example: RuleExample, why: string): void => {
    const says = whole().examples.every(({ verdict }) => verdict === undefined) && example.fires === 'certainly';
    drafts.push({ example: says ? { ...example, verdict: rule.verdict } : example, why });
  };

  /* Values that make each condition hold, taken together, and moved until no exception lifts the rule. */
  const satisfied = async (condition: WrittenCondition, given: Given): Promise<Given> => {
    const [key, operand] = Object.entries(condition)[0]!;
    if (key === 'any') return await satisfied((operand as readonly WrittenCondition[])[0]!, given);
    if (key === 'all') return await satisfiedAll(operand as readonly WrittenCondition[], given);
    const lone = { ...rule, when: [condition], unless: [] };
    if ((await does(given, lone)) === 'certainly') return given;
    for (const test of testsOf(parseCondition(condition))) {
      for (const value of valuesFor(test, lone, given, knowledge)) if ((await does({ ...given, [test.fact]: value }, lone)) === 'certainly') return { ...given, [test.fact]: value };
    }
    return given;
  };
  const satisfiedAll = async (conditions: readonly WrittenCondition[], from: Given): Promise<Given> => {
    let given = from;
    for (const condition of conditions) given = await satisfied(condition, given);
    return given;
  };
  /** The nearest change of one or two facts of an example that comes to what is wanted. */
  const firstMove = async (given: Given, wanted: (given: Given) => Promise<boolean>, among: readonly Test[], deep: number): Promise<Given | undefined> => {
    const moves = among.flatMap((test) => valuesFor(test, rule, given, knowledge).map((value): Given => ({ ...given, [test.fact]: value })));
    for (const move of moves) if (await wanted(move)) return move;
    if (deep > 1) {
      for (const move of moves) {
        const further = await firstMove(move, wanted, among, deep - 1);
        if (further !== undefined) return further;
      }
    }
    return undefined;
  };

  const start = rule.examples.find(({ fires }) => fires === 'certainly');
  const { operation } = start ?? {};
  const named = operation === undefined ? {} : { operation };
  const certain = async (given: Given): Promise<boolean> => (await does(given, rule, operation)) === 'certainly';
  const firing = async (): Promise<Given | undefined> => {
    if (start !== undefined && (await certain(start.given))) return start.given;
    const taxa = Object.values(knowledge.species).filter(({ rank }) => rank === 'taxon');
    const told = tests.filter(({ fact }) => !fact.startsWith('species.'));
    for (const { id } of taxa) {
      const given = await satisfiedAll(rule.when, { species: id });
      if (Object.keys(given).some((fact) => fact.startsWith('species.'))) continue;
      const fires = (await certain(given)) ? given : await firstMove(given, certain, told, 1);
      if (fires !== undefined) return fires;
    }
    return undefined;
  };
  const base = await firing();
  if (base === undefined) return [];

  if (rule.examples.every(({ fires }) => fires !== 'certainly')) add({ ...named, given: base, fires: 'certainly' }, 'one that fires for certain');
  if (rule.examples.every(({ fires }) => fires !== 'never')) {
    const given = await firstMove(base, async (moved) => (await does(moved, rule, operation)) === 'never', tests, 1);
    if (given !== undefined) add({ ...named, given, fires: 'never' }, 'one that does not fire');
  }
  if (rule.examples.every(({ fires }) => fires !== 'possibly')) {
    for (const fact of Object.keys(base).filter((id) => id !== 'species' && !id.startsWith('species.'))) {
      if ((await does(without(base, fact), rule, operation)) !== 'possibly') continue;
      add({ ...named, given: without(base, fact), fires: 'possibly' }, `what it does where \`${fact}\` is not known`);
      break;
    }
  }
  for (const { test, text, missing } of thresholdsOf(whole(), knowledge)) {
    const limit = limitIn(test, rule, { ...named, given: base, fires: 'never' }, knowledge);
    if (limit === undefined) continue;
    const step = stepOf(knowledge.facts[test.fact]);
    for (const side of missing) {
      const value = Math.round((limit + (side === 'above' ? step : side === 'below' ? -step : 0)) * 1e6) / 1e6;
      const given = { ...base, [test.fact]: value };
      if (within(value, knowledge.facts[test.fact])) add({ ...named, given, fires: await does(given, rule, operation) }, `\`${test.fact}\` ${side} ${text}`);
    }
  }
  for (const mutant of mutantsOf(rule, knowledge.facts)) {
    if (mutant.kind === 'verdict') continue;
    const told = async (given: Given): Promise<boolean> => {
      const [right, wrong] = [await does(given, rule, operation), await does(given, mutant.rule, operation)];
      return right !== wrong && right !== 'possibly' && wrong !== 'possibly';
    };
    let noticed = false;
    for (const { given, operation: on, fires } of whole().examples) if ((await does(given, mutant.rule, on)) !== fires) noticed = true;
    if (noticed) continue;
    const starts = [base, ...rule.examples.filter((example) => example.operation === operation && example.fires === 'never').map((example) => example.given)];
    for (const deep of [1, 2]) {
      let given: Given | undefined;
      for (const each of starts) given ??= await firstMove(each, told, tests, deep);
      if (given === undefined) continue;
      add({ ...named, given, fires: await does(given, rule, operation) }, `so that it is noticed where: ${mutant.what}`);
      break;
    }
  }
  return drafts;
};
