import { hatchedOn } from '../../room/clock.ts';
import { fullRef, howEnded } from '../../room/model.ts';
import type { Stock, StockBird } from '../../rules/stock/stock.ts';
import { type Column, dayCell, tableOf } from './column.ts';
import type { Cell, Table } from './table.ts';

/** The columns are promised: none is renamed or left out. */
export const birdColumns: readonly Column<StockBird>[] = [
  {
    name: 'id',
    doc: 'the bird’s id; a chick without one is PAIR/CLUTCH/CHICK',
    required: true,
    value: ({ id }) => id,
  },
  { name: 'ring', doc: 'the code on its ring', value: ({ bird }) => bird.ring },
  { name: 'species', doc: 'common name', value: ({ bird }) => bird.species },
  { name: 'sex', doc: 'cock or hen', oneOf: ['cock', 'hen'], value: ({ bird }) => bird.sex },
  {
    name: 'hatched',
    doc: 'the day, or the last on which it can have been',
    type: 'date',
    value: ({ bird }) => dayCell(bird.hatched?.to),
  },
  {
    name: 'hatchedFrom',
    doc: 'the first day on which it can have been',
    type: 'date',
    value: ({ bird }) => dayCell(hatchedOn(bird)?.from),
  },
  {
    name: 'sire',
    doc: 'id, also of one that is only named and has no row; nothing where it is not known for sure',
    value: ({ parents }) => parents.sire.id,
  },
  {
    name: 'dam',
    doc: 'id, also of one that is only named and has no row; nothing where it is not known for sure',
    value: ({ parents }) => parents.dam.id,
  },
  {
    name: 'status',
    doc: 'here, unaccounted, gone, died or expected',
    oneOf: ['here', 'unaccounted', 'gone', 'died', 'expected'],
    required: true,
    value: ({ status }) => status,
  },
  {
    name: 'age',
    doc: 'chick, fledgling, young or adult; only of birds that are here',
    oneOf: ['chick', 'fledgling', 'young', 'adult'],
    value: ({ age }) => age,
  },
  { name: 'housing', doc: 'where it lives; only of birds that are here', value: ({ housing }) => housing },
  {
    name: 'pair',
    doc: 'the pair that it is in',
    value: ({ current }) => current?.pair.id ?? null,
  },
  {
    name: 'chick',
    doc: 'the chick of a journal that it was, PAIR/CLUTCH/CHICK',
    value: ({ bird }) => (bird.clutch === null ? null : fullRef(bird)),
  },
  {
    name: 'left',
    doc: 'the day on which it died or left',
    type: 'date',
    value: ({ bird }) => dayCell(bird.fate?.day),
  },
  {
    name: 'how',
    doc: 'cause of death, or sold, given, swapped, lent, escaped',
    value: ({ bird }) => howEnded(bird.fate),
  },
  { name: 'origin', doc: 'where it came from', value: ({ bird }) => bird.listed?.origin?.text ?? null },
  { name: 'owner', doc: 'whose it is', value: ({ bird }) => bird.listed?.owner?.text ?? null },
  {
    name: 'inbreeding',
    doc: 'F; nothing where the pedigree runs in a circle',
    type: 'number',
    value: ({ inbreeding }) => inbreeding,
  },
  {
    name: 'meanKinship',
    doc: 'with all of its species here; only of birds that are here',
    type: 'number',
    value: ({ meanKinship }) => meanKinship,
  },
];

/** One bird as a row. */
export function birdRow(one: StockBird): Record<string, Cell> {
  return Object.fromEntries(birdColumns.map(({ name, value }) => [name, value(one)]));
}

/** The stock, the gone and dead included. */
export function birdTable({ birds }: Pick<Stock, 'birds'>): Table {
  return tableOf('birds', birdColumns, birds);
}
