import type { Day } from '../../../days.ts';
import type { Bird, Egg } from '../../../room/model.ts';

/** The eggs and young of one clutch that somebody is credited with; for the whole room, the clutch itself. */
export interface Cohort {
  day: Day;
  /** Whether it is known how many eggs were laid. */
  counted: boolean;
  /** Whether it is known how many chicks hatched. */
  chicksCounted: boolean;
  eggs: readonly Egg[];
  chicks: readonly Bird[];
}

/** What a cohort gives to a rate: its counts; or how many wait for their time; or how many cannot be judged. */
export type Verdict =
  | { is: 'in'; k: number; n: number }
  | { is: 'open'; members: number }
  | { is: 'out'; members: number };

/** A rate in words. */
export interface MeasureWords {
  name: 'fertility' | 'hatchOfFertile' | 'hatchOfLaid' | 'fledge' | 'independence' | 'overall';
  /** As a line of a table calls it. */
  title: string;
  /** What k and n count: `fertile`, `eggs judged`. */
  of: { k: string; n: string };
  /** Whom it is credited to: who laid, who sat, who fed until fledging, who fed last. */
  credit: 'layer' | 'sitter' | 'nestFeeder' | 'lastFeeder';
  /** What it says and whom it counts, in a keeper's words. */
  explain: string;
}

/** One rate of the season: how its cohorts are counted, and beside it the words. */
export interface Measure extends MeasureWords {
  judge(cohort: Cohort): Verdict;
}

/** Eggs that were not taken by our hand: those are in no denominator. */
export function left(eggs: readonly Egg[]): Egg[] {
  return eggs.filter(({ fate }) => fate?.kind !== 'taken');
}
