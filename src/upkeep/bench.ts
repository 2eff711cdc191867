import { cpus, loadavg } from 'node:os';
import { knowledge } from '../knowledge/bundled.js';
import { dayOf, isoOf } from '../season/day.js';
import { coldBatch } from './bench/coldBatch.js';
import { coldStart } from './bench/coldStart.js';
import { contenders } from './bench/contenders.js';
import { engineOnePass } from './bench/engineOnePass.js';
import { enginePerOperation } from './bench/enginePerOperation.js';
import { keepersSpeed, treesEach } from './bench/keepersSpeed.js';
import { print, printAim, printMeasured } from './bench/print.js';
import { questionsFor } from './bench/questions.js';
import { residualCells } from './bench/residualCells.js';
import { warmBatch } from './bench/warmBatch.js';
import { wholeAnswers, yearRuns } from './bench/wholeAnswers.js';
import { corpus } from './corpus.js';
import { casesIn, stationsIn } from './wholeCorpus.js';

/*
 * `npm run bench [rules] [whole] [keepers]`: the rule stage beside other ways to judge the same rules, whole answers, and the search for branches to keep.
 * Figures for people: no test reads them. What a profile showed of an aim that was missed stands beside it.
 */
const stations = stationsIn('.');
const every = corpus(knowledge, 'tests/corpus.yaml');
const spread = (count: number): readonly unknown[] => Array.from({ length: count }, (_, i) => every[Math.floor((i * every.length) / count)]!);

const rules = async (): Promise<void> => {
  const rounds = 15;
  const questionOf = questionsFor(knowledge, stations);
  const questions = await Promise.all(spread(2000).map(questionOf));
  const { entries, absent } = await contenders();
  const stood = await warmBatch(entries, questions, rounds);
  const timeOf = (id: string): number => stood.find((each) => each.id === id)!.microseconds;
  const ours = timeOf('cells');
  print(`Which rules fire, certainly or possibly, and on which facts: answers compared, then timed in turn; warm, median of ${rounds} rounds, microseconds an assessment`);
  for (const { name, microseconds, asked, differing } of stood) print(`  ${name.padEnd(52)} ${microseconds.toFixed(1).padStart(9)} ${(microseconds / ours).toFixed(2).padStart(9)} times ours; of ${asked}, ${differing === 0 ? 'all the same' : `${differing} differ`}`);
  absent.forEach(print);
  const proposals = [...every, ...every.map((proposal) => ({ ...proposal, date: isoOf(dayOf(proposal['date'] as string) + 7) }))];
  const { cells: cold, others: [engineBeside, onePassBeside] } = await coldBatch(knowledge, stations, proposals, residualCells, [enginePerOperation, engineOnePass]);
  printMeasured(`cells from empty, ${proposals.length} proposals, each`, cold, 'µs');
  printMeasured('one engine an operation, in turn with it', engineBeside!, 'µs');
  const runs = await yearRuns(knowledge, stations);
  printMeasured('engine runs for a year from empty, of operations of which nothing is told', runs.untold, '');
  printAim('warm, faster than one engine an operation', timeOf('operation') / ours, { atLeast: 30 }, 'times');
  printAim('the same, where that takes unknown for false and answers otherwise', timeOf('onePass') / ours, { atLeast: 30 }, 'times', 'it judges once, not twice, and only known facts; of ours, a profile gives 50 % to looking cells up, 17 % to classing facts, 10 % to reading them, 8 % to grounds');
  printAim('warm, faster than one engine for all', timeOf('all') / ours, { atLeast: 300 }, 'times');
  printAim('from empty, faster than one engine an operation', engineBeside! / cold, { atLeast: 10 }, 'times');
  printAim('the same, where that takes unknown for false and answers otherwise', onePassBeside! / cold, { atLeast: 10 }, 'times');
  printAim('warm, time of traced closures that it takes', ours / timeOf('closures'), { atMost: 1 }, 'times');
  printAim(`engine runs for a year of one tree, each of ${Object.keys(knowledge.operations).length} operations in its usual ways, from empty`, runs.fromEmpty, { atMost: 300 }, '');
  printAim('the same, asked again', runs.warm, { atMost: 0 }, '');
};

const whole = async (): Promise<void> => {
  print('Whole answers: facts, season and advice included');
  const { firstAssessment, coldAssessment, assessment, verdict, assessmentOfFull, verdictOfFull, verdictElsewhere, yearFromEmpty, year } = await wholeAnswers(knowledge, stations, spread(400), casesIn('.').map(({ proposal }) => proposal));
  const start = coldStart();
  printMeasured('first assessment of an advisor', firstAssessment);
  printMeasured('400 others for the first time, median', coldAssessment);
  printMeasured('a year of one tree, warm, median', year);
  printMeasured('a verdict with logs and structures told, warm, median', verdictOfFull * 1000, 'µs');
  printMeasured('an assessment of the same', assessmentOfFull);
  printMeasured('a verdict where more places are asked about than are remembered', verdictElsewhere * 1000, 'µs');
  printAim('a verdict with its rules, of the known cases, warm, median', verdict * 1000, { atMost: 60 }, 'µs', 'of a profile: working out facts 24 %, season 21 %, checking the proposal 15 %, structure 10 %, rules 9 %');
  printAim('an assessment of the same, median', assessment, { atMost: 2 }, 'ms', 'of a profile: facts 39 %, worked out anew for each question, change and day; advice 17 %, season 11 %, rules 10 %, memory cleared 10 %');
  printAim('a year of one tree, from empty, median', yearFromEmpty, { atMost: 60 }, 'ms', 'of a profile: rules 22 % and json-rules-engine with its copying 19 %, for cells begin empty; facts 15 %, advice 15 %, memory cleared 14 %, season 9 %');
  printAim('cold start in a fresh process, median', start.whole, { atMost: 120 }, 'ms', `the advisor ${start.advisor.toFixed(0)} ms, knowledge and places ${start.knowledge.toFixed(0)} ms, the first answer ${start.firstAnswer.toFixed(0)} ms`);
};

const keepers = async (): Promise<void> => {
  print(`Keepers, ${treesEach} trees each over the styles`);
  for (const count of [10, 20, 30]) {
    const { median, nineteenOfTwenty, exact, refused } = await keepersSpeed(knowledge, stations, count);
    printMeasured(`of ${count} branches, median`, median);
    printMeasured(`19 of 20 of them within (${exact} of ${treesEach} searched to the end, ${refused} without a set)`, nineteenOfTwenty);
  }
};

const parts = { rules, whole, keepers };
const asked = process.argv.slice(2);
print(`Node ${process.version}, ${cpus().length} cores, load ${loadavg()[0]!.toFixed(1)} at the start`);
for (const [name, part] of Object.entries(parts)) if (asked.length === 0 || asked.includes(name)) await part();
print(`load ${loadavg()[0]!.toFixed(1)} at the end`);
