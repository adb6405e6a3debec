import type { Day } from '../../days.ts';
import { sittingStart } from '../../room/clock.ts';
import { fledging, incubation, layingInterval } from '../../room/lives.ts';
import type { Bird, Chick, Clutch, Egg, EggFate } from '../../room/model.ts';
import { lastLook } from '../../room/scene.ts';
import { middle, type Profile } from '../../species/profile.ts';
import { type StageSurvival, stageSurvival } from '../../statistics/nest-survival.ts';
import { youngFateOf } from './fates.ts';

export const stageNames = ['laying', 'sitting', 'nest', 'fledged'] as const;
export type StageName = (typeof stageNames)[number];

/** How clutches came through one stage. */
export interface Stage extends StageSurvival {
  stage: StageName;
  /** Days that the stage usually takes, over the species of these clutches. */
  days: number | null;
}

/** One clutch in one stage: from when to when it was known to be in course, and whether it ended in loss. */
interface Course {
  from: Day;
  to: Day;
  lost: boolean;
}

/** Days past its usual end up to which a stage that nobody ended is still believed to be in course. */
const PATIENCE = 14;

/** Intervals between the eggs of a clutch where the profile does not say how many there are: four eggs (common practice). */
const USUAL_INTERVALS = 3;

/**
 * Days from leaving the nest to independence where the profile does not say when that is: what lies between the middles
 * of the ages taken for an unknown species. Its own known fledging age is not set against that widest range of all.
 */
const USUAL_AFTER_NEST = 18;

/** Survival of whole clutches, stage by stage. */
export function stagesOf(clutches: readonly Clutch[], day: Day): Stage[] {
  return stageNames.map((stage) => {
    let exposure = 0;
    let losses = 0;
    let weighted = 0;
    for (const clutch of clutches) {
      const course = courses[stage](clutch, day);
      if (course === null) continue;
      const usual = usualDays(clutch.pair.profile)[stage];
      const longest = course.lost ? Number.POSITIVE_INFINITY : usual + PATIENCE;
      const days = Math.min(Math.max(0, course.to - course.from), longest);
      exposure += days;
      weighted += days * usual;
      if (course.lost) losses += 1;
    }
    const days = exposure > 0 ? weighted / exposure : null;
    return { stage, days, ...stageSurvival(losses, exposure, days ?? 0) };
  });
}

/** How long each stage usually takes, in days: middles of the profile's ranges, or of what is usual without one. */
function usualDays(profile: Profile | null): Record<StageName, number> {
  const from = profile?.sittingFrom?.value;
  const eggs = from === undefined || from === 'last' ? profile?.clutch?.value : from;
  const nest = middle(fledging(profile));
  const independent = profile?.independence?.value;
  return {
    laying: Math.max(1, (eggs === undefined ? USUAL_INTERVALS : middle(eggs) - 1) * layingInterval(profile)),
    sitting: middle(incubation(profile)),
    nest,
    fledged: independent === undefined ? USUAL_AFTER_NEST : Math.max(1, middle(independent) - nest),
  };
}

const courses: Record<StageName, (clutch: Clutch, day: Day) => Course | null> = {
  laying: (clutch, day) => {
    if (clutch.eggs.length === 0 || !clutch.counted) return null;
    const sat = satFrom(clutch, day);
    const loss = eggLoss(clutch);
    if (loss !== null && (sat === null || loss.day < sat))
      return { from: clutch.opened, to: loss.at, lost: true };
    return { from: clutch.opened, to: sat ?? endOfEggs(clutch) ?? lastLookInto(clutch, day), lost: false };
  },
  sitting: (clutch, day) => {
    const sat = satFrom(clutch, day);
    if (sat === null || clutch.eggs.length === 0) return null;
    const from = Math.max(sat, clutch.opened);
    const loss = eggLoss(clutch);
    if (loss !== null) return loss.day < sat ? null : { from, to: loss.at, lost: true };
    const hatched = clutch.chicks.map(({ hatched }) => hatched.to);
    const end = hatched.length > 0 ? Math.min(...hatched) : endOfEggs(clutch);
    return { from, to: end ?? lastLookInto(clutch, day), lost: false };
  },
  nest: (clutch, day) => {
    const from = firstSeen(clutch.chicks);
    if (from === null) return null;
    const out = clutch.chicks.flatMap(({ fledged }) => fledged?.day ?? []);
    if (out.length > 0) return { from, to: Math.min(...out), lost: false };
    return broodCourse(clutch, clutch.chicks, from, day);
  },
  fledged: (clutch, day) => {
    const out = clutch.chicks.filter(({ fledged }) => fledged !== null);
    if (out.length === 0) return null;
    const from = Math.min(...out.map(({ fledged }) => fledged?.day ?? day));
    const independent = out.flatMap((bird) => bird.independent?.day ?? []);
    if (independent.length > 0) return { from, to: Math.min(...independent), lost: false };
    return broodCourse(clutch, out, from, day);
  },
};

/** When sitting began, as it was known while there were eggs. */
function satFrom(clutch: Clutch, day: Day): Day | null {
  return sittingStart(clutch, endOfEggs(clutch) ?? day)?.span.to ?? null;
}

/** A brood of which nobody has reached the end of the stage. */
function broodCourse(clutch: Clutch, birds: readonly Bird[], from: Day, day: Day): Course {
  const fates = birds.map(youngFateOf);
  if (fates.every((fate) => fate === 'died')) {
    const last = birds.reduce((a, b) => ((a.fate?.day ?? 0) > (b.fate?.day ?? 0) ? a : b));
    return { from, to: last.fate?.kind === 'died' ? middleOf(last.fate.span) : from, lost: true };
  }
  const open = fates.includes('open');
  const ends = birds.flatMap(({ fate }) => fate?.day ?? []);
  return { from, to: Math.max(from, open ? lastLookInto(clutch, day) : Math.max(...ends)), lost: false };
}

/**
 * The loss of all eggs together. A clutch that was clear throughout was not lost, it never lived, and one that we took
 * was not lost either.
 */
function eggLoss({ eggs }: Clutch): { day: Day; at: Day } | null {
  if (eggs.some(({ fate }) => fate === null || fate.kind === 'hatched')) return null;
  const [latest] = eggs.flatMap(({ fate }) => (hadLife(fate) ? fate : [])).sort((a, b) => b.day - a.day);
  return latest === undefined ? null : { day: latest.day, at: middleOf(latest.span) };
}

function hadLife(fate: Egg['fate']): fate is EggFate {
  return fate?.kind === 'lost' && fate.cause !== 'clear' && fate.cause !== 'undeveloped';
}

/** Half way between the last look that found it and the one that missed it. */
function middleOf({ from, to }: { from: Day; to: Day }): Day {
  return (from - 1 + to) / 2;
}

/** The day on which the last egg ended, where all have. */
function endOfEggs({ eggs }: Clutch): Day | null {
  const days = eggs.flatMap(({ fate }) => fate?.day ?? []);
  return days.length === eggs.length && days.length > 0 ? Math.max(...days) : null;
}

/** The last look into its own nest, where the pair has two. */
function lastLookInto({ pair, site, opened }: Clutch, day: Day): Day {
  return lastLook(pair, site, day + 1) ?? opened;
}

function firstSeen(birds: readonly Chick[]): Day | null {
  const days = birds.flatMap((bird) => (bird.placeholder ? [] : [bird.firstSeen]));
  return days.length === 0 ? null : Math.min(...days);
}
