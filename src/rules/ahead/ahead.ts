import type { Day } from '../../days.ts';
import { upTo } from '../../days.ts';
import { byName } from '../../grouped.ts';
import type { Room } from '../../room/fold.ts';
import { betaInterval, betaMean } from '../../statistics/beta.ts';
import type { Estimate } from '../../statistics/estimate.ts';
import type { Proportion } from '../../statistics/proportions.ts';
import { sumBy } from '../../statistics/sums.ts';
import { agendaOf } from '../agenda/agenda.ts';
import type { AgendaItem } from '../agenda/item.ts';
import { broodsOf } from '../brood.ts';
import { learnedDurations } from '../durations.ts';
import { beliefsOf, GUESS_WEIGHT, type Step, steps } from './beliefs.ts';
import { coursesOf } from './courses.ts';
import { type Housing, housingAhead } from './housing.ts';
import { type Expected, prospectsOf } from './prospects.ts';
import { type ComingRest, restAhead } from './rest.ts';
import { type Rings, ringsAhead } from './rings.ts';
import {
  type SpeciesYoung,
  type Week,
  weekly,
  weeksFrom,
  type Young,
  youngBySpecies,
  youngIn,
} from './weeks.ts';

/** A share that comes through, with its own 10–90 % range, and the species' own figures in this room. */
export interface StepShare extends Estimate {
  own: Proportion & { clutches: number };
}

/** What the figures of one species rest on. */
export type Basis = { species: string | null } & Record<Step, StepShare>;

/** What the room will need in the weeks ahead. */
export interface Ahead {
  day: Day;
  room: string | null;
  /** The last day that is looked at: a Sunday. */
  until: Day;
  eggs: number;
  chicks: number;
  clutches: number;
  weeks: Week[];
  /** What should have come before the day, and nobody wrote that it did: it stands in the first week. */
  before: Young;
  total: Young;
  species: SpeciesYoung[];
  pastTheirTime: Expected['pastTheirTime'];
  uncounted: string[];
  rings: Rings;
  housing: Housing;
  rest: ComingRest[];
  /** Birds that come of age, and quarantines that end. */
  events: AgendaItem[];
  basis: Basis[];
  draws: number;
  /** How many eggs or chicks the guess is worth that stands behind all of them. */
  guess: number;
}

/** So many futures that the mean of twenty young (deviation 3) is known to less than a tenth of a bird. */
const DRAWS = 2000;

const EVENTS = ['of-age', 'quarantine-end'];

/** Looks so many weeks ahead. Pure: the same record gives the same figures. */
export function aheadOf(
  room: Room,
  { weeks: number, draws = DRAWS }: { weeks: number; draws?: number },
): Ahead {
  const { day } = room;
  const durations = learnedDurations(room);
  const broods = broodsOf(room, durations);
  const beliefs = beliefsOf(room);
  const { prospects, pastTheirTime, uncounted } = prospectsOf(room);
  const courses = coursesOf(prospects, { day, draws, beliefs, durations });
  const calendar = weeksFrom(day, number);
  const until = calendar.at(-1)?.to ?? day;
  const weeks = weekly(courses, calendar, draws);
  const species = youngBySpecies(courses, calendar, draws);
  const sum = (of: 'eggs' | 'chicks' | 'clutches') => sumBy(species, (one) => one[of]);
  return {
    day,
    room: room.settings.room,
    until,
    eggs: sum('eggs'),
    chicks: sum('chicks'),
    clutches: sum('clutches'),
    weeks,
    before: youngIn(courses, upTo(day - 1), draws),
    total: youngIn(courses, upTo(until), draws),
    species,
    pastTheirTime,
    uncounted,
    rings: ringsAhead(room, courses, draws),
    housing: housingAhead(room, courses, { broods, weeks, draws }),
    rest: restAhead(room, broods, until),
    events: agendaOf(room, broods, until - day).filter(({ task }) => EVENTS.includes(task)),
    basis: species.map((one) => basisOf(one.species, beliefs(one.species))),
    draws,
    guess: GUESS_WEIGHT,
  };
}

function basisOf(species: string | null, beliefs: ReturnType<ReturnType<typeof beliefsOf>>): Basis {
  const share = (step: Step): StepShare => {
    const { share: belief, own } = beliefs[step];
    return { mean: betaMean(belief), ...betaInterval(belief, 0.8), own };
  };
  return { species, ...byName(steps, share) };
}
