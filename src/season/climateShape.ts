/** One day's own reading. */
export interface DailyReading { readonly date: string; readonly minC: number; readonly maxC: number }

/** What is told of a place; more is better. */
export interface Where {
  /** Id of a bundled station. */
  readonly place?: string;
  readonly latitude?: number;
  readonly longitude?: number;
  readonly elevationM?: number;
  readonly monthlyMinC?: readonly number[];
  readonly monthlyMaxC?: readonly number[];
  /** Usual last and first frost, MM-DD. */
  readonly lastFrost?: string;
  readonly firstFrost?: string;
  readonly region?: string;
  readonly daily?: readonly DailyReading[];
}

/** What the season model works from, and how well it is known. */
export interface Climate {
  readonly latitude?: number;
  readonly minC?: readonly number[];
  readonly maxC?: readonly number[];
  readonly lastFrost?: string;
  readonly firstFrost?: string;
  readonly quality: 'station' | 'normals' | 'frost-dates' | 'latitude' | 'none';
  readonly station?: { readonly id: string; readonly name: string; readonly km: number; readonly elevationM?: number };
  /** Error of a turning point of spring, days; autumn is a few days worse. */
  readonly plusMinusDays: number;
  /** Message ids, in order. */
  readonly notes: readonly string[];
  readonly daily?: readonly DailyReading[];
}
