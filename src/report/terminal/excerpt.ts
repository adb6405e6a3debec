import { offsetAfter } from '../../words.ts';
import { visible } from './visible.ts';
import { truncate, truncateStart, widthOf } from './width.ts';

/** One source line as it is shown, and the row with the marker under it. */
export interface Excerpt {
  line: string;
  /** Blanks up to the place, in columns. */
  before: number;
  /** Columns under the marker, at least 1. */
  length: number;
}

/**
 * The part of a line around a place, cut to `room` columns, and where the marker goes below it. Column and length
 * count code points from 1; wide, combining and made-visible characters keep the marker under what it means. A line
 * of a megabyte costs no more than its beginning.
 */
export function excerpt(source: string, column: number, length: number, room: number): Excerpt {
  const start = offsetAfter(source, column - 1);
  const end = offsetAfter(source, Math.min(length, room), start);
  const nearStart = Math.max(0, start - 2 * room);
  const nearEnd = Math.min(source.length, end + 2 * room);
  const before = `${nearStart > 0 ? '…' : ''}${visible(source.slice(nearStart, start))}`;
  const marked = truncate(visible(source.slice(start, end)), room - 2);
  const after = `${visible(source.slice(end, nearEnd))}${nearEnd < source.length ? '…' : ''}`;
  const left = room - widthOf(marked);
  // What stands before the place explains it better than what follows: two thirds are its own if both are long.
  const shownBefore = truncateStart(before, Math.max(Math.floor((left * 2) / 3), left - widthOf(after)));
  const shownAfter = truncate(after, left - widthOf(shownBefore));
  return {
    line: shownBefore + marked + shownAfter,
    before: widthOf(shownBefore),
    length: Math.max(1, widthOf(marked)),
  };
}
