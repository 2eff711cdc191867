import type { Station } from './station.js';

/**
 * What is wrong with a station's normals; empty where they can be used.
 *
 * Use it where stations are bundled: some tables print absolute extremes as means, or hold slips of the pen.
 * @param station the station as read
 * @returns faults in plain words
 * Source: faults met in the WMO city table (absolute extremes for means at Bishkek, one month off at Deir Ezzor); the limits
 * are ours: a daily swing above 22 C, a month more than 5.5 C off the middle of its neighbours (the largest of 5,808 US stations is 5.4, in inland Alaska).
 */
export const saneStation = (station: Station): readonly string[] => {
  const faults: string[] = [];
  if (!(Math.abs(station.latitude) <= 90)) faults.push('latitude is beyond a pole');
  if (!(Math.abs(station.longitude) <= 180)) faults.push('longitude is beyond 180 degrees');
  if (station.minC.length !== 12 || station.maxC.length !== 12) return [...faults, 'normals do not have 12 months'];
  if ([...station.minC, ...station.maxC].some((value) => !Number.isFinite(value))) return [...faults, 'a month has no number'];
  station.minC.forEach((low, month) => {
    const swing = (station.maxC[month] ?? 0) - low;
    if (swing > 22) faults.push(`month ${month + 1}: maximum and minimum lie ${swing.toFixed(1)} C apart, as absolute extremes do`);
    if (swing < 0.5) faults.push(`month ${month + 1}: maximum is not above minimum`);
  });
  for (const date of [station.lastFrost, station.firstFrost]) {
    if (date !== undefined && !/^(0[1-9]|1[0-2])-([0-2]\d|3[01])$/.test(date)) faults.push(`frost date ${date} is not MM-DD`);
  }
  if ((station.lastFrost === undefined) !== (station.firstFrost === undefined)) faults.push('one frost date stands without the other');
  for (const [name, means] of [['minimum', station.minC], ['maximum', station.maxC]] as const) {
    means.forEach((value, month) => {
      const between = ((means[(month + 11) % 12] ?? value) + (means[(month + 1) % 12] ?? value)) / 2;
      if (Math.abs(value - between) > 5.5) faults.push(`month ${month + 1}: ${name} lies ${(value - between).toFixed(1)} C off the middle of its neighbours`);
    });
  }
  return faults;
};
