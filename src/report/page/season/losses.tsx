import type { BlockData } from '../../json/season.ts';
import { visible } from '../../terminal/visible.ts';
import { Bar, UnseenHead } from '../strip.tsx';
import { Table } from '../table.tsx';

/** What eggs and young were lost to, the commonest first. */
export function Losses({ eggs, chicks }: Pick<BlockData, 'eggs' | 'chicks'>) {
  const most = Math.max(0, ...Object.values(eggs.lost), ...Object.values(chicks.died));
  return (
    <section>
      <h2>Losses</h2>
      {most === 0 ? <p>Nothing was lost.</p> : null}
      <div class="beside">
        <Causes who="eggs" causes={eggs.lost} most={most} step={2} />
        <Causes who="young" causes={chicks.died} most={most} step={4} />
      </div>
    </section>
  );
}

interface CausesParts {
  who: string;
  causes: Record<string, number>;
  most: number;
  step: 2 | 4;
}

function Causes({ who, causes, most, step }: CausesParts) {
  return (
    <Table
      caption={null}
      head={[who, 'number', <UnseenHead says="drawn" />]}
      right={[1]}
      drawing={2}
      rows={Object.entries(causes).map(([cause, n]) => [
        // A keeper's own words are keys here.
        cause === 'unknown' ? 'cause not known' : visible(cause),
        n,
        <Bar share={n / most} step={step} />,
      ])}
    />
  );
}
