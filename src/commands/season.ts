import { seasonJson } from '../report/json/season.ts';
import { seasonText } from '../report/terminal/season.ts';
import type { Room } from '../room/fold.ts';
import { type GroupingName, groupings } from '../rules/season/groupings.ts';
import { type SeasonBook, seasonBook } from '../rules/season/season.ts';
import { parseSeasons, type Seasons, seasonsMeant } from '../rules/season/seasons.ts';
import { clutchStories } from '../rules/season/story.ts';
import type { CommandDefinition, Context, ExitCode } from './context.ts';
import { oneOf } from './one-of.ts';
import { type PageOptions, pageOptions, writePage } from './page-file.ts';
import { openRoom } from './room.ts';
import { UsageError } from './usage-error.ts';

interface SeasonOptions extends PageOptions {
  by?: GroupingName;
}

const groupingNames = Object.keys(groupings);

export const definition: CommandDefinition = {
  examples: [
    { line: 'nestlog season', says: 'this season: what worked, and how sure that is' },
    { line: 'nestlog season 2025', says: 'one season; where it runs across New Year, the one begun in 2025' },
    { line: 'nestlog season 2024..2026', says: 'several together, and one beside the other' },
    { line: 'nestlog season all --by housing', says: 'all years, divided by where they bred' },
    {
      line: 'nestlog season --page season.html',
      says: 'a page to look at and to print, with every clutch on the calendar',
    },
    { line: 'nestlog season all --json', says: 'every figure for a program' },
  ],
  arguments: [{ name: '[season]', description: '2025, 2025/26, 2024..2026 or all (default: this season)' }],
  options: [oneOf('--by <what>', groupingNames), ...pageOptions],
};

/** Prints the season's page. A season without clutches is no mistake. */
export function run(context: Context<SeasonOptions>): ExitCode | Promise<ExitCode> {
  const { options, stdout, json } = context;
  const [asked] = context.arguments;
  const seasons = asked === undefined ? null : seasonsAsked(asked);
  const { page } = options;
  const { room } = openRoom(context, { forOthers: page !== undefined });
  const book = seasonBook(room, { seasons, by: options.by ?? null });
  if (page !== undefined) return writeSeasonPage(context, page, room, book);
  const text = json
    ? seasonJson(book, clutchStories(room, book.totals.clutches))
    : [seasonText(book, stdout)];
  for (const part of text) stdout.write(part);
  return 0;
}

async function writeSeasonPage(
  context: Context<SeasonOptions>,
  name: string,
  room: Room,
  book: SeasonBook,
): Promise<ExitCode> {
  const { seasonPage } = await import('../report/page/season.tsx');
  return writePage(context, name, seasonPage(book, [...clutchStories(room, book.totals.clutches)]));
}

function seasonsAsked(text: string): Seasons {
  const seasons = parseSeasons(text);
  if (seasons !== null) return seasons;
  const meant = seasonsMeant(text);
  throw new UsageError(
    `a season is a year such as 2025 or 2025/26, years such as 2024..2026, or all; not \`${text}\`${meant === '' ? '' : `; did you mean ${meant}?`}`,
  );
}
