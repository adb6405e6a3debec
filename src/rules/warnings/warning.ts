import type { Day } from '../../days.ts';
import { grouped } from '../../grouped.ts';
import type { Room } from '../../room/fold.ts';
import { type Bird, type Pair, together } from '../../room/model.ts';
import type { WarningLevel } from '../agenda/item.ts';
import { type Brood, placeOf } from '../brood.ts';
import { birdsByName, type FindBird } from '../stock/names.ts';

/** What warnings are found in: the room and its broods, as known on the day stood on. */
export interface View {
  room: Room;
  day: Day;
  broods: readonly Brood[];
  find: FindBird;
}

/** Something found: whom it concerns and since when. Each kind adds what its sentence needs. */
export interface Found {
  level: WarningLevel;
  pair: string | null;
  bird: string | null;
  clutch: number | null;
  /** Where to look, where that may not be where its pair or bird lives. */
  housing?: string | null;
  /** The day of what gave rise to it. */
  date: Day;
}

/** What a kind of warning is, in words: for `due --explain` and for the manual. */
export interface WarningWords {
  kind: string;
  /** The levels that it can have, the most pressing first. */
  levels: readonly WarningLevel[];
  /** Whether it touches the health of birds; then it sends to an avian vet. */
  health: boolean;
  /** What gives rise to it. */
  when: string;
  /** What ends it, and when it is no longer shown though nothing did. */
  over: string;
  /** Why it matters and what a keeper can do, a few sentences. */
  explain: string;
}

/** One kind of warning: its condition, and beside it the words. */
export interface Warning<F extends Found> extends WarningWords {
  /** One for each cause, however many birds it is about. */
  find(view: View): F[];
  /** What was seen and why it matters, in sentences; and what to check, a phrase. */
  say(found: F): { text: string; check: string };
}

/** The room as the warnings look at it. */
export function viewOf(room: Room, broods: readonly Brood[]): View {
  return { room, day: room.day, broods, find: birdsByName(room.birds) };
}

/** Which nest a warning is about, or which of its young, and where they are. */
export function about(
  brood: Brood,
  young: readonly Bird[] | null = null,
): Pick<Found, 'pair' | 'bird' | 'clutch' | 'housing'> {
  const { pair, clutch } = brood;
  return { pair: pair.id, bird: null, clutch: clutch?.number ?? null, housing: placeOf(brood, young) };
}

/**
 * Birds of which the same is to be said are one line, in the order in which they were found: it is about no single one of
 * them. `alike` is what they have in common; `joined` makes of several whatever is not the same of each.
 */
export function folded<F extends Found & { birds: readonly unknown[] }>(
  found: readonly F[],
  alike: (one: F) => readonly unknown[],
  joined: (all: readonly F[]) => Partial<F> = () => ({}),
): F[] {
  const lines = grouped(found, (one) => JSON.stringify(alike(one)));
  return [...lines.values()].map(([first, ...others]) => {
    if (others.length === 0) return first;
    const all = [first, ...others];
    return { ...first, bird: null, birds: all.flatMap(({ birds }) => birds), ...joined(all) };
  });
}

/** The pair that a bird is in now, or undefined. A journal whose first entry is still to come is no pair yet. */
export function pairWith({ room, find }: View, bird: Bird): Pair | undefined {
  return room.pairs.findLast(
    (pair) =>
      pair.events.length > 0 &&
      together(pair) &&
      [...pair.cock, ...pair.hen].some((name) => find(name) === bird),
  );
}
