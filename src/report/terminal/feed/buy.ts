import type { FeedPlan } from '../../../rules/feed/plan.ts';
import { shortDate } from '../dates.ts';
import { pad, wrap } from '../width.ts';
import { gramRange, likelyGrams, portion } from './grams.ts';

/** What all of it comes to, a line a food, live food by size below it. */
export function buyLines({ totals, liveBySize, batches, day, days }: FeedPlan, width: number): string[] {
  const begun = batches.filter(({ soak }) => soak.day >= day && soak.day < day + days);
  const seed = begun.reduce((total, { dry }) => total + portion(dry), 0);
  const rows: [string, string][] = [
    ['live food', totals.live.high > 0 ? likelyGrams(totals.live) : 'none'],
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
