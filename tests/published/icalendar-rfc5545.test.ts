/**
 * RFC 5545, "Internet Calendaring and Scheduling Core Object Specification (iCalendar)" (Desruisseaux 2009), section by
 * section, on calendars as `nestlog calendar` writes them; read by ical.js, which shares no code with what writes them.
 */
import ICAL from 'ical.js';
import { describe, expect, it } from 'vitest';
import { calendarText } from '../../src/report/calendar/calendar.ts';
import type { AgendaItem } from '../../src/rules/agenda/item.ts';
import { busyMorning, day, item } from '../report/mornings.ts';

const standing = day('2026-05-17');
const calendar = (...items: AgendaItem[]) =>
  calendarText({ day: standing, room: 'the finch room', items, doneBy: () => '`candled`' });

const encoder = new TextEncoder();
/** Content lines as they stand in the file; what follows the last line break is one too many. */
const raw = (text: string) => text.split('\r\n');
const unfolded = (text: string) => text.replaceAll(/\r\n[ \t]/g, '').split('\r\n');
const lineOf = (text: string, name: string) => unfolded(text).find((line) => line.startsWith(name)) ?? '';
const events = (text: string) => new ICAL.Component(ICAL.parse(text) as never).getAllSubcomponents('vevent');

describe('3.1 content lines', () => {
  const wide = calendar(item({ say: '巣箱を見る 👩‍🌾🐤 '.repeat(400), why: 'é'.repeat(10_000) }));

  it('end with CRLF, the last one too, and no other line break is in them', () => {
    expect(wide.endsWith('END:VCALENDAR\r\n')).toBe(true);
    expect(wide.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
  });

  it('have at most 75 octets without the line break, the leading blank counted', () => {
    const sizes = raw(wide).map((line) => encoder.encode(line).length);
    expect(Math.max(...sizes)).toBe(75);
  });

  it('are not folded inside of a character: each line is UTF-8 by itself', () => {
    const strict = new TextDecoder('utf-8', { fatal: true });
    for (const line of raw(wide)) {
      expect(strict.decode(encoder.encode(line))).toBe(line);
    }
  });

  it('unfold to what was written', () => {
    expect(lineOf(wide, 'SUMMARY:')).toContain('巣箱を見る 👩‍🌾🐤 '.repeat(400).trim());
    expect(lineOf(wide, 'DESCRIPTION:')).toContain('é'.repeat(10_000));
  });

  // 75 octets need no fold; the library folds from the 75th on, which the standard leaves free.
  it.each([60, 61, 62, 63, 134, 135, 136])('a summary with %i letters more unfolds to itself', (letters) => {
    const text = calendar(item({ say: 'a'.repeat(letters) }));
    expect(lineOf(text, 'SUMMARY:')).toBe(`SUMMARY:LW-1: ${'a'.repeat(letters)}`);
    for (const line of raw(text)) expect(encoder.encode(line).length).toBeLessThanOrEqual(75);
  });
});

describe('3.3.11 text', () => {
  it('escapes backslash, semicolon, comma and line break, and no colon', () => {
    const text = calendar(item({ say: 'a,b;c:d\\e', housing: 'flight 1, left; top' }));
    expect(lineOf(text, 'SUMMARY:')).toBe('SUMMARY:LW-1: a\\,b\\;c:d\\\\e');
    expect(lineOf(text, 'LOCATION:')).toBe('LOCATION:flight 1\\, left\\; top');
    expect(lineOf(text, 'DESCRIPTION:')).toMatch(/flight 1\\, left\\; top\\nWhen: 17 May\\nWhy: /);
    const [event] = events(text);
    expect(event?.getFirstPropertyValue('summary')).toBe('LW-1: a,b;c:d\\e');
  });

  it('holds no control character, and a keeper’s line break begins no line of the file', () => {
    const text = calendar(item({ say: 'look\r\nEND:VEVENT\r\nX-EVIL:1\u0007\u202E' }));
    expect(lineOf(text, 'SUMMARY:')).toBe('SUMMARY:LW-1: look END:VEVENT X-EVIL:1<BEL><U+202E>');
    expect(unfolded(text).filter((line) => line.startsWith('END:VEVENT'))).toHaveLength(1);
  });
});

describe('3.4 and 3.6 a calendar', () => {
  it('says its version and its maker once each', () => {
    const lines = unfolded(calendar(...busyMorning().items));
    expect(lines.filter((line) => line === 'VERSION:2.0')).toHaveLength(1);
    expect(lines.filter((line) => line.startsWith('PRODID:'))).toHaveLength(1);
  });
});

describe('3.6.1 entries', () => {
  const all = events(calendar(...busyMorning().items));

  it('have a name, a stamp and a beginning, once each, and an end but no duration', () => {
    expect(all).toHaveLength(busyMorning().items.length);
    for (const event of all) {
      for (const name of ['uid', 'dtstamp', 'dtstart', 'dtend']) {
        expect(event.getAllProperties(name)).toHaveLength(1);
      }
      expect(event.getAllProperties('duration')).toHaveLength(0);
    }
  });

  it('3.8.2.2 both of them DATE, the end later', () => {
    for (const event of all) {
      const [start, end] = ['dtstart', 'dtend'].map((name) => event.getFirstProperty(name));
      expect([start?.type, end?.type]).toEqual(['date', 'date']);
      expect(String(end?.getFirstValue()) > String(start?.getFirstValue())).toBe(true);
    }
  });

  // The RFC's own example: 28 June to 8 July, both included.
  it('end on the day after their last', () => {
    const text = calendarText({
      day: day('2007-06-28'),
      room: null,
      items: [item({ from: day('2007-06-28'), to: day('2007-07-08') })],
      doneBy: () => null,
    });
    expect(lineOf(text, 'DTSTART')).toBe('DTSTART;VALUE=DATE:20070628');
    expect(lineOf(text, 'DTEND')).toBe('DTEND;VALUE=DATE:20070709');
  });
});

it('3.3.4 dates are eight digits without zone, whatever zone the machine is in', () => {
  const zone = process.env.TZ;
  try {
    for (const TZ of ['Pacific/Apia', 'America/Santiago', 'Europe/Berlin', 'UTC']) {
      process.env.TZ = TZ;
      expect(lineOf(calendar(item({})), 'DTSTART')).toBe('DTSTART;VALUE=DATE:20260517');
    }
  } finally {
    if (zone === undefined) delete process.env.TZ;
    else process.env.TZ = zone;
  }
});

it('3.8.4.7 names are unique in a file, and of 255 octets at most', () => {
  const items = [item({}), item({}), item({ pair: 'x'.repeat(10_000) }), item({ pair: 'x'.repeat(10_000) })];
  const names = events(calendar(...items)).map((event) => String(event.getFirstPropertyValue('uid')));
  expect(new Set(names).size).toBe(4);
  for (const name of names) expect(encoder.encode(name).length).toBeLessThanOrEqual(255);
});

it('3.8.7.2 the stamp is in UTC', () => {
  expect(lineOf(calendar(item({})), 'DTSTAMP')).toBe('DTSTAMP:20260517T000000Z');
});
