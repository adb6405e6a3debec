import { type Day, hullOf, type Span, spanOf } from '../../days.ts';
import { eggClock, hatchedOn, sittingStart } from '../../room/clock.ts';
import { fertilityOf } from '../../room/fertility.ts';
import type { Room } from '../../room/fold.ts';
import type { Chick, Clutch, Egg, Pair } from '../../room/model.ts';
import { type Durations, durationsOfOthers } from '../durations.ts';
import { type DurationKind, eachOwnDuration } from '../forecast/own-durations.ts';
import { type ForecastWindow, windowOf } from '../forecast/window.ts';
import { lastStanding, type Standing } from '../growth/weighings.ts';
import { eggDoubt } from '../incubator/doubt.ts';
import { eggVolume } from '../incubator/egg-size.ts';
import { type EggLoss, eggLoss } from '../incubator/loss.ts';
import {
  type Block,
  blocksOf,
  emptyBlock,
  nothingReared,
  type Reared,
  rearedByPair,
  toldOf,
  wholeBlock,
} from './block.ts';
import { mayStillHatch, youngFateOf } from './fates.ts';
import { groupings } from './groupings.ts';
import { type MeasureWords, measureWords } from './measures/index.ts';
import { begun, type SeasonStart, seasonName, seasonOf } from './seasons.ts';

/** A pair's years: its clutches one by one, and its rates beside the room's. */
export interface PairStory {
  pair: Pair;
  day: Day;
  clutches: ClutchStory[];
  /** Credited to this pair. */
  own: Block;
  /** All pairs of the room but this one. */
  others: Block;
  reared: Reared;
  measures: readonly MeasureWords[];
}

export interface EggStory {
  egg: Egg;
  fertility: 'fertile' | 'clear' | null;
  /** cm³, of an egg that was measured. */
  volume: number | null;
  /** Of an egg that lies in an incubator and was weighed. */
  loss: EggLoss | null;
}

export interface ClutchStory {
  clutch: Clutch;
  season: string;
  /** The day of its first egg; of a brood found late, the latest on which it can have been laid. */
  begun: Day;
  /** From the first day on which an egg may have been laid to the last on which one was found. */
  laid: Span | null;
  /** Seen, or inferred from the egg with which the species starts to sit. */
  sitting: { span: Span; inferred: boolean } | null;
  hatched: Span | null;
  fledged: Span | null;
  independent: Span | null;
  /** The day on which nothing of the clutch was left to wait for; null while something is. */
  over: Day | null;
  /** What was to be expected, from the book and all other clutches: never from this one's own outcome. */
  foreseen: { hatch: ForecastWindow | null; fledge: ForecastWindow | null; independent: Span | null };
  eggs: EggStory[];
  /** Its chicks, each with its last weight in the nest beside the species' curve. */
  chicks: { bird: Chick; weighed: Standing | null }[];
}

/** Tells a pair's story up to the day stood on. Pure. */
export function pairStory(room: Room, pair: Pair): PairStory {
  const { day, settings } = room;
  const all = room.pairs.flatMap(({ clutches }) => clutches);
  const blocks = blocksOf(toldOf({ clutches: all, day, settings }), groupings.pair);
  const others = toldOf({ clutches: all.filter((clutch) => clutch.pair !== pair), day, settings });
  return {
    pair,
    day,
    clutches: [...clutchStories(room, pair.clutches)],
    own: blocks.find(({ name }) => name === pair.id) ?? emptyBlock(day),
    others: wholeBlock(others),
    reared: rearedByPair(all, day).get(pair.id) ?? nothingReared(),
    measures: measureWords,
  };
}

/** Tells the stories of some of the room's clutches, in their order; each when it is asked for. */
export function* clutchStories(room: Room, clutches: readonly Clutch[]): Generator<ClutchStory> {
  const known = {
    day: room.day,
    others: durationsOfOthers(eachOwnDuration(room)),
    start: room.settings.seasonStart,
  };
  for (const clutch of clutches) yield clutchStory(clutch, known);
}

