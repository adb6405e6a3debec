import { scaleLinear } from 'd3-scale';
import type { ComponentChildren } from 'preact';
import type { Day, Span } from '../../days.ts';
import { type Course, courseWords, lastOf, spanOf, stretchesOf, windowsOf } from './timeline/course.ts';
import { Months, type Place, percent, wholeMonths } from './timeline/months.tsx';

/** One clutch on a timeline of several. */
export interface Lane {
  /** What it stands under, as its pair's id; null below another lane of the same name. */
  name: string | null;
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
  const { from, to } =
    range ??
    wholeMonths(
      spanOf(
        lanes.map(({ course }) => course),
        day,
      ),
    );
  const at = scaleLinear([from, to + 1], [0, 100]);
  const place: Place = { at, day, from, to };
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
            <th scope="col" aria-label="course">
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
          {lanes.map(({ name, clutch, course, cells }) => (
            <tr class={name === null ? 'same' : undefined}>
              <th scope="row">{name}</th>
              <td class="right">{clutch}</td>
              <td class="course">
                <Strip course={course} place={place} id={id} />
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

const HEIGHT = 22;
/** Days below which a letter would not fit on its stage. */
const LETTER = 7;

function Strip({ course, place, id }: { course: Course; place: Place; id: string }) {
  const { at, day, from, to } = place;
  const last = lastOf(course, day);
  const ended = course.over !== null && last === course.over;
  const clip = (one: Day) => Math.max(from, Math.min(to + 1, one));
  return (
    <svg class="lane" height={HEIGHT} role="img" aria-label={courseWords(course)}>
      <use href={`#months-${id}`} />
      {stretchesOf(course, last).map(({ from: start, to: end, step, letter }) => (
        <>
          <rect
            class={`fill ${step}`}
            x={percent(at(clip(start)))}
            width={percent(at(clip(end)) - at(clip(start)))}
            y="2"
            height="12"
          />
          {letter === '' || end - start < LETTER ? null : (
            <text class={`on letter ${step}`} x={percent(at((start + end) / 2))} y="11.5">
              {letter}
            </text>
          )}
        </>
      ))}
      {windowsOf(course).map((window) => (
        <>
          <line
            class="foreseen"
            x1={percent(at(clip(window.from)))}
            x2={percent(at(clip(window.to + 1)))}
            y1="18"
            y2="18"
          />
          {window.likely === null ? null : (
            <circle class="likely" cx={percent(at(clip(window.likely + 0.5)))} cy="18" r="2" />
          )}
        </>
      ))}
      {ended ? <End x={percent(at(clip(last + 1)))} good={course.independent !== null} /> : null}
    </svg>
  );
}

/** Where a clutch is over: with young that feed themselves, or with none. */
function End({ x, good }: { x: string; good: boolean }) {
  return good ? (
    <circle class="good" cx={x} cy="8" r="4.5" />
  ) : (
    <text class="none" x={x} dx="3" y="12.5">
      ×
    </text>
  );
}
