import { hatchedOn } from '../../room/clock.ts';
import { clutchId, fullRef, howEnded } from '../../room/model.ts';
import type { ChickEntry } from '../../rules/season/ledger.ts';
import { type Column, dayCell, tableOf, YES_NO } from './column.ts';
import type { Table } from './table.ts';

/** The columns are promised: none is renamed or left out. */
export const chickColumns: readonly Column<ChickEntry>[] = [
  { name: 'chick', doc: 'PAIR/CLUTCH/CHICK', required: true, value: ({ bird }) => fullRef(bird) },
  {
    name: 'id',
    doc: 'the bird’s id; the same where it has none of its own',
    required: true,
    value: ({ bird }) => bird.id,
  },
  { name: 'ring', doc: 'the code on its ring', value: ({ bird }) => bird.ring },
  { name: 'pair', doc: 'the pair that laid its egg', required: true, value: ({ clutch }) => clutch.pair.id },
  { name: 'clutch', doc: 'PAIR/CLUTCH', required: true, value: ({ clutch }) => clutchId(clutch) },
  { name: 'season', doc: 'of its clutch’s first egg', required: true, value: ({ season }) => season },
  { name: 'species', doc: 'common name', value: ({ bird }) => bird.species },
  { name: 'egg', doc: 'the egg that it came from', value: ({ bird }) => bird.egg.ref },
  {
    name: 'hatchedFrom',
    doc: 'the first day on which it can have hatched',
    type: 'date',
    value: ({ bird }) => dayCell(hatchedOn(bird).from),
  },
  {
    name: 'hatched',
    doc: 'the day, or the last on which it can have been',
    type: 'date',
    value: ({ bird }) => dayCell(bird.hatched.to),
  },
  {
    name: 'firstSeen',
    doc: 'the first day on which it was seen',
    type: 'date',
    value: ({ bird }) => dayCell(bird.firstSeen),
  },
  { name: 'fedBy', doc: 'the pair that fed it in the nest', value: ({ nestFeeder }) => nestFeeder },
  { name: 'fledged', doc: 'the day', type: 'date', value: ({ bird }) => dayCell(bird.fledged?.day) },
  { name: 'fedLastBy', doc: 'the pair that fed it last', value: ({ lastFeeder }) => lastFeeder },
  { name: 'independent', doc: 'the day', type: 'date', value: ({ bird }) => dayCell(bird.independent?.day) },
  {
    name: 'youth',
    doc: 'independent, died or gone before that, or open',
    oneOf: ['independent', 'died', 'gone', 'open'],
    required: true,
    value: ({ fate }) => fate,
  },
  {
    name: 'left',
    doc: 'the day on which it died or left, at any age',
    type: 'date',
    value: ({ bird }) => dayCell(bird.fate?.day),
  },
  {
    name: 'how',
    doc: 'cause of death, or sold, given, swapped, lent, escaped',
    value: ({ bird }) => howEnded(bird.fate),
  },
  {
    name: 'counted',
    doc: 'yes; no where it stands for young that were heard only',
    oneOf: YES_NO,
    required: true,
    value: ({ bird }) => (bird.placeholder ? 'no' : 'yes'),
  },
];

/** Every chick that hatched in the room. */
export function chickTable(chicks: readonly ChickEntry[]): Table {
  return tableOf('chicks', chickColumns, chicks);
}
