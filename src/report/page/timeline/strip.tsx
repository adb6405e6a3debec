import type { Day } from '../../../days.ts';
import { lastDrawn } from '../../course-end.ts';
import { type Course, stretchesOf, windowsOf } from './course.ts';
import { ofWidth, type Place } from './months.tsx';

/** Days below which a letter would not fit on its stage. */
const LETTER = 7;

interface StripParts {
  course: Course;
  place: Place;
  /** Only the bar and its end, where there is no room for letters and for what was foreseen. */
  compact?: boolean;
}

/** The course itself: its stages as one bar, below them what was foreseen, and how it ended. */
export function Strip({ course, place, compact = false }: StripParts) {
  const { at, day, from, to } = place;
  const last = lastDrawn(course, day);
  const ended = course.over !== null && last === course.over;
  const clip = (one: Day) => Math.max(from, Math.min(to + 1, one));
  return (
    <>
      {stretchesOf(course, last).map(({ from: start, to: end, step, letter }) => (
        <>
          <rect
            class={`fill ${step}`}
            x={ofWidth(at(clip(start)))}
            width={ofWidth(at(clip(end)) - at(clip(start)))}
            y="2"
            height="12"
          />
          {compact || letter === '' || end - start < LETTER ? null : (
            <text class={`on letter ${step}`} x={ofWidth(at((start + end) / 2))} y="11.5">
              {letter}
            </text>
          )}
        </>
      ))}
      {(compact ? [] : windowsOf(course)).map((window) => (
        <>
          <line
            class="foreseen"
            x1={ofWidth(at(clip(window.from)))}
            x2={ofWidth(at(clip(window.to + 1)))}
            y1="18"
            y2="18"
          />
          {window.likely === null ? null : (
            <circle class="likely" cx={ofWidth(at(clip(window.likely + 0.5)))} cy="18" r="2" />
          )}
        </>
      ))}
      {ended ? (
        <End x={ofWidth(at(clip(last + 1)))} good={course.independent !== null} compact={compact} />
      ) : null}
    </>
  );
}

/** Where a clutch is over: with young that feed themselves, or with none. */
function End({ x, good, compact }: { x: string; good: boolean; compact: boolean }) {
  return good ? (
    <circle class="good" cx={x} cy="8" r={compact ? 3 : 4.5} />
  ) : (
    <text class="none" x={x} dx="3" y="12.5">
      ×
    </text>
  );
}
