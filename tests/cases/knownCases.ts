import { readFileSync } from 'node:fs';
import type { Proposal } from '../../src/contract/types.generated.js';
import { root } from '../shipped.js';

/** The cases that growers have agreed on. */
export const knownCases = readFileSync(`${root}tests/cases/cases.jsonl`, 'utf8').trim().split('\n').map((line) => JSON.parse(line) as { readonly id: string; readonly proposal: Proposal });
