import { expect, it } from 'vitest';
import type { Egg } from '../../../src/room/model.ts';
import { hatchChances } from '../../../src/rules/feed/hatch-chance.ts';
import { room } from '../../rooms.ts';
import { pairRoom, SITTING } from './rooms.ts';

function chances(lines: readonly string[], on = '2026-06-01') {
  const known = room(pairRoom('lavender waxbill', lines), on);
  const chance = hatchChances(known);
  return (known.pairs[0]?.clutches.at(-1)?.eggs ?? []).map((egg: Egg) => Number(chance(egg).toFixed(4)));
}

it('in a new room is the book’s: a fertile egg’s is the better one', () => {
  expect(chances(SITTING)).toEqual([0.65, 0.65, 0.65, 0.65]);
  expect(chances([...SITTING, 'date: 2026-03-09, candled: {fertile: e1}'])).toEqual([0.85, 0.65, 0.65, 0.65]);
});

it('learns from eggs that hatched or were lost, ten eggs being the book’s weight', () => {
  const second = [
    ...SITTING,
    'date: 2026-03-15, hatched: [e1, e2, e3]',
    'date: 2026-03-18, lost: {clear: e4}',
    'date: 2026-05-20, clutch: 2, laid: 1',
  ];
  expect(chances(second)).toEqual([Number(((3 + 6.5) / 14).toFixed(4))]);
});

it('takes nothing from eggs that the keeper took', () => {
  const taken = [...SITTING, 'date: 2026-03-06, lost: {given: all}', 'date: 2026-05-20, clutch: 2, laid: 1'];
  expect(chances(taken)).toEqual([0.65]);
});
