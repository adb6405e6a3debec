import type { Day, Span } from '../../days.ts';
import { fertilityOf } from '../../room/fertility.ts';
import { fledging, incubation, independence, usualClutch } from '../../room/lives.ts';
import { type Clutch, clutchId } from '../../room/model.ts';
import type { Profile, Range } from '../../species/profile.ts';
import { normalCdf, normalQuantile } from '../../statistics/normal.ts';
import type { Proportion } from '../../statistics/proportions.ts';
import { type Random, randomOf } from '../../statistics/random.ts';
import type { Durations } from '../durations.ts';
import { bookDuration, type Duration } from '../forecast/duration.ts';
import { type Belief, type Beliefs, type Step, steps } from './beliefs.ts';
import type { Prospect } from './prospects.ts';

/** Stands for a day that does not come. */
export const NEVER = 2 ** 31 - 1;

/** What becomes of one egg or young bird, draw by draw; draws of the same number belong to one future of the room. */
export interface Course {
  prospect: Prospect;
  /** The day on which the egg hatches; `NEVER` also for those that have. */
  hatched: Int32Array;
  /** The day it hatched or hatches if it lives to the age of ringing, else `NEVER`. */
  ringable: Int32Array;
  fledged: Int32Array;
  independent: Int32Array;
}

/** Age in days from which a closed ring is fitted where the profile does not say (common practice: 5–10). */
const USUAL_RING_AGE: Range = { low: 5, high: 10 };

/** The ages between which a closed ring goes on; from a day before the first, as the agenda asks for a look. */
export function ringAge(profile: Profile | null): Range {
  const { low, high } = profile?.ringAge?.value ?? USUAL_RING_AGE;
  return { low: Math.floor(low) - 1, high: Math.floor(high) };
}

interface Chances {
  day: Day;
  draws: number;
  beliefs: (species: string | null) => Beliefs;
  durations: Durations;
}

/**
 * Many futures of today's eggs and young.
 *
 * Each draw takes a share for each step and species from what is believed of it, gives each clutch a luck of its own
 * about it (a beta distribution; so that its members together are beta-binomial), which what is known of the clutch
 * already sharpens, and lets each member come through or not. The nest and the weeks after it are survived at an even
 * daily risk (Mayfield 1975), so that a chick about to fledge has most of it behind it. Days come from the forecasts.
 *
 * Chance comes from streams named after species, clutch and egg: the same record gives the same figures on any
 * machine, and one egg more changes nothing of the others.
 */
export function coursesOf(prospects: readonly Prospect[], chances: Chances): Course[] {
  const clutches = [...new Set(prospects.map(({ clutch }) => clutch))];
  const species = new Map<string | null, SpeciesDraws>();
  return clutches.flatMap((clutch) => {
    const name = clutch.pair.species;
    const shared = species.get(name) ?? speciesDraws(name, clutch.pair.profile, chances);
    species.set(name, shared);
    const members = prospects.filter((prospect) => prospect.clutch === clutch);
    return clutchCourses(clutch, members, shared, chances);
  });
}

interface SpeciesDraws {
  beliefs: Beliefs;
  shares: Record<Step, Float64Array>;
  incubation: Drawn;
  fledging: Drawn;
  independence: Drawn;
}

/** A duration, with this room's mean drawn anew for each future. */
interface Drawn {
  means: Float64Array;
  deviation: number;
}

function speciesDraws(species: string | null, profile: Profile | null, chances: Chances): SpeciesDraws {
  const { draws, durations } = chances;
  const beliefs = chances.beliefs(species);
  const drawn = (step: Step) => {
    const chance = randomOf(`${species} ${step}`);
    return Float64Array.from({ length: draws }, () => chance.beta(beliefs[step].share));
  };
  const times = (kind: string, duration: Duration): Drawn => {
    const chance = randomOf(`${species} ${kind}`);
    const unsure = Math.sqrt(duration.meanVariance);
    return {
      means: Float64Array.from({ length: draws }, () => duration.mean + unsure * chance.normal()),
      deviation: Math.sqrt(duration.spreadVariance),
    };
  };
  const name = species ?? '';
  return {
    beliefs,
    shares: Object.fromEntries(steps.map((step) => [step, drawn(step)])) as Record<Step, Float64Array>,
    incubation: times('incubation', durations('incubation', name, incubation(profile))),
    fledging: times('fledging', durations('fledging', name, fledging(profile))),
    independence: times('independence', bookDuration(independence(profile))),
  };
}

