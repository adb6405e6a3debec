import type { FeedPlan } from '../../../rules/feed/plan.ts';
import { sumBy } from '../../../statistics/sums.ts';
import { shortDate } from '../dates.ts';
import { pad, wrap } from '../width.ts';
import { gramRange, likelyGrams, portion, upTo } from './grams.ts';

/** What all of it comes to, a line a food, live food by size below it. */
export function buyLines(plan: FeedPlan, width: number): string[] {
  const { totals, liveBySize, batches, day, days } = plan;
  const begun = batches.filter(({ soak }) => soak.day >= day && soak.day < day + days);
  const seed = sumBy(begun, ({ dry }) => portion(dry));
  const rows: [string, string][] = [
    ['live food', liveText(plan)],
    ...liveBySize.map(({ size, grams }): [string, string] => [
      `  up to ${size.upTo} mm`,
      `${gramRange(grams)}: ${size.words}`,
    ]),
    ['egg food, moist', totals.egg.high > 0 ? likelyGrams(totals.egg) : 'none'],
    [
      'seed to sprout',
      seed > 0 ? `${seed} g, for the batches begun by ${shortDate(day + days - 1, day)}` : 'none',
    ],
    ['dry seed', `${likelyGrams(totals.dry)} eaten, and a fifth more for the husks`],
  ];
  const column = Math.max(...rows.map(([name]) => name.length)) + 2;
  return rows.flatMap(([name, text]) =>
    wrap(text, width - 2, { taken: column, hanging: column }).map((line, index) =>
      index === 0 ? `  ${pad(name, column)}${line}` : `  ${line}`,
    ),
  );
}

/** First what the printed portions add up to: whoever buys the likely amount and serves the table runs out. */
function liveText({ housings, hours, totals }: FeedPlan): string {
  if (totals.live.high <= 0) return 'none';
  const number = hours.portions.length;
  const grams = sumBy(
    housings.flatMap((place) => place.days),
    ({ foods }) => portion(foods.live.high / number) * number,
  );
  return `${upTo(grams)} g for the portions above; likely to be eaten: ${likelyGrams(totals.live)}`;
}
