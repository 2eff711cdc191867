import { readFileSync } from 'node:fs';
import { parse } from 'yaml';
import { advisor, root } from './shipped.js';
import { dayOf, isoOf } from '../src/season/day.js';
const demo = parse(readFileSync(`${root}docs/demo/collection.yaml`, 'utf8')) as any;
let trees = structuredClone(demo.trees);
const diligent = process.argv[2] === 'do';
for (let day = dayOf('2026-11-20'); day <= dayOf('2027-12-20'); day += 30) {
  const date = isoOf(day);
  const due = await advisor.due({ ...demo, trees }, date);
  console.log(`##### ${date} ${due.items.length} ${JSON.stringify(due.unanswered)}`);
  for (const i of due.items) {
    console.log(`${i.state} ${i.since ?? ''} ${i.tree}: ${i.operation.op} ${(i.operation as any).placement ?? ''} ${i.operation.branch ?? ''} ${i.window.from} ${i.window.to} ${i.verdict}`);
    if (diligent && i.state !== 'soon' && i.window.from <= date) { const t = trees.find((e: any) => e.id === i.tree); t.tree.log = [...(t.tree.log ?? []), { ...i.operation, date }]; if (i.operation.op==='move-outdoors'||i.operation.op==='overwinter') delete t.tree.standing; }
  }
}
