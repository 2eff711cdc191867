import type { Message } from '../../contract/types.generated.js';
import type { Knowledge } from '../../knowledge/knowledge.js';
import type { Certainty, Measure } from '../../structure/measure.js';
import { message, type Params } from '../message.js';

/** One thing that a structure shows: in numbers, and in words. */
export interface Entry {
  /** `tree`, or the ids of the trunk or branches that it is of. */
  readonly of: readonly string[];
  readonly measure: string;
  readonly value: number | string | boolean | readonly (number | string)[];
  readonly atLeast?: number;
  readonly atMost?: number;
  readonly certainty: Certainty;
  readonly text: Message;
}

const fine = (value: number): number => Math.round(value * 1000) / 1000;

/** An entry of a measure, its bounds with it where it is an estimate; what it measures also names its text. */
export const entryOf = (knowledge: Knowledge, of: readonly string[], measure: string, { value, atLeast, atMost, certainty }: Measure, params: Params): Entry => ({
  of, measure, value: fine(value), certainty, text: message(knowledge, `measure.${measure}`, params),
  ...(certainty === 'estimated' ? { atLeast: fine(atLeast), atMost: fine(atMost) } : {}),
});

/** An entry that no single number tells. */
export const saying = (knowledge: Knowledge, of: readonly string[], measure: string, value: Entry['value'], params: Params): Entry => ({ of, measure, value, certainty: 'worked-out', text: message(knowledge, `measure.${measure}`, params) });

export const percent = (share: number): string => `${Math.round(share * 100)} %`;

/** A length or thickness as a tape or calliper gives it. */
export const mm = (value: number): number => (value >= 20 ? Math.round(value) : Math.round(value * 10) / 10);
