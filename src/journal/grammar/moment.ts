import * as z from 'zod';
import type { Day, Span } from '../../days.ts';
import { Text } from '../nodes.ts';
import { readDate, readPeriod } from './date-text.ts';
import { refuse } from './issue.ts';
import { parseTime, suggestTime } from './time-text.ts';

/** A date, `2026-03-01`. */
export const day = z
  .instanceof(Text)
  .transform((node, context): Day => {
    const read = readDate(node.text);
    return 'day' in read ? read.day : refuse(context, node.at, read.code, read.args);
  })
  .meta({ shape: 'date', description: 'a date: 2026-03-01' });

/** A date, or the month or the year where no more is known: `2024-05`, `2024`. A ring says no more than the year. */
export const period = z
  .instanceof(Text)
  .transform((node, context): Span => {
    const read = readPeriod(node.text);
    return 'from' in read ? read : refuse(context, node.at, read.code, read.args);
  })
  .meta({ shape: 'period', description: 'a date, a month or a year: 2024-05-17, 2024-05, 2024' });

/** A time of day, `07:30`, in minutes since midnight. */
export const time = z
  .instanceof(Text)
  .transform((node, context): number => {
    const text = node.text.trim();
    return parseTime(text) ?? refuse(context, node.at, 'not-a-time', { text, suggestion: suggestTime(text) });
  })
  .meta({ shape: 'time', description: 'a time of day: 07:30' });

/** A moment after which something happened. Without a date it is of the same day as what it belongs to. */
export interface Moment {
  day: Day | null;
  time: number | null;
}

/** A date, a date with a time, or a time of the same day. */
export const moment = z
  .instanceof(Text)
  .transform((node, context): Moment => {
    const text = node.text.trim();
    const sameDay = parseTime(text);
    if (sameDay !== null) return { day: null, time: sameDay };
    const [, date = text, clock] =
      /^([^\sT]+)[T ]+(\d{1,2}:\d{2})$/.exec(text) ?? /^(\d{4}-\d{2}-\d{2})T(\S+)$/.exec(text) ?? [];
    const read = readDate(date);
    if (!('day' in read)) return refuse(context, node.at, read.code, read.args);
    if (clock === undefined) return { day: read.day, time: null };
    const minutes = parseTime(clock);
    if (minutes === null)
      return refuse(context, node.at, 'not-a-time', { text: clock, suggestion: suggestTime(clock) });
    return { day: read.day, time: minutes };
  })
  .meta({ shape: 'moment', description: 'a date, a date with a time, or a time of the same day' });
