import { join, resolve } from 'node:path';
import { birdTable } from '../report/tables/birds.ts';
import { chickTable } from '../report/tables/chicks.ts';
import { clutchTable } from '../report/tables/clutches.ts';
import { dataPackage } from '../report/tables/data-package.ts';
import { definitions, type TableName } from '../report/tables/definitions.ts';
import { eggTable } from '../report/tables/eggs.ts';
import { eventTable } from '../report/tables/events.ts';
import { type Format, formats } from '../report/tables/index.ts';
import { pairTable } from '../report/tables/pairs.ts';
import { rateTable } from '../report/tables/rates.ts';
import type { Table } from '../report/tables/table.ts';
import { eventsOf } from '../rules/events/events.ts';
import { chickEntries, clutchEntries, eggEntries, rateEntries } from '../rules/season/ledger.ts';
import { stockOf } from '../rules/stock/stock.ts';
import type { CommandDefinition, Context, ExitCode } from './context.ts';
import { created, type ForceOption } from './create.ts';
import { oneOf, wordFrom } from './one-of.ts';
import { type OpenRoom, openRoom } from './room.ts';
import { tellUnread } from './unread.ts';
import { UsageError } from './usage-error.ts';

interface ExportOptions extends ForceOption {
  format?: Format;
  all?: string;
}

/** What it takes to make each table. */
const makers: Record<TableName, (open: OpenRoom) => Table> = {
  pairs: ({ room }) => pairTable(room.pairs),
  birds: ({ room }) => birdTable(stockOf(room)),
  clutches: ({ room }) => clutchTable(clutchEntries(room)),
  eggs: ({ room }) => eggTable(eggEntries(room)),
  chicks: ({ room }) => chickTable(chickEntries(room)),
  events: ({ room, record }) => eventTable(eventsOf(record, room)),
  rates: ({ room }) => rateTable(rateEntries(room)),
};

const names = Object.keys(definitions) as TableName[];

export const definition: CommandDefinition = {
  examples: [
    { line: 'nestlog export birds > birds.csv', says: 'every bird, for a spreadsheet' },
    { line: 'nestlog export events > events.csv', says: 'everything ever observed, as understood' },
    { line: 'nestlog export birds --format ndjson', says: 'one JSON object a line' },
    { line: 'nestlog export --all tables', says: 'all tables and what their columns mean (data package)' },
  ],
  arguments: [{ name: '[table]', description: names.join(', '), completes: names }],
  options: [
    oneOf(
      '--format <format>',
      Object.keys(formats),
      `${Object.keys(formats).join(', ')} (default: csv, with --json json)`,
    ),
    { flags: '--all <folder>', description: 'write all tables into a folder, with datapackage.json' },
    { flags: '--force', description: 'replace files of those names' },
  ],
};

/** Writes one table to stdout, or all of them into a folder, for other programs. */
export function run(context: Context<ExportOptions>): ExitCode {
  const { options, json, stdout } = context;
  const [name] = context.arguments;
  if (options.all !== undefined) {
    if (name !== undefined || options.format !== undefined || json) {
      throw new UsageError('--all writes every table as CSV: it takes no table and no format');
    }
    return writeAll(options.all, context);
  }
  const others = ' (--all FOLDER for all of them)';
  if (name === undefined) throw new UsageError(`name a table; there is ${names.join(', ')}${others}`);
  const make = makers[wordFrom(names, name, 'the tables are', others)];
  const form = options.format ?? (json ? 'json' : 'csv');
  for (const text of formats[form](tableIn(context, make))) stdout.write(text);
  return 0;
}

/** Behind it the room is held by no more than the table needs of it. */
function tableIn(context: Context<ExportOptions>, make: (open: OpenRoom) => Table): Table {
  const open = openRoom(context);
  tellUnread(context, open.room);
  return make(open);
}

/** All files or none, and no file of those names is replaced unasked. */
function writeAll(folder: string, context: Context<ExportOptions>): ExitCode {
  const open = openRoom(context);
  tellUnread(context, open.room);
  const tables = names.map((name) => makers[name](open));
  const files = dataPackage(tables, { day: context.day, room: open.room.settings.room });
  const named = (path: string) => join(folder, path);
  if (!created(context, files, { folder: resolve(folder), named, another: 'folder' })) return 1;
  const rows = tables.map((table) => `${table.name}.csv (${table.rows.length})`);
  context.stdout.write(`written into ${folder}: ${[...rows, 'datapackage.json'].join(', ')}\n`);
  return 0;
}
