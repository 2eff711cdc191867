import { answersOf, keyOf, type Table } from '../engine/cells.js';
import { type Folds, newFolds, specialise } from '../engine/specialise.js';
import type { Fault } from '../knowledge/check.js';
import type { Knowledge, Rule, Species } from '../knowledge/knowledge.js';
import { runExample } from './runExample.js';
import { thresholdsOf } from './thresholdsOf.js';

type Path = readonly (string | number)[];

const fault = (rule: Rule, at: Path, code: Fault['code'], message: string, help: string): Fault => ({ code, file: `rules/${rule.id}.yaml`, at, path: at.join('.'), message, help });

const exampleFaults = async (rule: Rule, knowledge: Knowledge, folds: Folds): Promise<readonly Fault[]> => {
  const faults: Fault[] = [];
  const does = await Promise.all(rule.examples.map((example) => runExample(rule, example, knowledge, folds)));
  rule.examples.forEach((example, i) => {
    if (does[i] !== example.fires) faults.push(fault(rule, ['examples', i], 'example-fails', `example ${i + 1} says \`${example.fires}\`, the rule fires \`${does[i]!}\``, 'mend the rule or the example'));
  });
  rule.examples.forEach(({ fires, verdict }, i) => {
    if (verdict === undefined) return;
    if (fires !== 'certainly') faults.push(fault(rule, ['examples', i, 'verdict'], 'not-allowed', `example ${i + 1} gives a verdict and fires \`${fires}\``, 'give it where the rule fires certainly'));
    else if (verdict !== rule.verdict) faults.push(fault(rule, ['examples', i, 'verdict'], 'example-fails', `example ${i + 1} says \`${verdict}\`, the rule says \`${rule.verdict}\``, 'mend the rule or the example'));
  });
  for (const fires of ['certainly', 'possibly', 'never'] as const) {
    if (!rule.examples.some((example) => example.fires === fires)) faults.push(fault(rule, ['examples'], 'boundary-example', `no example fires \`${fires}\``, 'add one'));
  }
  return faults;
};

const boundaryFaults = (rule: Rule, knowledge: Knowledge): readonly Fault[] =>
  thresholdsOf(rule, knowledge)
    .filter(({ missing }) => missing.length > 0)
    .map(({ test, text, missing }) => fault(rule, ['examples'], 'boundary-example', `no example of \`${test.fact}\` ${missing.join(', ')} ${text}`, 'add an example just inside, at and just outside each threshold'));

/** Whether some combination of known facts makes a table's rule fire. */
const canFire = async (table: Table): Promise<boolean> => {
  const total = Math.min(4096, table.buckets.reduce((product, { count }) => product * count, 1));
  for (let cell = 0; cell < total; cell++) {
    let rest = cell;
    const key = keyOf(table, ({ count }) => {
      const bucket = rest % count;
      rest = Math.floor(rest / count);
      return 1 << bucket;
    });
    const [answer] = await answersOf([{ table, key }]);
    if (answer!.certainly) return true;
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

/** What is wrong with rules that only running them shows: examples, thresholds without one, rules that can never fire. Rules whose conditions are faulty as written are left aside. */
export const vetRules = async (knowledge: Knowledge, faulty: ReadonlySet<string>): Promise<readonly Fault[]> => {
  const folds = newFolds();
  const species = Object.values(knowledge.species).filter((each) => each.rank !== 'member');
  const faults: Fault[] = [];
  for (const rule of Object.values(knowledge.rules).filter(({ id }) => !faulty.has(`rules/${id}.yaml`))) {
    const failing = await exampleFaults(rule, knowledge, folds);
    /* An example that fails may be the one that stood at a threshold before it was moved: it is mended first. */
    const ownFaults = failing.some((each) => each.code === 'example-fails') ? failing : [...failing, ...boundaryFaults(rule, knowledge)];
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
