import { readFileSync } from 'node:fs';
import { Engine, type RuleProperties } from 'json-rules-engine';
import { createAdvisor } from '../advisor.js';
import { readyFor } from '../advice/ready.js';
import type { Condition } from '../engine/condition.js';
import { engineRules, limitFact } from '../engine/engineRules.js';
import { evaluate } from '../engine/evaluate.js';
import { ruleCondition } from '../engine/ruleCondition.js';
import { deriveFacts } from '../facts/deriveFacts.js';
import type { Proposal } from '../contract/types.generated.js';
import { SparebudError } from '../knowledge/error.js';
import type { Value } from '../knowledge/knowledge.js';
import type { Station } from '../season/station.js';
import { corpus } from './corpus.js';

/* `npm run bench`: loading, one assessment cold and warm, and the rule stage beside json-rules-engine with one engine an operation, in the same run. */
const median = (values: readonly number[]): number => [...values].sort((a, b) => a - b)[values.length >> 1] ?? 0;
const timed = async (work: () => unknown): Promise<number> => {
  const started = performance.now();
  await work();
  return performance.now() - started;
};
const print = (what: string, milliseconds: number): boolean => process.stdout.write(`${what.padEnd(64)} ${milliseconds >= 10 ? milliseconds.toFixed(1) : milliseconds.toFixed(3)} ms\n`);

const limitsIn = (condition: Condition): readonly { readonly trait: string; readonly times: number; readonly plus: number }[] =>
  condition.kind === 'test' ? ('trait' in condition.limit ? [condition.limit] : []) : condition.kind === 'all' || condition.kind === 'any' ? condition.of.flatMap(limitsIn) : [];

const read = await timed(async () => await import('../knowledge/bundled.js'));
const { knowledge } = await import('../knowledge/bundled.js');
const { stations } = JSON.parse(readFileSync('shared/places.json', 'utf8')) as { readonly stations: readonly Station[] };
print('load the bundled knowledge', read);

const every = corpus(knowledge, 'tests/corpus.yaml');
const chosen = Array.from({ length: 400 }, (_, i) => every[Math.floor((i * every.length) / 400)]!);
const advisor = createAdvisor(knowledge, { places: stations });
const first = chosen[17]!;
print('first assessment, cold', await timed(async () => await advisor.assess(first)));
const cold: number[] = [];
for (const proposal of chosen) cold.push(await timed(async () => await advisor.assess(proposal)));
print('400 other assessments, first time, median', median(cold));
const warm: number[] = [];
for (const proposal of chosen) warm.push(await timed(async () => await advisor.assess(proposal)));
print('the same, warm, median', median(warm));
const verdicts: number[] = [];
for (const proposal of chosen) verdicts.push(await timed(async () => await advisor.verdict(proposal)));
print('verdict with its rules only, warm, median', median(verdicts));

const engines = new Map(Object.keys(knowledge.operations).map((operation) => [operation, new Engine(engineRules(knowledge, operation) as RuleProperties[], { allowUndefinedFacts: true })]));
const all = new Map(Object.values(knowledge.rules).flatMap((rule) => limitsIn(ruleCondition(rule))).map((limit) => [limitFact(limit)!, limit]));
const naive: number[] = [];
const ours: number[] = [];
const ready = readyFor(knowledge, stations);
for (const proposal of chosen) {
  const { prepared, residuals } = await ready(proposal);
  const { traits, operation } = prepared.asked;
  const { read } = deriveFacts(prepared.asked);
  const facts: Record<string, Value> = { 'limit:daysNeeded': operation.daysNeeded?.days ?? 0 };
  for (const id of Object.keys(knowledge.facts)) {
    const value = id.startsWith('species.') ? (traits[id.slice('species.'.length)]?.is as Value | undefined) : read(id).value;
    if (value !== undefined) facts[id] = value;
  }
  for (const [id, { trait, times, plus }] of all) {
    const is = traits[trait]?.is;
    if (is !== undefined) facts[id] = (typeof is === 'number' ? is * times + plus : is) as Value;
  }
  const engine = engines.get(operation.id)!;
  naive.push(await timed(async () => await engine.run(facts)));
  await evaluate(residuals.rules, read);
  ours.push(await timed(async () => await evaluate(residuals.rules, read)));
}
print('rule stage: json-rules-engine, one engine an operation, median', median(naive));
print('rule stage: sparebud, warm tables, known and unknown, median', median(ours));
const year: number[] = [];
const tree = { species: 'acer-buergerianum', vigour: 'strong' } as const;
const where = { place: 'koeln-cologne-germany' } as const;
const fresh = createAdvisor(knowledge, { places: stations });
const emptyYear = await timed(async () => await fresh.year({ tree, where, from: '2026-01-01' }));
for (let run = 0; run < 5; run++) year.push(await timed(async () => await fresh.year({ tree, where, from: '2026-01-01' })));
print('a year of one tree, 36 strips, from empty', emptyYear);
print('the same, warm, median', median(year));
/* Trees drawn by the same rule each time: branches in whorls and alone, up a straight trunk, each a third of it on average. */
const branched = (count: number, tree: number): NonNullable<Proposal['tree']['structure']> => {
  const part = (i: number, salt: number): number => Math.abs(Math.sin((i + 1) * 12.9898 + tree * 78.233 + salt) * 43758.5453) % 1;
  const heightMm = 620;
  return {
    trunks: [{ id: 'trunk', points: [{ heightMm: 0, diameterMm: 60 }, { heightMm, diameterMm: 8 }] }],
    branches: Array.from({ length: count }, (_, i) => {
      const at = 0.18 + (0.75 * Math.floor(i * 0.6)) / count / 0.6;
      return { id: `b${i}`, heightMm: at * heightMm + part(i, 1) * 4, azimuthDeg: part(i, 2) * 360, diameterMm: (60 - 52 * at) * (0.2 + 0.3 * part(i, 3)), lengthMm: 80 + 120 * part(i, 4), pitchDeg: 50 * part(i, 5) - 10 };
    }),
  };
};
const styles = Object.keys(knowledge.aims.styles);
for (const count of [10, 20, 30]) {
  const runs: number[] = [];
  let [exact, refused] = [0, 0];
  for (let each = 0; each < 30; each++) {
    const asked = { tree: { species: 'pinus-thunbergii', vigour: 'strong', aim: { style: styles[each % styles.length] }, trunk: { diameterMm: 60, heightMm: 620 }, structure: branched(count, each) }, where, date: '2027-02-10' };
    runs.push(await timed(async () => {
      try {
        if ((await fresh.keepers(asked)).notices.every(({ id }) => id !== 'keepers.cut-short')) exact++;
      } catch (cause) {
        if (!(cause instanceof SparebudError)) throw cause;
        refused++;
      }
    }));
  }
  print(`keepers of ${count} branches, 30 trees over ${styles.length} styles, median`, median(runs));
  print(`19 of 20 of them within (${exact} of 30 searched to the end, ${refused} without a set)`, [...runs].sort((a, b) => a - b)[28]!);
}
process.stdout.write(`ratio of the two medians: ${(median(naive) / median(ours)).toFixed(1)}; of the sums: ${(naive.reduce((a, b) => a + b, 0) / ours.reduce((a, b) => a + b, 0)).toFixed(1)}\n`);
