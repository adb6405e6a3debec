import { birdObservations } from '../../journal/bird-observations/index.ts';
import { formatTime } from '../../journal/grammar/time-text.ts';
import type { Count, Ref } from '../../journal/grammar/who.ts';
import { observations } from '../../journal/observations/index.ts';
import { clutchId, fullRef } from '../../room/model.ts';
import type { EventEntry } from '../../rules/events/events.ts';
import { type Column, dayCell, tableOf, YES_NO } from './column.ts';
import type { Table } from './table.ts';

const KEYS = [...new Set([...Object.keys(observations), ...Object.keys(birdObservations), 'note'])];

/** The columns are promised: none is renamed or left out. */
export const eventColumns: readonly Column<EventEntry>[] = [
  {
    name: 'date',
    doc: 'the day of the entry',
    type: 'date',
    required: true,
    value: ({ day }) => dayCell(day),
  },
  {
    name: 'time',
    doc: 'HH:MM',
    type: 'time',
    value: ({ time }) => (time === null ? null : formatTime(time)),
  },
  {
    name: 'after',
    doc: 'the day after which it happened, where the entry says so',
    type: 'date',
    value: ({ after }) => dayCell(after),
  },
  {
    name: 'pair',
    doc: 'the pair whose journal says it; nothing in birds.yaml and in the room’s log',
    value: ({ pair }) => pair?.id ?? null,
  },
  { name: 'bird', doc: 'the bird whose log in birds.yaml says it', value: ({ bird }) => bird?.id ?? null },
  {
    name: 'species',
    doc: 'of the pair or the bird, common name',
    value: ({ pair, bird }) => pair?.species ?? bird?.species ?? null,
  },
  {
    name: 'clutch',
    doc: 'PAIR/CLUTCH, as named or as that of its eggs or young; nothing where they are of several',
    value: ({ clutch }) => (clutch === null ? null : clutchId(clutch)),
  },
  { name: 'site', doc: 'which nest, where the entry says so', value: ({ site }) => site },
  {
    name: 'key',
    doc: 'what was observed, a key of the journals; note for an entry that is a note only',
    oneOf: KEYS,
    required: true,
    value: ({ key }) => key,
  },
  {
    name: 'what',
    doc: 'the word beside whom: cause, state, kind of food, place, sex, ring; or the text',
    value: ({ what }) => what,
  },
  {
    name: 'who',
    doc: 'eggs by PAIR/CLUTCH/EGG and birds by id that it is about, as understood; several with a semicolon',
    value: ({ found }) => (found === null || found.length === 0 ? null : found.map(nameOf).join('; ')),
  },
  {
    name: 'count',
    doc: 'how many of them as understood; of a look, how many were counted',
    type: 'integer',
    value: ({ found, count }) => count?.count ?? found?.length ?? null,
  },
  {
    name: 'exact',
    doc: 'of a count that was written: exactly, at least or about',
    oneOf: ['exactly', 'at least', 'about'],
    value: (event) => countOf(event)?.exact ?? null,
  },
  {
    name: 'named',
    doc: 'yes where the keeper named them; no where nestlog took those that fit a count best',
    oneOf: YES_NO,
    value: ({ who }) => (who === null ? null : who.kind === 'refs' ? 'yes' : 'no'),
  },
  { name: 'said', doc: 'whom, as it is written', value: saidOf },
  { name: 'amount', doc: 'a weight, a length, days', type: 'number', value: ({ amount }) => amount },
  {
    name: 'unit',
    doc: 'of the amount',
    oneOf: ['g', 'g/d', 'mm', 'd'],
    value: ({ unit }) => unit,
  },
  { name: 'details', doc: 'what else the entry says of it, key: text', value: ({ details }) => details },
  { name: 'note', doc: 'of the whole entry: the same for all it observed', value: ({ note }) => note },
  {
    name: 'file',
    doc: 'where it stands, within the room’s folder',
    required: true,
    value: ({ at }) => at.file,
  },
  { name: 'line', doc: 'from 1', type: 'integer', required: true, value: ({ at }) => at.line },
  {
    name: 'column',
    doc: 'from 1, in characters',
    type: 'integer',
    required: true,
    value: ({ at }) => at.column,
  },
  {
    name: 'part',
    doc: 'from 1: which of the statements at that place, {fertile: 3, clear: e2} has two',
    type: 'integer',
    required: true,
    value: ({ part }) => part,
  },
];

/** Everything that was written down, a row for each statement. */
export function eventTable(events: Iterable<EventEntry>): Table {
  return tableOf('events', eventColumns, events);
}

/** As the tables of eggs and birds call it. */
function nameOf(one: NonNullable<EventEntry['found']>[number]): string {
  return 'laid' in one ? fullRef(one) : one.id;
}

function countOf({ who, count }: EventEntry): Count | null {
  return count ?? (who?.kind === 'count' ? who : null);
}

function saidOf(event: EventEntry): string | null {
  const { who } = event;
  const count = countOf(event);
  if (count !== null) {
    const [before, behind] = { exactly: ['', ''], about: ['~', ''], 'at least': ['', '+'] }[count.exact];
    return `${before}${count.count}${behind}`;
  }
  if (who === null) return null;
  return who.kind === 'refs' ? who.refs.map(({ text }: Ref) => text).join(', ') : 'all';
}
