import type { Message } from '../../contract/types.generated.js';
import type { Knowledge } from '../../knowledge/knowledge.js';
import type { Charge } from '../../structure/keepers/charges.js';
import { message } from '../message.js';
import { sideOf } from '../sideOf.js';

const shownFigure = (name: string, value: number | string, knowledge: Knowledge): string | number => {
  if (typeof value === 'string') return value;
  if (name === 'ratio') return Math.round(value * 100) / 100;
  if (name === 'share') return `${Math.round(value * 100)} %`;
  return name === 'middleDeg' ? message(knowledge, `measure.side.${sideOf(value)}`).text : Math.round(value);
};

/** Why a charge is made, in words and numbers. */
export const chargeText = ({ term, branches, figures }: Charge, knowledge: Knowledge): Message =>
  message(knowledge, `keepers.${term}`, { branches: branches.join(', '), ...Object.fromEntries(Object.entries(figures).map(([name, value]) => [name, shownFigure(name, value, knowledge)])) });
