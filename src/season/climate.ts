import { climateFromFrostDates } from './climateFromFrostDates.js';
import { climateFromLatitude } from './climateFromLatitude.js';
import type { Climate, Where } from './climateShape.js';
import { nearestPlaces } from './nearestPlaces.js';
import type { Station } from './station.js';

export type { Climate, Where } from './climateShape.js';

/** A station this near beats a curve fitted to stated frost dates; one within the farther reach still beats latitude alone. */
const reachKm = 120;
const farReachKm = 300;
const reachHeightM = 600;
/** Fall of the mean temperature with height, C per metre: 6.5 C per km (from memory). */
const lapseCPerM = 0.0065;

const fits = (latitude: number | undefined, limit: number): latitude is number =>
  latitude !== undefined && Number.isFinite(latitude) && Math.abs(latitude) <= limit;

const twelve = (means: readonly number[] | undefined): means is readonly number[] =>
  means !== undefined && means.length === 12 && means.every((value) => Number.isFinite(value));

/** Assumed mean swing between a day's extremes where only one of them is told: mean of 83 stations of the world. */
const usualSwingC = 9.6;

const fromNormals = (where: Where): Climate | undefined => {
  const minC = twelve(where.monthlyMinC) ? where.monthlyMinC : undefined;
  const maxC = twelve(where.monthlyMaxC) ? where.monthlyMaxC : undefined;
  if (minC === undefined && maxC === undefined) return undefined;
  const both = minC !== undefined && maxC !== undefined;
  return {
    minC: [...(minC ?? (maxC ?? []).map((value) => value - usualSwingC))],
    maxC: [...(maxC ?? (minC ?? []).map((value) => value + usualSwingC))],
    quality: 'normals',
    plusMinusDays: both ? 10 : 14,
    notes: ['normals-given', ...(both ? [] : ['swing-assumed']), ...(fits(where.latitude, 90) ? [] : ['latitude-assumed'])],
  };
};

const fromStation = (station: Station, km: number, where: Where, chosen: boolean): Climate => {
  const known = where.elevationM !== undefined && station.elevationM !== undefined;
  const rise = known ? (where.elevationM ?? 0) - (station.elevationM ?? 0) : 0;
  const corrected = Math.abs(rise) >= 50;
  const shift = (means: readonly number[]): readonly number[] => means.map((value) => (corrected ? value - lapseCPerM * rise : value));
  const notes = [chosen ? 'place-chosen' : 'station-used'];
  if (corrected) notes.push('station-height-corrected');
  if (!known && !chosen) notes.push('station-height-unknown');
  // Frosts read at the station hold no longer where the garden lies clearly higher or lower.
  const frostHolds = Math.abs(rise) < 150;
  const heightError = known || chosen ? Math.abs(rise) / 200 : 4;
  return {
    latitude: fits(where.latitude, 90) ? where.latitude : station.latitude,
    minC: shift(station.minC),
    maxC: shift(station.maxC),
    ...(frostHolds && station.lastFrost !== undefined ? { lastFrost: station.lastFrost } : {}),
    ...(frostHolds && station.firstFrost !== undefined ? { firstFrost: station.firstFrost } : {}),
    quality: 'station',
    station: { id: station.id, name: station.name, km: Math.round(km), ...(station.elevationM === undefined ? {} : { elevationM: station.elevationM }) },
    plusMinusDays: Math.round(10 + km / 25 + heightError),
    notes,
  };
};

const nearStation = (where: Where, stations: readonly Station[], reach: number): Climate | undefined => {
  if (!fits(where.latitude, 90) || !fits(where.longitude, 360)) return undefined;
  const near = nearestPlaces(where.latitude, where.longitude, stations, 8).find(({ station, km }) => km <= reach &&
    (where.elevationM === undefined || station.elevationM === undefined || Math.abs(where.elevationM - station.elevationM) <= reachHeightM));
  return near && fromStation(near.station, near.km, where, false);
};

/** Half of the year's swing of the minimum at the nearest station that says anything of the place. */
const swingNear = (where: Where, stations: readonly Station[]): number | undefined => {
  const minC = nearStation(where, stations, farReachKm)?.minC;
  return minC === undefined ? undefined : (Math.max(...minC) - Math.min(...minC)) / 2;
};

/**
 * The climate that the season model uses for a place, with how it came by it.
 *
 * Use it once for each place and keep the result: calendars of all species share what is worked out from it. Own normals win; then the station named by
 * `place`; then the nearest station within 120 km (and 600 m of height, corrected by 6.5 C per km where both heights are known); then a
 * curve fitted to stated frost dates, latitude and the swing of a station within 300 km; then a station within 300 km; then latitude alone, a rough estimate. Stated frost dates always win over worked-out ones.
 * @param where what is told of the place
 * @param stations the bundled stations, or none
 * @example climateOf({ latitude: 51, longitude: 3.7, lastFrost: '04-20', firstFrost: '10-28' }, [])
 */
export const climateOf = (where: Where | undefined, stations: readonly Station[]): Climate => {
  if (where === undefined) return { quality: 'none', plusMinusDays: 60, notes: ['no-place'] };
  const named = where.place === undefined ? undefined : stations.find((station) => station.id === where.place);
  const notes = where.place !== undefined && named === undefined ? ['unknown-place'] : [];
  const latitude = fits(where.latitude, 90) ? where.latitude : undefined;
  const found: Climate = fromNormals(where)
    ?? (named && fromStation(named, 0, where, true))
    ?? nearStation(where, stations, reachKm)
    ?? climateFromFrostDates(latitude, where.lastFrost, where.firstFrost, swingNear(where, stations))
    ?? nearStation(where, stations, farReachKm)
    ?? climateFromLatitude(latitude, where.elevationM)
    ?? { quality: 'none', plusMinusDays: 60, notes: ['no-place'] };
  return {
    ...found,
    ...(latitude !== undefined ? { latitude } : {}),
    ...(where.lastFrost === undefined ? {} : { lastFrost: where.lastFrost }),
    ...(where.firstFrost === undefined ? {} : { firstFrost: where.firstFrost }),
    ...(where.daily === undefined || where.daily.length === 0 ? {} : { daily: where.daily.map((one) => ({ ...one })) }),
    notes: [...notes, ...found.notes,
      ...(where.lastFrost === undefined && where.firstFrost === undefined ? [] : ['frost-dates-given']),
      ...(where.daily === undefined || where.daily.length === 0 ? [] : ['daily-readings-used'])],
  };
};
