import { type Condition, type Test, testsOf } from '../../engine/condition.js';
import type { Residual } from '../../engine/specialise.js';

/** What each test of a residual condition said, in file order. */
export type Said = readonly boolean[];

interface Reader {
  readonly holds: (said: Said) => boolean;
  readonly facts: (said: Said) => readonly string[];
}

const reader = (condition: Condition, places: ReadonlyMap<Test, number>): Reader => {
  switch (condition.kind) {
    case 'constant': {
      const facts = condition.test === undefined ? [] : [condition.test.fact];
      return { holds: () => condition.holds, facts: () => facts };
    }
    case 'test': {
      const place = places.get(condition);
      const facts = [condition.fact];
      return { holds: (said) => place !== undefined && said[place] === true, facts: () => facts };
    }
    case 'all': {
      const parts = condition.of.map((part) => reader(part, places));
      return { holds: (said) => parts.every((part) => part.holds(said)), facts: (said) => parts.flatMap((part) => part.facts(said)) };
    }
    case 'any': {
      const settled = (part: Condition): boolean => part.kind === 'constant' && part.holds;
      const parts = [...condition.of.filter(settled), ...condition.of.filter((part) => !settled(part))].map((part) => reader(part, places));
      return { holds: (said) => parts.some((part) => part.holds(said)), facts: (said) => parts.find((part) => part.holds(said))?.facts(said) ?? [] };
    }
    case 'not':
      throw new Error('a condition must be in normal form, found not');
  }
};

/** Reads from what its tests said on which facts a rule fired, made ready once: for the ways that have no explanation of their own. Ours is not asked, so that the two hold each other to account. */
export const standsOn = ({ folded, left }: Residual): ((said: Said) => readonly string[]) => reader(folded.kind === 'all' ? folded.of[0]! : folded, new Map(testsOf(left).map((test, i) => [test, i]))).facts;
