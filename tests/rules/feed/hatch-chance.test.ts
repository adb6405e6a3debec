import { expect, it } from 'vitest';
import type { Egg } from '../../../src/room/model.ts';
import { hatchChances } from '../../../src/rules/feed/hatch-chance.ts';
import { room } from '../../rooms.ts';
import { ever, futures } from '../ahead/futures.ts';
import { pairRoom, SITTING } from './rooms.ts';

function chances(lines: readonly string[], on = '2026-06-01') {
  const known = room(pairRoom('lavender waxbill', lines), on);
  const chance = hatchChances(known);
  return (known.pairs[0]?.clutches.at(-1)?.eggs ?? []).map((egg: Egg) => Number(chance(egg).toFixed(4)));
}

/** A first clutch of four, all fertile, of which three hatched; then one egg more. */
const SECOND = [
  ...SITTING,
  'date: 2026-03-09, candled: {fertile: all}',
  'date: 2026-03-15, hatched: [e1, e2, e3]',
  'date: 2026-03-18, lost: {dead-in-shell: e4}',
  'date: 2026-05-20, clutch: 2, laid: 1',
];

it('in a new room is a guess: that of a fertile egg 0.8, of any other 0.8 of that', () => {
  expect(chances(SITTING)).toEqual([0.64, 0.64, 0.64, 0.64]);
  expect(chances([...SITTING, 'date: 2026-03-09, candled: {fertile: e1}'])).toEqual([0.8, 0.64, 0.64, 0.64]);
});

it('of an egg seen pipped is that of a fertile one', () => {
  expect(chances([...SITTING, 'date: 2026-03-14, pipped: e2'], '2026-03-15')[1]).toBe(0.8);
});

it('learns from the clutches of the room', () => {
  const [worse = 1] = chances([
    ...SECOND.slice(0, 5),
    'date: 2026-03-09, candled: {clear: all}',
    'date: 2026-03-18, lost: {clear: all}',
    'date: 2026-05-20, clutch: 2, laid: 1',
  ]);
  const [better = 0] = chances(SECOND);
  expect(worse).toBeLessThan(0.5);
  expect(better).toBeGreaterThan(0.64);
});

it('takes nothing from eggs that the keeper took', () => {
  const taken = [...SITTING, 'date: 2026-03-06, lost: {given: all}', 'date: 2026-05-20, clutch: 2, laid: 1'];
  expect(chances(taken)).toEqual([0.64]);
});

it('takes nothing from a clutch of which only the losses are known yet', () => {
  const begun = [...SITTING, 'date: 2026-03-10, lost: {broken: e1}'];
  expect(chances(begun, '2026-03-10').slice(1)).toEqual([0.64, 0.64, 0.64]);
});

it('is what the futures of the weeks ahead make of the same egg', () => {
  const eggs = ['date: 2026-05-20, clutch: 2, laid: 1', 'date: 2026-05-21, sitting'];
  const lines = [...SECOND.slice(0, -1), ...eggs];
  const known = room(pairRoom('lavender waxbill', lines), '2026-05-29');
  const drawn = futures(known, 20_000).filter(({ prospect }) => prospect.name === 'LW-1/2/e1');
  expect(ever(drawn, 'hatched', 20_000).mean).toBeCloseTo(chances(lines, '2026-05-29')[0] ?? 0, 1);
});
