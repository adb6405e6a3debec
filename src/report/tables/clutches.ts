import { clutchId } from '../../room/model.ts';
import type { ClutchEntry } from '../../rules/season/ledger.ts';
import { sumOf } from '../../statistics/sums.ts';
import { either } from '../../words.ts';
import { type Column, dayCell, tableOf, YES_NO } from './column.ts';
import type { Table } from './table.ts';

/** The columns are promised: none is renamed or left out. */
export const clutchColumns: readonly Column<ClutchEntry>[] = [
  { name: 'clutch', doc: 'PAIR/CLUTCH', required: true, value: ({ clutch }) => clutchId(clutch) },
  { name: 'pair', doc: 'the pair that laid it', required: true, value: ({ clutch }) => clutch.pair.id },
  {
    name: 'number',
    doc: 'its number in the pair’s life',
    type: 'integer',
    required: true,
    value: ({ clutch }) => clutch.number,
  },
  { name: 'season', doc: 'of its first egg', required: true, value: ({ season }) => season },
  { name: 'species', doc: 'common name', value: ({ clutch }) => clutch.pair.species },
  { name: 'cock', doc: 'id, or one of several', value: ({ clutch }) => either(clutch.cock) },
  { name: 'hen', doc: 'id, or one of several', value: ({ clutch }) => either(clutch.hen) },
  { name: 'housing', doc: 'where it was laid', value: ({ clutch }) => clutch.housing },
  { name: 'site', doc: 'which nest', value: ({ clutch }) => clutch.site },
  {
    name: 'begun',
    doc: 'the day of its first egg',
    type: 'date',
    required: true,
    value: ({ begun }) => dayCell(begun),
  },
  {
    name: 'counted',
    doc: 'whether all its eggs are known: yes or no',
    oneOf: YES_NO,
    required: true,
    value: ({ clutch }) => (clutch.counted ? 'yes' : 'no'),
  },
  {
    name: 'chicksCounted',
    doc: 'whether all its chicks are known: yes or no',
    oneOf: YES_NO,
    required: true,
    value: ({ chicksKnown }) => (chicksKnown ? 'yes' : 'no'),
  },
  { name: 'laid', doc: 'eggs', type: 'integer', required: true, value: ({ eggs }) => eggs.laid },
  {
    name: 'fertile',
    doc: 'eggs, without those taken',
    type: 'integer',
    required: true,
    value: ({ eggs }) => eggs.fertile,
  },
  {
    name: 'clear',
    doc: 'eggs, without those taken',
    type: 'integer',
    required: true,
    value: ({ eggs }) => eggs.clear,
  },
  {
    name: 'unknown',
    doc: 'eggs of unknown fertility, without those taken',
    type: 'integer',
    required: true,
    value: ({ eggs }) => eggs.unknown,
  },
  {
    name: 'taken',
    doc: 'eggs taken by our hand',
    type: 'integer',
    required: true,
    value: ({ eggs }) => eggs.taken,
  },
  {
    name: 'lost',
    doc: 'eggs',
    type: 'integer',
    required: true,
    value: ({ eggs }) => sumOf(Object.values(eggs.lost)),
  },
  {
    name: 'openEggs',
    doc: 'eggs without an end',
    type: 'integer',
    required: true,
    value: ({ eggs }) => eggs.open,
  },
  { name: 'hatched', doc: 'chicks', type: 'integer', required: true, value: ({ chicks }) => chicks.hatched },
  { name: 'fledged', doc: 'chicks', type: 'integer', required: true, value: ({ chicks }) => chicks.fledged },
  {
    name: 'independent',
    doc: 'chicks',
    type: 'integer',
    required: true,
    value: ({ chicks }) => chicks.independent,
  },
  {
    name: 'died',
    doc: 'chicks, before they were independent',
    type: 'integer',
    required: true,
    value: ({ chicks }) => sumOf(Object.values(chicks.died)),
  },
  {
    name: 'gone',
    doc: 'chicks, before they were independent',
    type: 'integer',
    required: true,
    value: ({ chicks }) => chicks.gone,
  },
  {
    name: 'openChicks',
    doc: 'chicks of which no end is known, neither independent nor dead or gone',
    type: 'integer',
    required: true,
    value: ({ chicks }) => chicks.open,
  },
];

/** Every clutch of the room, whoever reared its young. */
export function clutchTable(clutches: readonly ClutchEntry[]): Table {
  return tableOf('clutches', clutchColumns, clutches);
}
