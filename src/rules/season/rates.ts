import type { Day } from '../../days.ts';
import { byName, keptIn } from '../../grouped.ts';
import type { Bird, Chick, Clutch, Egg } from '../../room/model.ts';
import { type ClusteredProportion, clusteredProportion } from '../../statistics/design-effect.ts';
import type { Proportion } from '../../statistics/proportions.ts';
import { type Care, lastFeederOf, nestFeederOf, ownCare, sitterOf } from './care.ts';
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
      const tallies = keptIn(groups, group, noTallies);
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

function noTallies(): Record<MeasureName, Tally> {
  return byName(measureNames, () => ({ clusters: [], open: 0, outside: 0 }));
}

function ratesFrom(tallies: Record<MeasureName, Tally>): Rates {
  return byName(measureNames, (name) => ({
    ...clusteredProportion(tallies[name].clusters),
    ...tallies[name],
  }));
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
    const ofN = keptIn(this.#known, n, () => new Map<number, Proportion>());
    return keptIn(ofN, k, () => ({ k, n }));
  }
}

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
  const groups = new Map<string | null, Map<unknown, Cohort>>();
  for (const clutch of clutches) {
    for (const { group, nest, eggs, chicks } of dividedByCare(clutch, { day, settings, grouping, credit })) {
      const nests = keptIn(groups, group, () => new Map<unknown, Cohort>());
      const known = nests.get(nest) ?? { counted: true, chicksCounted: true, eggs: [], chicks: [] };
      nests.set(nest, {
        day,
        counted: known.counted && clutch.counted,
        chicksCounted: known.chicksCounted && chicksKnown(clutch),
        eggs: together(known.eggs, eggs),
        chicks: together(known.chicks, chicks),
      });
    }
  }
  for (const [group, nests] of groups) for (const cohort of nests.values()) yield [group, cohort];
}

/** Those of a clutch who were cared for in one nest, and the group that is credited. */
interface Part extends Pick<Cohort, 'eggs' | 'chicks'> {
  group: string | null;
  /** The clutch with which they lived, else the pair; their own clutch where no pair cared for them. */
  nest: unknown;
}

interface Crediting extends Omit<Counting, 'clutches'> {
  grouping: Grouping;
  credit: Measure['credit'];
}

/** The clutch in parts by who cared for them. Most stay together: then its own lists are taken, and none is made. */
function dividedByCare(clutch: Clutch, { day, settings, grouping, credit }: Crediting): Part[] {
  const parts: (Part & { eggs: Egg[]; chicks: Bird[] })[] = [];
  const partOf = (care: Care) => {
    const group = grouping.of(care, settings);
    const nest = care.clutch ?? care.pair ?? clutch;
    const known = parts.find((part) => part.group === group && part.nest === nest);
    if (known !== undefined) return known;
    const part = { group, nest, eggs: [], chicks: [] };
    parts.push(part);
    return part;
  };
  for (const egg of clutch.eggs) partOf(careOfEgg(egg, credit)).eggs.push(egg);
  for (const bird of clutch.chicks) {
    partOf(careOfChick(bird, credit, day)).chicks.push(bird);
  }
  const [first] = parts;
  return first !== undefined && parts.length === 1
    ? [{ ...first, eggs: clutch.eggs, chicks: clutch.chicks }]
    : parts;
}

function together<T>(some: readonly T[], more: readonly T[]): readonly T[] {
  return some.length === 0 ? more : [...some, ...more];
}

function careOfEgg(egg: Egg, credit: Measure['credit']): Care {
  return credit === 'layer' ? ownCare(egg.clutch) : sitterOf(egg);
}

function careOfChick(bird: Chick, credit: Measure['credit'], day: Day): Care {
  if (credit === 'nestFeeder') return nestFeederOf(bird, day);
  // Of those who laid are the chicks of their eggs, and whoever sat is asked for none.
  return credit === 'lastFeeder' ? lastFeederOf(bird, day) : ownCare(bird.clutch);
}
