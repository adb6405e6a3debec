import { max } from 'd3-array';
import type { Day, Span } from '../../../days.ts';
import { grouped } from '../../../grouped.ts';
import { count } from '../../../words.ts';
import type { SeasonData } from '../../json/season.ts';
import { dateSpan } from '../../terminal/dates.ts';
import { percent, percentRange } from '../../terminal/figures.ts';
import { Bar, Whisker } from '../strip.tsx';
import { type Course, spanOf } from '../timeline/course.ts';
import { MonthLines, type Place, placeOn, wholeMonths } from '../timeline/months.tsx';
import { Strip } from '../timeline/strip.tsx';
import { courseOf, dayIn, foldsOf } from './lanes.ts';

type PairData = SeasonData['byPair'][number];

interface Panel extends PairData {
  pair: string;
  species: string | null;
  courses: Course[];
}

/** A panel for each pair, all on the same scales, so that a glance along them compares. */
export function Pairs({ byPair, timeline, date }: Pick<SeasonData, 'byPair' | 'timeline' | 'date'>) {
  const clutches = grouped(timeline, ({ pair }) => pair);
  const panels = byPair.map((data): Panel => {
    const pair = data.pair ?? '';
    const own = clutches.get(pair) ?? [];
    return { ...data, pair, species: own[0]?.species ?? null, courses: own.map(courseOf) };
  });
  const day = dayIn(date);
  const range: Span = wholeMonths(
    spanOf(
      panels.flatMap(({ courses }) => courses),
      day,
    ),
  );
  const scale: PanelScale = {
    most: Math.max(1, max(panels, ({ eggs }) => eggs.laid) ?? 0),
    place: placeOn(range, day),
  };
  const folds = foldsOf(panels);
  return (
    <section>
      <h2>Pair by pair</h2>
      <p class="quiet small">
        All on one scale: bars up to {count(scale.most, 'egg')}, calendars over{' '}
        {dateSpan(range.from, range.to, day)}. The dot is the share of eggs that became independent birds, its
        line the 95 %; eggs and young that others reared count for who laid them.
      </p>
      {folds.map(({ title, members }) =>
        title === '' ? (
          <Panels panels={members} scale={scale} />
        ) : (
          <details class="fold">
            <summary>
              {title}, {count(members.length, 'pair')}
            </summary>
            <Panels panels={members} scale={scale} />
          </details>
        ),
      )}
    </section>
  );
}

interface PanelScale {
  most: number;
  place: Place;
}

function Panels({ panels, scale }: { panels: readonly Panel[]; scale: PanelScale }) {
  return (
    <div class="panels">
      {panels.map((panel) => (
        <PairPanel panel={panel} scale={scale} />
      ))}
    </div>
  );
}

function PairPanel({ panel, scale: { most, place } }: { panel: Panel; scale: PanelScale }) {
  const { pair, species, eggs, chicks, rates, reared, courses, clutches } = panel;
  const { k, n, open, rate, low, high } = rates.overall;
  const rows = rowsOf(courses, place.day);
  const steps = [
    { name: 'laid', n: eggs.laid, step: 1 },
    { name: 'hatched', n: eggs.hatched, step: 3 },
    { name: 'fledged', n: chicks.fledged, step: 4 },
    { name: 'independent', n: chicks.independent, step: 5 },
  ] as const;
  return (
    <section class="panel">
      <h3>
        {pair} <span class="quiet">{species}</span>
      </h3>
      <dl>
        {steps.map(({ name, n: number, step }) => (
          <div>
            <dt>{name}</dt>
            <dd>
              {number}
              <Bar share={number / most} step={step} />
            </dd>
          </div>
        ))}
      </dl>
      {rate === null ? null : <Whisker low={low} at={rate} high={high} />}
      <p class="small">
        {rate === null || low === null || high === null
          ? open > 0
            ? 'nothing finished yet'
            : 'nothing that can be counted'
          : `${k} of ${count(n, 'egg')}: ${percent(rate)}, ${percentRange(low, high)}`}
      </p>
      <svg class="lane" style={`height: ${rows.length * ROW}px`} aria-hidden="true">
        <MonthLines {...place} />
        {rows.map((row, i) => (
          <g transform={`translate(0 ${i * ROW})`}>
            {row.map((course) => (
              <Strip course={course} place={place} compact />
            ))}
          </g>
        ))}
      </svg>
      <p class="quiet small">
        {count(clutches, 'clutch', 'clutches')}
        {reared.taken === 0
          ? ''
          : `; was given ${count(reared.taken, 'egg or chick', 'eggs and chicks')} of others and brought ${reared.independent} in all to independence`}
      </p>
    </section>
  );
}

/** Of a row of a panel's calendar, in CSS pixels. */
const ROW = 17;

/** Courses in as few rows as keep one that begins beside the last brood from covering it. */
function rowsOf(courses: readonly Course[], day: Day): Course[][] {
  const rows: Course[][] = [];
  for (const course of [...courses].sort((a, b) => a.begun - b.begun)) {
    const free = rows.find((row) => row.every((other) => spanOf([other], day).to < course.begun));
    if (free === undefined) rows.push([course]);
    else free.push(course);
  }
  return rows;
}
