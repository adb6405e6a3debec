import { scaleLinear } from 'd3-scale';
import { civilDate, type Day, dayOf, MONTHS, type Span } from '../../../days.ts';

/** Where days lie on a timeline. */
export interface Place extends Span {
  /** Percent of the drawing's width at which a day begins. */
  at: (day: Day) => number;
  /** The day stood on. */
  day: Day;
}

/** A drawing that goes over a stretch of days. */
export function placeOn({ from, to }: Span, day: Day): Place {
  return { at: scaleLinear([from, to + 1], [0, 100]), day, from, to };
}

/** A place or a length in percent of the drawing's width. */
export const ofWidth = (percent: number) => `${percent.toFixed(2)}%`;

/** Names of the months, and the lines that every lane draws again. */
export function Months({ at, from, to, day, id }: Place & { id: string }) {
  const starts = monthStarts({ from, to });
  return (
    <svg class="lane" aria-hidden="true">
      <defs>
        <g id={`months-${id}`}>
          <MonthLines at={at} from={from} to={to} day={day} />
        </g>
      </defs>
      {starts.map(({ day: start, name, year }, i) => (
        <>
          {year === null ? null : (
            <text class="month" x={ofWidth(at(start))} dx="2" y="10">
              {year}
            </text>
          )}
          <text class={i % 2 === 1 ? 'month odd' : 'month'} x={ofWidth(at(start))} dx="2" y="23">
            {name}
          </text>
        </>
      ))}
    </svg>
  );
}

/** More names than this would run into each other on paper. */
const MOST_NAMES = 15;
const STEPS = [1, 2, 3, 6, 12];

/** A line at each of the months, and one at the day stood on. */
export function MonthLines({ at, from, to, day }: Place) {
  return (
    <>
      {monthStarts({ from, to }).map(({ day: start }) => (
        <line class="month-line" x1={ofWidth(at(start))} x2={ofWidth(at(start))} y1="0" y2="100%" />
      ))}
      {day < from || day > to ? null : (
        <line class="today" x1={ofWidth(at(day))} x2={ofWidth(at(day))} y1="0" y2="100%" />
      )}
    </>
  );
}

/** The months that begin in a stretch of days, or every second, third … of them, with their names and, at the first of a year, its year. */
function monthStarts({ from, to }: Span): { day: Day; name: string; year: number | null }[] {
  const [first, last] = [monthOf(from), monthOf(to)];
  const many = last - first + 1;
  const step = STEPS.find((each) => many / each <= MOST_NAMES) ?? Math.ceil(many / MOST_NAMES / 12) * 12;
  const months = Array.from({ length: many }, (_, i) => first + i);
  return months
    .filter((month) => month % step === 0 && startOf(month) >= from)
    .map((month, i) => {
      const year = i === 0 || month % 12 < step ? Math.floor(month / 12) : null;
      return { day: startOf(month), name: MONTHS[month % 12] ?? '', year };
    });
}

/** Whole months around a stretch of days. */
export function wholeMonths({ from, to }: Span): Span {
  return { from: startOf(monthOf(from)), to: startOf(monthOf(to) + 1) - 1 };
}

/** Months counted through the years. */
function monthOf(day: Day): number {
  const { year, month } = civilDate(day);
  return year * 12 + month - 1;
}

function startOf(month: number): Day {
  return dayOf(Math.floor(month / 12), (month % 12) + 1, 1);
}
