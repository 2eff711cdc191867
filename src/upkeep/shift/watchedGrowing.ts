import type { Knowledge } from '../../knowledge/knowledge.js';

type Growing = Knowledge['growing'];

/** The factors of growth of one state of the knowledge, which tell whether a factor was read that is another in the other state. */
export interface WatchedGrowing {
  readonly growing: Growing;
  readonly during: <Made>(work: () => Promise<Made>) => Promise<readonly [made: Made, looked: boolean]>;
}

/** An answer for which no factor was read that differs stays as it is: most changes to one factor reach few answers. */
export const watchedGrowing = (before: Growing, after: Growing): WatchedGrowing => {
  let looked = false;
  const differs = (key: string): boolean => JSON.stringify(before[key as keyof Growing]) !== JSON.stringify(after[key as keyof Growing]);
  const growing = Object.defineProperties({}, Object.fromEntries(Object.entries(before).map(([key, value]: [string, unknown]) =>
    [key, differs(key) ? { enumerable: true, get: () => ((looked = true), value) } : { enumerable: true, value }]))) as Growing;
  return {
    growing,
    during: async (work) => {
      looked = false;
      return [await work(), looked];
    },
  };
};
