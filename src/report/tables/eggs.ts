import type { Span } from '../../days.ts';
import { wordsOf } from '../../journal/grammar/vocabulary.ts';
import { eggCauses } from '../../journal/observations/lost.ts';
import { hatchedOn } from '../../room/clock.ts';
import { clutchId, type Egg, fullRef } from '../../room/model.ts';
import type { EggEntry } from '../../rules/season/ledger.ts';
import { type Column, dayCell, tableOf, YES_NO } from './column.ts';
import type { Table } from './table.ts';

/** The columns are promised: none is renamed or left out. */
export const eggColumns: readonly Column<EggEntry>[] = [
  { name: 'egg', doc: 'PAIR/CLUTCH/EGG', required: true, value: ({ egg }) => fullRef(egg) },
  { name: 'pair', doc: 'the pair that laid it', required: true, value: ({ egg }) => egg.clutch.pair.id },
  { name: 'clutch', doc: 'PAIR/CLUTCH', required: true, value: ({ egg }) => clutchId(egg.clutch) },
  { name: 'season', doc: 'of its clutch’s first egg', required: true, value: ({ season }) => season },
  { name: 'species', doc: 'common name', value: ({ egg }) => egg.clutch.pair.species },
  {
    name: 'laidFrom',
    doc: 'the first day on which it can have been laid',
    type: 'date',
    required: true,
    value: ({ egg }) => dayCell(egg.laid.from),
  },
  {
    name: 'laid',
    doc: 'the day, or the last on which it can have been',
    type: 'date',
    required: true,
    value: ({ egg }) => dayCell(egg.laid.to),
  },
  {
    name: 'seenLaid',
    doc: 'yes; no where something later shows that it must have been',
    oneOf: YES_NO,
    required: true,
    value: ({ egg }) => (egg.assumed ? 'no' : 'yes'),
  },
  {
    name: 'fertility',
    doc: 'fertile, clear, or nothing where it is not known',
    oneOf: ['fertile', 'clear'],
    value: ({ fertility }) => fertility,
  },
  { name: 'sitter', doc: 'the pair that sat on it last', value: ({ sitter }) => sitter },
  {
    name: 'fate',
    doc: 'hatched, lost, taken, or nothing while it is open',
    oneOf: ['hatched', 'lost', 'taken'],
    value: ({ egg }) => egg.fate?.kind ?? null,
  },
  {
    name: 'cause',
    doc: 'what it was lost to, or how it was taken',
    oneOf: wordsOf(eggCauses),
    value: ({ egg: { fate } }) => (fate === null || fate.kind === 'hatched' ? null : fate.cause),
  },
  {
    name: 'endedFrom',
    doc: 'the first day on which it can have ended so',
    type: 'date',
    value: ({ egg }) => dayCell(endedOn(egg.fate)?.from),
  },
  {
    name: 'ended',
    doc: 'the day on which that was found',
    type: 'date',
    value: ({ egg }) => dayCell(egg.fate?.day),
  },
  {
    name: 'chick',
    doc: 'id of the bird that came of it',
    value: ({ egg: { fate } }) => (fate?.kind === 'hatched' ? fate.bird.id : null),
  },
  { name: 'length', doc: 'mm', type: 'number', value: ({ egg }) => egg.size?.length ?? null },
  { name: 'breadth', doc: 'mm', type: 'number', value: ({ egg }) => egg.size?.breadth ?? null },
];

/** Every egg of the room. */
export function eggTable(eggs: readonly EggEntry[]): Table {
  return tableOf('eggs', eggColumns, eggs);
}

function endedOn(fate: Egg['fate']): Span | null {
  return fate?.kind === 'hatched' ? hatchedOn(fate.bird) : (fate?.span ?? null);
}
