import { type Day, isoWeek, upTo, weekday } from '../../days.ts';
import { naturally } from '../../findings/naturally.ts';
import { byName, grouped } from '../../grouped.ts';
import { type Estimate, estimateOf } from '../../statistics/estimate.ts';
import type { Course } from './courses.ts';

/** Young expected in some days: eggs that hatch, young that leave the nest, young that come to feed themselves. */
export interface Young {
  hatching: Estimate;
  fledging: Estimate;
  independent: Estimate;
}

/** One week of the calendar, of the first what is left of it. */
export interface Week extends Young {
  /** ISO 8601. */
  year: number;
  week: number;
  from: Day;
  to: Day;
}

/** The young of one species until the last of the weeks. */
export interface SpeciesYoung extends Young {
  species: string | null;
  eggs: number;
  chicks: number;
  clutches: number;
  weeks: Week[];
}

/**
 * The weeks from a day on, Monday to Sunday, until so many times seven days are covered. What the first should have
 * brought earlier counts in it: nobody looked, or nobody wrote.
 */
export function weeksFrom(day: Day, number: number): Pick<Week, 'year' | 'week' | 'from' | 'to'>[] {
  const end = day + 7 * number - 1;
  const weeks = [];
  for (let from = day; from <= end; from += 8 - weekday(from)) {
    weeks.push({ ...isoWeek(from), from, to: from + 7 - weekday(from) });
  }
  return weeks;
}

/** The day of a course that each of the figures counts. */
const counted = { hatching: 'hatched', fledging: 'fledged', independent: 'independent' } as const;

/** Something for each of the figures, from the days of all courses that it counts. */
function ofEach<T>(courses: readonly Course[], of: (days: Int32Array[]) => T): Record<keyof Young, T> {
  return byName(['hatching', 'fledging', 'independent'], (name) =>
    of(courses.map((course) => course[counted[name]])),
  );
}

/** How many of these are expected in each week. */
export function weekly(
  courses: readonly Course[],
  weeks: readonly Pick<Week, 'year' | 'week' | 'from' | 'to'>[],
  draws: number,
): Week[] {
  const estimates = ofEach(courses, (days) => countByWeek(days, weeks, draws).map(estimateOf));
  return weeks.map((week, i) => ({
    ...week,
    hatching: estimates.hatching[i] as Estimate,
    fledging: estimates.fledging[i] as Estimate,
    independent: estimates.independent[i] as Estimate,
  }));
}

/** For each week and draw, how many of the days fall into it; what came before the first week counts there. */
function countByWeek(
  all: readonly Int32Array[],
  weeks: readonly Pick<Week, 'from' | 'to'>[],
  draws: number,
): Int32Array[] {
  const counts = weeks.map(() => new Int32Array(draws));
  const from = weeks[0]?.from ?? 0;
  const weekOf = weeks.flatMap((week, i) => Array.from({ length: week.to - week.from + 1 }, () => i));
  for (const days of all) {
    for (let draw = 0; draw < draws; draw++) {
      const week = counts[weekOf[Math.max(0, (days[draw] as number) - from)] ?? -1];
      if (week !== undefined) week[draw] = (week[draw] as number) + 1;
    }
  }
  return counts;
}

/** How many of these are expected in some days, both ends included. */
export function youngIn(
  courses: readonly Course[],
  days: { from: number; to: number },
  draws: number,
): Young {
  return ofEach(courses, (all) => estimateOf(countBy(all, days, draws)));
}

/** For each draw, how many of the days fall between two days, both included. */
export function countBy(
  all: readonly Int32Array[],
  { from, to }: { from: number; to: number },
  draws: number,
): Int32Array {
  const counts = new Int32Array(draws);
  for (const days of all) {
    for (let draw = 0; draw < draws; draw++) {
      const day = days[draw] as number;
      if (day >= from && day <= to) counts[draw] = (counts[draw] as number) + 1;
    }
  }
  return counts;
}

/** Species by species, the most young first. */
export function youngBySpecies(
  courses: readonly Course[],
  weeks: readonly Pick<Week, 'year' | 'week' | 'from' | 'to'>[],
  draws: number,
): SpeciesYoung[] {
  const groups = grouped(courses, ({ prospect }) => prospect.clutch.pair.species);
  const until = weeks.at(-1)?.to ?? Number.NEGATIVE_INFINITY;
  const of = ([species, group]: [string | null, Course[]]): SpeciesYoung => ({
    species,
    eggs: group.filter(({ prospect: { is } }) => is.stage === 'egg' && is.toCome === null).length,
    chicks: group.filter(({ prospect: { is } }) => is.stage !== 'egg').length,
    clutches: new Set(group.map(({ prospect }) => prospect.clutch)).size,
    ...youngIn(group, upTo(until), draws),
    weeks: weekly(group, weeks, draws),
  });
  return [...groups]
    .map(of)
    .sort((a, b) => b.independent.mean - a.independent.mean || naturally(a.species ?? '', b.species ?? ''));
}
