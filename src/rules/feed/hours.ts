import type { FeedingSettings } from '../../journal/feeding.ts';

const HOUR = 60;

/** What is taken where nestlog.yaml does not say it; minutes. Portions every two hours from lights-on, at seven. */
const USUAL = { from: 7 * HOUR, to: 19 * HOUR, every: 2 * HOUR, soak: 12 * HOUR, sprout: 24 * HOUR };

/** When a plan's portions are given and how long its seed is soaked and sprouted; minutes. */
export interface FeedingHours {
  /** Of each portion, since midnight, in order; at least one. */
  portions: number[];
  from: number;
  to: number;
  soak: number;
  sprout: number;
  /** What nestlog.yaml did not say, so that the plan took what is usual. */
  assumed: (keyof typeof USUAL)[];
}

/** The room's hours, with what is usual where it says nothing. */
export function feedingHours(said: FeedingSettings | null): FeedingHours {
  const keys = Object.keys(USUAL) as (keyof typeof USUAL)[];
  const assumed = keys.filter((key) => (said?.[key] ?? null) === null);
  const of = (key: keyof typeof USUAL) => said?.[key] ?? USUAL[key];
  const [from, to, every] = [of('from'), of('to'), of('every')];
  const number = 1 + Math.floor((to - from) / every);
  return {
    portions: Array.from({ length: number }, (_, i) => from + i * every),
    from,
    to,
    soak: of('soak'),
    sprout: of('sprout'),
    assumed,
  };
}
