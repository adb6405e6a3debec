import type { Day } from '../../days.ts';
import { grouped, keptIn } from '../../grouped.ts';
import { type Clutch, clutchId } from '../../room/model.ts';
import { type Random, randomOf } from '../../statistics/random.ts';
import { type Step, steps } from './beliefs.ts';
import { type Chances, dealt, type SpeciesDraws, seenOf, speciesDraws } from './deal.ts';
import { fateOf, NEVER } from './fate.ts';
import type { Prospect } from './prospects.ts';

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

interface Today extends Chances {
  /** The day stood on. */
  day: Day;
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
export function coursesOf(prospects: readonly Prospect[], chances: Today): Course[] {
  const clutches = grouped(prospects, ({ clutch }) => clutch);
  const species = new Map<string | null, SpeciesDraws>();
  return Array.from(clutches, ([clutch, members]) => {
    const name = clutch.pair.species;
    const shared = keptIn(species, name, () => speciesDraws(name, clutch.pair.profile, chances));
    return clutchCourses(clutch, members, shared, chances);
  }).flat();
}

/** What is left to a clutch whose eggs have all come to an end. */
const fromTheNest = ['fledge', 'independence'] as const satisfies readonly Step[];

/** So often a deal is taken back that contradicts what a look saw, before the last is let stand. */
const PATIENCE = 100;

function clutchCourses(
  clutch: Clutch,
  members: readonly Prospect[],
  shared: SpeciesDraws,
  { day, draws }: Today,
): Course[] {
  const courses = members.map((prospect) => courseOf(prospect, draws));
  const streams = members.map(({ name }) => randomOf(name));
  const chance = randomOf(clutchId(clutch));
  const luck = (members.some(({ is }) => is.stage === 'egg') ? steps : fromTheNest).map((step) => ({
    step,
    seen: seenOf(clutch, step),
  }));
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
