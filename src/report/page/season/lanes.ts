import { type Day, parseDay, type Span } from '../../../days.ts';
import { naturally } from '../../../findings/naturally.ts';
import { grouped } from '../../../grouped.ts';
import { speciesName } from '../../../words.ts';
import type { SeasonData } from '../../json/season.ts';
import type { Course } from '../timeline/course.ts';

export type ClutchData = SeasonData['timeline'][number];

/** A clutch of the data as a timeline draws it. */
export function courseOf(clutch: ClutchData): Course {
  const { foreseen, laid, sitting, hatched, fledged, independent, over } = clutch;
  return {
    begun: dayIn(clutch.begun),
    laid: spanIn(laid),
    sitting: sitting === null ? null : { span: spanIn(sitting), inferred: sitting.inferred },
    hatched: spanIn(hatched),
    fledged: spanIn(fledged),
    independent: spanIn(independent),
    over: over === null ? null : dayIn(over),
    foreseen: {
      hatch: windowIn(foreseen.hatch),
      fledge: windowIn(foreseen.fledge),
      independent: spanIn(foreseen.independent),
    },
  };
}

interface SpanData {
  from: string;
  to: string;
}

/** A day of the data, which has no others than days of the calendar. */
export function dayIn(text: string): Day {
  return parseDay(text) ?? 0;
}

function spanIn(span: SpanData): Span;
function spanIn(span: SpanData | null): Span | null;
function spanIn(span: SpanData | null): Span | null {
  return span === null ? null : { from: dayIn(span.from), to: dayIn(span.to) };
}

function windowIn(window: (SpanData & { likely: string }) | null) {
  return window === null ? null : { ...spanIn(window), likely: dayIn(window.likely) };
}

/** Clutches that stand under one heading, in the order of their pairs. */
export interface Fold<T> {
  title: string;
  members: T[];
}

/**
 * More than this many lanes are folded by species, and a species by its pairs: a room of 500 pairs is then a page of
 * headings, of which a keeper opens (and prints) the ones of interest.
 */
const MOST = 80;
const MOST_IN_FOLD = 40;

/** All under one heading without a name where there are few; else by species, and many of a species by pairs. */
export function foldsOf<T extends { pair: string; species: string | null }>(
  members: readonly T[],
): Fold<T>[] {
  if (members.length <= MOST) return [{ title: '', members: [...members] }];
  const bySpecies = [...grouped(members, ({ species }) => speciesName(species))];
  bySpecies.sort(([a], [b]) => naturally(a, b));
  return bySpecies.flatMap(([species, some]) => {
    const parts = partsOf(some);
    return parts.map((part) => ({
      title: parts.length === 1 ? species : `${species}: ${ends(part)}`,
      members: part,
    }));
  });
}

/** Parts of at most so many, never with one pair in two. */
function partsOf<T extends { pair: string }>(members: readonly T[]): T[][] {
  const parts: T[][] = [];
  for (const own of grouped(members, ({ pair }) => pair).values()) {
    const last = parts.at(-1);
    if (last !== undefined && last.length + own.length <= MOST_IN_FOLD) last.push(...own);
    else parts.push([...own]);
  }
  return parts;
}

function ends(members: readonly { pair: string }[]): string {
  const [first, last] = [members[0]?.pair ?? '', members.at(-1)?.pair ?? ''];
  return first === last ? first : `${first} to ${last}`;
}
