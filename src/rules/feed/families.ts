import type { Day } from '../../days.ts';
import { grouped } from '../../grouped.ts';
import { hatchedOn } from '../../room/clock.ts';
import { everReared } from '../../room/family.ts';
import type { Room } from '../../room/fold.ts';
import { housingOf, incubation, usualClutch } from '../../room/lives.ts';
import { type Bird, type Chick, type Egg, type Pair, together } from '../../room/model.ts';
import { lastLook } from '../../room/scene.ts';
import type { Profile } from '../../species/profile.ts';
import { quantileDay } from '../../statistics/delay.ts';
import { sumBy } from '../../statistics/sums.ts';
import { type Brood, type EggTime, startSeen } from '../brood.ts';
import type { Durations } from '../durations.ts';
import type { Duration } from '../forecast/duration.ts';
import { firstWindow, forecastDay, windowOf } from '../forecast/window.ts';
import { mayStillHatch } from '../season/fates.ts';
import { fedUntil } from '../stock/life.ts';
import type { Stock } from '../stock/stock.ts';
import type { FeedFacts } from './facts.ts';
import type { HatchChance } from './hatch-chance.ts';
import { hatchedMouth, type Mouth } from './mouths.ts';

/** A forecast is counted between these of its days, as in the windows; what lies outside counts on the outermost. */
const EARLIEST = 0.1;
const LATEST = 0.9;

/** A clutch that is expected to hatch, or that may have hatched since somebody last looked. */
export interface Hatching {
  clutch: number | null;
  /** May lie before the day stood on: nobody looked since. */
  from: Day;
  likely: Day;
  to: Day;
  eggs: number;
  /** No where there may be more eggs than are known. */
  counted: boolean;
  /** Mean number of chicks of the eggs that are known. */
  expected: number;
}

/** One nest: a pair, the young that it feeds, and those that it is expected to. */
export interface Family {
  pair: Pair;
  housing: string | null;
  facts: FeedFacts;
  /** Known birds that rear here. */
  parents: Bird[];
  /** Parents whose name nobody wrote. */
  unnamed: number;
  /** Young that are fed on the day stood on. */
  young: Bird[];
  hatching: Hatching[];
  mouths: Mouth[];
}

export interface FeedSources {
  room: Room;
  stock: Stock;
  broods: readonly Brood[];
  durations: Durations;
  facts: (profile: Profile | null) => FeedFacts;
  chance: HatchChance;
}

/** Every pair of the room with those that it feeds or may feed soon. */
export function nestFamilies(sources: FeedSources): Family[] {
  const { room, stock, facts } = sources;
  const nests = grouped(
    sources.broods.filter(({ where }) => where === 'nest'),
    ({ pair }) => pair,
  );
  return room.pairs.map((pair) => {
    const parents = parentsIn(pair, pair.housing, stock);
    const unnamed = together(pair) ? [pair.cock, pair.hen].filter((names) => names.length === 0).length : 0;
    const young = youngOn(pair, room.day);
    const expected = (nests.get(pair) ?? []).map((brood) => expectedOf(brood, sources));
    return {
      pair,
      housing: pair.housing,
      facts: facts(pair.profile),
      parents,
      unnamed,
      young,
      hatching: expected.flatMap(({ hatching }) => hatching ?? []),
      mouths: [...young.map((bird) => mouthOf(bird, sources)), ...expected.flatMap(({ mouths }) => mouths)],
    };
  });
}

/** Those of the two that are here and live in that housing. */
function parentsIn(pair: Pair, housing: string | null, stock: Stock): Bird[] {
  const named = [...pair.cock, ...pair.hen].flatMap((name) => stock.find(name) ?? []);
  return [...new Set(named)].filter((bird) => {
    const known = stock.of(bird);
    return known?.status === 'here' && known.housing === housing;
  });
}

/** A family by where its young eat: those that were taken out, by themselves or with a parent, eat where they live. */
export function byHousing(family: Family, { stock }: FeedSources): Family[] {
  const { pair, young, mouths } = family;
  const homes = grouped(
    young.map((bird, index) => ({ bird, mouth: mouths[index] as Mouth })),
    ({ bird }) => housingOf(bird) ?? pair.housing,
  );
  const at = (housing: string | null) => homes.get(housing) ?? [];
  const away = [...homes.keys()].filter((housing) => housing !== pair.housing);
  if (away.length === 0) return [family];
  const expected = mouths.slice(young.length);
  const split = (housing: string | null): Pick<Family, 'housing' | 'young' | 'mouths'> => ({
    housing,
    young: at(housing).map(({ bird }) => bird),
    mouths: at(housing).map(({ mouth }) => mouth),
  });
  const home = split(pair.housing);
  return [
    { ...family, ...home, mouths: [...home.mouths, ...expected] },
    ...away.map((housing) => ({
      ...family,
      ...split(housing),
      parents: parentsIn(pair, housing, stock),
      unnamed: 0,
      hatching: [],
    })),
  ];
}

