import { type Day, dayWithYear, shortDay, wholeMonths } from '../../days.ts';
import type { Room } from '../../room/fold.ts';
import { count } from '../../words.ts';
import { clutchesOfHen, clutchLimit, freeAgain, inYearTo } from '../hen-year.ts';
import { illnessOf } from '../illness.ts';
import { quarantineOf } from '../quarantine.ts';
import { breedsFrom } from '../stock/life.ts';
import type { Stock, StockBird } from '../stock/stock.ts';

/** What a bird's fitness is judged by, beside the bird. */
export interface FitnessContext {
  room: Room;
  stock: Stock;
  /** Birds to leave out. */
  not: ReadonlySet<StockBird>;
  /** The pair of every bird that is spoken for. */
  spokenFor: ReadonlyMap<StockBird, string>;
}

/**
 * Why a bird that is here cannot be paired in the coming season, in words, or null where it can: sexed, old enough,
 * well, out of quarantine, not resting and not in a pair that stays.
 */
export function whyNotFit(one: StockBird, { room, stock, not, spokenFor }: FitnessContext): string | null {
  if (not.has(one)) return 'left out as you asked';
  if (one.age === 'chick' || one.age === 'fledgling') return 'still in the nest or fed';
  if (one.bird.sex === null) return 'not sexed';
  const pair = spokenFor.get(one);
  if (pair !== undefined) return `in ${pair}, which stays together`;
  return (
    tooYoung(one, room.day) ?? inQuarantine(one, room) ?? unwell(one, room.day) ?? resting(one, room, stock)
  );
}

/** Of a bird whose ring tells no more than a year, the youngest that it can be counts. */
function tooYoung({ bird, profile }: StockBird, day: Day): string | null {
  if (bird.hatched === null) return null;
  const { from, to } = bird.hatched;
  const ready = breedsFrom(to, profile);
  if (day >= ready) return null;
  const [least, most] = [wholeMonths(to, day), wholeMonths(from, day)];
  const is = day < breedsFrom(from, profile) ? 'too young' : 'may be too young';
  return least === most
    ? `${is}: ${count(least, 'month')}, old enough on ${dayWithYear(ready)}`
    : `${is}: ${least} to ${count(most, 'month')}, surely old enough on ${dayWithYear(ready)}`;
}

function inQuarantine({ bird }: StockBird, room: Room): string | null {
  const quarantine = quarantineOf(room, bird);
  if (quarantine === null || quarantine.out <= room.day) return null;
  return `in quarantine until ${shortDay(quarantine.out)}`;
}

function unwell({ bird }: StockBird, day: Day): string | null {
  const last = illnessOf(bird, day)?.seen.at(-1);
  return last === undefined ? null : `unwell on ${shortDay(last.day)} (${last.text})`;
}

/** A hen that has laid as many clutches as a year allows rests until the oldest of them is a year old. */
function resting({ bird, profile }: StockBird, room: Room, { find }: Stock): string | null {
  const limit = clutchLimit(room, profile);
  if (bird.sex !== 'hen' || limit === null) return null;
  const year = inYearTo(clutchesOfHen(room, bird, find), room.day);
  const free = freeAgain(year, limit);
  if (year.length < limit || free === null) return null;
  return `resting: ${count(year.length, 'clutch', 'clutches')} in a year, the limit is ${limit}; free on ${dayWithYear(free)}`;
}
