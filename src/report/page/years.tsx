import type { Day } from '../../days.ts';
import type { Course } from './timeline/course.ts';
import { TimelineLegend } from './timeline/legend.tsx';
import { Timeline } from './timeline.tsx';

/** One clutch of a pair as its years show it. */
export interface YearClutch extends Course {
  season: string;
  number: number;
  /** Null where nobody counted them. */
  eggs: number | null;
  chicks: number | null;
  /** Young that left the nest, and that fed themselves. */
  left: number;
  fed: number;
}

/** A pair's clutches on a calendar, a drawing for each season. Nothing without clutches. */
export function Years({ clutches, day }: { clutches: readonly YearClutch[]; day: Day }) {
  const seasons = [...new Set(clutches.map(({ season }) => season))];
  if (seasons.length === 0) return null;
  return (
    <section>
      <h2>Its clutches on the calendar</h2>
      {seasons.map((season, index) => (
        <Timeline
          caption={null}
          heads={{ name: 'season', cells: ['eggs', 'chicks', 'fledged', 'indep.'] }}
          lanes={clutches
            .filter((one) => one.season === season)
            .map((one) => ({
              name: season,
              clutch: one.number,
              course: one,
              cells: [one.eggs ?? '?', one.chicks ?? '?', one.left, one.fed],
            }))}
          day={day}
          id={`year-${index}`}
        />
      ))}
      <TimelineLegend />
    </section>
  );
}
