import { describe, expect, it } from 'vitest';
import { seasonCalendar } from '../../src/season/calendar.js';
import type { Phase, SeasonTraits, Standing } from '../../src/season/calendar.js';
import { climateOf } from '../../src/season/climate.js';
import type { Where } from '../../src/season/climate.js';
import { dayOf, isoOf } from '../../src/season/day.js';
import { phasesOfYear, seasonOn } from '../../src/season/standing.js';
import { lowland, stations } from './stations.js';

const deciduous: SeasonTraits = { model: 'deciduous' };
const evergreen: SeasonTraits = { model: 'evergreen' };
const calendarAt = (where: Where, traits: SeasonTraits, seen: readonly (readonly [Phase, string])[] = [], standing: Standing = 'outdoors') =>
  seasonCalendar(climateOf(where, stations), traits, dayOf('2026-06-01'), seen.map(([phase, date]) => ({ phase, day: dayOf(date) })), standing);
const on = (where: Where, traits: SeasonTraits, date: string, seen: readonly (readonly [Phase, string])[] = [], standing: Standing = 'outdoors') =>
  seasonOn(calendarAt(where, traits, seen, standing), dayOf(date));
const tokyo: Where = { latitude: 35.7, longitude: 139.7, lastFrost: '03-15', firstFrost: '11-25' };
const phuket: Where = { latitude: 7.9, longitude: 98.4 };
const seville: Where = { latitude: 37.4, longitude: -6, lastFrost: '02-20', firstFrost: '12-05' };

describe('a maple in a mild maritime garden', () => {
  it.each([
    ['2026-01-15', ['dormant']], ['2026-03-10', ['dormant', 'bud-swell']], ['2026-03-20', ['bud-swell']], ['2026-04-25', ['leafing-out', 'bud-burst']], ['2026-06-20', ['hardened-off']],
    ['2026-08-15', ['hardened-off']], ['2026-10-25', ['turning']], ['2026-11-15', ['leaf-fall']], ['2026-12-10', ['dormant']],
  ] as const)('on %s stands where a grower would expect', (date, phases) => {
    expect(phases).toContain(on(lowland, deciduous, date).phase);
  });

  it('has four weeks at most to bud swell on 10 March', () => {
    expect(on(lowland, deciduous, '2026-03-10').daysToBudSwell?.value).toBeLessThan(28);
  });

  it('counts the whole season to come from six weeks before bud swell, and none before', () => {
    const calendar = calendarAt(lowland, deciduous);
    const swell = phasesOfYear(calendar).find((one) => one.phase === 'bud-swell')?.from ?? Number.NaN;
    expect(seasonOn(calendar, swell - 43).growingDaysLeft?.value).toBe(0);
    const whole = seasonOn(calendar, swell).growingDaysLeft?.value ?? 0;
    expect(seasonOn(calendar, swell - 42).growingDaysLeft?.value).toBe(whole);
    expect(whole).toBeGreaterThan(150);
    expect(seasonOn(calendar, swell).daysToBudSwell?.value).toBe(0);
    expect(seasonOn(calendar, swell + 1).daysToBudSwell?.value).toBeGreaterThan(360);
  });

  it('stops growing when days fall under 11 hours, before the first frost', () => {
    const calendar = calendarAt(lowland, deciduous);
    const last = Array.from({ length: 365 }, (_, i) => dayOf('2026-06-01') + i).find((day) => seasonOn(calendar, day).growingDaysLeft?.value === 0) ?? 0;
    expect(isoOf(last) > '2026-10-05' && isoOf(last) < '2026-10-20').toBe(true);
    // The mean of both hemispheres' day lengths decides, some three days from the northern day.
    expect(seasonOn(calendar, last - 4).dayLengthH).toBeGreaterThan(11);
    expect(seasonOn(calendar, last + 4).dayLengthH).toBeLessThan(11);
  });

  it('has roots that work on after the shoots have stopped', () => {
    const october = on(lowland, deciduous, '2026-10-25');
    expect(october.growingDaysLeft?.value).toBe(0);
    expect(october.rootDaysLeft?.value).toBeGreaterThan(7);
  });

  it('counts down to frosts: to the last until it is past, to the first until it comes', () => {
    expect(on(lowland, deciduous, '2026-04-10').daysToLastFrost).toMatchObject({ value: 10, sure: true });
    expect(on(lowland, deciduous, '2026-04-21').daysToLastFrost).toMatchObject({ value: 0 });
    expect(on(lowland, deciduous, '2026-10-18').daysToFirstFrost).toMatchObject({ value: 10 });
    expect(on(lowland, deciduous, '2026-12-24').daysToFirstFrost).toMatchObject({ value: 0 });
    expect(on(lowland, deciduous, '2026-12-24').daysToLastFrost).toMatchObject({ value: 117 });
  });
});

