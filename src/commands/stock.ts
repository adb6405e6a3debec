import { stockJson } from '../report/json/stock.ts';
import type { StockPage } from '../report/stock.ts';
import { stockText } from '../report/terminal/stock.ts';
import { filterStock, type StockFilter } from '../rules/stock/filter.ts';
import { speciesGroups } from '../rules/stock/groups.ts';
import { ageClasses } from '../rules/stock/life.ts';
import { bySpecies } from '../rules/stock/stock.ts';
import type { CommandDefinition, Context, ExitCode } from './context.ts';
import { housingNamed, speciesNamed } from './named.ts';
import { oneOf } from './one-of.ts';
import { type OpenStock, openStock } from './open-stock.ts';

interface StockOptions {
  species?: string;
  housing?: string;
  age?: StockFilter['age'];
  sex?: StockFilter['sex'];
  gone?: true;
}

const sexes = ['cock', 'hen', 'unknown'] as const;

export const definition: CommandDefinition = {
  examples: [
    { line: 'nestlog stock', says: 'everyone who is here, by species, and how varied each species is' },
    { line: 'nestlog stock --age young --sex unknown', says: 'young that are not sexed yet' },
    { line: 'nestlog stock --housing "flight 2"', says: 'who lives there' },
    { line: 'nestlog stock --gone', says: 'who left or died, the latest first' },
  ],
  options: [
    { flags: '--species <name>', description: 'one species only' },
    { flags: '--housing <name>', description: 'one housing only' },
    oneOf('--age <class>', ageClasses),
    oneOf('--sex <sex>', sexes),
    { flags: '--gone', description: 'those that left or died instead' },
  ],
};

/** Prints who is here on the day stood on, or who has left. */
export function run(context: Context<StockOptions>): ExitCode {
  const { stdout, json } = context;
  const page = pageOf(openStock(context), context.options);
  stdout.write(json ? stockJson(page) : stockText(page, stdout));
  return 0;
}

function pageOf(open: OpenStock, options: StockOptions): StockPage {
  const { room, stock } = open;
  const { age = null, sex = null, gone = false } = options;
  const housing = options.housing === undefined ? null : housingNamed(options.housing, room);
  const species = options.species === undefined ? null : speciesNamed(options.species, room);
  const wanted = filterStock(stock.birds, { species, housing, age, sex });
  const left = wanted.filter(({ status }) => status === 'gone' || status === 'died');
  const here = wanted.filter(({ status }) => status === 'here');
  const whole = housing === null && age === null && sex === null && !gone;
  const diversity = new Map(whole ? speciesGroups(stock).map((group) => [group.species, group]) : []);
  return {
    day: room.day,
    room: room.settings.room,
    gone,
    groups: Array.from(bySpecies(gone ? left : here), ([name, birds]) => ({
      species: name,
      birds,
      living: diversity.get(name)?.living ?? null,
      breeders: diversity.get(name)?.breeders ?? null,
    })),
    unaccounted: gone ? [] : wanted.filter(({ status }) => status === 'unaccounted'),
  };
}
