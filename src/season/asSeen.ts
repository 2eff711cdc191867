import type { Range } from './seasonShape.js';

/**
 * What the model says, held to what is seen on the tree.
 *
 * A grower who tells the day and the place after the phase must not be answered outside of what the phase alone left open. Where the two have nothing in common the tree is
 * right and the model is not: forced, moved, stripped of its leaves, or in a year of its own.
 * @param model the model's figure
 * @param seen what the phase alone tells; undefined where it tells nothing
 */
export const asSeen = (model: Range, seen: Range | undefined): Range => {
  if (seen === undefined) return model;
  if (model.atMost < seen.atLeast || model.atLeast > seen.atMost) return seen;
  const held = (value: number): number => Math.min(seen.atMost, Math.max(seen.atLeast, value));
  return { value: held(model.value), atLeast: held(model.atLeast), atMost: held(model.atMost), sure: model.sure || seen.sure };
};
