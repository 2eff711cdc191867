import { Command } from 'commander';
import { stationsNear } from '../advice/stationsNear.js';
import { SparebudError } from '../knowledge/error.js';
import { findPlaces } from '../season/findPlaces.js';
import { nearestPlaces } from '../season/nearestPlaces.js';
import type { Station } from '../season/station.js';
import { inUnits, type Units } from './page/inUnits.js';
import { unitsOption } from './page/unitsOption.js';

const row = (station: Station, units: Units, km?: number): string =>
  `${station.id.padEnd(34)} ${station.name.padEnd(36)} ${station.country.padEnd(16)} ${String(station.latitude).padStart(8)} ${String(station.longitude).padStart(9)}${station.elevationM === undefined ? '' : ` ${inUnits(`${Math.round(station.elevationM)} m`, units)}`}${km === undefined ? '' : `  ${inUnits(`${Math.round(km)} km`, units)} away`}\n`;

/** `sparebud places`: bundled stations by name, or the nearest to a point. */
export const placesCommand = (places: readonly Station[]): Command =>
  new Command('places')
    .description('find a bundled station by name, or the nearest to a latitude and longitude')
    .argument('[name]', 'part of its name or country')
    .option('--near <latitude,longitude>', 'the five nearest')
    .addOption(unitsOption())
    .option('--json', 'print as JSON')
    .addHelpText('after', '\nExamples:\n  sparebud places zurich\n  sparebud places --near=-36.9,174.8')
    .action((name: string | undefined, options: { readonly units: Units; readonly near?: string; readonly json?: true }) => {
      if (options.near !== undefined) {
        const [latitude, longitude] = options.near.split(',').map(Number);
        if (latitude === undefined || longitude === undefined || Number.isNaN(latitude) || Number.isNaN(longitude)) throw new SparebudError([{ code: 'not-allowed', path: '--near', message: `\`${options.near}\` is not a latitude and longitude`, help: 'write it as 51.1,3.7' }]);
        const near = nearestPlaces(latitude, longitude, places, 5);
        for (const { station, km } of near) process.stdout.write(options.json === true ? `${JSON.stringify({ ...station, km: Math.round(km) })}\n` : row(station, options.units, km));
        return;
      }
      const found = name === undefined ? places : findPlaces(name, places);
      if (found.length === 0) {
        const near = stationsNear(name ?? '', places);
        throw new SparebudError([{ code: 'unknown-place', path: 'places', message: `no bundled station is called \`${name ?? ''}\``, help: `${near.length === 0 ? '' : `did you mean ${near.join(' or ')}? Or `}try --near with latitude and longitude, or tell your own frost dates` }]);
      }
      for (const station of found) process.stdout.write(options.json === true ? `${JSON.stringify(station)}\n` : row(station, options.units));
    });
