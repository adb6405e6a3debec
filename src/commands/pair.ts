import { entriesOf } from '../journal/entry.ts';
import { notesOf } from '../journal/notes.ts';
import { photosOf } from '../journal/photos.ts';
import { pairJson } from '../report/json/pair.ts';
import { pairText } from '../report/terminal/pair.ts';
import { type Tellable, tellable } from '../rules/discretion/tellable.ts';
import { type PairStory, pairStory } from '../rules/season/story.ts';
import type { CommandDefinition, Context, ExitCode } from './context.ts';
import { pairNamed } from './named.ts';
import { wordFrom } from './one-of.ts';
import { type PageOptions, pageOptions, writePage } from './page-file.ts';
import { type OpenRoom, openRoom } from './room.ts';
import { UsageError } from './usage-error.ts';

export const definition: CommandDefinition = {
  examples: [
    {
      line: 'nestlog pair LW-1',
      says: 'its clutches, dates foreseen and real, every egg’s and chick’s fate',
    },
    { line: 'nestlog pair LW-1 --page lw-1.html', says: 'its story as a page, with its photos' },
    { line: 'nestlog pair LW-1 --account', says: 'how it was kept and what it did, for others: no names' },
    {
      line: 'nestlog pair LW-1 --account --with notes --page account.html',
      says: 'the same as a page, with the notes',
    },
    { line: 'nestlog pair LW-1 --json', says: 'the same for a program' },
  ],
  arguments: [{ name: '<pair>', description: 'the pair’s id' }],
  options: [
    { flags: '--account', description: 'an account for other keepers, as Markdown or with --page as a page' },
    {
      flags: '--with <what>',
      description: 'in the account also: names, rings, places, notes, or several with a comma',
      completes: tellable,
      parse: withWords,
    },
    ...pageOptions,
  ],
};

interface PairOptions extends PageOptions {
  account?: boolean;
  with?: Tellable[];
}

/** Prints one pair's story, or writes it as a page or as an account for others. */
export function run(context: Context<PairOptions>): ExitCode | Promise<ExitCode> {
  const { stdout, json, options } = context;
  // An account has a discretion of its own, which leaves out the sentence as well.
  const forOthers = options.page !== undefined && options.account !== true;
  const open = openRoom(context, { forOthers });
  const [id = ''] = context.arguments;
  const story = pairStory(open.room, pairNamed(id, open.room));
  if (options.account === true) return tellAccount(context, open, story);
  if (options.with !== undefined) throw new UsageError('--with says what an account may tell: add --account');
  if (options.page !== undefined) return writePairPage(context, options.page, open, story);
  stdout.write(json ? pairJson(story) : pairText(story, stdout));
  return 0;
}

async function tellAccount(
  context: Context<PairOptions>,
  open: OpenRoom,
  story: PairStory,
): Promise<ExitCode> {
  const { page, with: asked = [] } = context.options;
  const { openAccount } = await import('./account.ts');
  const { account, pictures } = openAccount(open, context.journals, story, asked);
  if (page !== undefined) {
    const { accountPage } = await import('../report/page/account.tsx');
    return writePage(context, page, accountPage(account, pictures));
  }
  if (context.json)
    throw new UsageError('an account is text: leave --json out; `nestlog pair ID --json` has the data');
  const { accountMarkdown } = await import('../report/account/markdown.ts');
  context.stdout.write(accountMarkdown(account, pictures));
  return 0;
}

async function writePairPage(
  context: Context<PairOptions>,
  name: string,
  { record }: OpenRoom,
  story: PairStory,
): Promise<ExitCode> {
  const { pair, day } = story;
  const { readPictures } = await import('./pictures.ts');
  const { pairPage } = await import('../report/page/pair.tsx');
  const entries = entriesOf(record.pairs, pair.id);
  const pictures = readPictures(context.journals, photosOf(entries, day));
  return writePage(context, name, pairPage(story, { notes: notesOf(entries, day), pictures }));
}

/** Reads `names,notes`: what an account may tell beside how the pair was kept. */
function withWords(text: string): Tellable[] {
  return text
    .split(',')
    .map((word) => wordFrom(tellable, word.trim(), '--with takes', ', or several with a comma'));
}
