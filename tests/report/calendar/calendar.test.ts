import fc from 'fast-check';
import ICAL from 'ical.js';
import { describe, expect, it } from 'vitest';
import { calendarText } from '../../../src/report/calendar/calendar.ts';
import type { AgendaItem } from '../../../src/rules/agenda/item.ts';
import { FORBIDDEN, hostileText } from '../hostile.ts';
import { anyItem, day, item } from '../mornings.ts';

const standing = day('2026-05-17');

const text = (items: AgendaItem[], room: string | null = 'the finch room', on = standing) =>
  calendarText({ day: on, room, items, doneBy: () => '`candled`' });

function entries(calendar: string) {
  const component = new ICAL.Component(ICAL.parse(calendar) as never);
  return component.getAllSubcomponents('vevent').map((one) => {
    const { summary, uid, startDate, endDate, sequence } = new ICAL.Event(one);
    const stamp = String(one.getFirstPropertyValue('dtstamp'));
    return {
      summary,
      uid,
      from: startDate.toString(),
      to: endDate.toString(),
      isDate: startDate.isDate,
      sequence,
      stamp,
    };
  });
}

const spanOf = (over: Partial<AgendaItem>) => entries(text([item(over)]))[0];

describe('a window', () => {
  it('is whole days, with the end on the day after its last', () => {
    expect(spanOf({ from: standing, to: standing + 1 })).toMatchObject({
      from: '2026-05-17',
      to: '2026-05-19',
      isDate: true,
    });
    expect(spanOf({ from: standing, to: standing })).toMatchObject({ from: '2026-05-17', to: '2026-05-18' });
  });

  it('that is past and not done still stands on the day that is asked about', () => {
    const late = { state: 'late', from: standing - 5, to: standing - 3 } as const;
    expect(spanOf(late)).toMatchObject({ from: '2026-05-12', to: '2026-05-18' });
  });

  it('without an end is shown a week ahead', () => {
    expect(spanOf({ to: null, from: standing - 10 })).toMatchObject({ from: '2026-05-07', to: '2026-05-24' });
    expect(spanOf({ to: null, from: standing + 3, state: 'coming' })).toMatchObject({
      from: '2026-05-20',
      to: '2026-05-27',
    });
  });
});

describe('given again', () => {
  it('from the same record and day, it is the same to the letter', () => {
    const items = [item({}), item({ task: 'hatch', likely: standing + 2 })];
    expect(text(items)).toBe(text(items));
  });

  it('on a later day, the same task has its name and a higher number, wherever it moved to', () => {
    const [before] = entries(text([item({})]));
    const [after] = entries(text([item({ from: standing + 2, to: standing + 4 })], undefined, standing + 1));
    expect(after?.uid).toBe(before?.uid);
    expect(after?.sequence).toBe((before?.sequence ?? 0) + 1);
    expect([before?.stamp, after?.stamp]).toEqual(['2026-05-17T00:00:00Z', '2026-05-18T00:00:00Z']);
  });
});

it('a room where nothing is due is a calendar without entries', () => {
  expect(entries(text([]))).toEqual([]);
});

it('the name of the room stands there as it is', () => {
  const [, name] =
    /\r\nX-WR-CALNAME:(.*)\r\n/.exec(text([], 'Finches, waxbills; doves\r\nATTACH:file:///x')) ?? [];
  expect(name).toBe('Finches\\, waxbills\\; doves ATTACH:file:///x');
});

it('whatever the journals hold, a parser reads as many entries with names of their own, and nothing else', () => {
  fc.assert(
    fc.property(fc.array(anyItem, { maxLength: 6 }), fc.option(hostileText), (items, room) => {
      const calendar = text(items, room);
      const read = entries(calendar);
      expect(read).toHaveLength(items.length);
      expect(new Set(read.map(({ uid }) => uid)).size).toBe(items.length);
      for (const { from, to } of read) expect(to > from).toBe(true);
      expect(calendar.replaceAll(/\r\n ?/g, '')).not.toMatch(FORBIDDEN);
    }),
  );
});