describe('a pine in Tokyo', () => {
  const pine: SeasonTraits = { model: 'evergreen', leafOut: 90, hardens: 75 };
  it('extends its candles in May and has a season left for a second flush in late June', () => {
    expect(['leafing-out', 'extending']).toContain(on(tokyo, pine, '2026-05-05').phase);
    expect(on(tokyo, pine, '2026-06-25').growingDaysLeft?.value).toBeGreaterThan(90);
  });

  it('has root days left in mid November but no growth', () => {
    const november = on(tokyo, pine, '2026-11-15');
    expect(november.growingDaysLeft?.value).toBe(0);
    expect(november.rootDaysLeft?.value).toBeGreaterThan(0);
  });
});

describe('trees that need no winter', () => {
  it('grow all year in the wet tropics', () => {
    const ficus = on(phuket, { model: 'tropical' }, '2026-01-10');
    expect(ficus).toMatchObject({ phase: 'growing', phaseSure: true, daysToLastFrost: 'none' });
    expect(ficus.growingDaysLeft?.value).toBe(365);
  });

  it('rest through a cool winter and grow while nights are warm', () => {
    expect(on(lowland, { model: 'tropical' }, '2026-07-20').phase).toBe('growing');
    expect(on(lowland, { model: 'tropical' }, '2026-01-20')).toMatchObject({ phase: 'resting' });
  });

  it('grow from the first mild weeks where they are Mediterranean', () => {
    expect(on(seville, { model: 'mild-evergreen' }, '2026-04-25').phase).toBe('growing');
    expect(on(seville, { model: 'mild-evergreen' }, '2026-12-20').phase).toBe('resting');
  });

  it('stand still through the hot weeks where summer is their dry season, and grow again after', () => {
    const sacramento = { place: 'sacramento-executive-airport-ca' };
    const summerDry: SeasonTraits = { model: 'mild-evergreen', restSeason: 'summer' };
    const calendar = calendarAt(sacramento, summerDry);
    expect(phasesOfYear(calendar).map((one) => one.phase)).toEqual(['resting', 'growing', 'resting', 'growing', 'resting']);
    expect(on(sacramento, summerDry, '2026-07-25')).toMatchObject({ phase: 'resting' });
    expect(on(sacramento, summerDry, '2026-07-25').growingDaysLeft?.value).toBeGreaterThan(30);
  });

  it('shed in the cool where they are dry-deciduous', () => {
    const phases = phasesOfYear(calendarAt(seville, { model: 'dry-deciduous' })).map((one) => one.phase);
    expect(phases).toEqual(['dormant', 'growing', 'leaf-fall', 'dormant']);
  });
});

