import * as z from 'zod';
import { calendarDay } from '../../days.ts';
import { Text } from '../nodes.ts';
import { readDate } from './date-text.ts';
import { refuse } from './issue.ts';
import { parseTime } from './time-text.ts';

const LEAP_YEAR = 2024;

/** A day of any year, `09-01`. */
export const monthAndDate = z
  .instanceof(Text)
  .transform((node, context): { month: number; date: number } => {
    const text = node.text.trim();
    const [month = 0, date = 0] = (/^(\d{2})-(\d{2})$/.exec(text) ?? []).slice(1).map(Number);
    if (calendarDay(LEAP_YEAR, month, date) !== null) return { month, date };
    return refuse(context, node.at, 'not-month-and-date', { text, suggestion: monthAndDateIn(text) });
  })
  .meta({ shape: 'month-and-date', description: 'month and date: 09-01' });

/** The day of a year that a date means which is written otherwise: one, or two joined by `or`; empty where it means none. */
function monthAndDateIn(text: string): string {
  const read = readDate(text, LEAP_YEAR);
  const dates = 'day' in read ? text : String(read.args.suggestion);
  return dates.replace(/\d{4}-(?=\d\d-\d\d)/g, '').replace(/,.*/, '');
}

/** The part of one that a text means, `0.125` or `12.5 %`, from 0 to 1; null where it means none. */
export function parseShare(text: string): number | null {
  const [, digits, percent] = /^(\d+(?:\.\d+)?|\.\d+)\s*(%?)$/.exec(text.trim()) ?? [];
  const value = Number(digits) / (percent === '%' ? 100 : 1);
  return value <= 1 ? value : null;
}

export const share = z
  .instanceof(Text)
  .transform(
    (node, context): number =>
      parseShare(node.text) ?? refuse(context, node.at, 'not-a-share', { text: node.text }),
  )
  .meta({ shape: 'share', description: 'a number from 0 to 1, or per cent' });

/** A length of time in minutes: `90`, `45 min`, `3 h`, `1:30`. */
export const minutes = z
  .instanceof(Text)
  .transform((node, context): number => {
    const text = node.text.trim();
    const [, digits, unit] = /^(\d{1,4}(?:\.\d+)?)\s*(h|min)?$/.exec(text) ?? [];
    const value =
      digits === undefined ? parseTime(text) : Math.round(Number(digits) * (unit === 'h' ? 60 : 1));
    return value !== null && value > 0 ? value : refuse(context, node.at, 'not-minutes', { text });
  })
  .meta({ shape: 'minutes', description: 'minutes, or hours: 90, 45 min, 3 h' });
