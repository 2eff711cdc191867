/** A place with climate normals that ships with the project. */
export interface Station {
  readonly id: string;
  readonly name: string;
  readonly country: string;
  /** Degrees, south negative. */
  readonly latitude: number;
  /** Degrees, west negative. */
  readonly longitude: number;
  readonly elevationM?: number;
  /** Mean daily minimum of January to December, C. */
  readonly minC: readonly number[];
  /** Mean daily maximum of January to December, C. */
  readonly maxC: readonly number[];
  /** Median last air frost of spring, MM-DD. */
  readonly lastFrost?: string;
  /** Median first air frost of autumn, MM-DD. */
  readonly firstFrost?: string;
}
