import { readRows } from './readRows.js';

export interface UsStation {
  readonly id: string;
  readonly latitude: number;
  readonly longitude: number;
  readonly elevationM: number;
  readonly minC: readonly number[];
  readonly maxC: readonly number[];
  /** Day of year, or a code below 0. */
  readonly last: number;
  readonly first: number;
  readonly degreeDays10: number;
  readonly degreeDays4: number;
  /** Fits look only at one half, tests only at the other: a hash of the station's id decides. */
  readonly heldOut: boolean;
}

const months = Array.from({ length: 12 }, (_, i) => i + 1);
const hash = (text: string): number => [...text].reduce((sum, letter) => (sum * 31 + letter.charCodeAt(0)) | 0, 7);

export const usStations: readonly UsStation[] = readRows('us-normals-frost-degree-days.csv.gz').map((row) => ({
  id: row['id'] ?? '',
  latitude: Number(row['lat']),
  longitude: Number(row['lon']),
  elevationM: Number(row['elevation_m']),
  minC: months.map((month) => Number(row[`min${month}`]) / 10),
  maxC: months.map((month) => Number(row[`max${month}`]) / 10),
  last: Number(row['last']),
  first: Number(row['first']),
  degreeDays10: Number(row['dd10']),
  degreeDays4: Number(row['dd4_44']),
  heldOut: (hash(row['id'] ?? '') & 1) === 1,
}));
