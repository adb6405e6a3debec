import type { Day, Span } from '../../../days.ts';
import { naturally } from '../../../findings/naturally.ts';
import { grouped } from '../../../grouped.ts';
import { count } from '../../../words.ts';
import type { SeasonData } from '../../json/season.ts';
import { dateSpan } from '../../terminal/dates.ts';
import { truncate } from '../../terminal/width.ts';
import { Table } from '../table.tsx';
import { type Course, spanOf } from '../timeline/course.ts';
import { TimelineLegend } from '../timeline/legend.tsx';
import { wholeMonths } from '../timeline/months.tsx';
import { type Lane, Timeline } from '../timeline.tsx';
import { type ClutchData, courseOf, dayIn, type Fold, foldsOf } from './lanes.ts';

/** Every clutch of the room on the calendar: a timeline a season, folded where it would fill the wall. */
export function Courses({ timeline, date }: Pick<SeasonData, 'timeline' | 'date'>) {
  const inOrder = [...timeline].sort((a, b) => naturally(a.pair, b.pair) || a.clutch - b.clutch);
  const seasons = [...grouped(inOrder, ({ season }) => season)].sort(([a], [b]) => naturally(a, b));
  const day = dayIn(date);
  return (
    <section>
      <h2>All clutches on the calendar</h2>
      <TimelineLegend />
      {seasons.map(([season, clutches]) => (
        <>
          {seasons.length > 1 ? <h3>{season}</h3> : null}
          <Year season={season} clutches={clutches} day={day} />
        </>
      ))}
    </section>
  );
}

interface YearParts {
  season: string;
  clutches: readonly ClutchData[];
  day: Day;
}

function Year({ season, clutches, day }: YearParts) {
  const folds = foldsOf(clutches);
  const courses = new Map(clutches.map((clutch) => [clutch, courseOf(clutch)]));
  const range = wholeMonths(spanOf([...courses.values()], day));
  const known: Known = { season, day, range, courses };
  const [first] = folds;
  if (folds.length === 1 && first !== undefined) return <Part fold={first} known={known} number={0} />;
  return (
    <>
      <p class="quiet small">Open a group to look at it; open groups are printed with the page.</p>
      {folds.map((fold, i) => (
        <details class="fold">
          <summary>
            {fold.title}, {count(fold.members.length, 'clutch', 'clutches')}
          </summary>
          <Part fold={fold} known={known} number={i} />
        </details>
      ))}
    </>
  );
}

interface Known {
  season: string;
  day: Day;
  range: Span;
  courses: ReadonlyMap<ClutchData, Course>;
}

/** A longer name would not fit on its line anyway; the table of dates has the whole. */
const LONG = 40;

function Part({ fold, known, number }: { fold: Fold<ClutchData>; known: Known; number: number }) {
  const { season, day, range, courses } = known;
  const drawn = fold.members.map((clutch) => ({ clutch, course: courses.get(clutch) ?? courseOf(clutch) }));
  const lanes = drawn.map(({ clutch, course }, i): Lane => {
    const { pair, species, of } = clutch;
    return {
      name: (
        <>
          {truncate(pair, LONG)} <span class="quiet species">{truncate(species ?? '', LONG)}</span>
        </>
      ),
      again: drawn[i - 1]?.clutch.pair === pair,
      clutch: clutch.clutch,
      course,
      cells: [of.eggs ?? '?', of.hatched, of.independent],
    };
  });
  const heads = { name: 'pair', cells: ['eggs', 'hatched', 'indep.'] };
  return (
    <>
      <Timeline
        caption={null}
        heads={heads}
        lanes={lanes}
        day={day}
        range={range}
        id={`${season.replace('/', '-')}-${number}`}
      />
      <details>
        <summary>The dates as a table</summary>
        <Dates name={`${season} ${fold.title}`.trim()} drawn={drawn} day={day} />
      </details>
    </>
  );
}

interface DatesParts {
  name: string;
  drawn: readonly { clutch: ClutchData; course: Course }[];
  day: Day;
}

function Dates({ name, drawn, day }: DatesParts) {
  const span = (one: Span | null) => (one === null ? '–' : dateSpan(one.from, one.to, day));
  return (
    <Table
      caption={null}
      wide
      moved={`dates of ${name}`}
      head={[
        'clutch',
        'laid',
        'sitting from',
        'hatched',
        'foreseen',
        'fledged',
        'foreseen',
        'independent',
        'foreseen',
      ]}
      rows={drawn.map(({ clutch: { pair, clutch }, course: { foreseen, ...real } }) => [
        `${pair}/${clutch}`,
        span(real.laid),
        span(real.sitting?.span ?? null),
        span(real.hatched),
        span(foreseen.hatch),
        span(real.fledged),
        span(foreseen.fledge),
        span(real.independent),
        span(foreseen.independent),
      ])}
    />
  );
}
