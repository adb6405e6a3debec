import { photosOf } from '../journal/photos.ts';
import { birdJson } from '../report/json/bird.ts';
import { birdText } from '../report/terminal/bird.ts';
import { handedOver } from '../rules/stock/handed-over.ts';
import { type Portrait, portraitOf } from '../rules/stock/portrait.ts';
import type { CommandDefinition, Context, ExitCode } from './context.ts';
import { birdNamed, type OpenStock, openStock } from './open-stock.ts';
import { type PageOptions, pageOptions, writePage } from './page-file.ts';

export const definition: CommandDefinition = {
  examples: [
    { line: 'nestlog bird LW-21-04', says: 'its life, parents, young, inbreeding and pedigree' },
    { line: 'nestlog bird LW-2/1/c1', says: 'a chick of a journal, by clutch and number' },
    {
      line: 'nestlog bird LW-21-04 --page lw-21-04.html',
      says: 'its pedigree and life, for whoever takes it',
    },
    { line: 'nestlog bird LW-21-04 --json', says: 'the same for a program' },
  ],
  arguments: [{ name: '<bird>', description: 'its id, ring, or PAIR/CLUTCH/CHICK' }],
  options: pageOptions,
};

/** Prints one bird's life, or writes it as a page to go with the bird. */
export function run(context: Context<PageOptions>): ExitCode | Promise<ExitCode> {
  const { stdout, json, options } = context;
  const open = openStock(context);
  const { stock } = open;
  const [name = ''] = context.arguments;
  const portrait = portraitOf(birdNamed(name, open), stock);
  if (options.page !== undefined) return writeBirdPage(context, options.page, open, portrait);
  stdout.write(json ? birdJson(portrait, stock) : birdText(portrait, stock, stdout));
  return 0;
}

/** Names and rings are what a pedigree is made of; places, other keepers and notes stay at home. */
async function writeBirdPage(
  context: Context<PageOptions>,
  name: string,
  { record, room, stock }: OpenStock,
  portrait: Portrait,
): Promise<ExitCode> {
  const { readPictures } = await import('./pictures.ts');
  const { discretionOf } = await import('../rules/discretion/discretion.ts');
  const { birdPage } = await import('../report/page/bird.tsx');
  const photos = photosOf(portrait.one.bird.listed?.log ?? [], stock.day);
  const pictures = readPictures(context.journals, photos).map((picture) => ({ ...picture, note: null }));
  const discreet = discretionOf(record, room, new Set(['names', 'rings']));
  return writePage(context, name, birdPage(handedOver(portrait, discreet), stock, pictures));
}
