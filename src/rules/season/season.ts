import type { Day } from '../../days.ts';
import type { Room } from '../../room/fold.ts';
import type { Clutch } from '../../room/model.ts';
import {
  type Block,
  blocksOf,
  nothingReared,
  type Reared,
  rearedByPair,
  toldOf,
  wholeBlock,
} from './block.ts';
import { type Comparison, compareGroups, compareWith } from './compare.ts';
import { type GroupingName, groupings } from './groupings.ts';
import { type MeasureWords, measureWords } from './measures/index.ts';
import { type Ranking, rankingOf } from './ranking.ts';
import {
  begun,
  type SeasonStart,
  type Seasons,
  seasonName,
  seasonOf,
  seasonsName,
  yearsOf,
} from './seasons.ts';

/** A season's book: what is said of it as a whole, of each species and pair, and beside the seasons before. */
export interface SeasonBook {
  /** As it is asked for: `2026`, `2025/26`, `2024..2026`, `all`. */
  season: string;
  day: Day;
  room: string | null;
  totals: Block;
  bySpecies: Block[];
  byPair: (Block & { reared: Reared })[];
  /** Pairs in order of what their clutches make one expect of the next. */
  ranking: Ranking | null;
  /** Divided as was asked for, with what the groups tell of each other. */
  by: { name: GroupingName; says: string; nameless: string; blocks: Block[]; comparison: Comparison } | null;
  /** Season by season, where more than one was asked for. */
  bySeason: Block[];
  /** All seasons before the first of these, and what has changed; null where there are none. */
  before: { season: string; block: Block; comparison: Comparison } | null;
  /** The rates in words, in order. */
  measures: readonly MeasureWords[];
  /** Seasons of which the room has clutches, for a season that has none. */
  seasons: string[];
}

interface Asked {
  /** Null: the season of the day stood on. */
  seasons: Seasons | null;
  by: GroupingName | null;
}

/** Writes the season's book from the room. Pure; a season without clutches has empty blocks. */
export function seasonBook(room: Room, asked: Asked): SeasonBook {
  const { day, settings } = room;
  const start = settings.seasonStart;
  const now = seasonOf(day, start);
  const seasons = asked.seasons ?? { from: now, to: now };
  const all = room.pairs.flatMap(({ clutches }) => clutches);
  const clutches = all.filter((clutch) => {
    const year = seasonOf(begun(clutch), start);
    return year >= seasons.from && year <= seasons.to;
  });
  const told = toldOf({ clutches, day, settings });
  const totals = wholeBlock(told);
  const reared = rearedByPair(clutches, day);
  const byPair = blocksOf(told, groupings.pair).flatMap((block) =>
    block.name === null ? [] : [{ ...block, reared: reared.get(block.name) ?? nothingReared() }],
  );
  const earlier = all.filter((clutch) => seasonOf(begun(clutch), start) < seasons.from);
  const years = yearsOf(all, start);
  const bySeason = blocksOf(told, groupings.year);
  return {
    season: seasonsName(seasons, start),
    day,
    room: settings.room,
    totals,
    bySpecies: blocksOf(told, groupings.species),
    byPair,
    ranking: rankingOf(byPair),
    by: asked.by === null ? null : dividedBy(asked.by, blocksOf(told, groupings[asked.by])),
    bySeason: bySeason.length > 1 ? bySeason : [],
    before:
      earlier.length === 0
        ? null
        : beside(totals, wholeBlock(toldOf({ clutches: earlier, day, settings })), earlier, start),
    measures: measureWords,
    seasons: years.map((year) => seasonName(year, start)),
  };
}

function dividedBy(name: GroupingName, blocks: Block[]): SeasonBook['by'] {
  const { says, nameless } = groupings[name];
  return {
    name,
    says,
    nameless,
    blocks,
    comparison: compareGroups(blocks.filter((block) => block.name !== null)),
  };
}

function beside(
  totals: Block,
  block: Block,
  earlier: readonly Clutch[],
  start: SeasonStart,
): SeasonBook['before'] {
  const years = yearsOf(earlier, start);
  const season = seasonsName({ from: Math.min(...years), to: Math.max(...years) }, start);
  return { season, block, comparison: compareWith(totals, block) };
}
