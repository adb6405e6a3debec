import { expect, it } from 'vitest';
import type { AgendaItem } from '../../../src/rules/agenda/item.ts';
import { pair } from '../warnings/warned.ts';
import { FOUR_EGGS, hillFinches, lines } from './hill-finch.ts';

it('those that came to a nest later are set apart by their day, the others by nothing', () => {
  const other = 'date: 2026-03-04, laid: 1\ndate: 2026-03-06, fostered: {HF-1: all}';
  const files = hillFinches(FOUR_EGGS, {}, { 'HF-2': pair('HF-2', 'hill finch', other) });
  const apart = ({ who, apart: by }: AgendaItem) => [who, by];
  expect(lines(files, 'candle', '2026-03-08', 7).map(apart)).toEqual([
    [null, null],
    [['HF-2/1/e1'], '2026-03-06'],
  ]);
});
