import { fillCell, type Table } from '../engine/cells.js';
import { type Test, testsOf } from '../engine/condition.js';
import { ruleCondition } from '../engine/ruleCondition.js';
import { type Folds, newFolds, specialise } from '../engine/specialise.js';
import type { Fault } from '../knowledge/check.js';
import type { Knowledge, Rule, Species } from '../knowledge/knowledge.js';
import { exampleOperation, exampleTraits, runExample } from './runExample.js';

type Path = readonly (string | number)[];

const fault = (rule: Rule, at: Path, code: Fault['code'], message: string, help: string): Fault => ({ code, file: `rules/${rule.id}.yaml`, at, path: at.join('.'), message, help });

const exampleFaults = async (rule: Rule, knowledge: Knowledge, folds: Folds): Promise<readonly Fault[]> => {
  const faults: Fault[] = [];
  const does = await Promise.all(rule.examples.map((example) => runExample(rule, example, knowledge, folds)));
  rule.examples.forEach((example, i) => {
    if (does[i] !== example.fires) faults.push(fault(rule, ['examples', i], 'example-fails', `example ${i + 1} says \`${example.fires}\`, the rule fires \`${does[i]!}\``, 'mend the rule or the example'));
  });
  for (const fires of ['certainly', 'possibly', 'never'] as const) {
    if (!rule.examples.some((example) => example.fires === fires)) faults.push(fault(rule, ['examples'], 'boundary-example', `no example fires \`${fires}\``, 'add one'));
  }
  return faults;
};

const limitIn = (test: Test, rule: Rule, example: Rule['examples'][number], knowledge: Knowledge): number | undefined => {
  const { limit } = test;
  if ('is' in limit) return typeof limit.is === 'number' ? limit.is : undefined;
  const figure = 'trait' in limit ? exampleTraits(example, knowledge)[limit.trait]?.is : knowledge.operations[exampleOperation(rule, example, knowledge)]?.daysNeeded?.days;
  return typeof figure === 'number' ? Math.round((figure * limit.times + limit.plus) * 1e9) / 1e9 : undefined;
};

const limitText = (test: Test): string => ('is' in test.limit ? String(test.limit.is) : 'trait' in test.limit ? `its trait ${test.limit.trait}` : 'its operation’s daysNeeded');

const boundaryFaults = (rule: Rule, knowledge: Knowledge): readonly Fault[] => {
  const faults: Fault[] = [];
  const seen = new Set<string>();
  for (const test of testsOf(ruleCondition(rule))) {
    if (!['greaterThan', 'greaterThanInclusive', 'lessThan', 'lessThanInclusive'].includes(test.operator) || test.fact.startsWith('species.')) continue;
    const key = `${test.fact} ${JSON.stringify(test.limit)}`;
    if (seen.has(key)) continue;
    seen.add(key);
    const sides = new Set<number>();
    for (const example of rule.examples) {
      const [value, limit] = [example.given[test.fact], limitIn(test, rule, example, knowledge)];
      if (typeof value === 'number' && limit !== undefined) sides.add(Math.sign(Math.round((value - limit) * 1e9)));
    }
    const bounds = knowledge.facts[test.fact]?.bounds;
    const edge = 'is' in test.limit ? (test.limit.is as number) : undefined;
    const missing = ([[-1, 'below'], [0, 'at'], [1, 'above']] as const)
      .filter(([side]) => !sides.has(side) && !(side === -1 && edge !== undefined && edge <= (bounds?.[0] ?? -Infinity)) && !(side === 1 && edge !== undefined && edge >= (bounds?.[1] ?? Infinity)))
      .map(([, word]) => word);
    if (missing.length > 0) faults.push(fault(rule, ['examples'], 'boundary-example', `no example of \`${test.fact}\` ${missing.join(', ')} ${limitText(test)}`, 'add an example just inside, at and just outside each threshold'));
  }
  return faults;
};

/** Whether some combination of known facts makes a table's rule fire. */
const canFire = async (table: Table): Promise<boolean> => {
  const counts = table.buckets.map((buckets) => buckets.count);
  const total = Math.min(4096, counts.reduce((product, count) => product * count, 1));
  for (let cell = 0; cell < total; cell++) {
    let rest = cell;
    const key = counts.map((count) => {
      const bucket = rest % count;
      rest = Math.floor(rest / count);
      return `${1 << bucket},`;
    }).join('');
    if ((await fillCell(table, key)).certainly) return true;
  }
  return false;
};

const everFires = async (rule: Rule, knowledge: Knowledge, folds: Folds, species: readonly Species[]): Promise<boolean> => {
  const tried = new Set<Table>();
  const operations = rule.operations === 'all' ? Object.keys(knowledge.operations).slice(0, 1) : rule.operations;
  for (const operation of operations) {
    for (const { traits } of species) {
      const residual = await specialise(rule, operation, traits, knowledge, folds);
      if (residual === undefined) continue;
      if (residual.table === undefined) return true;
      if (tried.has(residual.table)) continue;
      tried.add(residual.table);
      if (await canFire(residual.table)) return true;
    }
  }
  return false;
};

/** What is wrong with rules that only running them shows: examples, thresholds without one, rules that can never fire. */
export const vetRules = async (knowledge: Knowledge): Promise<readonly Fault[]> => {
  const folds = newFolds();
  const species = Object.values(knowledge.species).filter((each) => each.rank !== 'member');
  const faults: Fault[] = [];
  for (const rule of Object.values(knowledge.rules)) {
    const ownFaults = [...(await exampleFaults(rule, knowledge, folds)), ...boundaryFaults(rule, knowledge)];
    faults.push(...ownFaults);
    const shown = rule.examples.some((example) => example.fires === 'certainly') && !ownFaults.some((each) => each.code === 'example-fails');
    if (!shown && !(await everFires(rule, knowledge, folds, species))) faults.push(fault(rule, ['when'], 'impossible-rule', 'the rule can never fire', 'look for conditions that exclude each other, or that no species meets'));
  }
  for (const operation of Object.keys(knowledge.operations)) {
    const naming = Object.values(knowledge.rules).filter((rule) => rule.operations !== 'all' && rule.operations.includes(operation));
    if (naming.length < 2) faults.push({ code: 'incomplete', file: 'shared/operations.yaml', at: [operation], path: operation, message: `fewer than two rules name \`${operation}\``, help: 'add a rule in rules/' });
  }
  return faults;
};
