import { max } from 'd3-array';
import type { BlockData } from '../../json/season.ts';
import { besideWords } from '../../terminal/season/funnel.ts';
import { Bar, UnseenHead } from '../strip.tsx';
import { Table } from '../table.tsx';

/** From eggs laid to independent young, and below it those that are in no bar. */
export function Funnel({ eggs, chicks }: Pick<BlockData, 'eggs' | 'chicks'>) {
  const steps = [
    { name: 'laid', n: eggs.laid, step: 1 },
    { name: 'fertile', n: eggs.fertile, step: 2 },
    { name: 'hatched', n: eggs.hatched, step: 3 },
    { name: 'fledged', n: chicks.fledged, step: 4 },
    { name: 'independent', n: chicks.independent, step: 5 },
  ] as const;
  const most = Math.max(1, max(steps, ({ n }) => n) ?? 0);
  const beside = besideWords({ eggs, chicks });
  return (
    <section class="bars">
      <h2>From egg to independent</h2>
      <Table
        caption={null}
        head={['step', 'number', <UnseenHead says="drawn" />]}
        right={[1]}
        drawing={2}
        rows={steps.map(({ name, n, step }) => [name, n, <Bar share={n / most} step={step} />])}
      />
      {beside === null ? null : <p class="quiet small">{beside}</p>}
    </section>
  );
}
