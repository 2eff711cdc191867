// Against: normals and frost dates of NOAA NCEI 1981-2010 (tests/outside/data/README.md). How far a guessed or borrowed climate moves leaf-out from what the place's own
// normals give. The model's own error comes on top.
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { climateOf } from '../../../src/season/climate.js';
import type { Where } from '../../../src/season/climate.js';
import { climateYear } from '../../../src/season/climateYear.js';
import { distanceKm } from '../../../src/season/distanceKm.js';
import type { Station } from '../../../src/season/station.js';
import { turningPoints } from '../../../src/season/turningPoints.js';
import { mean, meanAbsolute, shareWithin } from './averages.js';
import { usStations } from './usStations.js';

const places = (JSON.parse(readFileSync(new URL('../../../shared/places.json', import.meta.url), 'utf8')) as { readonly stations: readonly Station[] }).stations;

const yearAt = (where: Where, stations: readonly Station[] = []) => climateYear(climateOf(where, stations));
const leafOut = (where: Where, stations: readonly Station[] = []): number | undefined => {
  const year = yearAt(where, stations);
  return year && turningPoints(year, { model: 'deciduous' }, 0).leafOut;
};
const monthDay = (doy: number): string => new Date(Date.UTC(2023, 0, doy)).toISOString().slice(5, 10);
const own = (station: (typeof usStations)[number]): Where => ({ latitude: station.latitude, monthlyMinC: station.minC, monthlyMaxC: station.maxC });

// The fits looked at each fortieth station of the list and at the bundled ones of the world; these are others.
const others = usStations.filter((station, i) => i % 40 === 13 && station.last > 0 && station.last <= 200 && station.first >= 200);
const pairs = <T>(of: (station: (typeof usStations)[number]) => T | undefined): readonly { readonly station: (typeof usStations)[number]; readonly value: T }[] =>
  others.flatMap((station) => {
    const value = of(station);
    return value === undefined ? [] : [{ station, value }];
  });

describe('a climate guessed from two frost dates and latitude', () => {
  const guess = (station: (typeof usStations)[number]): Where =>
    ({ latitude: station.latitude, lastFrost: monthDay(station.last), firstFrost: monthDay(station.first) });
  const errors = pairs((station) => {
    const [guessed, real] = [leafOut(guess(station)), leafOut(own(station))];
    return guessed === undefined || real === undefined ? undefined : guessed - real;
  }).map((one) => one.value);

  it('moves leaf-out by a week on average, and seldom by more than its 14 days', () => {
    expect(errors.length).toBeGreaterThan(100);
    expect(meanAbsolute(errors)).toBeLessThan(8);
    expect(shareWithin(errors, 14)).toBeGreaterThan(0.85);
  });

  it('has nights within 2.5 C on average', () => {
    const nights = others.flatMap((station) => {
      const [guessed, real] = [yearAt(guess(station)), yearAt(own(station))];
      return [0, 60, 120, 180, 240, 300].map((day) => (guessed?.minC[day] ?? Number.NaN) - (real?.minC[day] ?? Number.NaN));
    });
    expect(meanAbsolute(nights)).toBeLessThan(2.5);
    expect(Math.abs(mean(nights))).toBeLessThan(1.5);
  });
});

describe('a climate guessed from latitude alone', () => {
  const errors = pairs((station) => {
    const [guessed, real] = [leafOut({ latitude: station.latitude, elevationM: station.elevationM }), leafOut(own(station))];
    return guessed === undefined || real === undefined ? undefined : guessed - real;
  }).map((one) => one.value);

  it('moves leaf-out by ten days on average, and hardly ever by more than its 30', () => {
    expect(errors.length).toBeGreaterThan(100);
    expect(meanAbsolute(errors)).toBeLessThan(10);
    expect(shareWithin(errors, 30)).toBeGreaterThan(0.97);
  });
});

// Against: WMO city normals of the eight bundled places south of the equator (shared/places.json); one curve serves both sides.
describe('a climate guessed from latitude alone, south of the equator', () => {
  const south = places.filter((station) => station.latitude < 0);
  const guesses = south.map((station) => {
    const [guess, real] = [{ latitude: station.latitude, ...(station.elevationM === undefined ? {} : { elevationM: station.elevationM }) }, { latitude: station.latitude, monthlyMinC: station.minC, monthlyMaxC: station.maxC }];
    const winter = Math.min(...yearAt(guess)!.minC) - Math.min(...yearAt(real)!.minC);
    return { winter, leafOut: (leafOut(guess) ?? Number.NaN) - (leafOut(real) ?? Number.NaN) };
  });

  it('moves leaf-out by less than its 30 days all the same', () => {
    const errors = guesses.map((one) => one.leafOut).filter((days) => !Number.isNaN(days));
    expect(errors.length).toBeGreaterThanOrEqual(6);
    expect(meanAbsolute(errors)).toBeLessThan(8);
    expect(Math.max(...errors.map(Math.abs))).toBeLessThanOrEqual(14);
  });

  it('has midwinter nights some degrees too cold on its coasts, well within the 25 C that an estimate leaves open', () => {
    expect(mean(guesses.map((one) => one.winter))).toBeLessThan(0);
    expect(mean(guesses.map((one) => one.winter))).toBeGreaterThan(-4);
    expect(Math.max(...guesses.map((one) => Math.abs(one.winter)))).toBeLessThan(10);
  });
});

describe('a climate borrowed from a station some way up or down the hill', () => {
  const neighbours = usStations.filter((_, i) => i % 23 === 4);
  const found = usStations.filter((station, i) => i % 9 === 0 && station.latitude > 30 && station.latitude < 50).flatMap((garden) => {
    const near = neighbours.find((station) => station !== garden && Math.abs(station.elevationM - garden.elevationM) >= 300 &&
      Math.abs(station.elevationM - garden.elevationM) <= 600 && distanceKm(station.latitude, station.longitude, garden.latitude, garden.longitude) <= 110);
    if (near === undefined) return [];
    const station: Station = { id: near.id, name: near.id, country: 'US', latitude: near.latitude, longitude: near.longitude, elevationM: near.elevationM, minC: near.minC, maxC: near.maxC };
    const real = leafOut(own(garden));
    const at = { latitude: garden.latitude, longitude: garden.longitude };
    const corrected = leafOut({ ...at, elevationM: garden.elevationM }, [station]);
    const raw = leafOut(at, [station]);
    return real === undefined || corrected === undefined || raw === undefined ? [] : [{ corrected: corrected - real, raw: raw - real }];
  });

  it('is half as wrong or better once corrected by 6.5 C per km', () => {
    expect(found.length).toBeGreaterThan(25);
    const corrected = meanAbsolute(found.map((one) => one.corrected));
    expect(corrected).toBeLessThan(5);
    expect(corrected).toBeLessThan(0.55 * meanAbsolute(found.map((one) => one.raw)));
  });
});
