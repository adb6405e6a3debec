import { describe, expect, it } from 'vitest';
import type { Clutch } from '../../../src/room/model.ts';
import { steps } from '../../../src/rules/ahead/beliefs.ts';
import { seenOf } from '../../../src/rules/ahead/deal.ts';
import { room } from '../../rooms.ts';
import { layingPair } from './futures.ts';

/** How far the first clutch has told how it fares, `k of n` for each step. */
function told(more: readonly string[], on: string): string[] {
  const clutch = room(
    {
      A: layingPair(
        'A',
        4,
        more.map((one) => `{${one}}`),
      ),
    },
    on,
  ).pairs[0]?.clutches[0] as Clutch;
  return steps.map((step) => {
    const { k, n } = seenOf(clutch, step);
    return `${k} of ${n}`;
  });
}

describe('what a clutch has told of itself', () => {
  it('is nothing while it is laid', () => {
    expect(told([], '2026-03-04')).toEqual(['0 of 0', '0 of 0', '0 of 0', '0 of 0']);
  });

  it('is what the lamp showed, and no hatching of the clear', () => {
    const lamp = 'date: 2026-03-10, candled: {fertile: [e1, e2, e3], clear: e4}';
    expect(told([lamp], '2026-03-10')).toEqual(['3 of 4', '0 of 0', '0 of 0', '0 of 0']);
    expect(told([lamp, 'date: 2026-03-11, lost: {clear: e4}'], '2026-03-11')[1]).toBe('0 of 0');
  });

  it('is who hatched, left the nest and feeds itself, of those whose turn has come', () => {
    const young = [
      'date: 2026-03-17, hatched: [e1, e2, e3], lost: {dead-in-shell: e4}',
      'date: 2026-03-20, died: c3',
      'date: 2026-04-07, fledged: [c1, c2]',
      'date: 2026-04-20, independent: c1',
    ];
    expect(told(young, '2026-04-20')).toEqual(['4 of 4', '3 of 4', '2 of 3', '1 of 1']);
  });

  it('is no judgement of eggs that our hand took', () => {
    expect(told(['date: 2026-03-06, lost: {given: e1}'], '2026-03-06')[1]).toBe('0 of 0');
  });
});
