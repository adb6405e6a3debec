import { byName } from '../../grouped.ts';
import { fertilityOf } from '../../room/fertility.ts';
import { fledging, incubation, independence, usualClutch } from '../../room/lives.ts';
import type { Clutch } from '../../room/model.ts';
import type { Profile } from '../../species/profile.ts';
import { normalCdf, normalQuantile } from '../../statistics/normal.ts';
import type { Proportion } from '../../statistics/proportions.ts';
import { type Random, randomOf } from '../../statistics/random.ts';
import type { Durations } from '../durations.ts';
import { bookDuration, type Duration } from '../forecast/duration.ts';
import { type Belief, type Beliefs, type Step, steps } from './beliefs.ts';

/** What the draws are made from. */
export interface Chances {
  draws: number;
  beliefs: (species: string | null) => Beliefs;
  durations: Durations;
}

/** What is drawn for a species, once in each future: its shares, and how long it takes in this room. */
export interface SpeciesDraws {
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

/** The draws of one species. */
export function speciesDraws(
  species: string | null,
  profile: Profile | null,
  chances: Chances,
): SpeciesDraws {
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
    shares: byName(steps, drawn),
    incubation: times('incubation', durations('incubation', name, incubation(profile))),
    fledging: times('fledging', durations('fledging', name, fledging(profile))),
    independence: times('independence', bookDuration(independence(profile))),
  };
}

/** What one clutch is dealt in one draw; its members share it. */
export interface Deal {
  luck: Record<Step, number>;
  eggs: number;
  /** Where in its span the start lies, 0 to 1. */
  start: number;
  incubation: number;
  fledging: number;
  independence: number;
}

/** How far the clutch itself has told how it fares: so many of so many came through the step. */
export function seenOf({ eggs, chicks }: Clutch, step: Step): Proportion {
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
      return of(
        eggs.filter((egg) => fertilityOf(egg) !== 'clear'),
        ({ fate }) => (fate === null || fate.kind === 'taken' ? null : fate.kind === 'hatched'),
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
export function dealt(
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
