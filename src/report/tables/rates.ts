import type { RateEntry } from '../../rules/season/ledger.ts';
import { type Column, tableOf } from './column.ts';
import type { Table } from './table.ts';

/** The columns are promised: none is renamed or left out. */
export const rateColumns: readonly Column<RateEntry>[] = [
  { name: 'season', doc: 'one season, or all', required: true, value: ({ season }) => season },
  {
    name: 'by',
    doc: 'all, species or pair',
    oneOf: ['all', 'species', 'pair'],
    required: true,
    value: ({ by }) => by,
  },
  { name: 'group', doc: 'which species or pair; nothing for all', value: ({ group }) => group },
  {
    name: 'rate',
    doc: 'fertility, hatchOfFertile, hatchOfLaid, fledge, independence or overall',
    oneOf: ['fertility', 'hatchOfFertile', 'hatchOfLaid', 'fledge', 'independence', 'overall'],
    required: true,
    value: ({ rate }) => rate,
  },
  { name: 'k', doc: 'how many did', type: 'integer', required: true, value: ({ figures }) => figures.k },
  { name: 'n', doc: 'of how many', type: 'integer', required: true, value: ({ figures }) => figures.n },
  {
    name: 'open',
    doc: 'how many wait for their time',
    type: 'integer',
    required: true,
    value: ({ figures }) => figures.open,
  },
  {
    name: 'outside',
    doc: 'how many cannot be judged',
    type: 'integer',
    required: true,
    value: ({ figures }) => figures.outside,
  },
  { name: 'share', doc: 'k of n, 0 to 1', type: 'number', value: ({ figures }) => figures.rate },
  { name: 'low', doc: 'lower end of the 95 % interval', type: 'number', value: ({ figures }) => figures.low },
  {
    name: 'high',
    doc: 'upper end of the 95 % interval',
    type: 'number',
    value: ({ figures }) => figures.high,
  },
  {
    name: 'designEffect',
    doc: 'how much less eggs of one clutch tell than as many strangers',
    type: 'number',
    value: ({ figures }) => figures.designEffect,
  },
];

/** Every rate of all seasons together and of each. */
export function rateTable(rates: readonly RateEntry[]): Table {
  return tableOf('rates', rateColumns, rates);
}
