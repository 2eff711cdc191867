import { afterEach, describe, expect, test, vi } from 'vitest';
import { shipped, stations } from '../shipped.js';

const own = process.env['TZ'];
afterEach(() => {
  if (own === undefined) delete process.env['TZ'];
  else process.env['TZ'] = own;
});

/* Half a day ahead of and behind UTC, one that left out 30 December 2011, and one whose summer began at midnight (IANA time zone database, recalled). */
describe.each([['Pacific/Kiritimati', -840], ['Pacific/Pago_Pago', 660], ['Pacific/Apia', -780], ['America/Sao_Paulo', 180]])('on a machine whose clock is that of %s', (zone, minutes) => {
  /* Loaded anew: dates that were read are remembered. */
  const loaded = async (at: string) => {
    process.env['TZ'] = at;
    vi.resetModules();
    return { ...(await import('../../src/index.js')), ...(await import('../../src/knowledge/soundProposal.js')) };
  };

  test('a day is one of the calendar or not as anywhere', async () => {
    const { realDate } = await loaded(zone);
    /* The zone is really another than UTC: else nothing is tried. */
    expect(new Date('2026-07-01T00:00Z').getTimezoneOffset()).toBe(minutes);
    for (const date of ['2011-12-30', '2018-11-04', '2024-02-29', '2026-01-01', '2026-12-31', '0000-01-01', '2026-02', '2026']) expect(realDate(date), date).toBe(true);
    for (const date of ['2026-02-29', '2026-02-30', '2026-04-31', '2026-13-01', '2026-00-10', '2026-13']) expect(realDate(date), date).toBe(false);
  });

  test('an answer is the same to the last letter', async () => {
    const askedIn = async (at: string): Promise<string> => JSON.stringify(await (await loaded(at)).createAdvisor(shipped, { places: stations }).assess({
      tree: { species: 'trident maple', lastRepotted: '2024-03', log: [{ op: 'defoliate', shareRemoved: 1, date: '2025-06-01' }, { saw: 'bud-swell', date: '2026-03-08' }] },
      operation: { op: 'repot', rootsRemoved: 0.4 }, date: '2026-04-01', where: { place: 'koeln-cologne-germany' },
    }));
    expect(await askedIn(zone)).toBe(await askedIn('UTC'));
  });
});