interface Known {
  day: Day;
  /** What all clutches but one say. */
  others: (clutch: Clutch) => Durations;
  start: SeasonStart;
}

function clutchStory(clutch: Clutch, { day, others, start }: Known): ClutchStory {
  const { eggs, chicks } = clutch;
  // Eggs that all lie in store are sat on by nobody.
  const warmed = eggs.some((egg) => eggClock(egg, egg.fate?.day ?? day) !== null);
  const sitting = warmed ? sittingStart(clutch, day) : null;
  const first = begun(clutch);
  return {
    clutch,
    season: seasonName(seasonOf(first, start), start),
    begun: first,
    // Of a clutch that was counted, a look that found more tells as much as who wrote `laid`.
    laid: around(
      eggs.filter(({ assumed }) => clutch.counted || !assumed).flatMap(({ laid }) => daysOf(laid)),
    ),
    sitting: sitting === null ? null : { span: sitting.span, inferred: sitting.inferred },
    hatched: around(chicks.flatMap((bird) => daysOf(hatchedOn(bird)))),
    fledged: around(chicks.flatMap(({ fledged }) => fledged?.day ?? [])),
    independent: around(chicks.flatMap((bird) => bird.independent?.day ?? [])),
    over: endOf(clutch, day),
    foreseen: foreseen(clutch, day, others(clutch)),
    eggs: eggs.map((egg) => ({
      egg,
      fertility: fertilityOf(egg),
      volume: egg.size === null || eggDoubt(egg, null) !== null ? null : eggVolume(egg.size),
      loss: eggLoss(egg, day),
    })),
    chicks: chicks.map((bird) => ({ bird, weighed: lastStanding(bird, clutch.pair.profile) })),
  };
}

const daysOf = (span: Span | null) => (span === null ? [] : [span.from, span.to]);

function around(days: readonly Day[]): Span | null {
  return days.length === 0 ? null : spanOf(days);
}

/** The last day on which an egg or a dependent young of it ended. */
function endOf({ eggs, chicks }: Clutch, day: Day): Day | null {
  if (eggs.some((egg) => mayStillHatch(egg, day)) || chicks.some((bird) => youngFateOf(bird) === 'open'))
    return null;
  const days = [
    ...eggs.flatMap(({ fate }) => fate?.day ?? []),
    ...chicks.flatMap((bird) => bird.independent?.day ?? bird.fate?.day ?? []),
  ];
  return around(days)?.to ?? null;
}

function foreseen(clutch: Clutch, day: Day, durations: Durations): ClutchStory['foreseen'] {
  const profile = clutch.pair.profile;
  const window = (kind: DurationKind, starts: readonly Span[]) => {
    const range = profile?.[kind]?.value;
    return profile === null || range === undefined
      ? null
      : windowOf(durations(kind, profile.species, range), starts);
  };
  const hatched = clutch.chicks.filter(({ placeholder }) => !placeholder).map((bird) => hatchedOn(bird));
  const clocks = clutch.eggs
    .filter(isHatchable)
    .flatMap((egg) => eggClock(egg, egg.fate?.day ?? day)?.start ?? []);
  const independence = profile?.independence?.value;
  const out = hatched.length === 0 ? null : hullOf(hatched);
  return {
    hatch: window('incubation', clocks),
    fledge: window('fledging', hatched),
    independent:
      independence === undefined || out === null
        ? null
        : { from: out.from + independence.low, to: out.to + independence.high },
  };
}

/** Not one of which it was known before its time that no chick would come. */
function isHatchable(egg: Egg): boolean {
  const { fate } = egg;
  return (
    fate?.kind === 'hatched' ||
    (fate === null && fertilityOf(egg) !== 'clear' && egg.lamp.at(-1)?.saw !== 'dead')
  );
}
