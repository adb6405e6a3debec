import { birdJson } from '../report/json/bird.ts';
import { birdText } from '../report/terminal/bird.ts';
import { portraitOf } from '../rules/stock/portrait.ts';
import type { CommandDefinition, Context, ExitCode } from './context.ts';
import { birdNamed, openStock } from './open-stock.ts';

export const definition: CommandDefinition = {
  examples: [
    { line: 'nestlog bird LW-21-04', says: 'its life, parents, young, inbreeding and pedigree' },
    { line: 'nestlog bird LW-2/1/c1', says: 'a chick of a journal, by clutch and number' },
    { line: 'nestlog bird LW-21-04 --json', says: 'the same for a program' },
  ],
  arguments: [{ name: '<bird>', description: 'its id, ring, or PAIR/CLUTCH/CHICK' }],
};

/** Prints one bird's life on a page. */
export function run(context: Context): ExitCode {
  const { stdout, json } = context;
  const { stock } = openStock(context);
  const [name = ''] = context.arguments;
  const portrait = portraitOf(birdNamed(name, stock), stock);
  const { width, color } = stdout;
  stdout.write(json ? birdJson(portrait, stock) : birdText(portrait, stock, { width, color }));
  return 0;
}
