import { describe, expect, test } from 'vitest';
import { formatDay } from '../../../src/days.ts';
import { dateForm, serialDay } from '../../../src/write/import/date-forms.ts';

/** A form in few words. */
function said(text: string): string {
  const form = dateForm(text);
  if (form.kind === 'day') return `${formatDay(form.day)}${form.time === null ? '' : ` ${form.time}`}`;
  if (form.kind === 'serial') return `serial ${form.serial}`;
  if (form.kind !== 'figures') return form.kind;
  const days = Object.entries(form.days).flatMap(([order, day]) =>
    day === null ? [] : [`${order} ${formatDay(day)}`],
  );
  return days.join(', ');
}

describe('a date that can be only one', () => {
  test.each([
    ['2016-05-12', '2016-05-12'],
    ['2016/5/12', '2016-05-12'],
    ['20160512', '2016-05-12'],
    ['2016-05-12T00:00:00', '2016-05-12'],
    ['2016-05-12 07:30', '2016-05-12 450'],
    ['12.5.2016', '2016-05-12'],
    ['12. 5. 2016', '2016-05-12'],
    ['12 May 2016', '2016-05-12'],
    ['12th may 2016', '2016-05-12'],
    ['12-May-16', '2016-05-12'],
    ['May 12, 2016', '2016-05-12'],
    ['Thu 12 May 2016', '2016-05-12'],
    ['Thursday, 12 May 2016', '2016-05-12'],
    ['29 Feb 2024', '2024-02-29'],
    ['12. Mai 2016', '2016-05-12'],
    ['12. März 2016', '2016-03-12'],
    ['12 août 2016', '2016-08-12'],
    ['1er mai 2016', '2016-05-01'],
    ['12 de mayo de 2016', '2016-05-12'],
    ['Do, 12. Mai 2016', '2016-05-12'],
    ['Donnerstag 12.5.2016', '2016-05-12'],
    ['jueves 12 mayo 2016', '2016-05-12'],
    ['12.05.16', '2016-05-12'],
    ['12.05.2016 00:00', '2016-05-12'],
    ['12.05.2016 07:30', '2016-05-12 450'],
  ])('%s', (text, day) => expect(said(text)).toBe(day));
});

describe('a date that depends on the country', () => {
  test.each([
    ['05/06/2016', 'day-first 2016-06-05, month-first 2016-05-06'],
    ['31/05/2016', 'day-first 2016-05-31'],
    ['5-31-2016', 'month-first 2016-05-31'],
    ['05/06/16', 'day-first 2016-06-05, month-first 2016-05-06, year-first 2005-06-16'],
    ['5/31/2016 12:00:00 AM', 'month-first 2016-05-31'],
  ])('%s', (text, days) => expect(said(text)).toBe(days));
});

describe('a date that is none', () => {
  test.each([
    ['30/02/2016', 'impossible'],
    ['2015-02-29', 'impossible'],
    ['32 May 2016', 'impossible'],
    ['2016-13-01', 'impossible'],
    ['spring', 'unreadable'],
    ['May 2016', 'unreadable'],
    ['12/5', 'unreadable'],
    ['12', 'unreadable'],
    ['99999', 'unreadable'],
    ['12 Foo 2016', 'unreadable'],
    ['12 jui 2016', 'unreadable'],
    ['ca. 12.5.2016', 'unreadable'],
    ['vor 12. Mai 2016', 'unreadable'],
    ['before 12 May 2016', 'unreadable'],
    ['mar 12 mai 2016', 'unreadable'],
    ['5/31/2016 7:30:00 PM', 'unreadable'],
  ])('%s', (text, kind) => expect(said(text)).toBe(kind));
});

// POSIX.1 (IEEE Std 1003.1), strptime, %y: 69 to 99 are 1969 to 1999, 00 to 68 are 2000 to 2068. From memory.
test('two figures of a year are 1969 to 2068', () => {
  expect([said('1-Jan-69'), said('1-Jan-68')]).toEqual(['1969-01-01', '2068-01-01']);
});

// ECMA-376 (Office Open XML), part 1, 18.17.4: serial 1 is 1900-01-01, with a 29 February 1900 that never was, or
// 0 is 1904-01-01. From memory; the difference of 1,462 days and 2016-05-12 = 42502 can be looked up in any spreadsheet.
describe('a spreadsheet’s number of a day', () => {
  test('is told from other numbers', () =>
    expect([said('42502'), said('42502.5'), said('42502,5')]).toEqual(Array(3).fill('serial 42502')));

  test('counts from 1900 or from 1904', () => {
    expect(formatDay(serialDay(42502, '1900'))).toBe('2016-05-12');
    expect(formatDay(serialDay(61, '1900'))).toBe('1900-03-01');
    expect(formatDay(serialDay(42502 - 1462, '1904'))).toBe('2016-05-12');
    expect(formatDay(serialDay(0, '1904'))).toBe('1904-01-01');
  });
});
