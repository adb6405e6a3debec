import type { Day } from '../../days.ts';
import { readDate } from '../grammar/date-text.ts';

/** A line of a log that says of another day what a line above it says. Lines count from 1. */
export interface Repeat {
  line: number;
  date: Day;
  of: number;
}

/** A log without its repeats, to be read in their place. */
export interface Unrepeated {
  /** The same text, with an empty line for each repeat. */
  text: string;
  /** The lines of the entries that are left. */
  kept: readonly number[];
  repeats: readonly Repeat[];
}

const LOG = /^log: *\r?$/;
/** An entry in braces on one line: what stands before its date, the date, and what it says. */
const ENTRY = /^( *- +\{date: )(\d{4}-\d\d-\d\d)([,}].*\r?)$/;
/** No entry, and nothing that could close one. */
const NOTHING = /^ *(?:#[^}]*)?\r?$/;
const DATE = /\d{4}-\d\d-\d\d/g;

/**
 * A log of years says `checked` on hundreds of days: it need be read once, and so twice as fast. Null where no line says
 * what another says, or where lines are not an entry each. A day that the text names twice is left alone, as two of its
 * entries may be one; so is `after`, whose time of day is one of the entry's own day.
 *
 * Whoever reads the rest must see that each line kept became an entry and that there was nothing to find: else a line may
 * be no entry, as in a text that goes on over several, and the whole has to be read.
 */
export function withoutRepeats(text: string): Unrepeated | null {
  const lines = text.split('\n');
  const log = lines.findIndex((line) => LOG.test(line));
  if (log < 0) return null;
  const days = new Map<string, number>();
  for (const [day] of text.matchAll(DATE)) days.set(day, (days.get(day) ?? 0) + 1);
  const first = new Map<string, number>();
  const kept: number[] = [];
  const repeats: Repeat[] = [];
  for (let index = log + 1; index < lines.length; index++) {
    const entry = ENTRY.exec(lines[index] as string);
    if (entry === null) {
      if (!NOTHING.test(lines[index] as string)) return null;
      continue;
    }
    const [, before, written, says] = entry as unknown as [string, string, string, string];
    const line = index + 1;
    const of = first.get(before + says);
    const date =
      of === undefined || days.get(written) !== 1 || says.includes('after') ? null : readDate(written);
    if (of !== undefined && date !== null && 'day' in date) {
      repeats.push({ line, date: date.day, of });
      lines[index] = '';
    } else {
      first.set(before + says, line);
      kept.push(line);
    }
  }
  return repeats.length === 0 ? null : { text: lines.join('\n'), kept, repeats };
}
