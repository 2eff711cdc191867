import { createInterface } from 'node:readline';
import type { Readable, Writable } from 'node:stream';
import type { Advisor } from '../advisor.js';
import type { Assessment } from '../contract/types.generated.js';
import { SparebudError } from '../knowledge/error.js';

export interface Answered {
  readonly asked: number;
  readonly failed: number;
}

const idOf = (line: string): unknown => {
  try {
    const data = JSON.parse(line) as { readonly id?: unknown } | null;
    return typeof data === 'object' && data !== null ? (data.id ?? null) : null;
  } catch {
    return null;
  }
};

const parsed = (line: string): unknown => {
  try {
    return JSON.parse(line);
  } catch (cause) {
    throw new SparebudError([{ code: 'bad-json', path: '', message: `not a line of JSON: ${(cause as Error).message}`, help: 'write one JSON proposal a line' }]);
  }
};

/** Reads one JSON proposal a line and writes one JSON answer a line, in order; a bad line gives its error and the rest goes on. */
export const answerLines = async (advisor: Advisor, from: Readable, to: Writable, seen: (assessment: Assessment) => void): Promise<Answered> => {
  let asked = 0;
  let failed = 0;
  let number = 0;
  for await (const line of createInterface({ input: from, crlfDelay: Infinity })) {
    number++;
    if (line.trim() === '') continue;
    asked++;
    let answer: unknown;
    try {
      const assessment = await advisor.assess(parsed(line));
      seen(assessment);
      answer = assessment;
    } catch (cause) {
      if (!(cause instanceof SparebudError)) throw cause;
      failed++;
      answer = { id: idOf(line), line: number, error: { code: cause.code, issues: cause.issues } };
    }
    if (!to.write(`${JSON.stringify(answer)}\n`)) await new Promise<void>((resolve) => { to.once('drain', resolve); });
  }
  return { asked, failed };
};
