import type { MeasureWords } from '../../../rules/season/measures/index.ts';
import type { SeasonData } from '../../json/season.ts';
import { percent, pointsRange } from '../../terminal/figures.ts';
import { DIFFERENCES, ScaleHead, Whisker } from '../strip.tsx';
import { Table } from '../table.tsx';

interface BeforeParts {
  season: string;
  before: NonNullable<SeasonData['before']>;
  measures: readonly MeasureWords[];
  /** What the differences amount to. */
  sentences: readonly string[];
}

/** Every rate beside that of the seasons before, with where the difference lies. */
export function Before({ season, before, measures, sentences }: BeforeParts) {
  if (sentences.length === 0) return null;
  return (
    <section>
      <h2>
        {season} beside {before.season}
      </h2>
      <Table
        caption={null}
        wide
        moved={`${season} beside ${before.season}`}
        head={['rate', season, before.season, 'the difference lies at', <ScaleHead scale={DIFFERENCES} />]}
        right={[1, 2, 3]}
        drawing={4}
        rows={before.differences.map(({ rate, own, others, difference, low, high }) => [
          measures.find(({ name }) => name === rate)?.title ?? rate,
          percent(own),
          percent(others),
          pointsRange(low, high),
          <Whisker low={low} at={difference} high={high} scale={DIFFERENCES} />,
        ])}
      />
      {sentences.map((sentence) => (
        <p>{sentence}</p>
      ))}
    </section>
  );
}
