import type { Day } from '../../days.ts';
import { eggClock, hatchedOn } from '../../room/clock.ts';
import type { Room } from '../../room/fold.ts';
import { usualClutch } from '../../room/lives.ts';
import { type Bird, type Egg, type Pair, together } from '../../room/model.ts';
import type { Profile } from '../../species/profile.ts';
import { quantileDay } from '../../statistics/delay.ts';
import { type Brood, mayHatch } from '../brood.ts';
import type { Durations } from '../durations.ts';
import { forecastDay } from '../forecast/window.ts';
import type { Stock } from '../stock/stock.ts';
import type { FeedFacts } from './facts.ts';
import type { HatchChance } from './hatch-chance.ts';
import { hatchedMouth, type Mouth } from './mouths.ts';

/** A forecast is counted between these of its days, as in the windows; what lies outside counts on the outermost. */
const EARLIEST = 0.1;
const LATEST = 0.9;

/** A clutch that is expected to hatch. */
export interface Hatching {
  clutch: number | null;
  from: Day;
  likely: Day;
  to: Day;
  eggs: number;
  /** Mean number of chicks. */
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
  return room.pairs.map((pair) => {
    const named = [...pair.cock, ...pair.hen].flatMap((name) => stock.find(name) ?? []);
    const parents = [...new Set(named)].filter(
      (bird) => stock.of(bird)?.status === 'here' && stock.of(bird)?.housing === pair.housing,
    );
    const unnamed = together(pair) ? [pair.cock, pair.hen].filter((names) => names.length === 0).length : 0;
    const young = youngOn(pair, room.day, sources);
    const broods = sources.broods.filter((brood) => brood.pair === pair && brood.where === 'nest');
    const expected = broods.map((brood) => expectedOf(brood, sources));
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

/** The mouths of a pair as they were on an earlier day, for what was measured then. */
export function mouthsOn(pair: Pair, day: Day, sources: FeedSources): Mouth[] {
  return youngOn(pair, day, sources).map((bird) => mouthOf(bird, sources));
}

/** Young that this pair fed on the day. */
function youngOn(pair: Pair, day: Day, { room, stock, facts }: FeedSources): Bird[] {
  return room.birds.filter((bird) => {
    const hatched = hatchedOn(bird);
    if (bird.ref === null || hatched === null || hatched.to > day) return false;
    if ((bird.fate?.day ?? Infinity) <= day || (bird.independent?.day ?? Infinity) <= day) return false;
    if (bird.stays.findLast(({ from }) => from <= day)?.nest !== pair) return false;
    if (stock.of(bird)?.status === 'unaccounted') return false;
    // Nobody can tell what became of young that were only heard.
    return !bird.placeholder || day - hatched.to <= facts(profileOf(bird)).independence;
  });
}

const profileOf = ({ clutch }: Bird | Egg): Profile | null => clutch?.pair.profile ?? null;

function mouthOf(bird: Bird, { facts }: FeedSources): Mouth {
  const own = facts(profileOf(bird));
  const hatched = hatchedOn(bird) as NonNullable<Bird['hatched']>;
  return hatchedMouth(own, hatched, bird.placeholder ? mostHeard(bird) : 1);
}

/** Young that were heard but not counted: at most as many as the species lays, less those that are known. */
function mostHeard({ clutch }: Bird): number {
  const known = clutch?.chicks.filter(({ placeholder }) => !placeholder).length ?? 0;
  return Math.max(1, Math.ceil(usualClutch(clutch?.pair.profile ?? null).high) - known);
}

/** What may hatch in a brood. An egg whose days are past may do so today, until the task `unhatched` asks after it. */
function expectedOf(brood: Brood, sources: FeedSources): { hatching: Hatching | null; mouths: Mouth[] } {
  const { hatch, clocks } = brood;
  const { room } = sources;
  if (hatch === null || hatch.to + 1 < room.day) return { hatching: null, mouths: [] };
  const open = clocks.filter(({ egg, clock }) => clock.running && mayHatch(egg));
  const mouths = open.flatMap(({ egg }) => eggMouth(egg, sources) ?? []);
  const expected = mouths.reduce(
    (total, { hatches }) => total + hatches.reduce((sum, { probability }) => sum + probability, 0),
    0,
  );
  const from = Math.max(room.day, hatch.from);
  const days = { from, likely: Math.max(from, hatch.likely), to: Math.max(from, hatch.to) };
  const hatching = { clutch: brood.clutch?.number ?? null, ...days, eggs: open.length, expected };
  return { hatching: mouths.length === 0 ? null : hatching, mouths };
}

function eggMouth(egg: Egg, { room, durations, facts, chance }: FeedSources): Mouth | null {
  const profile = profileOf(egg);
  const range = profile?.incubation?.value;
  const clock = eggClock(egg, room.day);
  if (profile === null || range === undefined || clock === null) return null;
  const duration = durations('incubation', profile.species, range);
  const { first, probabilities } = forecastDay(duration, clock.start);
  const hatches = new Map<Day, number>();
  const earliest = Math.max(room.day, quantileDay(duration, clock.start, EARLIEST));
  const latest = Math.max(earliest, quantileDay(duration, clock.start, LATEST));
  probabilities.forEach((probability, index) => {
    const day = Math.min(latest, Math.max(earliest, first + index));
    hatches.set(day, (hatches.get(day) ?? 0) + probability * chance(egg));
  });
  return {
    facts: facts(profile),
    hatches: Array.from(hatches, ([day, probability]) => ({ day, probability })),
    earliest,
    most: mostOf(egg),
  };
}

/** An egg of a clutch that nobody counted stands for its part of as many as the species lays. */
function mostOf({ clutch }: Egg): number {
  const usual = Math.ceil(usualClutch(clutch.pair.profile).high);
  return clutch.counted ? 1 : Math.max(1, usual / clutch.eggs.length);
}
