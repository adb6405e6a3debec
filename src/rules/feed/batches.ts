import type { Day } from '../../days.ts';
import type { FeedingHours } from './hours.ts';

const DAY = 24 * 60;

/** A day and minutes since its midnight. */
export interface Moment {
  day: Day;
  minute: number;
}

/** Seed that is soaked, drained and sprouted for one day. */
export interface Batch {
  /** The day on which it is eaten. */
  for: Day;
  /** g of dry seed to begin with. */
  dry: number;
  soak: Moment;
  drain: Moment;
  ready: Moment;
}

/** Days on which the first step of a batch may lie before the day that eats it. */
export function leadDays({ soak, sprout }: FeedingHours): number {
  // A step that falls into the night is done the evening before, and both steps may.
  return Math.ceil((soak + sprout) / DAY) + 2;
}

/**
 * When each batch has to be begun, so that it is ready for the first portion of its day. Steps are done in feeding
 * hours: what would fall into the night is done the evening before, and the seed lies so much longer.
 *
 * @param needs g of dry seed by the day that eats it
 */
export function batchesFor(needs: readonly { day: Day; dry: number }[], hours: FeedingHours): Batch[] {
  return needs
    .filter(({ dry }) => dry > 0)
    .map(({ day, dry }) => {
      const ready = day * DAY + hours.from;
      const drain = awake(ready - hours.sprout, hours);
      const soak = awake(drain - hours.soak, hours);
      return { for: day, dry, soak: moment(soak), drain: moment(drain), ready: moment(ready) };
    });
}

/** The last minute not after this one in which somebody is about. */
function awake(minutes: number, { from, to }: FeedingHours): number {
  const { day, minute } = moment(minutes);
  if (minute < from) return (day - 1) * DAY + to;
  return day * DAY + Math.min(minute, to);
}

function moment(minutes: number): Moment {
  const day = Math.floor(minutes / DAY);
  return { day, minute: minutes - day * DAY };
}
