import { scaleLinear } from 'd3-scale';
import { area, curveStepAfter, line } from 'd3-shape';
import type { SeasonBook } from '../../../rules/season/season.ts';
import type { SeasonData } from '../../json/season.ts';
import { number, percent, percentRange } from '../../terminal/figures.ts';
import { survivalWords } from '../../terminal/season/survival.ts';
import { Figure } from '../figure.tsx';
import { Table } from '../table.tsx';

interface SurvivalParts {
  data: Pick<SeasonData, 'totals' | 'followed' | 'dangerousAges'>;
  /** The same block, for its words. */
  of: SeasonBook['totals'];
}

/** The share of chicks still alive at each age, in its band, and the days to watch. */
export function Survival({ data, of }: SurvivalParts) {
  const { instead, watch, caveat } = survivalWords(of);
  const rows = data.totals.survival;
  const last = rows.at(-1);
  return (
    <section>
      <h2>Chicks by age</h2>
      {instead === null ? null : <p>{instead}</p>}
      {last === undefined || data.followed.untilAge === null ? null : (
        <Figure
          title={`Share of chicks alive, by days of age${data.dangerousAges === null ? '' : ' (shaded: the days to watch)'}`}
          says={`A curve that falls in steps from 100 % at hatching to ${percent(last.surviving)} at day ${last.age}, within a band of 95 %.`}
          width={null}
          height={HEIGHT}
          table={
            <Table
              caption={null}
              head={['age in days', 'died', 'of', 'alive after it', '95 %']}
              right={[0, 1, 2, 3, 4]}
              rows={rows.map(({ age, atRisk, died, surviving, low, high }) => [
                age,
                number(died),
                number(atRisk),
                percent(surviving),
                low === null || high === null ? '–' : percentRange(low, high),
              ])}
            />
          }
        >
          <Curve rows={rows} untilAge={Math.max(1, data.followed.untilAge)} danger={data.dangerousAges} />
        </Figure>
      )}
      {watch === null ? null : <p>{watch}</p>}
      {caveat === null ? null : <p class="quiet small">{caveat}</p>}
    </section>
  );
}

const HEIGHT = 184;
const TOP = 16;
const PLOT = 144;

interface CurveParts {
  rows: SeasonData['totals']['survival'];
  untilAge: number;
  danger: SeasonData['dangerousAges'];
}

function Curve({ rows, untilAge, danger }: CurveParts) {
  const at = scaleLinear([0, untilAge], [0, 100]);
  const left = scaleLinear([0, 1], [100, 0]);
  const x = (age: number) => `${at(age).toFixed(2)}%`;
  const y = (share: number) => TOP + (PLOT * left(share)) / 100;
  const steps = [{ age: 0, surviving: 1, low: 1, high: 1 }, ...rows];
  const end = steps.at(-1);
  if (end !== undefined && end.age < untilAge) steps.push({ ...end, age: untilAge });
  const curve = line<(typeof steps)[number]>(
    ({ age }) => at(age),
    ({ surviving }) => left(surviving),
  ).curve(curveStepAfter);
  const band = area<(typeof steps)[number]>()
    .x(({ age }) => at(age))
    .y0(({ low, surviving }) => left(low ?? surviving))
    .y1(({ high, surviving }) => left(high ?? surviving))
    .curve(curveStepAfter);
  return (
    <>
      {danger === null ? null : (
        <rect
          class="danger"
          x={x(danger.from)}
          width={x(Math.max(danger.to - danger.from, 0.4))}
          y={TOP}
          height={PLOT}
        />
      )}
      {[1, 0.75, 0.5, 0.25, 0].map((share) => (
        <line class="rule" x1="0" x2="100%" y1={y(share)} y2={y(share)} />
      ))}
      <svg
        class="plot"
        aria-hidden="true"
        x="0"
        y={TOP}
        width="100%"
        height={PLOT}
        viewBox="0 0 100 100"
        preserveAspectRatio="none"
      >
        <path class="band" d={band(steps) ?? ''} />
        <path class="line" d={curve(steps) ?? ''} />
      </svg>
      {[1, 0.75, 0.5, 0.25, 0].map((share) => (
        <text class="tick" x="2" y={y(share) - 3}>
          {`${share * 100} %`}
        </text>
      ))}
      {at.ticks(6).map((age) => (
        <text
          class={`tick ${at(age) < 3 ? '' : at(age) > 97 ? 'end' : 'middle'}`}
          x={x(age)}
          y={TOP + PLOT + 16}
        >
          {age}
        </text>
      ))}
    </>
  );
}
