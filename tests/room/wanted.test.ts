import { describe, expect, it } from 'vitest';
import { room } from '../rooms.ts';
import { clutchIn, days, waxbills } from './facts.ts';
import { chicks, eggs } from './five-eggs.ts';

describe('a count', () => {
  it('of the dead takes who is in the nest before who has left it, and nobody died before it left', () => {
    const left = `${chicks}\ndate: 2026-04-04, fledged: 4\n`;
    const ends = (more: string) =>
      clutchIn(room({ P: waxbills(left + more) }, '2026-04-20'), 'LW-1/1').chicks.flatMap(({ ref, fate }) =>
        fate?.kind === 'died' ? [`${ref} ${days(fate.span)}`] : [],
      );
    expect(ends('date: 2026-04-05, died: 1')).toEqual(['c5 03-19…04-05']);
    expect(ends('date: 2026-04-06, died: 2')).toEqual(['c1 04-04…04-06', 'c5 03-19…04-06']);
  });

  it('takes the lowest numbers where all are alike, and nobody needs to be asked', () => {
    const { fates, codes } = eggs('date: 2026-03-18, hatched: 2');
    expect(fates).toEqual(['e1 hatched', 'e2 hatched', 'e3 open', 'e4 open', 'e5 open']);
    expect(codes).toEqual([]);
  });

  it('of hatched takes no clear egg while another is there', () => {
    const { fates } = eggs(
      'date: 2026-03-11, candled: {clear: [e1, e2], fertile: [e3, e4, e5]}\ndate: 2026-03-18, hatched: 3',
    );
    expect(fates).toEqual(['e1 open', 'e2 open', 'e3 hatched', 'e4 hatched', 'e5 hatched']);
  });

  it('of clear eggs takes those that the lamp showed clear', () => {
    const { fates, codes } = eggs(
      'date: 2026-03-11, candled: {clear: e4, fertile: [e1, e2, e3, e5]}\ndate: 2026-03-18, lost: {clear: 1}',
    );
    expect(fates[3]).toBe('e4 lost (clear)');
    expect(codes).toEqual([]);
  });

  it('of eggs dead in shell takes those that had been seen dead, then fertile ones', () => {
    const { fates } = eggs(
      'date: 2026-03-11, candled: {clear: e1, fertile: [e2, e3], dead: e5}\ndate: 2026-03-20, lost: {dead-in-shell: 2}',
    );
    expect(fates).toEqual([
      'e1 open',
      'e2 lost (dead-in-shell)',
      'e3 open',
      'e4 open',
      'e5 lost (dead-in-shell)',
    ]);
  });
});