/** What one clutch is dealt in one draw; its members share it. */
interface Deal {
  luck: Record<Step, number>;
  eggs: number;
  /** Where in its span the start lies, 0 to 1. */
  start: number;
  incubation: number;
  fledging: number;
  independence: number;
}

/** So often a deal is taken back that contradicts what a look saw, before the last is let stand. */
const PATIENCE = 100;

function clutchCourses(
  clutch: Clutch,
  members: readonly Prospect[],
  shared: SpeciesDraws,
  { day, draws }: Chances,
): Course[] {
  const courses = members.map((prospect) => courseOf(prospect, draws));
  const streams = members.map(({ name }) => randomOf(name));
  const chance = randomOf(clutchId(clutch));
  const eggs = members.some(({ is }) => is.stage === 'egg');
  const luck = steps
    .filter((step) => eggs || step === 'fledge' || step === 'independence')
    .map((step) => ({ step, seen: seenOf(clutch, step) }));
  const toCome = members.some(({ is }) => is.stage === 'egg' && is.toCome !== null);
  for (let draw = 0; draw < draws; draw++) {
    for (let tries = 0; tries < PATIENCE; tries++) {
      const deal = dealt(clutch, shared, { draw, luck, toCome, chance });
      const fates = members.map((prospect, i) => fateOf(prospect, deal, streams[i] as Random, day));
      if (!fates.every(({ possible }) => possible) && tries < PATIENCE - 1) continue;
      fates.forEach((fate, i) => {
        const course = courses[i] as Course;
        course.hatched[draw] = fate.hatched;
        course.ringable[draw] = fate.ringable;
        course.fledged[draw] = fate.fledged;
        course.independent[draw] = fate.independent;
      });
      break;
    }
  }
  return courses;
}

function courseOf(prospect: Prospect, draws: number): Course {
  const days = () => new Int32Array(draws).fill(NEVER);
  return { prospect, hatched: days(), ringable: days(), fledged: days(), independent: days() };
}

/** How far the clutch itself has told how it fares: so many of so many came through the step. */
function seenOf({ eggs, chicks }: Clutch, step: Step): Proportion {
  const of = <T>(all: readonly T[], through: (one: T) => boolean | null): Proportion => {
    const told = all.map(through).filter((one) => one !== null);
    return { k: told.filter(Boolean).length, n: told.length };
  };
  switch (step) {
    case 'fertility':
      return of(eggs, (egg) => {
        const told = fertilityOf(egg);
        return told === null ? null : told === 'fertile';
      });
    case 'hatchOfFertile':
      return of(eggs, ({ fate }) =>
        fate === null || fate.kind === 'taken' || (fate.kind === 'lost' && fate.cause === 'clear')
          ? null
          : fate.kind === 'hatched',
      );
    case 'fledge':
      return of(chicks, ({ fledged, fate }) =>
        fledged !== null ? true : fate?.kind === 'died' ? false : null,
      );
    case 'independence':
      return of(
        chicks.filter(({ fledged }) => fledged !== null),
        ({ independent, fate }) => (independent !== null ? true : fate?.kind === 'died' ? false : null),
      );
  }
}

/** Only what a clutch still has before it is drawn: the rest of a deal is nobody's. */
function dealt(
  clutch: Clutch,
  shared: SpeciesDraws,
  {
    draw,
    luck,
    toCome,
    chance,
  }: {
    draw: number;
    luck: readonly { step: Step; seen: Proportion }[];
    toCome: boolean;
    chance: Random;
  },
): Deal {
  const deal: Deal = {
    luck: { fertility: 1, hatchOfFertile: 1, fledge: 1, independence: 1 },
    eggs: toCome ? eggsInAll(clutch, chance.uniform()) : clutch.eggs.length,
    start: chance.uniform(),
    incubation: lengthOf(shared.incubation, draw, chance),
    fledging: lengthOf(shared.fledging, draw, chance),
    independence: lengthOf(shared.independence, draw, chance),
  };
  for (const { step, seen } of luck) {
    deal.luck[step] = luckOf(shared.shares[step][draw] as number, shared.beliefs[step], seen, chance);
  }
  return deal;
}

function lengthOf({ means, deviation }: Drawn, draw: number, chance: Random): number {
  return (means[draw] as number) + deviation * chance.normal();
}

/** The clutch's own share: beta about the species' with this likeness of its members, updated by what they showed. */
function luckOf(share: number, { likeness }: Belief, { k, n }: Proportion, chance: Random): number {
  const weight = (1 - likeness) / likeness;
  // A share that was drawn as 0 or 1 to the last digit still leaves a beta distribution.
  const mean = Math.min(1 - 1e-9, Math.max(1e-9, share));
  return chance.beta({ a: mean * weight + k, b: (1 - mean) * weight + n - k });
}

