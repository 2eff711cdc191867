import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { advisor, root } from '../shipped.js';

/* Known cases of the trade: each names beside it what it rests on. */

interface Case {
  readonly id: string;
  readonly proposal: unknown;
  readonly accept: readonly string[];
  readonly expect?: Readonly<Record<string, unknown>>;
  readonly basis: string;
  readonly source: string;
}

const known = readFileSync(`${root}tests/cases/cases.jsonl`, 'utf8').trim().split('\n').map((line) => JSON.parse(line) as Case);
const disputed = [...readFileSync(`${root}tests/cases/disputed.md`, 'utf8').matchAll(/^[-*] `([a-z0-9-]+)`/gm)].map((match) => match[1]!);

test('every case names what it rests on, and none stands twice', () => {
  expect(known.length).toBeGreaterThan(70);
  expect(new Set(known.map((each) => each.id)).size).toBe(known.length);
  for (const each of known) {
    expect(each.source).not.toBe('');
    expect(each.accept.length).toBeGreaterThan(0);
    expect(each.accept.length).toBeLessThan(3);
  }
});

test('at most three cases are disputed, each a case there is', () => {
  expect(disputed.length).toBeLessThanOrEqual(3);
  for (const id of disputed) expect(known.map((each) => each.id)).toContain(id);
});

describe('the verdict of each case is one that its source accepts', () => {
  test.each(known.filter((each) => !disputed.includes(each.id)).map((each): [string, Case] => [`${each.id}: ${each.basis}`, each]))('%s', async (_, each) => {
    const answer = await advisor.assess(each.proposal);
    expect(each.accept, answer.findings.map((finding) => `${finding.rule} (${finding.fires})`).join(', ')).toContain(answer.verdict);
    for (const [member, value] of Object.entries(each.expect ?? {})) expect(answer[member as keyof typeof answer]).toEqual(value);
  });

  test.each(disputed.map((id) => [id]))('%s is disputed, and would leave the list if its verdict were accepted', async (id) => {
    const each = known.find((one) => one.id === id)!;
    const answer = await advisor.assess(each.proposal);
    const holds = each.accept.includes(answer.verdict) && Object.entries(each.expect ?? {}).every(([member, value]) => answer[member as keyof typeof answer] === value);
    expect(holds).toBe(false);
  });
});
