import type { Day } from '../../days.ts';
import { naturally } from '../../findings/naturally.ts';
import { grouped } from '../../grouped.ts';
import type { Room } from '../../room/fold.ts';
import { refIn } from '../../room/model.ts';
import { type Brood, placeOf } from '../brood.ts';
import type { Anchor } from './anchors.ts';
import { birdTasks } from './bird-tasks.ts';
import { sameNest } from './conditions.ts';
import { inHandsOffDays } from './hands-off.ts';
import type { AgendaItem, TaskState, TaskWindow } from './item.ts';
import { type Milestone, milestones } from './milestones.ts';
import { routineTasks } from './routines.ts';
import { stateOn } from './state.ts';

/**
 * Everything to be done on the day stood on: what is late, what is due, and what begins within so many days.
 * Ordered by urgency: late before now before coming, earlier before later.
 */
export function agendaOf(room: Room, broods: readonly Brood[], days: number): AgendaItem[] {
  const byPair = grouped(broods, ({ pair }) => pair);
  const items = [
    ...broods.flatMap((brood) => {
      const inNest = (byPair.get(brood.pair) ?? []).filter((other) => inOneNest(brood, other));
      return milestones.flatMap((milestone) => tasksOf(brood, milestone, inNest));
    }),
    ...birdTasks(room),
    ...routineTasks(room, broods),
  ];
  return items.filter((item) => item.from <= room.day + days).sort(byUrgency);
}

const STATES: TaskState[] = ['late', 'now', 'coming'];

function byUrgency(a: AgendaItem, b: AgendaItem): number {
  return (
    STATES.indexOf(a.state) - STATES.indexOf(b.state) ||
    (a.state === 'coming' ? a.from - b.from : (a.to ?? a.from) - (b.to ?? b.from)) ||
    naturally(a.pair ?? '', b.pair ?? '') ||
    naturally(a.task, b.task)
  );
}

/** Whether a look at one of a pair's broods disturbs another, or is the same look. */
function inOneNest(one: Brood, other: Brood): boolean {
  return other.where === 'nest' && sameNest(one.clutch, other.clutch);
}

/** The tasks that one milestone makes for one brood today, beside all those that are in the same nest. */
function tasksOf(brood: Brood, milestone: Milestone, inNest: readonly Brood[]): AgendaItem[] {
  if (brood.clutch?.skipped.some(({ task }) => task === milestone.task)) return [];
  const { day } = brood.room;
  const disturbed = milestone.needsLook === false || brood.where !== 'nest' ? [] : inNest;
  return milestone.anchors(brood).flatMap((anchor) => {
    const whole = milestone.window(anchor, brood);
    if (whole === null) return [];
    if (milestone.moot(brood, anchor, whole.from) || milestone.done(brood, anchor, whole.from)) return [];
    const due = stateOn(day, whole, milestone.lapses(anchor, whole, brood));
    if (due === null || !lookAllowed(brood, milestone, due)) return [];
    if (due === 'late')
      return isLeftAlone(disturbed, day) ? [] : [itemOf(brood, milestone, anchor, whole, due)];
    const window = daysToLook(whole, day, disturbed);
    if (window === null) return [];
    return [itemOf(brood, milestone, anchor, window, window.from > day ? 'coming' : 'now')];
  });
}

/** The last day on which a task asks about this brood, as far as it comes up at all; infinite where it never lapses, null where it does not come up. */
export function askedUntil(brood: Brood, task: string): Day | null {
  const until = milestones.flatMap((milestone: Milestone) =>
    milestone.task !== task
      ? []
      : milestone.anchors(brood).flatMap((anchor) => {
          const window = milestone.window(anchor, brood);
          return window === null ? [] : [milestone.lapses(anchor, window, brood) ?? Number.POSITIVE_INFINITY];
        }),
  );
  return until.length === 0 ? null : Math.max(...until);
}

/**
 * The window up to the last day on which the nest is not left alone, so that no line promises a day too many; from the
 * next such day on, where it is left alone today.
 */
function daysToLook(window: TaskWindow, today: Day, inNest: readonly Brood[]): TaskWindow | null {
  if (window.to === null) return window;
  const begun = Math.max(window.from, today);
  let next = begun;
  let { to } = window;
  while (next <= to && isLeftAlone(inNest, next)) next++;
  while (to > next && isLeftAlone(inNest, to)) to--;
  return next <= to ? { ...window, from: next > begun ? next : window.from, to } : null;
}

function isLeftAlone(inNest: readonly Brood[], day: Day): boolean {
  return inNest.some((brood) => inHandsOffDays(brood, day));
}

/** Tasks that need a look respect the pair's wish to be left alone. */
function lookAllowed(brood: Brood, milestone: Milestone, state: TaskState): boolean {
  if (milestone.needsLook === false || brood.where !== 'nest') return true;
  const { nestLooks } = brood.pair;
  const untilTold = milestone.needsLook === 'until told';
  // A nest that all young have left is nobody's any more.
  if (untilTold && brood.hatched.length > 0) return true;
  if (nestLooks === 'never') return false;
  if (nestLooks === 'sparingly' && state === 'late') return untilTold;
  return !(
    nestLooks === 'sparingly' &&
    milestone.task === 'next-egg' &&
    (brood.clutch?.eggs.length ?? 0) > 1
  );
}

function itemOf(
  brood: Brood,
  milestone: Milestone,
  anchor: Anchor,
  window: TaskWindow,
  state: TaskState,
): AgendaItem {
  const { pair, clutch, profile } = brood;
  const species = anchor.profile?.species ?? profile?.species ?? pair.species;
  return {
    task: milestone.task,
    pair: pair.id,
    bird: null,
    clutch: clutch?.number ?? null,
    who: anchor.who?.map((one) => refIn(brood, one)) ?? null,
    housing: placeOf(brood, anchor.who),
    species,
    from: window.from,
    likely: window.likely,
    to: window.to,
    state,
    say: milestone.say,
    why: [anchor.says, window.days].filter((part) => part !== '').join(' '),
    basis: window.basis,
    apart: apartOf(brood, milestone, anchor),
  };
}

/** One clutch may have a part of it elsewhere, guests of another species, or several days of hatching. */
function apartOf(brood: Brood, { each }: Milestone, anchor: Anchor): string | null {
  const { where, pair } = brood;
  const place = placeOf(brood, anchor.who);
  const foreign = anchor.profile != null && anchor.profile !== pair.profile ? anchor.profile.species : null;
  const elsewhere = where !== 'nest' || place !== brood.housing ? place : null;
  const parts = [elsewhere, foreign, each?.(anchor)].filter((part) => part != null);
  return parts.length === 0 ? null : parts.join(' ');
}
