import type { Asked, Derive, Read } from './asked.js';
import { type FactValue, known, unknown } from './factValue.js';
import { seasonFigure } from './season.js';

const berth = (asked: Asked, place: string, end: 0 | 1): FactValue | undefined => {
  const range = asked.knowledge.growing.berthC[place];
  return range === undefined ? undefined : { state: 'assumed', value: range[end], from: 'assumed' };
};

/** What a winter berth shelters from, over the usual lowest of the place; a berth under a roof has its own usual range (practice). */
const atBerth = (read: Read, asked: Asked, end: 0 | 1): FactValue => {
  const placement = read('winter.placement');
  if (placement.value === undefined) return unknown();
  const indoors = berth(asked, placement.value as string, end);
  if (indoors !== undefined) return indoors;
  const low = read('place.winterLowC');
  const warmer = asked.knowledge.growing.shelterC[placement.value as string] ?? 0;
  if (low.value === undefined) return unknown();
  const among = low.among as { readonly atLeast: number; readonly atMost: number } | undefined;
  return { ...low, value: (low.value as number) + warmer, ...(among === undefined ? {} : { among: { atLeast: among.atLeast + warmer, atMost: among.atMost + warmer } }), from: low.from };
};

/** Facts of the cold and warmth that a tree will meet. */
export const exposureFacts: Readonly<Record<string, Derive>> = {
  'winter.highestC': (read, asked) => {
    const placement = read('winter.placement');
    return placement.value === undefined ? unknown() : (berth(asked, placement.value as string, 1) ?? undefined);
  },
  /* The nights outside, wherever the tree stands now. */
  'move.coldestNightC': (read, asked) => {
    read('season.coldNightC');
    const cold = seasonFigure(asked.season(undefined, 'outdoors')?.coldNightC);
    return cold?.value === undefined ? undefined : cold;
  },
  'exposure.lowestC': (read, asked) => {
    switch (asked.operation.id) {
      case 'overwinter':
        return atBerth(read, asked, 0);
      case 'plant-out':
        return { ...read('place.winterLowC') };
      case 'move-outdoors':
      case 'move-indoors': {
        const cold = read('move.coldestNightC');
        return cold.value === undefined ? unknown() : { ...cold };
      }
      default:
        return unknown();
    }
  },
  'exposure.warmthC': (read, asked) => {
    if (asked.operation.id === 'overwinter') return atBerth(read, asked, 0);
    if (asked.operation.id !== 'move-indoors') return unknown();
    const to = read('move.to');
    const warmth = asked.knowledge.growing.berthC[to.value as string]?.[0];
    return warmth === undefined ? unknown() : to.state === 'known' ? known(warmth, 'worked-out') : { state: 'assumed', value: warmth, from: 'assumed' };
  },
};
