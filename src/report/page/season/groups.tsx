import type { BlockData } from '../../json/season.ts';
import { GROUP_HEADS, GROUP_MEASURES, GROUP_NOTE, hasGroupRate } from '../../season.ts';
import { percent } from '../../terminal/figures.ts';
import { ScaleHead, Whisker } from '../strip.tsx';
import { Table } from '../table.tsx';

interface GroupsParts {
  title: string;
  /** What the groups are, as the head of their column. */
  what: string;
  nameless?: string;
  groups: readonly (BlockData & { name: string | null })[];
  /** What the groups tell of each other. */
  sentences?: readonly string[];
}

/** Groups beside each other: how many, each rate as its counts and its share, and the last one with its interval. */
export function Groups({ title, what, nameless = 'not written down', groups, sentences = [] }: GroupsParts) {
  const filled = groups.filter(({ clutches, rates }) => clutches > 0 || hasGroupRate(rates));
  if (filled.length === 0) return null;
  return (
    <section class="groups">
      <h2>{title}</h2>
      <Table
        caption={null}
        wide
        moved={title}
        head={[what, 'clutches', 'eggs', ...Object.values(GROUP_HEADS), <ScaleHead />]}
        right={[1, 2, 3, 4, 5, 6]}
        drawing={7}
        rows={filled.map(({ name, clutches, eggs, rates }) => [
          name ?? nameless,
          clutches,
          eggs.laid,
          ...GROUP_MEASURES.map((measure) => <Share {...rates[measure]} />),
          <Whisker low={rates.overall.low} at={rates.overall.rate} high={rates.overall.high} />,
        ])}
      />
      {sentences.map((sentence) => (
        <p>{sentence}</p>
      ))}
      <p class="quiet small">{GROUP_NOTE} The drawing is of the last, with its 95 %.</p>
    </section>
  );
}

/** `80 %` and below it `8/10`. */
function Share({ k, n, rate, open }: BlockData['rates']['overall']) {
  if (rate === null) return <span class="quiet">{open > 0 ? 'open' : '–'}</span>;
  return (
    <>
      {percent(rate)}{' '}
      <span class="quiet counts">
        {k}/{n}
      </span>
    </>
  );
}
