import { type Pair, together } from '../../room/model.ts';
import { either } from '../../words.ts';
import { type Column, tableOf, YES_NO } from './column.ts';
import type { Table } from './table.ts';

/** The columns are promised: none is renamed or left out. */
export const pairColumns: readonly Column<Pair>[] = [
  { name: 'pair', doc: 'the pair’s id', required: true, value: ({ id }) => id },
  { name: 'species', doc: 'common name', value: ({ species }) => species },
  { name: 'scientific', doc: 'scientific name', value: ({ profile }) => profile?.scientific ?? null },
  { name: 'cock', doc: 'id, or one of several', value: ({ cock }) => either(cock) },
  { name: 'hen', doc: 'id, or one of several', value: ({ hen }) => either(hen) },
  { name: 'housing', doc: 'where it is kept', value: ({ housing }) => housing },
  {
    name: 'together',
    doc: 'yes; no once they are parted, and before the first entry',
    oneOf: YES_NO,
    required: true,
    value: (pair) => (together(pair) ? 'yes' : 'no'),
  },
  {
    name: 'file',
    doc: 'its journal, within the room’s folder',
    required: true,
    value: ({ at }) => at.file,
  },
];

/** Every pair that has a journal. */
export function pairTable(pairs: readonly Pair[]): Table {
  return tableOf('pairs', pairColumns, pairs);
}
