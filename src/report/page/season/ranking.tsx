import type { MeasureWords } from '../../../rules/season/measures/index.ts';
import { count } from '../../../words.ts';
import type { SeasonData } from '../../json/season.ts';
import { rankingNote, TOO_LITTLE } from '../../season.ts';
import { percent, percentRange } from '../../terminal/figures.ts';
import { ScaleHead, Whisker } from '../strip.tsx';
import { Table } from '../table.tsx';

interface RankingParts {
  data: Pick<SeasonData, 'ranking' | 'byPair'>;
  measures: readonly MeasureWords[];
}

/** More pairs than this are folded but for the first and the last ones. */
const MOST = 60;
const ENDS = 20;

/** Pairs in the order of what their clutches make one expect of the next; nothing where there is one pair. */
export function Ranking({ data: { ranking, byPair }, measures }: RankingParts) {
  if (byPair.length < 2) return null;
  const between = (ranking?.pairs.length ?? 0) > MOST ? (ranking?.pairs.slice(ENDS, -ENDS) ?? []) : [];
  return (
    <section>
      <h2>Pairs in order</h2>
      {ranking === null ? (
        <p class="quiet">{TOO_LITTLE}</p>
      ) : (
        <>
          <Rows
            name="Pairs in order"
            pairs={between.length === 0 ? ranking.pairs : ranking.pairs.slice(0, ENDS)}
          />
          {between.length === 0 ? null : (
            <>
              <details class="fold">
                <summary>the {count(between.length, 'pair')} between</summary>
                <Rows name="Pairs between" pairs={between} />
              </details>
              <Rows name="Last pairs" pairs={ranking.pairs.slice(-ENDS)} />
            </>
          )}
          <p class="quiet small">
            {rankingNote(measures.find(({ name }) => name === ranking.rate)?.title ?? '')}
          </p>
        </>
      )}
    </section>
  );
}

interface RowsParts {
  name: string;
  pairs: NonNullable<SeasonData['ranking']>['pairs'];
}

function Rows({ name, pairs }: RowsParts) {
  return (
    <Table
      caption={null}
      wide
      moved={name}
      head={['pair', 'counted', 'expected', '95 %', <ScaleHead />]}
      right={[1, 2, 3]}
      drawing={4}
      rows={pairs.map(({ pair, k, n, expected, low, high }) => [
        pair,
        `${k} of ${n}`,
        percent(expected),
        percentRange(low, high),
        <Whisker low={low} at={expected} high={high} />,
      ])}
    />
  );
}
