import { calendarDay, type Day, dayOf, parseDay } from '../../days.ts';
import { monthNamed, plainLetters, wholeYear } from '../../journal/grammar/date-text.ts';
import { parseTime, suggestTime } from '../../journal/grammar/time-text.ts';

/** In which order a date of figures alone names its parts. */
export const dateOrders = ['day-first', 'month-first', 'year-first'] as const;

export type DateOrder = (typeof dateOrders)[number];

/** What a cell's text can mean as a date, before anybody decided on an order. */
export type DateForm =
  | { kind: 'day'; day: Day; time: number | null }
  /** Figures whose order depends on the country; an order without a day in the calendar is null. */
  | { kind: 'figures'; days: Record<DateOrder, Day | null>; shortYear: boolean }
  /** A spreadsheet's own count of days, shown where a cell has lost its date format. */
  | { kind: 'serial'; serial: number }
  /** The shape of a date, but the calendar has no such day. */
  | { kind: 'impossible' }
  | { kind: 'unreadable' };

/** The two systems in which spreadsheets count days. */
export const serialSystems = ['1900', '1904'] as const;

export type SerialSystem = (typeof serialSystems)[number];

/** 1950 to 2099 in either system: other numbers of a date column are something else. */
const SERIALS = { least: 16803, most: 73050 };

/** `31.05.2016 00:00`, `5/31/2016 12:00 AM`. */
const WITH_CLOCK =
  /^(\d{1,2}(?:[-/ ]|\. ?)\d{1,2}(?:[-/ ]|\. ?)\d{2,4}),? (\d{1,2}:\d{2})(?::00)?( [ap]m)?$/i;

/** A word before a date that begins with figures. */
const WORD = /^(\p{L}{2,12})[.,]*\s+(?=\d)/u;

const WEEKDAYS = plainLetters(`
  monday tuesday wednesday thursday friday saturday sunday
  montag dienstag mittwoch donnerstag freitag samstag sonnabend sonntag
  maandag dinsdag woensdag donderdag vrijdag zaterdag zondag
  lundi mardi mercredi jeudi vendredi samedi dimanche
  lunes martes miércoles jueves viernes sábado domingo
  lunedì martedì mercoledì giovedì venerdì sabato domenica`).match(/\w+/g) as string[];

/**
 * Reads a date as people and spreadsheets write it. What depends on the country is left open.
 *
 * @example dateForm('31/05/2016') // figures: day-first 2016-05-31, no month-first
 */
export function dateForm(written: string): DateForm {
  const text = written.trim().replace(WORD, (all, word) => (isWeekday(word) ? '' : all));
  const [, date = '', hour = '', half = ''] = WITH_CLOCK.exec(text) ?? [];
  if (date !== '') return atTime(dateForm(date), parseTime(suggestTime(hour + half)));
  const clock = /^(\d{4}-\d{2}-\d{2})[T ](\d{1,2}:\d{2})(?::\d{2}(?:\.\d+)?)?Z?$/.exec(text);
  if (clock !== null) {
    const day = parseDay(clock[1] as string);
    const time = parseTime(clock[2] as string);
    return day === null ? { kind: 'impossible' } : { kind: 'day', day, time: time === 0 ? null : time };
  }
  const yearFirst =
    /^(\d{4})([-/. ])(\d{1,2})\2(\d{1,2})$/.exec(text) ?? /^(\d{4})()(\d{2})(\d{2})$/.exec(text);
  if (yearFirst !== null) return dayForm(Number(yearFirst[1]), Number(yearFirst[3]), Number(yearFirst[4]));
  if (/^\d{5}(?:[.,]\d+)?$/.test(text)) {
    const serial = Number(text.slice(0, 5));
    return serial >= SERIALS.least && serial <= SERIALS.most
      ? { kind: 'serial', serial }
      : { kind: 'unreadable' };
  }
  return figures(text) ?? named(text) ?? { kind: 'unreadable' };
}

/** By its first letters. `mar` is a month: in French and Spanish it is Tuesday as well. */
function isWeekday(word: string): boolean {
  const plain = plainLetters(word);
  return monthNamed(word) === 0 && WEEKDAYS.some((day) => day.startsWith(plain));
}

/** Midnight is what a spreadsheet puts behind a date that has no time. */
function atTime(form: DateForm, time: number | null): DateForm {
  if (time === 0) return form;
  return time !== null && form.kind === 'day' ? { ...form, time } : { kind: 'unreadable' };
}

/** The day of a spreadsheet's number. The 1900 system counts a 29 February 1900 that never was. */
export function serialDay(serial: number, system: SerialSystem): Day {
  return serial + (system === '1900' ? dayOf(1899, 12, 30) : dayOf(1904, 1, 1));
}

/** `31/5/2016`, `31.05.16`: with dots the day stands first wherever dates are written so. */
function figures(text: string): DateForm | null {
  const match = /^(\d{1,2})([-/ ]|\. ?)(\d{1,2})\2(\d{4}|\d{2})$/.exec(text);
  if (match === null) return null;
  const [one, two, three] = [match[1], match[3], match[4]].map(Number) as [number, number, number];
  const shortYear = match[4]?.length === 2;
  const year = wholeYear(match[4] as string);
  const dotted = match[2]?.startsWith('.') ?? false;
  const days = {
    'day-first': calendarDay(year, two, one),
    'month-first': dotted ? null : calendarDay(year, one, two),
    'year-first': shortYear && !dotted ? calendarDay(wholeYear(match[1] as string), two, three) : null,
  };
  if (Object.values(days).every((day) => day === null)) return { kind: 'impossible' };
  return dotted
    ? { kind: 'day', day: days['day-first'] as Day, time: null }
    : { kind: 'figures', days, shortYear };
}

/** `31 May 2016`, `31-May-16`, `May 31st, 2016`, `31. Mai 2016`, `31 de mayo de 2016`. */
function named(text: string): DateForm | null {
  const match =
    /^(?<date>\d{1,2})(?:st|nd|rd|th|er|º|°)?[-. ]*(?:de )?(?<month>\p{L}{3,})\.?,?[- ]*(?:de )?(?<year>\d{4}|\d{2})$/iu.exec(
      text,
    ) ?? /^(?<month>\p{L}{3,})\.? *(?<date>\d{1,2})(?:st|nd|rd|th)?,? +(?<year>\d{4})$/iu.exec(text);
  const { date = '', month = '', year = '' } = match?.groups ?? {};
  const number = monthNamed(month);
  return match === null || number === 0 ? null : dayForm(wholeYear(year), number, Number(date));
}

function dayForm(year: number, month: number, date: number): DateForm {
  const day = calendarDay(year, month, date);
  return day === null ? { kind: 'impossible' } : { kind: 'day', day, time: null };
}
