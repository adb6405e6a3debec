import type { SeasonBook } from '../../rules/season/season.ts';
import type { ClutchStory } from '../../rules/season/story.ts';
import { type SeasonData, seasonData } from '../json/season.ts';
import { emptyWords, FEW_CLUTCHES, headOf } from '../season.ts';
import { comparisonSentences } from '../terminal/season/comparison.ts';
import { storyOf } from '../terminal/season/opening.ts';
import { visibleData } from '../terminal/visible.ts';
import { documentText } from './document.tsx';
import { Before } from './season/before.tsx';
import { Courses } from './season/courses.tsx';
import { Funnel } from './season/funnel.tsx';
import { Groups } from './season/groups.tsx';
import { Losses } from './season/losses.tsx';
import { Pairs } from './season/pairs.tsx';
import { Ranking } from './season/ranking.tsx';
import { RateNotes, Rates } from './season/rates.tsx';
import { Stages } from './season/stages.tsx';
import { SEASON_STYLE } from './season/style.ts';
import { Survival } from './season/survival.tsx';
import { TIMELINE_STYLE } from './timeline/style.ts';

/**
 * A season to look at, to print and to hand over. Its figures are drawn from the data that programs get, so that it
 * holds none that they do not; its sentences are those of the terminal.
 */
export function seasonPage(book: SeasonBook, stories: readonly ClutchStory[]): string {
  const { title, standing, counted } = headOf(book);
  const empty = book.totals.clutches.length === 0;
  return documentText({
    title,
    style: `${TIMELINE_STYLE}${SEASON_STYLE}`,
    children: (
      <>
        <h1>{title}</h1>
        <p class="quiet">{empty ? standing : `${counted}, ${standing}`}</p>
        {empty ? <p class="lead">{emptyWords(book)}</p> : <Told book={book} stories={stories} />}
      </>
    ),
  });
}

function Told({ book, stories }: { book: SeasonBook; stories: readonly ClutchStory[] }) {
  const data = visibleData(seasonData(book, stories));
  const { measures } = book;
  const { totals, before } = data;
  return (
    <>
      <p class="lead">{storyOf(book)}</p>
      <Funnel {...totals} />
      <Rates data={data} measures={measures} />
      <Survival data={data} of={book.totals} />
      <Losses {...totals} />
      <Courses {...data} />
      <Stages {...data} />
      <Divided data={data} book={book} />
      {before === null || book.before === null ? null : (
        <Before
          season={book.season}
          before={before}
          measures={measures}
          sentences={comparisonSentences(book.before.comparison, { measures, others: 'the seasons before' })}
        />
      )}
      <Ranking data={data} measures={measures} />
      <Pairs {...data} />
      <RateNotes measures={measures} />
      <footer>
        Every figure of this page, for a program: nestlog season {data.season} --json --date {data.date}
      </footer>
    </>
  );
}

/** The season by what was asked for, by seasons and by species, each where there is more than one. */
function Divided({ data, book: { by, measures } }: { data: SeasonData; book: SeasonBook }) {
  const { bySeason, bySpecies } = data;
  return (
    <>
      {by === null || data.by === null ? null : (
        <Groups
          title={`By ${by.says}`}
          what={by.says}
          nameless={by.nameless}
          groups={data.by.groups.map(({ group, ...block }) => ({ name: group, ...block }))}
          sentences={[
            ...comparisonSentences(by.comparison, { measures, others: 'all others' }),
            FEW_CLUTCHES,
          ]}
        />
      )}
      {by?.name === 'year' ? null : (
        <Groups
          title="Season by season"
          what="season"
          groups={bySeason.map(({ season, ...block }) => ({ name: season, ...block }))}
        />
      )}
      {by?.name === 'species' || bySpecies.length < 2 ? null : (
        <Groups
          title="Species"
          what="species"
          groups={bySpecies.map(({ species, ...block }) => ({ name: species, ...block }))}
        />
      )}
    </>
  );
}
