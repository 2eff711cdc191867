/* One built advisor answers the proposals on its standard input, over and over, nine times in ten the first hundred of them, as an app is asked: `node --expose-gc heldMemory.mjs VERDICTS PARTS < lines` prints after each part what is held once all that nobody needs is collected, MB. */
import { text } from 'node:stream/consumers';
import { setTimeout as passed } from 'node:timers/promises';
import { createAdvisor } from '../../dist/index.js';
import { knowledge } from '../../dist/knowledge/bundled.js';
import { places } from '../../dist/season/places.js';

const [verdicts, parts] = process.argv.slice(2).map(Number);
const proposals = (await text(process.stdin)).trim().split('\n').map((line) => JSON.parse(line));
const advisor = createAdvisor(knowledge, { places });
let asked = 0;
for (let part = 0; part < parts; part++) {
  for (let i = 0; i < verdicts; i++, asked++) {
    await advisor.verdict(proposals[asked % 10 === 0 ? (asked / 10) % proposals.length : asked % 100]);
    if (asked % 100 === 0) await advisor.assess(proposals[(asked / 100) % proposals.length]);
  }
  for (let i = 0; i < 3; i++) {
    globalThis.gc();
    await passed(10);
  }
  process.stdout.write(`${process.memoryUsage().heapUsed / 1024 / 1024}\n`);
}
