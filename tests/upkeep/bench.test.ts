import { expect, test } from 'vitest';
import { contenders } from '../../src/upkeep/bench/contenders.js';
import { questionsFor } from '../../src/upkeep/bench/questions.js';
import { warmBatch } from '../../src/upkeep/bench/warmBatch.js';
import { corpus } from '../../src/upkeep/corpus.js';
import { root, shipped, stations } from '../shipped.js';

/* No clock is read here: what is compared is what each way answers. */

test('closures, json-logic-engine, zen-engine and json-rules-engine over whole rules say the same as our cells: which rules fire, how surely, and on which facts', async () => {
  const every = corpus(shipped, `${root}tests/corpus.yaml`);
  const asked = 30;
  const questionOf = questionsFor(shipped, stations);
  const questions = await Promise.all(Array.from({ length: asked }, async (_, i) => await questionOf(every[Math.floor(((i + 0.5) * every.length) / asked)])));
  const { entries, absent } = await contenders();
  expect(entries.length + absent.length).toBe(7);
  const stood = await warmBatch(entries.map((entry) => ({ ...entry, oneIn: 1 })), questions, 0);
  for (const { id, asked: answered, differing } of stood) {
    expect(answered).toBe(asked);
    if (id !== 'onePass') expect(differing, id).toBe(0);
    /* Taking unknown for false does change answers: the comparison would notice. */
    else expect(differing).toBeGreaterThan(3);
  }
});
