import { fertility } from './fertility.ts';
import { fledge } from './fledge.ts';
import { hatchOfFertile } from './hatch-of-fertile.ts';
import { hatchOfLaid } from './hatch-of-laid.ts';
import { independence } from './independence.ts';
import type { Measure, MeasureWords } from './measure.ts';
import { overall } from './overall.ts';

/** Every rate of a season by its name in the data, in the order of a bird's life. */
export const measures = {
  fertility,
  hatchOfFertile,
  hatchOfLaid,
  fledge,
  independence,
  overall,
} as const satisfies Record<string, Measure>;

export type MeasureName = keyof typeof measures;

export const measureNames = Object.keys(measures) as MeasureName[];

/** The same without their rules, for whoever shows them. */
export const measureWords: readonly MeasureWords[] = measureNames.map((name) => ({
  ...measures[name],
  name,
}));

export type { MeasureWords } from './measure.ts';
