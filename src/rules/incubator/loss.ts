import type { Day } from '../../days.ts';
import { eggClock } from '../../room/clock.ts';
import { type Egg, lastPlace } from '../../room/model.ts';
import { middle, type Range } from '../../species/profile.ts';
import { type Line, lineThrough, type Measured } from '../../statistics/line.ts';
import { fromTo } from '../../words.ts';
import { byDay } from '../by-day.ts';
import { eggDoubt } from './doubt.ts';
import { freshMass } from './egg-size.ts';

/** A share of the fresh mass, and the limits between which it lies with nine chances in ten. */
export interface LossForecast {
  low: number;
  likely: number;
  high: number;
}

/** How an egg in the incubator dries. Masses are g, losses shares of the fresh mass, 0 to 1. */
export interface EggLoss {
  /** The last weighing. */
  last: { day: Day; grams: number };
  /** Days of warmth that it had by then. */
  warm: number;
  /** What it weighed when it was laid, and how that is known. */
  fresh: { grams: number; by: 'scales' | 'size' | 'line' } | null;
  lost: number | null;
  /** Expected by the time it pips; null while there is too little to go by. */
  atPip: LossForecast | null;
  /** The day around which it should pip. */
  pip: Day;
  /** Beside the wanted loss; `unsure` where the range takes in both. */
  verdict: 'fast' | 'slow' | 'on track' | 'unsure' | null;
}

/**
 * Wanted by the time of pipping: 15 % of the fresh mass, with a standard deviation of 2.5 between species (mean of 81
 * species: Ar & Rahn 1980, American Zoologist 20:373–384).
 */
export const WANTED: Range = { low: 0.125, high: 0.175 };
/** The same in words. */
export const WANTED_WORDS = '12.5–17.5 %';
/** The shell is broken through about a day before the chick is out (common practice). */
const PIP_BEFORE_HATCH = 1;
/** Of one reading, g: scales that show hundredths. */
const READING = 0.005;
/** Of a fresh mass worked out from length and breadth, as a share: the shapes and shells of species differ. */
const BY_SIZE = 0.02;
/** Standard deviations of the nine in ten. */
const NINE_IN_TEN = 1.645;

/**
 * The track of one egg that lies in an incubator: a straight line through its weights there, carried on to the day of
 * pipping. The rate rises a little towards the end, so a forecast from early weights is on the low side.
 *
 * The fresh mass is what the scales showed on the day of laying (or as it was set, where nobody had sat on it before),
 * else it follows from length and breadth, else from the line itself where all its warm days were in the incubator.
 *
 * @returns null for an egg that is not in an incubator, was never weighed, or whose species' incubation is not known
 */
export function eggLoss(egg: Egg, day: Day): EggLoss | null {
  const stay = lastPlace(egg);
  const profile = egg.clutch.pair.profile;
  const incubation = profile?.incubation?.value;
  const clock = eggClock(egg, day);
  if (egg.fate !== null || stay.place.kind !== 'incubator' || incubation === undefined || clock === null)
    return null;
  const start = (clock.start.from + clock.start.to) / 2;
  const begunHere = clock.start.from >= stay.from;
  const all = readings(egg);
  const last = all.at(-1);
  if (last === undefined) return null;
  const days = middle(incubation) - PIP_BEFORE_HATCH;
  const fresh = freshOf(egg, all, begunHere ? stay.from : egg.laid.to);
  const here: Measured[] = all
    // Where its warmth began here, what it weighed as it was set is its fresh mass.
    .filter((one) => (begunHere ? one.day > stay.from : one.day >= stay.from))
    .map((one) => ({ x: Math.max(0, one.day - start), y: one.grams, deviation: READING }));
  const points =
    begunHere && fresh !== null ? [{ x: 0, y: fresh.grams, deviation: fresh.deviation }, ...here] : here;
  const line = lineThrough(points);
  const whole =
    begunHere && line !== null ? { grams: line.intercept, by: fresh?.by ?? ('line' as const) } : fresh;
  const atPip =
    line === null || whole === null
      ? null
      : lossAt(days, (clock.start.to - clock.start.from) / Math.sqrt(12), line, begunHere ? null : fresh);
  return {
    last,
    warm: Math.max(0, last.day - start),
    fresh: whole === null ? null : { grams: whole.grams, by: whole.by },
    lost: whole === null ? null : 1 - last.grams / whole.grams,
    atPip,
    pip: Math.round(start + days),
    verdict: atPip === null ? null : verdictOn(atPip),
  };
}

/** One weight a day: the last that was written and is no slip. */
function readings(egg: Egg): { day: Day; grams: number }[] {
  const sound = egg.weights.filter((weight) => eggDoubt(egg, weight) === null);
  return byDay(sound).map(({ day, all }) => ({ day, grams: (all.at(-1) as { grams: number }).grams }));
}

interface Fresh {
  grams: number;
  by: 'scales' | 'size';
  deviation: number;
}

/** Before `until` an egg loses next to nothing: it lay in the nest half-laid, or in the cool. */
function freshOf(egg: Egg, all: readonly { day: Day; grams: number }[], until: Day): Fresh | null {
  const weighed = all.findLast(({ day }) => day <= until);
  if (weighed !== undefined) return { grams: weighed.grams, by: 'scales', deviation: READING };
  if (egg.size === null || eggDoubt(egg, null) !== null) return null;
  const grams = freshMass(egg.size);
  return { grams, by: 'size', deviation: BY_SIZE * grams };
}

/**
 * The share lost after so many warm days, of the line's own beginning or of a fresh mass known apart from it. `open` is
 * the standard deviation of the day on which the warmth began.
 */
function lossAt(days: number, open: number, line: Line, apart: Fresh | null): LossForecast {
  const { intercept, slope, interceptVariance, slopeVariance, covariance } = line;
  const mass = intercept + slope * days;
  const whole = apart?.grams ?? intercept;
  // The delta method, on 1 − (a + b·D) / W, with W the intercept a or a measurement of its own.
  const [byIntercept, bySlope] =
    apart === null ? [(slope * days) / whole ** 2, -days / whole] : [-1 / whole, -days / whole];
  const variance =
    byIntercept ** 2 * interceptVariance +
    bySlope ** 2 * slopeVariance +
    2 * byIntercept * bySlope * covariance +
    ((slope / whole) * open) ** 2 +
    (apart === null ? 0 : ((mass / whole ** 2) * apart.deviation) ** 2);
  const likely = 1 - mass / whole;
  const about = NINE_IN_TEN * Math.sqrt(variance);
  const share = (value: number) => Math.min(1, Math.max(0, value));
  return { low: share(likely - about), likely: share(likely), high: share(likely + about) };
}

/** Where a loss stands beside the wanted one. */
function verdictOn({ low, likely, high }: LossForecast): 'fast' | 'slow' | 'on track' | 'unsure' {
  if (low > WANTED.high) return 'fast';
  if (high < WANTED.low) return 'slow';
  return likely >= WANTED.low && likely <= WANTED.high ? 'on track' : 'unsure';
}

/** From the least to the most that any of these eggs may come to. */
export function widest(forecasts: readonly LossForecast[]): Range {
  return {
    low: Math.min(...forecasts.map(({ low }) => low)),
    high: Math.max(...forecasts.map(({ high }) => high)),
  };
}

/** `9–12 %`. */
export function shares({ low, high }: Range): string {
  return `${fromTo(Math.round(low * 100), Math.round(high * 100))} %`;
}
