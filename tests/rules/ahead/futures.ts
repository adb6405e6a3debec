import { upTo } from '../../../src/days.ts';
import type { Room } from '../../../src/room/fold.ts';
import { beliefsOf } from '../../../src/rules/ahead/beliefs.ts';
import { type Course, coursesOf } from '../../../src/rules/ahead/courses.ts';
import { NEVER } from '../../../src/rules/ahead/fate.ts';
import { prospectsOf } from '../../../src/rules/ahead/prospects.ts';
import { countBy } from '../../../src/rules/ahead/weeks.ts';
import { learnedDurations } from '../../../src/rules/durations.ts';
import { type Estimate, estimateOf } from '../../../src/statistics/estimate.ts';

export const DRAWS = 1000;

/** The futures of a room with what is believed of it. */
export function futures(room: Room, draws = DRAWS): Course[] {
  const { day } = room;
  const { prospects } = prospectsOf(room);
  return coursesOf(prospects, { day, draws, beliefs: beliefsOf(room), durations: learnedDurations(room) });
}

/** How many of some days ever come. */
export function ever(
  courses: readonly Course[],
  of: 'hatched' | 'fledged' | 'independent' | 'ringable',
  draws = DRAWS,
): Estimate {
  const days = courses.map((course) => course[of]);
  return estimateOf(countBy(days, upTo(NEVER - 1), draws));
}

/** A pair of zebra finches that laid so many eggs from 1 March on, seen one by one, and sat on the last day. */
export function layingPair(id: string, eggs: number, more: readonly string[] = []): string {
  const lines = Array.from({ length: eggs }, (_, i) => `    - {date: 2026-03-0${i + 1}, laid: 1}`);
  return `
pair: ${id}
species: zebra finch
housing: cage ${id}
log:
${[...lines, `    - {date: 2026-03-0${eggs}, sitting}`, ...more.map((line) => `    - ${line}`)].join('\n')}
`;
}
