import { expect, it } from 'vitest';
import { fullRef } from '../../../src/room/model.ts';
import { firstFeed } from '../../../src/rules/agenda/first-feed.ts';
import { days } from '../../room/facts.ts';
import type { Files } from '../../rooms.ts';
import { pair } from '../warnings/warned.ts';
import { brood, hillFinches, lines, stands, THREE_CHICKS } from './hill-finch.ts';

/** Since when they are to be fed on a day, why, and whom it is about where it is not the whole nest. */
function mouths(files: Files, on: string): string[] {
  return firstFeed
    .anchors(brood(files, on))
    .map(({ span, says, who }) => [days(span), says, ...(who ?? []).map(fullRef)].join('; '));
}

const hand = `${THREE_CHICKS}date: 2026-03-18, fostered: {hand: [c1, c2]}\n`;
const home = `${hand}date: 2026-03-21, fostered: {HF-1: all}\n`;

it('is counted from the first hatching, and for nestlings that are brought here from the day on which they came', () => {
  expect(mouths(hillFinches(hand), '2026-03-19')).toEqual(['03-15; first hatched 15 Mar']);
  expect(mouths(hillFinches(home), '2026-03-22')).toEqual([
    '03-21; brought here 21 Mar; HF-1/1/c1; HF-1/1/c2',
  ]);
});

it('needs no look at fledglings that were brought', () => {
  const out = hillFinches(`${home}date: 2026-04-02, fledged: all`);
  expect(mouths(out, '2026-04-02')).toEqual(['03-15; first hatched 15 Mar']);
});

/** Eggs of another pair, brought on 6 March, beside the three that hatch on the 15th. */
const beside = (log: string) =>
  hillFinches(
    `${THREE_CHICKS}${log}`,
    {},
    {
      'HF-2': pair(
        'HF-2',
        'hill finch',
        'date: 2026-03-06, laid: 1\ndate: 2026-03-07, laid: 1, fostered: {HF-1: all}',
      ),
    },
  );

it('is asked anew of chicks of another clutch that hatch beside those that are fed', () => {
  const files = beside(
    'date: 2026-03-16, crops: {full: all}\ndate: 2026-03-19, after: 2026-03-18, hatched: [HF-2/1/e1, HF-2/1/e2]',
  );
  expect(mouths(files, '2026-03-19')).toEqual([
    '03-15; first hatched 15 Mar',
    '03-19; first hatched 19 Mar; HF-2/1/c1; HF-2/1/c2',
  ]);
  expect(stands(files, 'first-feed', '2026-03-10', '2026-04-01')).toEqual([
    '03-20 … 03-21 now',
    '03-22 … 03-23 late',
  ]);
  expect(lines(files, 'first-feed', '2026-03-20').map(({ who }) => who)).toEqual([
    ['HF-2/1/c1', 'HF-2/1/c2'],
  ]);
});

it('is not asked twice where they hatch while the first are looked after, nor of those that died', () => {
  const soon = beside('date: 2026-03-17, after: 2026-03-16, hatched: [HF-2/1/e1, HF-2/1/e2]');
  expect(mouths(soon, '2026-03-17')).toEqual(['03-15; first hatched 15 Mar']);
  const dead = beside(
    'date: 2026-03-19, hatched: [HF-2/1/e1, HF-2/1/e2]\ndate: 2026-03-20, died: [HF-2/1/c1, HF-2/1/c2]',
  );
  expect(mouths(dead, '2026-03-20')).toEqual(['03-15; first hatched 15 Mar']);
});

it('is counted from guests that hatch first, and then anew from the chicks of the nest’s own', () => {
  const files = hillFinches(
    `${THREE_CHICKS}date: 2026-03-09, after: 2026-03-08, hatched: [HF-2/1/e1, HF-2/1/e2]`,
    {},
    {
      'HF-2': pair(
        'HF-2',
        'hill finch',
        'date: 2026-02-24, laid: 1\ndate: 2026-02-25, laid: 1, sitting\ndate: 2026-03-03, fostered: {HF-1: all}',
      ),
    },
  );
  expect(mouths(files, '2026-03-15')).toEqual([
    '03-09; first hatched 9 Mar',
    '03-15; first hatched 15 Mar; HF-1/1/c1; HF-1/1/c2; HF-1/1/c3',
  ]);
});

/** Chicks of another pair that hatched on 12 March and were brought on this day to the nest whose own hatch on the 15th. */
const guests = (brought: string) =>
  hillFinches(
    THREE_CHICKS,
    {},
    {
      'HF-2': pair(
        'HF-2',
        'hill finch',
        `date: 2026-02-28, laid: 2, sitting\ndate: 2026-03-12, hatched: 2\ndate: ${brought}, fostered: {HF-1: all}`,
      ),
    },
  );

it('is asked of nestlings that are brought and of those that hatch about then, each from its own day', () => {
  const own = '03-15; first hatched 15 Mar; HF-1/1/c1; HF-1/1/c2; HF-1/1/c3';
  const brought = (day: number) => `03-${day}; brought here ${day} Mar; HF-2/1/c1; HF-2/1/c2`;
  expect(mouths(guests('2026-03-14'), '2026-03-14')).toEqual([brought(14)]);
  expect(mouths(guests('2026-03-14'), '2026-03-15')).toEqual([own, brought(14)]);
  expect(mouths(guests('2026-03-15'), '2026-03-15')).toEqual([own, brought(15)]);
  // Two days after the hatching it is seen who is fed: from then on it is those that came.
  expect(mouths(guests('2026-03-17'), '2026-03-17')).toEqual([own, brought(17)]);
  expect(mouths(guests('2026-03-18'), '2026-03-18')).toEqual([brought(18)]);
});

it('of those that hatch on the day on which others are brought is a line by itself, and goes on a day longer', () => {
  const shown = (on: string) =>
    lines(guests('2026-03-15'), 'first-feed', on).map(({ who, state }) => `${who?.[0]} ${state}`);
  expect(shown('2026-03-16').sort()).toEqual(['HF-2/1/c1 now', 'c1 now']);
  expect(shown('2026-03-17').sort()).toEqual(['HF-2/1/c1 late', 'c1 now']);
  const apart = lines(guests('2026-03-15'), 'first-feed', '2026-03-16').map((item) => item.apart);
  expect(new Set(apart).size).toBe(2);
});
