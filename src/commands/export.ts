import { birdTable } from '../report/tables/birds.ts';
import { chickTable } from '../report/tables/chicks.ts';
import { clutchTable } from '../report/tables/clutches.ts';
import { eggTable } from '../report/tables/eggs.ts';
import { type Format, formats } from '../report/tables/index.ts';
import { rateTable } from '../report/tables/rates.ts';
import type { Table } from '../report/tables/table.ts';
import { ledgerOf, rateEntries } from '../rules/season/ledger.ts';
import type { CommandDefinition, Context, ExitCode } from './context.ts';
import { openStock } from './open-stock.ts';
import { openRoom } from './room.ts';
import { UsageError } from './usage-error.ts';

interface ExportOptions {
  format?: Format;
}

/** Every table there is: what it takes to make it. */
const tables: Record<string, (context: Context<ExportOptions>) => Table> = {
  birds: (context) => birdTable(openStock(context).stock),
  eggs: (context) => eggTable(ledgerOf(openRoom(context).room).eggs),
  chicks: (context) => chickTable(ledgerOf(openRoom(context).room).chicks),
  clutches: (context) => clutchTable(ledgerOf(openRoom(context).room).clutches),
  rates: (context) => rateTable(rateEntries(openRoom(context).room)),
};

const names = Object.keys(tables).join(', ');
const formatNames = Object.keys(formats).join(', ');

export const definition: CommandDefinition = {
  examples: [
    { line: 'nestlog export birds > birds.csv', says: 'every bird, for a spreadsheet' },
    { line: 'nestlog export rates > rates.csv', says: 'every rate of each season, species and pair' },
    { line: 'nestlog export birds --format ndjson', says: 'one JSON object a line' },
  ],
  arguments: [{ name: '<table>', description: names }],
  options: [
    {
      flags: '--format <format>',
      description: `${formatNames} (default: csv, with --json json)`,
      parse: format,
    },
  ],
};

/** Writes one table to stdout, for other programs. */
export function run(context: Context<ExportOptions>): ExitCode {
  const [name = ''] = context.arguments;
  const make = Object.hasOwn(tables, name) ? tables[name] : undefined;
  if (make === undefined) throw new UsageError(`there is no table \`${name}\`; there is ${names}`);
  const form = context.options.format ?? (context.json ? 'json' : 'csv');
  context.stdout.write(formats[form](make(context)));
  return 0;
}

function format(text: string): Format {
  if (Object.hasOwn(formats, text)) return text as Format;
  throw new UsageError(`--format takes ${formatNames}, not \`${text}\``);
}