/** The mouths of a pair as they were on an earlier day, for what was measured then. */
export function mouthsOn(pair: Pair, day: Day, sources: FeedSources): Mouth[] {
  return youngOn(pair, day).map((bird) => mouthOf(bird, sources));
}

/** Young that this pair fed on the day. */
function youngOn(pair: Pair, day: Day): Chick[] {
  return everReared(pair).filter((bird) => {
    // Whoever is in a nest has hatched, and nobody saw it feed itself.
    if (bird.stays.findLast(({ from }) => from <= day)?.nest !== pair) return false;
    return (bird.fate?.day ?? Infinity) > day && day < fedUntil(hatchedOn(bird).to, profileOf(bird));
  });
}

const profileOf = ({ clutch }: Chick | Egg): Profile | null => clutch.pair.profile;

function mouthOf(bird: Chick, { facts }: FeedSources): Mouth {
  return hatchedMouth(facts(profileOf(bird)), hatchedOn(bird), bird.placeholder ? mostHeard(bird) : 1);
}

/** Young that were heard but not counted: at most as many as the species lays, less those that are known. */
function mostHeard({ clutch }: Chick): number {
  const known = clutch.chicks.filter(({ placeholder }) => !placeholder).length;
  return Math.max(1, Math.ceil(usualClutch(clutch.pair.profile).high) - known);
}

/**
 * What may hatch in a brood, or may have hatched since the last look into it. Who looks seldom, or never, must not find
 * that the food ended with the window: it goes on until a look after the window still found eggs, and then it is for the
 * task `unhatched` to ask after them.
 */
function expectedOf(brood: Brood, sources: FeedSources): { hatching: Hatching | null; mouths: Mouth[] } {
  const { day } = sources.room;
  const windows = brood.waiting.flatMap(
    (time) => windowOf(durationOf(time.egg, sources), [startSeen(time).start]) ?? [],
  );
  const hatch = firstWindow(windows);
  if (hatch === undefined) return { hatching: null, mouths: [] };
  const last = Math.max(...windows.map(({ to }) => to));
  const seen = lastLook(brood.pair, brood.clutch?.site ?? null, day + 1);
  if (last + 1 < day && seen !== null && seen > last) return { hatching: null, mouths: [] };
  const times = brood.waiting.filter(({ egg }) => mayStillHatch(egg, day));
  const open = times.map(({ egg }) => egg);
  const mouths = times.map((time) => eggMouth(time, seen, sources));
  if (mouths.length === 0) return { hatching: null, mouths };
  const expected = sumBy(mouths, ({ hatches }) => sumBy(hatches, ({ probability }) => probability));
  const from = Math.max(seen ?? hatch.from, hatch.from);
  const days = { from, likely: Math.max(from, hatch.likely), to: Math.max(from, last) };
  const counted = open.every(({ clutch }) => clutch.counted);
  const hatching = { clutch: brood.clutch?.number ?? null, ...days, eggs: open.length, counted, expected };
  return { hatching, mouths };
}

/** `seen` is the last look, which would have found a chick that was there before. */
function eggMouth(time: EggTime, seen: Day | null, sources: FeedSources): Mouth {
  const { room, facts, chance } = sources;
  const { egg } = time;
  const { start } = startSeen(time);
  const duration = durationOf(egg, sources);
  const { first, probabilities } = forecastDay(duration, start);
  // One that has pipped is out in a day or two, however early.
  const reached = Math.min(quantileDay(duration, start, EARLIEST), egg.pipped ?? Infinity);
  const earliest = Math.max(seen ?? reached, reached);
  const latest = Math.max(room.day, earliest, quantileDay(duration, start, LATEST));
  // The youngest may hatch only today, however unlikely: pieces of live food are to be small enough for it, too.
  const hatches = new Map<Day, number>([[latest, 0]]);
  probabilities.forEach((probability, index) => {
    const day = Math.min(latest, Math.max(earliest, first + index));
    hatches.set(day, (hatches.get(day) ?? 0) + probability * chance(egg));
  });
  return {
    facts: facts(profileOf(egg)),
    hatches: Array.from(hatches, ([day, probability]) => ({ day, probability })),
    earliest,
    most: mostOf(egg),
  };
}

/** How long it takes; of a species that nobody knows, as long as any: whoever may hatch is to find food. */
function durationOf({ clutch: { pair } }: Egg, { durations }: FeedSources): Duration {
  return durations('incubation', pair.species ?? '', incubation(pair.profile));
}

/** An egg of a clutch that nobody counted stands for its part of as many as the species lays. */
function mostOf({ clutch }: Egg): number {
  const usual = Math.ceil(usualClutch(clutch.pair.profile).high);
  return clutch.counted ? 1 : Math.max(1, usual / clutch.eggs.length);
}
