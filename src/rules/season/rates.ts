import type { Day } from '../../days.ts';
import type { Bird, Clutch, Egg } from '../../room/model.ts';
import { type ClusteredProportion, clusteredProportion } from '../../statistics/design-effect.ts';
import type { Proportion } from '../../statistics/proportions.ts';
import { type Care, lastFeederOf, layerOf, nestFeederOf, sitterOf } from './care.ts';
import { chicksKnown } from './fates.ts';
import type { Grouping, GroupingSettings } from './groupings.ts';
import { type MeasureName, measureNames, measures } from './measures/index.ts';
import type { Cohort, Measure } from './measures/measure.ts';

/** One rate of one group; the figures that need any n are null without it. */
export interface Rate extends ClusteredProportion {
  /** Members of clutches whose time for this is not over. */
  open: number;
  /** Members of clutches that cannot be judged: of unknown size, or with eggs that nobody judged. */
  outside: number;
  /** Its clutches one by one, for comparisons. */
  clusters: readonly Proportion[];
}

export type Rates = Record<MeasureName, Rate>;

/** What rates are counted in: which clutches, on which day, divided how. */
export interface Counting {
  clutches: readonly Clutch[];
  day: Day;
  grouping: Grouping;
  settings: GroupingSettings;
}

/** Every rate of every group, by the group's name. */
export function ratesOf(counting: Counting): Map<string | null, Rates> {
  const groups = new Map<string | null, Partial<Record<MeasureName, Rate>>>();
  for (const name of measureNames) {
    for (const [group, cohorts] of cohortsOf(counting, measures[name])) {
      const rates = groups.get(group) ?? {};
      rates[name] = rateOf(measures[name], cohorts);
      groups.set(group, rates);
    }
  }
  return new Map([...groups].map(([group, rates]) => [group, { ...emptyRates(), ...rates }]));
}

/** The rates of a group of which there is nothing to count. */
export function emptyRates(): Rates {
  const rates = measureNames.map((name) => [name, rateOf(measures[name], [])] as const);
  return Object.fromEntries(rates) as Rates;
}

function rateOf(measure: Measure, cohorts: readonly Cohort[]): Rate {
  const clusters: Proportion[] = [];
  let open = 0;
  let outside = 0;
  for (const cohort of cohorts) {
    const verdict = measure.judge(cohort);
    if (verdict.is === 'in') clusters.push({ k: verdict.k, n: verdict.n });
    else if (verdict.is === 'open') open += verdict.members;
    else outside += verdict.members;
  }
  return { ...clusteredProportion(clusters), open, outside, clusters };
}

type Draft = Cohort & { eggs: Egg[]; chicks: Bird[] };

/**
 * The cohorts of a measure: for the whole room each clutch is one, whoever cared for it; where the care is credited,
 * those who were in one nest under one group are.
 */
function cohortsOf(
  { clutches, day, grouping, settings }: Counting,
  { credit }: Measure,
): Map<string | null, Cohort[]> {
  const groups = new Map<string | null, Map<unknown, Draft>>();
  const join = (care: Care | null, origin: Clutch): Draft => {
    const mine = care ?? ownCare(origin);
    const group = grouping.of(mine, settings);
    const nests = groups.get(group) ?? new Map<unknown, Draft>();
    groups.set(group, nests);
    const key = grouping.byCare ? (mine.clutch ?? mine.pair ?? origin) : origin;
    const draft = nests.get(key) ?? { day, counted: true, chicksCounted: true, eggs: [], chicks: [] };
    nests.set(key, draft);
    draft.counted &&= origin.counted;
    draft.chicksCounted &&= chicksKnown(origin);
    return draft;
  };
  for (const clutch of clutches) {
    for (const egg of clutch.eggs) join(careOfEgg(egg, credit), clutch).eggs.push(egg);
    for (const bird of clutch.chicks) join(careOfChick(bird, credit, day), clutch).chicks.push(bird);
  }
  return new Map([...groups].map(([group, nests]) => [group, [...nests.values()]]));
}

function ownCare(origin: Clutch): Care {
  return { origin, pair: origin.pair, clutch: origin, housing: origin.housing };
}

function careOfEgg(egg: Egg, credit: Measure['credit']): Care {
  return credit === 'layer' ? layerOf(egg) : sitterOf(egg);
}

function careOfChick(bird: Bird, credit: Measure['credit'], day: Day): Care | null {
  if (credit === 'nestFeeder') return nestFeederOf(bird, day);
  if (credit === 'lastFeeder') return lastFeederOf(bird, day);
  return credit === 'sitter' && bird.egg !== null ? sitterOf(bird.egg) : null;
}
