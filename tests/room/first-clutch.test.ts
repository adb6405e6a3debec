import { describe, expect, it } from 'vitest';
import { eggClock } from '../../src/room/clock.ts';
import { day, room } from '../rooms.ts';
import { codes, days, eggIn, journal, pairIn, waxbills } from './facts.ts';
import { at, clutches } from './waxbill-log.ts';

describe('a journal that is begun in the middle of a brood', () => {
  it.each([
    ['candled: {fertile: 3, clear: 1}', 4],
    ['candled: {fertile: [e1, e2], clear: [e3, e4]}', 4],
  ])('knows of the eggs by its first line, and says so once: %s', (line, count) => {
    const log = `date: 2026-03-20, ${line}`;
    expect(clutches(log)).toEqual([`1: ${count}+ eggs, 0+ chicks`]);
    expect(at(log).findings.map(({ code, args }) => [code, args.count])).toEqual([
      ['counted-as-laid', count],
    ]);
  });

  it('takes no egg as older than one that is sat on can be', () => {
    // Lavender waxbills sit 13 days at the longest (species profile).
    const egg = eggIn(at('date: 2026-03-20, candled: {fertile: 3}', '2026-03-21'), 'LW-1/1/e1');
    expect(days(egg.laid)).toBe('03-07…03-20');
    expect(eggClock(egg, day('2026-03-21'))?.start.to).toBeLessThanOrEqual(day('2026-03-21'));
  });

  it('takes as many as a look of that day counts', () => {
    const log = 'date: 2026-03-20, checked: {eggs: 5}, candled: {fertile: 3, clear: 1}';
    expect(clutches(log)).toEqual(['1: 5 eggs, 0 chicks']);
    expect(codes(at(log))).toEqual(['counted-as-laid']);
    const laid = 'date: 2026-03-20, laid: 5, candled: {fertile: 3, clear: 1}';
    expect([clutches(laid), codes(at(laid))]).toEqual([['1: 5 eggs, 0 chicks'], []]);
  });

  it('knows of none by words that count none, of more than a hen lays, of a loss, or of what may have been fresh or old', () => {
    const lines = ['candled: {clear: all}', 'candled: {fertile: 6}', 'candled: {clear: 1/e1}'];
    for (const line of [...lines, 'lost: {broken: 1}', 'pulled: 4', 'set: {incubator: 4}', 'pipped: 1'])
      expect(clutches(`date: 2026-03-20, ${line}`), line).toEqual([]);
  });
});

it('a later line on eggs of which nobody wrote is rather a slip: nothing begins with it', () => {
  const flown =
    'date: 2026-03-01, laid: 1, sitting\ndate: 2026-03-14, hatched: 1\ndate: 2026-04-02, fledged: 1';
  expect(codes(at(`${flown}\ndate: 2026-05-20, candled: {fertile: 3}`))).toEqual(['too-many']);
  const guests = {
    P: waxbills('date: 2026-03-05, laid: 4\ndate: 2026-03-07, fostered: {BF-1: all}'),
    Q: journal('BF-1', 'bengalese finch', 'date: 2026-03-12, candled: {fertile: 5}'),
  };
  const known = room(guests, '2026-03-13');
  expect([pairIn(known, 'BF-1').clutches.length, ...codes(known)]).toEqual([0, 'too-many']);
});
