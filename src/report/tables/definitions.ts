import { birdColumns } from './birds.ts';
import { chickColumns } from './chicks.ts';
import { clutchColumns } from './clutches.ts';
import type { Field } from './column.ts';
import { eggColumns } from './eggs.ts';
import { eventColumns } from './events.ts';
import { pairColumns } from './pairs.ts';
import { rateColumns } from './rates.ts';

/** A column whose cells name rows of a table, by its key. */
export interface Reference {
  column: string;
  table: string;
  its: string;
}

/** One table as readers and programs are told of it. */
export interface TableDefinition {
  /** What one row is: `bird`. */
  one: string;
  columns: readonly Field[];
  /** The columns that tell its rows apart; null where some of them may be empty. */
  key: readonly string[] | null;
  references: readonly Reference[];
}

const to = (table: string, its: string, ...columns: string[]): Reference[] =>
  columns.map((column) => ({ column, table, its }));

/** Every table that there is. */
export const definitions = {
  pairs: { one: 'pair', columns: pairColumns, key: ['pair'], references: [] },
  birds: {
    one: 'bird',
    columns: birdColumns,
    key: ['id'],
    references: [...to('pairs', 'pair', 'pair'), ...to('chicks', 'chick', 'chick')],
  },
  clutches: {
    one: 'clutch',
    columns: clutchColumns,
    key: ['clutch'],
    references: to('pairs', 'pair', 'pair'),
  },
  eggs: {
    one: 'egg',
    columns: eggColumns,
    key: ['egg'],
    references: [
      ...to('pairs', 'pair', 'pair', 'sitter'),
      ...to('clutches', 'clutch', 'clutch'),
      ...to('chicks', 'id', 'chick'),
    ],
  },
  chicks: {
    one: 'chick',
    columns: chickColumns,
    key: ['chick'],
    references: [...to('pairs', 'pair', 'pair', 'fedBy', 'fedLastBy'), ...to('clutches', 'clutch', 'clutch')],
  },
  events: {
    one: 'statement of an observation',
    columns: eventColumns,
    key: ['file', 'line', 'column', 'part'],
    references: [
      ...to('pairs', 'pair', 'pair'),
      ...to('birds', 'id', 'bird'),
      ...to('clutches', 'clutch', 'clutch'),
    ],
  },
  rates: {
    one: 'rate of a season, a species or a pair',
    columns: rateColumns,
    key: null,
    references: [],
  },
} as const satisfies Record<string, TableDefinition>;

export type TableName = keyof typeof definitions;
