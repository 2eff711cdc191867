import { createAdvisor } from '../advisor.js';
import { readKnowledge } from '../knowledge/read/readKnowledge.js';
import { survey } from './survey.js';
import { casesIn, stationsIn } from './wholeCorpus.js';
import { corpus } from './corpus.js';

/* `npm run corpus [how many]`: what the knowledge in this folder does over tests/corpus.yaml. */
const knowledge = readKnowledge(process.cwd());
const advisor = createAdvisor(knowledge, { places: stationsIn('.') });
const every = corpus(knowledge, 'tests/corpus.yaml');
const most = Number(process.argv[2] ?? every.length);
const step = Math.max(1, every.length / most);
const chosen = Array.from({ length: Math.min(most, every.length) }, (_, i) => every[Math.floor(i * step)]!);
const cases = casesIn('.').map(({ proposal }) => proposal);
const started = performance.now();
const found = await survey(advisor, [...cases, ...chosen]);
const seconds = (performance.now() - started) / 1000;
const share = (count: number): string => `${((100 * count) / found.proposals).toFixed(1)} %`;
const print = (line: string): boolean => process.stdout.write(`${line}\n`);
const ids = Object.keys(found.rules);
const fired = ids.filter((id) => found.rules[id]!.certainly > 0);

print(`${found.proposals} proposals in ${seconds.toFixed(1)} s`);
print(`verdicts: ${Object.entries(found.verdicts).map(([verdict, count]) => `${verdict} ${share(count)}`).join(', ')}; unsettled ${share(found.unsettled)}`);
print(`rules that fire certainly somewhere: ${fired.length} of ${ids.length} (${((100 * fired.length) / ids.length).toFixed(1)} %)`);
for (const id of ids.filter((each) => found.rules[each]!.certainly === 0)) print(`  never certainly: ${id} (possibly ${found.rules[id]!.possibly})`);
print('rules that decide most answers:');
for (const id of [...ids].sort((a, b) => found.rules[b]!.decided - found.rules[a]!.decided).slice(0, 10)) print(`  ${id.padEnd(36)} ${share(found.rules[id]!.decided).padStart(7)}  ${knowledge.rules[id]!.verdict}`);
print('verdicts by operation (allowed / risky / advise against):');
for (const [operation, verdicts] of Object.entries(found.byOperation)) print(`  ${operation.padEnd(20)} ${verdicts.allowed} / ${verdicts.risky} / ${verdicts['advise-against']}`);
