import { readFileSync } from 'node:fs';
import ICAL from 'ical.js';
import { expect, test } from 'vitest';
import { parse } from 'yaml';
import { dueCalendar } from '../../src/cli/dueCalendar.js';
import { isoOf } from '../../src/season/day.js';
import { advisor, root, shipped } from '../shipped.js';

/* Read by ical.js, a parser of RFC 5545 that shares no code with what writes the file. */
const demo: unknown = parse(readFileSync(`${root}docs/demo/collection.yaml`, 'utf8'));
const events = (text: string): readonly ICAL.Event[] => new ICAL.Component(ICAL.parse(text) as unknown[] as never).getAllSubcomponents('vevent').map((event) => new ICAL.Event(event));

test('another program reads each item as an event of whole days, once', async () => {
  for (const date of ['2026-11-25', '2027-03-20', '2027-06-20']) {
    const due = await advisor.due(demo, date);
    const read = events(dueCalendar(due, shipped));
    expect(read).toHaveLength(due.items.length);
    expect(new Set(read.map(({ uid }) => uid)).size).toBe(read.length);
    read.forEach((event, i) => {
      const { window } = due.items[i]!;
      expect(event.startDate.isDate).toBe(true);
      expect(event.startDate.toString()).toBe(window.from);
      expect(event.endDate.toString()).toBe(isoOf(Date.parse(window.to) / 86_400_000 + 1));
      expect(event.summary).toContain(due.items[i]!.tree);
    });
  }
});

test('a list imported a week later updates the events of the first', async () => {
  const [first, later] = await Promise.all(['2027-03-20', '2027-03-27'].map(async (date) => events(dueCalendar(await advisor.due(demo, date), shipped))));
  const uids = new Map(first!.map((event) => [event.uid, event.sequence]));
  const again = later!.filter(({ uid }) => uids.has(uid));
  expect(again.length).toBeGreaterThan(10);
  for (const event of again) expect(event.sequence).toBeGreaterThan(uids.get(event.uid)!);
});

test('lines are no longer than the standard allows, and end as it says', async () => {
  const text = dueCalendar(await advisor.due(demo, '2027-03-20'), shipped);
  for (const line of text.split('\r\n')) expect(new TextEncoder().encode(line).length).toBeLessThanOrEqual(75);
  expect(text.startsWith('BEGIN:VCALENDAR\r\nVERSION:2.0\r\n')).toBe(true);
});
