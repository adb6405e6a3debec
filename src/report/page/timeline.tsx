import type { ComponentChildren } from 'preact';
import type { Day, Span } from '../../days.ts';
import { type Course, courseWords, spanOf } from './timeline/course.ts';
import { Months, placeOn, wholeMonths } from './timeline/months.tsx';
import { Strip } from './timeline/strip.tsx';

/** One clutch on a timeline of several. */
export interface Lane {
  /** What it stands under, as its pair's id. */
  name: ComponentChildren;
  /** Below another lane of the same name it is only read out. */
  again?: boolean;
  clutch: ComponentChildren;
  course: Course;
  /** What stands behind the drawing, one for each of the timeline's heads. */
  cells: readonly ComponentChildren[];
}

interface TimelineParts {
  /** Read out before it; null where a heading right above says so. */
  caption: string | null;
  /** What the names and the cells are. */
  heads: { name: string; cells: readonly string[] };
  lanes: readonly Lane[];
  /** The day stood on. */
  day: Day;
  /** What the drawing goes from and to, where several are to be compared. */
  range?: Span;
  /** Two timelines of a page differ in it. */
  id: string;
}

/**
 * Clutches below each other on one calendar: a table whose rows are drawn, so that a printer breaks it between lanes
 * and repeats the months, and whoever cannot see it has each lane's dates in words.
 */
export function Timeline({ caption, heads, lanes, day, range, id }: TimelineParts) {
  if (lanes.length === 0) return null;
  const courses = lanes.map(({ course }) => course);
  const place = placeOn(range ?? wholeMonths(spanOf(courses, day)), day);
  return (
    <div class="table">
      <table class="timeline">
        {caption === null ? null : <caption>{caption}</caption>}
        <thead>
          <tr>
            <th scope="col">{heads.name}</th>
            <th scope="col" aria-label="clutch">
              no.
            </th>
            <th scope="col">
              <span class="unseen">course</span>
              <Months {...place} id={id} />
            </th>
            {heads.cells.map((head) => (
              <th scope="col" class="right number">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {lanes.map(({ name, again = false, clutch, course, cells }) => (
            <tr class={again ? 'same' : undefined}>
              <th scope="row">{again ? <span class="unseen">{name}</span> : name}</th>
              <td class="right">{clutch}</td>
              <td class="course">
                <svg class="lane" role="img" aria-label={courseWords(course)}>
                  <use href={`#months-${id}`} />
                  <Strip course={course} place={place} />
                </svg>
              </td>
              {cells.map((cell) => (
                <td class="right number">{cell}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
