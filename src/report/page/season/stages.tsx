import type { SeasonData } from '../../json/season.ts';
import { STAGE_NOTE, wasWatched } from '../../season.ts';
import { number, percent, percentRange } from '../../terminal/figures.ts';
import { STAGE_WORDS } from '../../terminal/season/stages.ts';
import { ScaleHead, Whisker } from '../strip.tsx';
import { Table } from '../table.tsx';

/** How whole clutches came through each stage; nothing where none was watched. */
export function Stages({ totals, stageDays }: Pick<SeasonData, 'totals' | 'stageDays'>) {
  const watched = totals.stages.filter(wasWatched);
  if (watched.length === 0) return null;
  return (
    <section>
      <h2>Clutches by stage</h2>
      <Table
        caption={null}
        wide
        moved="Clutches by stage"
        head={['stage', 'days watched', 'lost', 'usual days', 'through it', '95 %', <ScaleHead />]}
        right={[1, 2, 3, 4, 5]}
        drawing={6}
        rows={watched.map(({ stage, exposure, losses, period, low, high }) => {
          const days = stageDays[stage] ?? null;
          return [
            STAGE_WORDS[stage],
            number(exposure),
            losses,
            days === null ? '–' : number(days),
            period === null ? '–' : percent(period),
            low === null || high === null ? '–' : percentRange(low, high),
            <Whisker low={low} at={period} high={high} />,
          ];
        })}
      />
      <p class="quiet small">{STAGE_NOTE}</p>
    </section>
  );
}
