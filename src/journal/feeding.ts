import type { Finding } from '../findings/finding.ts';
import { minutes } from './grammar/amounts.ts';
import { time } from './grammar/moment.ts';
import { formatTime } from './grammar/time-text.ts';
import { fields } from './grammar/values.ts';

/** What nestlog.yaml says of feeding, in minutes; null is not said. */
export interface FeedingSettings {
  /** First and last portion, since midnight. */
  from: number | null;
  to: number | null;
  /** Between portions. */
  every: number | null;
  /** Seed in water, and from draining it until it is given. */
  soak: number | null;
  sprout: number | null;
}

export const feeding = fields({ from: time, to: time, every: minutes, soak: minutes, sprout: minutes });

/** Longest that seed can lie in water, and sprout, before it is spoilt: common practice, generously. */
const LONGEST = { soak: 48 * 60, sprout: 120 * 60 };
/** What the example has, and a plan takes where nothing is said. */
const USUAL = { soak: '12 h', sprout: '24 h' };

/** The settings without what contradicts itself, and what that was. */
export function sensibleFeeding(said: FeedingSettings): {
  feeding: FeedingSettings;
  problems: Omit<Finding, 'at'>[];
} {
  const problems: Omit<Finding, 'at'>[] = [];
  const { from, to, every } = said;
  const kept = { ...said };
  if (from === null || to === null) {
    if (from !== to) problems.push({ code: 'feeding-half', args: { has: from === null ? 'to' : 'from' } });
    Object.assign(kept, { from: null, to: null });
  } else if (from > to) {
    problems.push({ code: 'feeding-reversed', args: { from: formatTime(from), to: formatTime(to) } });
    Object.assign(kept, { from: null, to: null });
  } else if (every !== null && to > from && every > to - from) {
    const args = {
      every: hours(every),
      from: formatTime(from),
      to: formatTime(to),
      between: hours(to - from),
    };
    problems.push({ code: 'feeding-interval', args });
  }
  for (const key of ['soak', 'sprout'] as const) {
    const minutesSaid = said[key];
    if (minutesSaid === null || minutesSaid <= LONGEST[key]) continue;
    const args = { key, hours: hours(minutesSaid), most: hours(LONGEST[key]), usual: USUAL[key] };
    problems.push({ code: 'sprout-hours', args });
    kept[key] = null;
  }
  return { feeding: kept, problems };
}

/** `3 h`, `1.5 h`. */
function hours(length: number): string {
  return `${Number((length / 60).toFixed(2))} h`;
}
