import { readKnowledge } from '../knowledge/read/readKnowledge.js';
import { changedRules } from './mutate/changedRules.js';
import { mutate } from './mutate/mutate.js';
import { casesIn, stationsIn } from './wholeCorpus.js';

/* `npm run mutate [-- rule … | --changed REV]`: each rule put wrong in every small way; its examples and the cases must notice. Exit status 1 below 95 % in all or 80 % of a rule. */
const words = process.argv.slice(2);
const rev = words[0] === '--changed' ? words[1] : undefined;
const knowledge = readKnowledge(process.cwd());
const chosen = words[0] === '--changed' ? changedRules(process.cwd(), rev ?? 'HEAD') : words;
const rules = Object.values(knowledge.rules).filter((rule) => words.length === 0 || chosen.includes(rule.id));
const started = performance.now();
const watched = await mutate(knowledge, rules, stationsIn('.'), casesIn('.'));
const print = (line: string): boolean => process.stdout.write(`${line}\n`);
const share = (killed: number, mutants: number): number => (mutants === 0 ? 100 : (100 * killed) / mutants);

for (const { rule, mutants, killed, survivors } of watched) {
  if (survivors.length > 0 || words.length > 0) print(`${rule.padEnd(36)} ${killed} of ${mutants}  ${share(killed, mutants).toFixed(0)} %`);
  for (const { kind, what } of survivors) print(`  unnoticed ${kind}: ${what}`);
}
const mutants = watched.reduce((sum, each) => sum + each.mutants, 0);
const killed = watched.reduce((sum, each) => sum + each.killed, 0);
const low = watched.filter((each) => share(each.killed, each.mutants) < 80);
print(`${watched.length} rules, ${mutants} ways to put them wrong: ${share(killed, mutants).toFixed(1)} % noticed, ${low.length} rules below 80 %, in ${((performance.now() - started) / 1000).toFixed(0)} s`);
if (share(killed, mutants) < 95 || low.length > 0) process.exitCode = 1;
