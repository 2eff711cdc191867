import ical from 'ical-generator';
import type { Due, DueItem } from '../advice/due/due.js';
import { dayOf } from '../season/day.js';
import type { Knowledge } from '../knowledge/knowledge.js';

const nextDay = (iso: string): Date => new Date(Date.parse(iso) + 86_400_000);

/** What is to be done to which tree, in a line. */
export const dueTitle = ({ tree, operation }: DueItem, knowledge: Knowledge): string => {
  const placement = (operation as { readonly placement?: string }).placement;
  return `${tree}: ${knowledge.operations[operation.op]?.label ?? operation.op}${operation.branch === undefined ? '' : ` (${operation.branch})`}${placement === undefined ? '' : ` (${placement.replaceAll('-', ' ')})`}`;
};

/** A calendar of what is due, by RFC 5545: an event of whole days for each window. An item keeps its UID, so that importing a later list updates the earlier one. */
export const dueCalendar = (due: Due, knowledge: Knowledge): string => {
  const calendar = ical({ name: 'sparebud', prodId: { company: 'sparebud', product: 'due', language: 'EN' } });
  for (const item of due.items) {
    calendar.createEvent({
      id: `${encodeURIComponent(item.id)}@sparebud`, stamp: new Date(due.date), sequence: dayOf(due.date), start: new Date(item.window.from), end: nextDay(item.window.to), allDay: true,
      summary: dueTitle(item, knowledge), description: `${item.why.text} ${item.state}, ${item.verdict}; give or take ${item.window.plusMinusDays} days.`,
    });
  }
  return calendar.toString();
};
