import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fold } from '../../../../src/report/terminal/due/fold.ts';
import { day, item } from '../../mornings.ts';

const standing = day('2026-05-17');
const pairs = (rows: ReturnType<typeof fold>) => rows.map((row) => row.map(({ pair }) => pair));

test('pairs with one task, wording, state and window share a row', () => {
  expect(pairs(fold([item({ pair: 'LW-2' }), item({ pair: 'LW-1' })]))).toEqual([['LW-1', 'LW-2']]);
});

test.each([
  ['task', { task: 'ring' }],
  ['words', { say: 'candle egg e4' }],
  ['state', { state: 'late' as const }],
  ['first day', { from: standing - 1 }],
  ['last day', { to: standing + 1 }],
  ['end that is open', { to: null }],
  ['likely day', { likely: standing }],
])('another %s is another row', (_, over) => {
  expect(fold([item({}), item({ pair: 'LW-2', ...over })])).toHaveLength(2);
});

test('a bird and a pair do not share a row', () => {
  expect(fold([item({}), item({ pair: null, bird: 'LW-20-11' })])).toHaveLength(2);
});

test('what ends first comes first, what has no end last, then the way through the room', () => {
  const items = [
    item({ pair: 'A', to: null }),
    item({ pair: 'B', to: standing + 2 }),
    item({ pair: 'C', to: standing, say: 'x', housing: 'flight 10' }),
    item({ pair: 'D', to: standing, say: 'y', housing: 'flight 9' }),
  ];
  expect(pairs(fold(items))).toEqual([['D'], ['C'], ['B'], ['A']]);
});

test('whatever order the items come in, the rows are the same', () => {
  const items = ['LW-1', 'LW-2', 'CB-1', 'CB-10'].flatMap((pair, index) => [
    item({ pair, to: standing + (index % 2) }),
    item({ pair, task: 'ring', say: 'ring the chicks', state: 'coming', from: standing + index }),
  ]);
  fc.assert(
    fc.property(fc.shuffledSubarray(items, { minLength: items.length }), (shuffled) => {
      expect(fold(shuffled)).toEqual(fold(items));
    }),
  );
});
