import { fertilityOf } from '../../room/fertility.ts';
import type { Room } from '../../room/fold.ts';
import type { Chick, Clutch, Egg } from '../../room/model.ts';
import type { Block } from './block.ts';
import { lastFeederOf, nestFeederOf, sitterOf } from './care.ts';
import { type ChickCounts, countChicks, countEggs, type EggCounts } from './counts.ts';
import { chicksKnown, type YoungFate, youngFateOf } from './fates.ts';
import { type MeasureWords, measureNames } from './measures/index.ts';
import { seasonBook } from './season.ts';
import { ALL, begun, seasonName, seasonOf, yearsOf } from './seasons.ts';

/** One egg, with what is derived of it. */
export interface EggEntry {
  egg: Egg;
  season: string;
  fertility: 'fertile' | 'clear' | null;
  /** The pair that sat on it last; null in an incubator or store. */
  sitter: string | null;
}

/** One chick, with what is derived of it. */
export interface ChickEntry {
  bird: Chick;
  clutch: Clutch;
  season: string;
  fate: YoungFate;
  /** Who fed it in the nest, and who fed it last; null by hand. */
  nestFeeder: string | null;
  lastFeeder: string | null;
}

/** One clutch, with its counts. */
export interface ClutchEntry {
  clutch: Clutch;
  season: string;
  begun: number;
  eggs: EggCounts;
  chicks: ChickCounts;
  chicksKnown: boolean;
}

/** One rate of one group in one season. */
export interface RateEntry {
  season: string;
  /** `all`, `species` or `pair`, and which. */
  by: string;
  group: string | null;
  rate: MeasureWords['name'];
  figures: Block['rates'][MeasureWords['name']];
}

/** Every egg of the room's clutches, for tables. */
export function eggEntries(room: Room): EggEntry[] {
  return bySeason(room).flatMap(({ clutch, season }) =>
    clutch.eggs.map((egg) => ({
      egg,
      season,
      fertility: fertilityOf(egg),
      sitter: sitterOf(egg).pair?.id ?? null,
    })),
  );
}

/** Every chick of them, whoever reared it. */
export function chickEntries(room: Room): ChickEntry[] {
  return bySeason(room).flatMap(({ clutch, season }) =>
    clutch.chicks.map((bird) => ({
      bird,
      clutch,
      season,
      fate: youngFateOf(bird),
      nestFeeder: nestFeederOf(bird, room.day).pair?.id ?? null,
      lastFeeder: lastFeederOf(bird, room.day).pair?.id ?? null,
    })),
  );
}

/** The clutches with their counts. */
export function clutchEntries(room: Room): ClutchEntry[] {
  return bySeason(room).map(({ clutch, season }) => ({
    clutch,
    season,
    begun: begun(clutch),
    eggs: countEggs(clutch.eggs),
    chicks: countChicks(clutch.chicks),
    chicksKnown: chicksKnown(clutch),
  }));
}

function bySeason({ pairs, settings: { seasonStart } }: Room): { clutch: Clutch; season: string }[] {
  return pairs.flatMap(({ clutches }) =>
    clutches.map((clutch) => ({
      clutch,
      season: seasonName(seasonOf(begun(clutch), seasonStart), seasonStart),
    })),
  );
}

/** Every rate of all seasons together and of each, for the room, its species and its pairs. */
export function rateEntries(room: Room): RateEntry[] {
  const start = room.settings.seasonStart;
  const clutches = room.pairs.flatMap((pair) => pair.clutches);
  return [ALL, ...yearsOf(clutches, start).map((year) => ({ from: year, to: year }))].flatMap((seasons) => {
    const { season, totals, bySpecies, byPair } = seasonBook(room, { seasons, by: null });
    const rows = (by: string, blocks: readonly Block[]) =>
      blocks.flatMap(({ name, rates }) =>
        measureNames.map((rate): RateEntry => ({ season, by, group: name, rate, figures: rates[rate] })),
      );
    return [
      ...rows('all', [{ ...totals, name: null }]),
      ...rows('species', bySpecies),
      ...rows('pair', byPair),
    ];
  });
}
