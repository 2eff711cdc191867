import type { Message } from '../../contract/types.generated.js';
import type { Knowledge } from '../../knowledge/knowledge.js';
import type { Charge } from '../../structure/keepers/charges.js';
import { message } from '../message.js';

/** A side of the tree in words, from its azimuth. */
const sideOf = (azimuthDeg: number): string => ['front', 'front left', 'left', 'back left', 'back', 'back right', 'right', 'front right'][Math.round(azimuthDeg / 45) % 8]!;

const shownFigure = (name: string, value: number | string): string | number => {
  if (typeof value === 'string') return value;
  if (name === 'ratio') return Math.round(value * 100) / 100;
  if (name === 'share') return `${Math.round(value * 100)} %`;
  return name === 'middleDeg' ? sideOf(value) : Math.round(value);
};

/** Why a charge is made, in words and numbers. */
export const chargeText = ({ term, branches, figures }: Charge, knowledge: Knowledge): Message =>
  message(knowledge, `keepers.${term}`, { branches: branches.join(' and '), ...Object.fromEntries(Object.entries(figures).map(([name, value]) => [name, shownFigure(name, value)])) });