/** How many eggs the clutch comes to: the profile's range as the middle 90 % of a normal, no fewer than there are. */
function eggsInAll(clutch: Clutch, at: number): number {
  const { mean, variance } = bookDuration(usualClutch(clutch.pair.profile));
  const deviation = Math.sqrt(variance);
  const below = normalCdf((clutch.eggs.length - 0.5 - mean) / deviation);
  const quantile = Math.min(1 - 1e-9, below + at * (1 - below));
  return Math.max(clutch.eggs.length, Math.round(mean + deviation * normalQuantile(quantile)));
}

interface Fate {
  possible: boolean;
  hatched: Day;
  ringable: Day;
  fledged: Day;
  independent: Day;
}

const nothing: Fate = {
  possible: true,
  hatched: NEVER,
  ringable: NEVER,
  fledged: NEVER,
  independent: NEVER,
};

function fateOf({ is, profile }: Prospect, deal: Deal, chance: Random, day: Day): Fate {
  // All are drawn whatever becomes of it, so that each future takes as many from the stream.
  const fertile = chance.uniform();
  const hatches = chance.uniform();
  const nest = chance.uniform();
  const after = chance.uniform();
  const start = onDay(is.start, deal.start);
  if (is.stage !== 'egg') return youngFate({ is, profile }, start, deal, { nest, after }, day);
  if (is.toCome !== null && is.toCome > deal.eggs) return nothing;
  if (!is.fertile && fertile >= deal.luck.fertility) return nothing;
  if (hatches >= deal.luck.hatchOfFertile) return nothing;
  const hatched = Math.round(start + deal.incubation);
  if (hatched <= is.seen) return { ...nothing, possible: false };
  return { ...fromHatching(hatched, profile, deal, { nest, after }), hatched };
}

function onDay({ from, to }: Span, at: number): Day {
  return from + Math.floor(at * (to - from + 1));
}

interface Luck {
  nest: number;
  after: number;
}

/** The whole way of a chick from its hatching on. */
function fromHatching(hatched: Day, profile: Profile | null, deal: Deal, { nest, after }: Luck): Fate {
  const inNest = Math.max(1, deal.fledging);
  const lived = daysLived(nest, deal.luck.fledge, inNest);
  const ringable = lived > ringAge(profile).low ? hatched : NEVER;
  if (lived < inNest) return { ...nothing, ringable };
  const fledged = Math.round(hatched + inNest);
  return { ...nothing, ringable, fledged, independent: weaned(hatched, inNest, deal, after, 0) };
}

/** The rest of the way, for a young bird that has come some of it. */
function youngFate(
  { is, profile }: Pick<Prospect, 'is' | 'profile'>,
  hatched: Day,
  deal: Deal,
  { nest, after }: Luck,
  day: Day,
): Fate {
  if (is.stage === 'egg') return nothing;
  const { fledged } = is.bird;
  const age = Math.max(0, day - hatched);
  if (fledged !== null) {
    const inNest = Math.max(1, fledged.day - hatched);
    return { ...nothing, independent: weaned(hatched, inNest, deal, after, day - fledged.day) };
  }
  const inNest = Math.max(1, deal.fledging);
  const left = Math.max(0, inNest - age);
  const lived = age + daysLived(nest, deal.luck.fledge ** (left / inNest), left);
  const ringable = lived > ringAge(profile).low ? hatched : NEVER;
  if (lived < inNest) return { ...nothing, ringable };
  const out = Math.round(hatched + inNest);
  return { ...nothing, ringable, fledged: out, independent: weaned(hatched, inNest, deal, after, 0) };
}

/** The day on which a fledgling feeds itself, if it lives; some days of the time between are behind it. */
function weaned(hatched: Day, inNest: number, deal: Deal, chance: number, behind: number): Day {
  const fed = Math.max(1, deal.independence - inNest);
  const left = Math.max(0, fed - behind);
  const through = chance < deal.luck.independence ** (left / fed);
  return through ? Math.round(hatched + inNest + fed) : NEVER;
}

/** Days until death at an even daily risk, where the share given outlives so many days; no less than these if it does. */
function daysLived(chance: number, share: number, days: number): number {
  if (chance < share) return Number.POSITIVE_INFINITY;
  return days * (Math.log(chance) / Math.log(share));
}
