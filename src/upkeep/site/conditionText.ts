import type { FactWord, Knowledge, Value, WrittenCondition } from '../../knowledge/knowledge.js';
import { factLink } from './factLink.js';
import { html, type Html } from './html.js';
import { valueText } from './valueText.js';

const comparisons: Readonly<Record<string, string>> = { above: 'above', below: 'below', atLeast: 'at least', atMost: 'at most', in: 'one of' };

/** What a fact is held against: a value, a trait of the species, or a figure of the operation, times and plus something. */
const figureText = (limit: unknown, word: FactWord | undefined, knowledge: Knowledge): Html => {
  if (Array.isArray(limit)) return html`${limit.map((each) => valueText(each, word, knowledge)).join(' or ')}`;
  if (typeof limit !== 'object' || limit === null) return html`${valueText(limit, word, knowledge)}`;
  const { trait, times = 1, plus = 0 } = limit as { readonly trait?: string; readonly times?: number; readonly plus?: number };
  const figure = trait === undefined ? 'the days that the work needs after it' : html`its ${factLink(`species.${trait}`, knowledge)}`;
  return html`${times === 1 ? '' : `${times} times `}${figure}${plus === 0 ? '' : ` ${plus < 0 ? 'less' : 'plus'} ${valueText(Math.abs(plus), word, knowledge)}`}`;
};

const limitText = (limit: unknown, word: FactWord | undefined, knowledge: Knowledge): Html => {
  if (typeof limit !== 'object' || limit === null || Array.isArray(limit)) return figureText(limit, word, knowledge);
  const parts = Object.entries(limit).map(([operator, operand]: [string, unknown]): Html => {
    switch (operator) {
      case 'not':
        return html`not ${limitText(operand, word, knowledge)}`;
      case 'has':
        return html`with ${valueText(operand, word, knowledge)} among them`;
      case 'between':
        return html`from ${valueText((operand as readonly Value[])[0], word, knowledge)} to ${valueText((operand as readonly Value[])[1], word, knowledge)}`;
      default:
        return html`${comparisons[operator] ?? operator} ${figureText(operand, word, knowledge)}`;
    }
  });
  return html`${parts.flatMap((part, i) => (i === 0 ? [part] : [' and ', part]))}`;
};

/** What a condition asks, in words, each fact and trait with a link to its page. */
export const conditionText = (condition: WrittenCondition, knowledge: Knowledge): Html => {
  const [fact, limit] = Object.entries(condition)[0]!;
  if (fact === 'any' || fact === 'all') return html`${fact} of these:<ul>${(limit as readonly WrittenCondition[]).map((each) => html`<li>${conditionText(each, knowledge)}</li>`)}</ul>`;
  return html`${factLink(fact, knowledge)}: <span class="limit">${limitText(limit, knowledge.facts[fact], knowledge)}</span>`;
};
