import type { Day } from '../../../days.ts';
import { formatTime } from '../../../journal/grammar/time-text.ts';
import type { Batch, Moment } from '../../../rules/feed/batches.ts';
import type { FeedPlan } from '../../../rules/feed/plan.ts';
import { weekdayDate } from '../dates.ts';
import { indented } from '../page.ts';
import { pad, wrap } from '../width.ts';
import { portion } from './grams.ts';

/** Steps of all batches in the order of the clock, from the day stood on; first, what has to stand ready by now. */
export function batchLines({ batches, day, days }: FeedPlan, width: number): string[] {
  const steps = batches
    .flatMap((batch) => stepsOf(batch, day))
    .filter(({ at }) => at.day >= day && at.day < day + days)
    .sort((a, b) => a.at.day - b.at.day || a.at.minute - b.at.minute);
  const begun = batches.filter(({ soak }) => soak.day < day);
  return [
    ...begunLines(begun, day, width),
    ...steps.flatMap(({ at, text }, index) => {
      const repeats = steps[index - 1]?.at.day === at.day;
      const gutter = `  ${pad(repeats ? '' : weekdayDate(at.day, day), GUTTER)}  ${formatTime(at.minute)}  `;
      return wrap(text, width, { taken: gutter.length, hanging: gutter.length }).map((line, i) =>
        i === 0 ? gutter + line : line,
      );
    }),
  ];
}

/** As wide as `Wed 20 May`. */
const GUTTER = 10;

function stepsOf({ dry, soak, drain, for: on }: Batch, day: Day): { at: Moment; text: string }[] {
  const meal = weekdayDate(on, day);
  return [
    { at: soak, text: `soak ${portion(dry)} g of dry seed for ${meal}` },
    { at: drain, text: `drain and rinse the seed for ${meal}` },
  ];
}

function begunLines(begun: readonly Batch[], day: Day, width: number): string[] {
  if (begun.length === 0) return [];
  const which = begun
    .map(
      ({ for: on, dry, soak }) =>
        `${portion(dry)} g for ${weekdayDate(on, day)} (soaked ${weekdayDate(soak.day, day)} ${formatTime(soak.minute)})`,
    )
    .join(', ');
  return indented(
    `To be under way already: ${which}. If it is not, give more egg food and greens on that day.`,
    { width },
    { hanging: 2 },
  );
}
