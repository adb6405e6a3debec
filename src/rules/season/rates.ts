import type { Day } from '../../days.ts';
import type { Bird, Clutch, Egg } from '../../room/model.ts';
import { type ClusteredProportion, clusteredProportion } from '../../statistics/design-effect.ts';
import type { Proportion } from '../../statistics/proportions.ts';
import { type Care, lastFeederOf, layerOf, nestFeederOf, sitterOf } from './care.ts';
import { chicksKnown } from './fates.ts';
import type { Grouping, GroupingSettings } from './groupings.ts';
import { type MeasureName, measureNames, measures } from './measures/index.ts';
import type { Cohort, Measure, Verdict } from './measures/measure.ts';

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

/** What is counted: which clutches, on which day, by which of the room's settings. */
export interface Counting {
  clutches: readonly Clutch[];
  day: Day;
  settings: GroupingSettings;
}

/** Every rate of every group, by the group's name. */
export function ratesOf(counting: Counting, grouping: Grouping): Map<string | null, Rates> {
  const groups = new Map<string | null, Record<MeasureName, Tally>>();
  const alike = new Alike();
  for (const [credit, names] of byCredit) {
    for (const [group, cohort] of cohortsOf(counting, grouping, credit)) {
      const tallies = groups.get(group) ?? noTallies();
      groups.set(group, tallies);
      for (const name of names) count(tallies[name], measures[name].judge(cohort), alike);
    }
  }
  return new Map([...groups].map(([group, tallies]) => [group, ratesFrom(tallies)]));
}

/** The rates of a group of which there is nothing to count. */
export function emptyRates(): Rates {
  return ratesFrom(noTallies());
}

/** The measures that credit the same care: they count the same cohorts. */
const byCredit = [...new Set(measureNames.map((name) => measures[name].credit))].map(
  (credit) => [credit, measureNames.filter((name) => measures[name].credit === credit)] as const,
);

/** What the verdicts on a group's cohorts add up to so far. */
type Tally = Pick<Rate, 'open' | 'outside'> & { clusters: Proportion[] };

function eachMeasure<T>(make: (name: MeasureName) => T): Record<MeasureName, T> {
  return Object.fromEntries(measureNames.map((name) => [name, make(name)])) as Record<MeasureName, T>;
}

function noTallies(): Record<MeasureName, Tally> {
  return eachMeasure(() => ({ clusters: [], open: 0, outside: 0 }));
}

function ratesFrom(tallies: Record<MeasureName, Tally>): Rates {
  return eachMeasure((name) => ({ ...clusteredProportion(tallies[name].clusters), ...tallies[name] }));
}

function count(tally: Tally, verdict: Verdict, alike: Alike): void {
  if (verdict.is === 'in') tally.clusters.push(alike.of(verdict));
  else if (verdict.is === 'open') tally.open += verdict.members;
  else tally.outside += verdict.members;
}

/** Each proportion once: a lifetime's clutches come to the same few, and each is in a dozen lists. */
class Alike {
  readonly #known = new Map<number, Map<number, Proportion>>();

  of({ k, n }: Proportion): Proportion {
    const ofN = this.#known.get(n) ?? new Map<number, Proportion>();
    this.#known.set(n, ofN);
    const known = ofN.get(k) ?? { k, n };
    ofN.set(k, known);
    return known;
  }
}

type Draft = Cohort & { eggs: Egg[]; chicks: Bird[] };

/**
 * The cohorts that a credit makes, each with its group: where the care does not divide them each clutch is one, whoever
 * cared for it; where it does, those who were in one nest under one group are.
 */
function* cohortsOf(
  { clutches, day, settings }: Counting,
  grouping: Grouping,
  credit: Measure['credit'],
): Generator<[string | null, Cohort]> {
  if (!grouping.byCare) {
    for (const clutch of clutches) {
      const { counted, eggs, chicks } = clutch;
      if (eggs.length + chicks.length === 0) continue;
      yield [
        grouping.of(ownCare(clutch), settings),
        { day, counted, chicksCounted: chicksKnown(clutch), eggs, chicks },
      ];
    }
    return;
  }
  const groups = new Map<string | null, Map<unknown, Draft>>();
  const join = (care: Care | null, origin: Clutch): Draft => {
    const mine = care ?? ownCare(origin);
    const group = grouping.of(mine, settings);
    const nests = groups.get(group) ?? new Map<unknown, Draft>();
    groups.set(group, nests);
    const key = mine.clutch ?? mine.pair ?? origin;
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
  for (const [group, nests] of groups) for (const draft of nests.values()) yield [group, draft];
}

/** The care of a clutch that stayed with those who laid it. */
export function ownCare(origin: Clutch): Care {
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
