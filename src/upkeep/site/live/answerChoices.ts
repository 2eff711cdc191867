/// <reference lib="dom" />
import type { Assessment, FactWord, Knowledge } from 'sparebud';
import { valueText } from '../valueText.js';
import { el } from './el.js';
import { patchAt } from './atPath.js';
import { verdictMark, verdictWords } from './verdictMark.js';
import type { Question } from './withoutEmpty.js';

type Answer = Assessment['questions'][number]['answers'][number];

/** Applies a patch to the question, and says what it meant. */
export type Press = (patch: Question) => void;

const spanText = ({ atLeast, below }: Answer, word: FactWord, knowledge: Knowledge): string => {
  const said = (value: number): string => valueText(value, word, knowledge);
  if (atLeast === undefined) return below === undefined ? 'any' : `below ${said(below)}`;
  if (below === undefined) return `${said(atLeast)} or more`;
  if (word.whole !== true) return `${said(atLeast)} to below ${said(below)}`;
  return below - atLeast === 1 ? said(atLeast) : `${said(atLeast)} to ${said(below - 1)}`;
};

/** A number to stand for a span: one that the answer was tried with, else where it begins. */
const numberIn = ({ atLeast, below }: Answer, { tries = [], bounds }: FactWord): number | undefined =>
  tries.find((value) => value >= (atLeast ?? -Infinity) && value < (below ?? Infinity)) ?? atLeast ?? bounds?.[0];

const settable = ({ given, type }: FactWord): boolean => given !== undefined && /^(?:tree|operation|where)\./.test(given) && given !== 'tree.log' && given !== 'tree.structure' && !(given === 'tree.lastRepotted' && type === 'number');

/** The answers to a question, each with the verdict that it brings; to press where the proposal has a place for it, else to read. */
export const answerChoices = (fact: string, answers: readonly Answer[], knowledge: Knowledge, press: Press): HTMLElement => {
  const word = knowledge.facts[fact];
  return el('ul', { class: 'choices' }, ...answers.map((answer) => {
    const number = answer.value === undefined && word !== undefined ? numberIn(answer, word) : undefined;
    const value = answer.value ?? number;
    const says = answer.value !== undefined ? (word?.type === 'text' ? String(answer.value) : valueText(answer.value, word, knowledge)) : word === undefined ? '' : spanText(answer, word, knowledge);
    const mayPress = word !== undefined && settable(word) && value !== undefined;
    const worst = answer.range?.[1];
    const within = [el('span', {}, !mayPress || number === undefined || says === valueText(number, word, knowledge) ? says : `${says} (say ${valueText(number, word, knowledge)})`), verdictMark(answer.verdict), ...(worst === undefined || worst === answer.verdict ? [] : [el('span', { class: 'worst' }, `at worst ${verdictWords[worst]}`)])];
    if (!mayPress) return el('li', {}, el('span', { class: 'said' }, ...within));
    const button = el('button', { type: 'button', 'data-key': `${fact}=${String(value)}` }, ...within);
    button.addEventListener('click', () => { press(patchAt(word.given!, value)); });
    return el('li', {}, button);
  }));
};