describe('where the model has no reach', () => {
  it('a maple in the tropics has no phase, and a reason', () => {
    const maple = on(phuket, deciduous, '2026-03-10');
    expect(maple.phase).toBeUndefined();
    expect(maple.phaseFrom).toBe('none');
    expect(maple.growingDaysLeft).toBeUndefined();
    expect(maple.notes).toContain('no-winter-here');
    expect(phasesOfYear(calendarAt(phuket, deciduous))).toEqual([]);
  });

  it('an elm that can do without a winter grows on there', () => {
    expect(on(phuket, { model: 'deciduous', restNeed: 'optional' }, '2026-03-10').phase).toBe('growing');
  });

  it('no tree grows on an ice cap', () => {
    expect(on({ latitude: 80, monthlyMinC: new Array<number>(12).fill(-14), monthlyMaxC: new Array<number>(12).fill(-4) }, deciduous, '2026-07-01').notes).toContain('no-summer-here');
  });

  it('a baobab-like tree in even warmth waits for rain that nobody told of', () => {
    expect(on(phuket, { model: 'dry-deciduous' }, '2026-03-10').notes).toContain('dry-season-unknown');
  });

  it('a tree in a heated room has no phase unless one is seen', () => {
    const room = on(lowland, deciduous, '2026-02-01', [], 'heated-room');
    expect(room).toMatchObject({ phaseFrom: 'none', phaseSure: false });
    expect(room.notes).toContain('under-cover');
    expect(room.nightC).toBeUndefined();
    expect(room.growingDaysLeft).toBeUndefined();
    const awake = on(lowland, deciduous, '2026-02-01', [['leafing-out', '2026-02-01']], 'heated-room');
    expect(awake).toMatchObject({ phase: 'leafing-out', phaseFrom: 'seen', awakeEarly: true });
  });

  it('a tree of warm lands in a heated room is taken to grow while the days are long, and nothing is said of the dark months', () => {
    const tropical: SeasonTraits = { model: 'tropical', restNeed: 'none' };
    const may = on(lowland, tropical, '2026-05-20', [], 'heated-room');
    expect(may).toMatchObject({ phase: 'growing', phaseFrom: 'season', phaseSure: false, among: ['growing', 'resting'] });
    // From 20 May to the day in October that falls under 11 h: some 140 days.
    expect(may.growingDaysLeft?.value).toBeGreaterThan(130);
    expect(may.growingDaysLeft?.value).toBeLessThan(150);
    expect(may.growingDaysLeft).toMatchObject({ atLeast: 0, sure: false });
    expect(on(lowland, tropical, '2026-12-15', [], 'heated-room').phase).toBeUndefined();
    expect(on(lowland, tropical, '2026-05-20', [], 'cool-room').phase).toBeUndefined();
    expect(on(lowland, { model: 'evergreen' }, '2026-05-20', [], 'heated-room').phase).toBeUndefined();
    expect(on(lowland, tropical, '2026-05-20', [['resting', '2026-05-18']], 'heated-room')).toMatchObject({ phase: 'resting', phaseFrom: 'seen' });
  });

  it('a cold frame keeps step with the garden, a little less surely', () => {
    const frame = on(lowland, deciduous, '2026-02-01', [], 'cold-frame');
    expect(frame.phase).toBe('dormant');
    expect(frame.notes).toContain('cold-frame');
    expect(frame.plusMinusDays).toBeGreaterThan(on(lowland, deciduous, '2026-02-01').plusMinusDays);
  });

  it('a winter too short for the species is said', () => {
    expect(calendarAt(tokyo, { model: 'deciduous', coldWeeks: 26 }).notes).toContain('rest-too-short');
    expect(calendarAt(tokyo, { model: 'deciduous', coldWeeks: 8 }).notes).not.toContain('rest-too-short');
  });
});

describe('latitude alone', () => {
  it('gives an estimate whose bounds follow from day length', () => {
    const september = on({ latitude: 51 }, deciduous, '2026-09-20');
    expect(september.phaseSure).toBe(false);
    expect(september.among).toContain(september.phase);
    expect(september.growingDaysLeft).toMatchObject({ atLeast: 0, sure: false });
    expect(september.growingDaysLeft?.atMost).toBeLessThan(30);
    expect(on({ latitude: 51 }, deciduous, '2026-12-01').growingDaysLeft).toEqual({ value: 0, atLeast: 0, atMost: 0, sure: true });
  });

  it('does not claim frosts where it cannot know them', () => {
    expect(on({ latitude: 25 }, evergreen, '2026-09-20').daysToFirstFrost).not.toBe('none');
  });
});

