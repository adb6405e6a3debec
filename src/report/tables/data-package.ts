import { type Day, formatDay } from '../../days.ts';
import { jsonText } from '../json/text.ts';
import type { Field } from './column.ts';
import { csvParts } from './csv.ts';
import { definitions, type Reference, type TableDefinition } from './definitions.ts';
import type { Table } from './table.ts';

/** One file of a package. */
interface PackageFile {
  path: string;
  parts: Iterable<string>;
}

/** What is said of the package as a whole. */
interface About {
  /** The day stood on. */
  day: Day;
  /** The room's name, or null where none was given. */
  room: string | null;
}

/**
 * Tables as a Frictionless Data Package (specification v1): a CSV each and `datapackage.json`, which says what each
 * column holds. It depends on the record and the day stood on alone.
 */
export function dataPackage(tables: readonly Table[], { day, room }: About): PackageFile[] {
  const description = {
    profile: 'tabular-data-package',
    name: 'nestlog',
    title: room ?? 'nestlog',
    description: `All that the journals say, as known on ${formatDay(day)}. ${MARKS}`,
    created: `${formatDay(day)}T00:00:00Z`,
    resources: tables.map(resource),
  };
  return [
    ...tables.map((table) => ({ path: fileOf(table.name), parts: csvParts(table) })),
    { path: 'datapackage.json', parts: [jsonText(description)] },
  ];
}

const MARKS =
  "An apostrophe stands before text that a spreadsheet would take for a formula (after any number of apostrophes one of = + - @, a tab or a line break): take one away to have the keeper's text.";

const fileOf = (name: string) => `${name}.csv`;

function resource({ name }: Table) {
  const { one, columns, key, references }: TableDefinition = definitions[name as keyof typeof definitions];
  return {
    profile: 'tabular-data-resource',
    name,
    path: fileOf(name),
    description: `One row for each ${one}.`,
    format: 'csv',
    mediatype: 'text/csv',
    encoding: 'utf-8',
    dialect: { delimiter: ',', lineTerminator: '\r\n', quoteChar: '"', doubleQuote: true, header: true },
    schema: {
      fields: columns.map(field),
      missingValues: [''],
      ...(key === null ? {} : { primaryKey: key }),
      ...(references.length === 0 ? {} : { foreignKeys: references.map(foreignKey) }),
    },
  };
}

function field({ name, doc, type, oneOf, required }: Field) {
  const constraints = {
    ...(required ? { required } : {}),
    ...(oneOf === undefined ? {} : { enum: oneOf }),
  };
  return {
    name,
    type: type ?? 'string',
    ...(type === 'time' ? { format: '%H:%M' } : {}),
    description: doc,
    ...(Object.keys(constraints).length === 0 ? {} : { constraints }),
  };
}

function foreignKey({ column, table, its }: Reference) {
  return { fields: column, reference: { resource: table, fields: its } };
}
