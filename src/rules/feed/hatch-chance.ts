import { lampSays } from '../../room/fertility.ts';
import type { Room } from '../../room/fold.ts';
import type { Egg } from '../../room/model.ts';

/** Eggs hatched of those that could, before a room has shown its own share: as many eggs of weight (from memory). */
const BOOK = { fertile: 0.85, unknown: 0.65, eggs: 10 };

/** The chance that an egg in the nest becomes a chick, from 0 to 1. */
export type HatchChance = (egg: Egg) => number;

/**
 * The room's share of eggs that hatched, the book's counting for ten eggs more (a beta prior's mean). Eggs that were
 * taken by hand say nothing. Fertile eggs are asked by themselves.
 */
export function hatchChances(room: Pick<Room, 'pairs'>): HatchChance {
  const ended = room.pairs
    .flatMap(({ clutches }) => clutches.flatMap(({ eggs }) => eggs))
    .filter(({ fate }) => fate?.kind === 'hatched' || fate?.kind === 'lost');
  const share = (eggs: readonly Egg[], book: number) => {
    const hatched = eggs.filter(({ fate }) => fate?.kind === 'hatched').length;
    return (hatched + book * BOOK.eggs) / (eggs.length + BOOK.eggs);
  };
  const fertile = share(ended.filter(isFertile), BOOK.fertile);
  const unknown = share(ended, BOOK.unknown);
  return (egg) => (egg.pipped !== null || isFertile(egg) ? fertile : unknown);
}

const isFertile = (egg: Egg) => lampSays(egg) === 'fertile';
