import { feedJson } from '../report/json/feed.ts';
import { feedText } from '../report/terminal/feed.ts';
import { broodsOf } from '../rules/brood.ts';
import { learnedDurations } from '../rules/durations.ts';
import { factsOf } from '../rules/feed/facts.ts';
import { hatchChances } from '../rules/feed/hatch-chance.ts';
import { feedPlan } from '../rules/feed/plan.ts';
import type { CommandDefinition, Context, ExitCode } from './context.ts';
import { openStock } from './open-stock.ts';
import { UsageError } from './usage-error.ts';

interface FeedOptions {
  days: number;
}

/** Further ahead is nothing to reckon with. */
const MOST_DAYS = 60;

export const definition: CommandDefinition = {
  examples: [
    { line: 'nestlog feed', says: 'a week’s plan for the kitchen wall: who, where, when, how much' },
    { line: 'nestlog feed --days 14', says: 'for a fortnight' },
    { line: 'nestlog feed --json', says: 'with low, likely and high of every amount' },
  ],
  options: [
    {
      flags: '--days <number>',
      description: 'how many days, this one included',
      default: 7,
      parse: daysPlanned,
    },
  ],
};

/** Prints what everyone eats in the coming days. */
export function run(context: Context<FeedOptions>): ExitCode {
  const { options, stdout, json } = context;
  const { room, stock } = openStock(context);
  const durations = learnedDurations(room);
  const broods = broodsOf(room, durations);
  const facts = factsOf();
  const plan = feedPlan({ room, stock, broods, durations, facts, chance: hatchChances(room) }, options.days);
  stdout.write(json ? feedJson(plan) : feedText(plan, stdout));
  return 0;
}

function daysPlanned(text: string): number {
  const days = Number(text);
  if (/^\d{1,2}$/.test(text) && days >= 1 && days <= MOST_DAYS) return days;
  throw new UsageError(`--days takes a number of days from 1 to ${MOST_DAYS}, such as 14, not \`${text}\``);
}
