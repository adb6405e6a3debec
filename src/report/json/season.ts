import { max } from 'd3-array';
import { formatDay } from '../../days.ts';
import { byName } from '../../grouped.ts';
import type { Block, Reared } from '../../rules/season/block.ts';
import type { Comparison } from '../../rules/season/compare.ts';
import type { MeasureWords } from '../../rules/season/measures/index.ts';
import type { SeasonBook } from '../../rules/season/season.ts';
import type { ClutchStory } from '../../rules/season/story.ts';
import { courseData } from './course.ts';
import { jsonParts } from './text.ts';

/** The season for programs, a part at a time. The keys are promised: none is renamed or left out while `nestlog` stays 1. */
export function seasonJson(book: SeasonBook, stories: Iterable<ClutchStory>): Iterable<string> {
  return jsonParts(seasonData(book, []), 'timeline', timelineOf(stories));
}

function* timelineOf(stories: Iterable<ClutchStory>) {
  for (const story of stories) yield timelineData(story);
}

/** Everything that is known of a season, as plain data. */
export type SeasonData = ReturnType<typeof seasonData>;
export type BlockData = ReturnType<typeof blockData>;

/** The same before it is text; a page is drawn from it, so that it shows no figure that programs do not get. */
export function seasonData(book: SeasonBook, stories: readonly ClutchStory[]) {
  const { measures, before, by, ranking } = book;
  return {
    nestlog: 1,
    season: book.season,
    date: formatDay(book.day),
    room: book.room,
    totals: blockData(book.totals, measures),
    bySpecies: book.bySpecies.map((block) => ({ species: block.name, ...blockData(block, measures) })),
    byPair: book.byPair.map((block) => ({
      pair: block.name,
      ...blockData(block, measures),
      reared: rearedData(block.reared),
    })),
    bySeason: book.bySeason.map((block) => ({ season: block.name, ...blockData(block, measures) })),
    by:
      by === null
        ? null
        : {
            name: by.name,
            groups: by.blocks.map((block) => ({ group: block.name, ...blockData(block, measures) })),
            ...comparisonData(by.comparison),
          },
    before:
      before === null
        ? null
        : {
            season: before.season,
            ...blockData(before.block, measures),
            ...comparisonData(before.comparison),
          },
    ranking:
      ranking === null
        ? null
        : {
            rate: ranking.measure,
            pairs: ranking.rows.map(({ name, k, n, mean, low, high }) => ({
              pair: name,
              k,
              n,
              expected: mean,
              low,
              high,
            })),
          },
    outside: byMeasure(measures, (name) => book.totals.rates[name].outside),
    dangerousAges: dangerData(book.totals),
    followed: followedData(book.totals),
    stageDays: Object.fromEntries(book.totals.stages.map(({ stage, days }) => [stage, days])),
    timeline: stories.map(timelineData),
    seasons: book.seasons,
  };
}

/** One block of figures, the same for the room, a species, a pair or any other group. */
export function blockData(block: Block, measures: readonly MeasureWords[]) {
  const { pairs, clutches, eggs, chicks, rates, survival, stages } = block;
  return {
    pairs,
    clutches: clutches.length,
    eggs: { ...eggs },
    chicks: { ...chicks },
    rates: byMeasure(measures, (name) => {
      const { k, n, open, rate, low, high, designEffect } = rates[name];
      return { k, n, open, rate, low, high, designEffect };
    }),
    survival: survival.rows.map(({ time: age, atRisk, died, surviving, low, high }) => {
      return { age, atRisk, died, surviving, low, high };
    }),
    stages: stages.map(({ stage, exposure, losses, daily, se, period, low, high }) => {
      return { stage, exposure, losses, daily, se, period, low, high };
    }),
  };
}

function byMeasure<T>(measures: readonly MeasureWords[], of: (name: MeasureWords['name']) => T) {
  return byName(
    measures.map(({ name }) => name),
    of,
  );
}

export function rearedData({ taken, hatched, fledged, independent, died }: Reared) {
  return { taken, hatched, fledged, independent, died };
}

function comparisonData({ rates, survival }: Comparison) {
  return {
    differences: rates.map(({ measure, group, rate, other, difference, low, high, confidence, shown }) => {
      return { rate: measure, group, own: rate, others: other, difference, low, high, confidence, shown };
    }),
    survivalDifferences: survival.map(
      ({ group, observed, expected, chiSquare, designEffect, p, adjusted, shown }) => {
        return { group, observed, expected, chiSquare, designEffect, p, adjusted, shown };
      },
    ),
  };
}

function dangerData({ survival: { danger } }: Block) {
  if (danger === null) return null;
  const { from, to, died, of, atRisk } = danger;
  return { from, to, died, of, atRisk };
}

/** How many chicks the curve rests on, up to which age, and whether ages of death had to be estimated. */
function followedData({ lives, survival: { followed, estimated } }: Block) {
  const untilAge = max(lives, ({ left, right }) => (Number.isFinite(right) ? right : left)) ?? null;
  return { chicks: followed, untilAge, estimated };
}

/** One clutch, when it was in which stage, and what came of it. */
function timelineData(story: ClutchStory) {
  const { clutch, begun } = story;
  const { pair, eggs, chicks, housing, counted } = clutch;
  return {
    pair: pair.id,
    species: pair.species,
    housing,
    ...courseData(story),
    begun: formatDay(begun),
    of: {
      eggs: counted ? eggs.length : null,
      hatched: chicks.length,
      fledged: chicks.filter(({ fledged }) => fledged !== null).length,
      independent: chicks.filter(({ independent }) => independent !== null).length,
    },
  };
}