describe('what the grower sees', () => {
  const usual = phasesOfYear(calendarAt(lowland, deciduous));
  const start = (phases: typeof usual, phase: Phase): number => phases.findLast((one) => one.phase === phase)?.from ?? Number.NaN;
  const early = phasesOfYear(calendarAt(lowland, deciduous, [['bud-swell', '2026-02-25']]));

  it('beats the model and moves the spring that follows by as many days', () => {
    const moved = start(usual, 'bud-swell') - dayOf('2026-02-25');
    expect(start(early, 'bud-swell')).toBe(dayOf('2026-02-25'));
    for (const phase of ['bud-burst', 'leafing-out', 'extending', 'hardened-off'] as const) expect(start(usual, phase) - start(early, phase), phase).toBe(moved);
  });

  it('does not move autumn from spring, nor frosts from anything', () => {
    expect(start(early, 'turning')).toBe(start(usual, 'turning'));
    expect(on(lowland, deciduous, '2026-03-05', [['bud-swell', '2026-02-25']]).daysToLastFrost).toEqual(on(lowland, deciduous, '2026-03-05').daysToLastFrost);
  });

  it('changes nothing where the model agrees, but is called seen', () => {
    const agreed = on(lowland, deciduous, '2026-05-01', [['leafing-out', '2026-05-01']]);
    expect(agreed).toMatchObject({ phase: 'leafing-out', phaseFrom: 'seen', phaseSure: true });
    expect(phasesOfYear(calendarAt(lowland, deciduous, [['leafing-out', '2026-05-01']])).map((one) => one.from)).toEqual(usual.map((one) => one.from));
  });

  it('dormant buds in late March hold the spring back', () => {
    const late = calendarAt(lowland, deciduous, [['dormant', '2026-03-28']]);
    expect(seasonOn(late, dayOf('2026-03-28'))).toMatchObject({ phase: 'dormant', phaseFrom: 'seen' });
    expect(start(phasesOfYear(late), 'bud-swell')).toBe(dayOf('2026-03-29'));
  });

  it('early colour ends the growing season, late colour does not prolong it', () => {
    expect(on(lowland, deciduous, '2026-09-20', [['turning', '2026-09-18']]).growingDaysLeft?.value).toBe(0);
    expect(on(lowland, deciduous, '2026-10-25', [['hardened-off', '2026-10-25']]).growingDaysLeft?.value).toBe(0);
  });

  it('is believed for the day but not for the year where it is months off', () => {
    const odd = calendarAt(lowland, deciduous, [['leafing-out', '2026-08-10']]);
    expect(seasonOn(odd, dayOf('2026-08-10'))).toMatchObject({ phase: 'leafing-out', phaseFrom: 'seen' });
    expect(odd.notes).toContain('sighting-far-from-model');
    expect(start(phasesOfYear(odd), 'turning')).toBe(start(usual, 'turning'));
  });

  it('in two other years calibrates the tree for the years to come', () => {
    const calibrated = phasesOfYear(calendarAt(lowland, deciduous, [['bud-swell', '2024-02-24'], ['bud-swell', '2025-02-23']]));
    expect(start(calibrated, 'bud-swell')).toBeLessThan(start(usual, 'bud-swell') - 8);
    expect(start(calibrated, 'turning')).toBe(start(usual, 'turning'));
  });

  it('in leaf weeks before the last frost is awake early', () => {
    expect(on(lowland, deciduous, '2026-03-20', [['leafing-out', '2026-03-20']]).awakeEarly).toBe(true);
    expect(on(lowland, deciduous, '2026-05-05', [['leafing-out', '2026-05-05']]).awakeEarly).toBe(false);
  });

  it('gives the same whatever the order of the log', () => {
    const log = [['bud-swell', '2026-02-25'], ['leafing-out', '2026-04-10'], ['turning', '2025-10-01']] as const;
    expect(calendarAt(lowland, deciduous, log)).toEqual(calendarAt(lowland, deciduous, [...log].reverse()));
  });
});

