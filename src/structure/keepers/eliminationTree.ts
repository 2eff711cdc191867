import { bit, has } from './bits.js';

/** An order in which choices may be made, and on what of what was decided before each what is left still hangs. */
export interface EliminationTree {
  readonly order: readonly number[];
  /** Of each choice, those decided before that the cost of it and of all below it hangs on. */
  readonly scope: readonly (readonly number[])[];
  /** Of each choice, those of which it is the last to be decided that they hang on. */
  readonly below: readonly (readonly number[])[];
  /** Those that hang on none. */
  readonly roots: readonly number[];
}

/** Two choices whose costs hang on each other. */
export type Link = readonly [number, number];

const count = (set: number): number => {
  let members = 0;
  for (let rest = set; rest !== 0; rest &= rest - 1) members++;
  return members;
};

const nearOf = (choices: number, links: readonly Link[]): number[] => {
  const near = new Array<number>(choices).fill(0);
  for (const [a, b] of links) [near[a], near[b]] = [near[a]! | bit(b), near[b]! | bit(a)];
  return near;
};

/** Takes out again and again the choice that ties fewest others together, and ties those: the fewest-fill rule (Kjærulff 1990, Aalborg report R90-09, from memory). */
const takenOut = (near: readonly number[]): { readonly order: readonly number[]; readonly width: number } => {
  const tied = [...near];
  const order: number[] = [];
  let left = bit(near.length) - 1;
  let width = 0;
  while (left !== 0) {
    let next = -1;
    let [least, fewest] = [Infinity, Infinity];
    for (let i = 0; i < tied.length; i++) {
      if (!has(left, i)) continue;
      const around = tied[i]! & left;
      let fill = 0;
      for (let j = 0; j < tied.length; j++) if (has(around, j)) fill += count(around & ~tied[j]!) - 1;
      if (fill < least || (fill === least && count(around) < fewest)) [next, least, fewest] = [i, fill, count(around)];
    }
    left &= ~bit(next);
    const around = tied[next]! & left;
    for (let j = 0; j < tied.length; j++) if (has(around, j)) tied[j] = (tied[j]! | around) & ~bit(j);
    width = Math.max(width, fewest);
    order.push(next);
  }
  return { order, width };
};

/** As many links, the first before the last, as leave no choice hanging on more than `width` others. */
export const linksWithin = (choices: number, links: readonly Link[], width: number): readonly Link[] => {
  const fits = (some: readonly Link[]): boolean => takenOut(nearOf(choices, some)).width <= width;
  return fits(links) ? links : links.reduce<readonly Link[]>((kept, link) => (fits([...kept, link]) ? [...kept, link] : kept), []);
};

/** The order of choices that links leave fewest of hanging together: bucket elimination (Dechter 1999, Artificial Intelligence 113:41, from memory). */
export const eliminationTree = (choices: number, links: readonly Link[]): EliminationTree => {
  const near = nearOf(choices, links);
  const order = [...takenOut(near).order].reverse();
  const scope: (readonly number[])[] = [];
  const below: number[][] = order.map(() => []);
  const roots: number[] = [];
  let undecided = bit(choices) - 1;
  for (const [place, i] of [...order.entries()].reverse()) {
    const hangsOn = below[i]!.reduce((set, child) => scope[child]!.reduce((all, j) => all | bit(j), set), near[i]!) & undecided & ~bit(i);
    undecided -= bit(i);
    const before = order.slice(0, place).filter((j) => has(hangsOn & undecided, j));
    scope[i] = before;
    const last = before.at(-1);
    (last === undefined ? roots : below[last]!).push(i);
  }
  return { order, scope, below, roots };
};
