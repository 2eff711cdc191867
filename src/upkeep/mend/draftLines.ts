import type { RuleExample } from '../../knowledge/knowledge.js';
import { helpMark } from '../house/unfinished.js';
import type { Draft } from './draftExamples.js';
import { flowText } from './flowText.js';

const exampleText = ({ operation, given, fires, verdict }: RuleExample): string => flowText({ ...(operation === undefined ? {} : { operation }), given, fires, ...(verdict === undefined ? {} : { verdict }) });

/** Drafts as comments below the examples: nothing that a program reads until a person takes the mark away. */
export const draftLines = (drafts: readonly Draft[]): string =>
  drafts.length === 0
    ? ''
    : [
        `  ${helpMark} Drafts: what the rule does now. Where that is what you mean, take \`${helpMark} \` away before the dash; where not, mend the rule.`,
        ...drafts.flatMap(({ example, why }) => [`  ${helpMark} (${why})`, `  ${helpMark} - ${exampleText(example)}`]),
        '',
      ].join('\n');