describe("this year's own readings", () => {
  const ordinary = calendarAt(lowland, deciduous);
  const readings = (warmer: number) => Array.from({ length: 110 }, (_, i) => {
    const day = dayOf('2026-01-01') + i;
    const usual = seasonOn(ordinary, day);
    return { date: isoOf(day), minC: (usual.nightC?.value ?? 0) + warmer, maxC: (usual.dayC?.value ?? 0) + warmer };
  });

  it('bring a warm spring forward and put a cold one back, in that year only', () => {
    const leafOut = (warmer: number, year: string): number => {
      const climate = climateOf({ ...lowland, daily: readings(warmer) }, stations);
      return phasesOfYear(seasonCalendar(climate, deciduous, dayOf(`${year}-06-01`))).find((one) => one.phase === 'leafing-out')?.from ?? Number.NaN;
    };
    expect(leafOut(4, '2026')).toBeLessThan(leafOut(0, '2026') - 7);
    expect(leafOut(-4, '2026')).toBeGreaterThan(leafOut(0, '2026') + 6);
    expect(leafOut(4, '2027')).toBe(leafOut(-4, '2027'));
  });

  it('are the temperatures of their days', () => {
    const climate = climateOf({ ...lowland, daily: [{ date: '2026-02-03', minC: -7.5, maxC: 1 }] }, stations);
    const cold = seasonOn(seasonCalendar(climate, deciduous, dayOf('2026-02-03')), dayOf('2026-02-03'));
    expect(cold.nightC).toEqual({ value: -7.5, atLeast: -7.5, atMost: -7.5, sure: true });
  });
});

describe('a calendar', () => {
  it('leaves what it was given as it was', () => {
    const where = { latitude: 51, monthlyMinC: [1, 1, 3, 5, 9, 12, 14, 13, 11, 8, 4, 2], monthlyMaxC: [6, 7, 11, 15, 19, 21, 23, 23, 20, 15, 10, 7], daily: [{ date: '2026-02-03', minC: -7, maxC: 1 }] };
    const traits: SeasonTraits = { model: 'deciduous' };
    const seen = [{ phase: 'bud-swell' as const, day: dayOf('2026-03-20') }, { phase: 'dormant' as const, day: dayOf('2026-02-20') }];
    seasonCalendar(climateOf(where, stations), traits, dayOf('2026-03-01'), seen);
    for (const given of [where, where.monthlyMinC, where.daily, where.daily[0], traits, seen, seen[0], stations[0], stations[0]?.minC]) expect(Object.isFrozen(given)).toBe(false);
    expect(seen[0]?.phase).toBe('bud-swell');
  });

  it('is plain and frozen, but for lists of numbers, and survives being copied as JSON', () => {
    const calendar = calendarAt(lowland, deciduous, [['bud-swell', '2026-02-25']]);
    expect(Object.isFrozen(calendar)).toBe(true);
    expect(Object.isFrozen(calendar.ordinary?.steps[0])).toBe(true);
    expect(Object.isFrozen(calendar.climateYear)).toBe(true);
    /* V8 would put each number of a frozen list into a box of its own: three times the memory, for each day of each place. */
    expect(Object.isFrozen(calendar.climateYear?.minC)).toBe(false);
    const copy = JSON.parse(JSON.stringify(calendar)) as typeof calendar;
    expect(seasonOn(copy, dayOf('2026-03-05'))).toEqual(seasonOn(calendar, dayOf('2026-03-05')));
  });
});
