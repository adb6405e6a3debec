import { describe, expect, it } from 'vitest';
import { room } from '../rooms.ts';
import { codes, journal } from './morning.ts';

describe('eggs of another pair that are due before the nest’s own', () => {
  // Both kinds sit thirteen to sixteen days: the guests are due on the 17th, the house's own on the 20th.
  const files = (log: string) => ({
    a: journal(
      'GF-1',
      'gouldian finch',
      `
      date: 2026-02-28, laid: 1
      date: 2026-03-01, laid: 1
      date: 2026-03-02, laid: 1
      date: 2026-03-03, laid: 1, sitting
      date: 2026-03-08, fostered: {BF-1: all}
    `,
    ),
    b: journal(
      'BF-1',
      'bengalese finch',
      `
      date: 2026-03-03, laid: 1
      date: 2026-03-04, laid: 1
      date: 2026-03-05, laid: 1
      date: 2026-03-06, laid: 1, sitting
      ${log}
    `,
    ),
  });
  const broods = (log: string, on = '2026-03-25') =>
    room(files(log), on).birds.flatMap(({ clutch, ref }) =>
      clutch === null ? [] : `${clutch.pair.id} ${ref}`,
    );

  it('hatch first by count, whoever’s nest it is', () => {
    expect(broods('date: 2026-03-18, hatched: 3')).toEqual(['GF-1 c1', 'GF-1 c2', 'GF-1 c3']);
    expect(codes(room(files('date: 2026-03-18, hatched: 4'), '2026-03-18'))).toEqual([]);
  });

  it('pip first, and are the first of whom a look counts chicks', () => {
    expect(broods('date: 2026-03-17, pipped: 2\ndate: 2026-03-18, checked: {eggs: 6, chicks: 2}')).toEqual([
      'GF-1 c1',
      'GF-1 c2',
    ]);
    expect(broods('date: 2026-03-17, checked: {eggs: 7, chicks: 1}')).toEqual(['GF-1 c1']);
  });

  it('are no longer waited for where looks saw that they did not hatch: then it is the house’s own', () => {
    expect(broods('date: 2026-03-22, checked\ndate: 2026-03-23, hatched: 2')).toEqual(['BF-1 c1', 'BF-1 c2']);
  });

  it('hatched while nobody looked: after a week away it is still they who came first', () => {
    const away = 'date: 2026-03-16, checked\ndate: 2026-03-24, hatched: 2';
    expect(broods(away)).toEqual(['GF-1 c1', 'GF-1 c2']);
  });

  it('do not hatch before one that the lamp showed alive where both are due', () => {
    const log = 'date: 2026-03-12, candled: {fertile: e1, unsure: [e2, e3, e4]}';
    expect(broods(`${log}\ndate: 2026-03-20, hatched: 1`)).toEqual(['BF-1 c1']);
    expect(broods(`${log}\ndate: 2026-03-17, hatched: 1`)).toEqual(['GF-1 c1']);
  });
});
