import type { MeasureWords } from '../../../rules/season/measures/index.ts';
import type { SeasonData } from '../../json/season.ts';
import { HOW } from '../../season.ts';
import { percent, percentRange } from '../../terminal/figures.ts';
import { ScaleHead, Whisker } from '../strip.tsx';
import { Table } from '../table.tsx';

interface RatesParts {
  data: Pick<SeasonData, 'totals' | 'outside'>;
  measures: readonly MeasureWords[];
}

/** Each rate with what it is of, its interval in figures and as a drawing, and what is not in it. */
export function Rates({ data: { totals, outside }, measures }: RatesParts) {
  return (
    <section>
      <h2>Rates</h2>
      <Table
        caption={null}
        wide
        moved="Rates"
        head={['rate', 'counted', 'share', '95 %', <ScaleHead />, 'open', 'not judged']}
        right={[1, 2, 3, 5, 6]}
        drawing={4}
        rows={measures.map(({ name, title }) => {
          const { k, n, open, rate, low, high } = totals.rates[name];
          return [
            title,
            `${k} of ${n}`,
            rate === null ? '–' : percent(rate),
            low === null || high === null ? '–' : percentRange(low, high),
            <Whisker low={low} at={rate} high={high} />,
            open,
            outside[name],
          ];
        })}
      />
      <p class="quiet small">{HOW}</p>
    </section>
  );
}

/** What each rate counts: the footnotes of the page. */
export function RateNotes({ measures }: Pick<RatesParts, 'measures'>) {
  return (
    <section>
      <h2>What each rate counts</h2>
      <dl class="notes small">
        {measures.map(({ title, explain }) => (
          <div>
            <dt>{title}</dt>
            <dd>{explain}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
