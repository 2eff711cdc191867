import type { Advisor } from '../../advisor.js';
import type { Assessment } from '../../contract/types.generated.js';
import { SparebudError } from '../../knowledge/error.js';
import { meets } from '../failOn.js';

/** What is written of each answer, and which answer a script waits for. */
export interface LineOptions {
  readonly fields?: readonly (keyof Assessment)[];
  readonly failOn?: string;
}

/** Some lines on end, the first of them with its number in the input. */
export interface Chunk extends LineOptions {
  readonly lines: readonly string[];
  readonly first: number;
}

/** The answers to a chunk as lines of JSON, and what became of them. */
export interface AnsweredChunk {
  readonly text: string;
  readonly asked: number;
  readonly failed: number;
  readonly met: boolean;
}

/** What a verdict alone can tell: no advice has to be worked out for it. */
const plain: ReadonlySet<string> = new Set<keyof Assessment>(['id', 'verdict', 'range', 'settled', 'meta']);

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

const answerTo = async (advisor: Advisor, line: string, fields: LineOptions['fields']): Promise<Pick<Assessment, 'verdict' | 'settled'> & Partial<Assessment>> => {
  const proposal = parsed(line);
  if (fields === undefined || fields.some((field) => !plain.has(field))) return await advisor.assess(proposal);
  const { verdict, range, settled } = await advisor.verdict(proposal);
  const { id, meta } = proposal as Pick<Assessment, 'id' | 'meta'>;
  return { verdict, range: [...range], settled, ...(id === undefined ? {} : { id }), ...(meta === undefined ? {} : { meta }) };
};

/** Answers some lines, in order; a bad line gives its error and the rest goes on. */
export const answerChunk = async (advisor: Advisor, { lines, first, fields, failOn }: Chunk): Promise<AnsweredChunk> => {
  const written: string[] = [];
  let failed = 0;
  let met = false;
  for (const [i, line] of lines.entries()) {
    if (line.trim() === '') continue;
    try {
      const answer = await answerTo(advisor, line, fields);
      met ||= meets(failOn, answer);
      written.push(JSON.stringify(fields === undefined ? answer : Object.fromEntries((['id', ...fields] as const).filter((field) => answer[field] !== undefined).map((field) => [field, answer[field]]))));
    } catch (cause) {
      if (!(cause instanceof SparebudError)) throw cause;
      failed++;
      written.push(JSON.stringify({ id: idOf(line), line: first + i, error: { code: cause.code, issues: cause.issues } }));
    }
  }
  return { text: written.map((line) => `${line}\n`).join(''), asked: written.length, failed, met };
};
