import type { Phase } from './seasonTraits.js';

/** A number with how far it may be off; `sure` false: an estimate, whose bounds hold whatever the estimate is worth. */
export interface Range { readonly value: number; readonly atLeast: number; readonly atMost: number; readonly sure: boolean }

/** What the season says about a tree on one day; what is missing is unknown. */
export interface SeasonOn {
  readonly phase?: Phase;
  readonly phaseFrom: 'seen' | 'season' | 'none';
  /** Phases that are possible, where it is not sure. */
  readonly among?: readonly Phase[];
  readonly phaseSure: boolean;
  /** Days until growth ends; 0 after it, and the whole season to come from 42 days before bud swell. */
  readonly growingDaysLeft?: Range;
  /** Days until roots stand still; 0 in the cold unless the soil warms within 42 days. */
  readonly rootDaysLeft?: Range;
  /** Days to the next bud swell (start of growth); 0 on its first day. */
  readonly daysToBudSwell?: Range;
  /** Days since the latest leaf-out (start of growth where leaves never fall). */
  readonly daysSinceLeafOut?: Range;
  /** Days until frosts usually end; 0 once they have, until the first of autumn. */
  readonly daysToLastFrost?: Range | 'none';
  /** Days until frosts usually begin; 0 while they are in season. */
  readonly daysToFirstFrost?: Range | 'none';
  /** Mean minimum of the day, C. */
  readonly nightC?: Range;
  /** A cold night of the time of year: 1.3 standard deviations under the mean, C. */
  readonly coldNightC?: Range;
  /** Mean maximum of the day, C. */
  readonly dayC?: Range;
  readonly dayLengthH?: number;
  /** Usual lowest of the year, C. */
  readonly winterLowC?: Range;
  /** In leaf before the frosts are over. */
  readonly awakeEarly?: boolean;
  readonly plusMinusDays: number;
  /** Message ids. */
  readonly notes: readonly string[];
}
