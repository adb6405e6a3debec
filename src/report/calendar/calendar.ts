import ical, { ICalEventTransparency } from 'ical-generator';
import { type Day, formatDay } from '../../days.ts';
import type { AgendaItem } from '../../rules/agenda/item.ts';
import { visible, visibleData } from '../terminal/visible.ts';
import { uidOf } from './uid.ts';
import { descriptionOf, summaryOf } from './words.ts';

/** What a calendar is made of. */
export interface Agenda {
  /** The day stood on: nothing later is known. */
  day: Day;
  /** The room's name, or null where none was given. */
  room: string | null;
  items: readonly AgendaItem[];
  /** What a journal says once a task is done; null where nobody can tell. */
  doneBy: (task: string) => string | null;
}

/** Days that a task without an end is shown ahead: long enough to be seen, no claim about months. */
const OPEN_DAYS = 7;

/**
 * The agenda as iCalendar (RFC 5545): windows as entries of whole days. It depends on the record and the day stood on
 * alone. DTSTAMP and SEQUENCE come from that day, so what was known later replaces what was known before.
 */
export function calendarText({ day, room, items, doneBy }: Agenda): string {
  const name = visible(room ?? 'nestlog');
  const calendar = ical({
    prodId: '//nestlog//agenda//EN',
    // The library escapes what stands in entries, not this.
    name: name.replaceAll(/[\\;,]/g, '\\$&'),
  });
  const times = new Map<string, number>();
  for (const item of items) {
    const uid = uidOf(item, room);
    const before = times.get(uid) ?? 0;
    times.set(uid, before + 1);
    const { first, last } = shownDays(item, day);
    const shown = visibleData(item);
    calendar.createEvent({
      id: before === 0 ? uid : `${before + 1}/${uid}`.slice(0, 255),
      sequence: Math.max(0, day),
      stamp: `${formatDay(day)}T00:00:00Z`,
      allDay: true,
      start: formatDay(first),
      // The end of an entry is the day after its last.
      end: formatDay(last + 1),
      summary: summaryOf(shown, day),
      description: descriptionOf(shown, visibleData(doneBy(item.task)), day),
      location: shown.housing,
      categories: shown.task === '' ? [] : [{ name: shown.task }],
      transparency: ICalEventTransparency.TRANSPARENT,
    });
  }
  return `${calendar.toString()}\r\n`;
}

/** The days on which a task stands in the calendar: what is late stands until today, what has no end for a week. */
function shownDays({ from, to, state }: AgendaItem, day: Day): { first: Day; last: Day } {
  if (to === null) return { first: from, last: Math.max(from, day) + OPEN_DAYS - 1 };
  return { first: from, last: Math.max(from, state === 'late' ? day : to) };
}
