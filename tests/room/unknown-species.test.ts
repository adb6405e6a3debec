import { describe, expect, it } from 'vitest';
import type { Span } from '../../src/days.ts';
import { fertilityOf } from '../../src/room/fertility.ts';
import { type Files, room } from '../rooms.ts';
import { birdIn, clutchIn, days, fates, journal } from './facts.ts';

// Of a species of which nobody wrote how long it lays, sits and is fed the widest of the small cage birds is reckoned with.

const kinds: [string, Files][] = [
  ['without a profile', {}],
  ['whose own profile tells nothing but its name', { 'species/ridge-finch.yaml': 'species: ridge finch\n' }],
];

describe.each(kinds)('a pair of a species %s', (_, more) => {
  const at = (log: string) => room({ P: journal('RF-1', 'ridge finch', log), ...more }, '2026-06-30');
  const laid = 'date: 2026-02-20, checked\ndate: 2026-03-01, laid: 3';

  it('may have begun to lay on the day after the last look', () => {
    const { eggs } = clutchIn(at(laid), 'RF-1/1');
    expect(eggs.map((egg) => days(egg.laid))).toEqual(['02-21…02-27', '02-22…02-28', '02-23…03-01']);
  });

  it('has clear eggs where the lamp showed them after five days of sitting', () => {
    const shown = (on: string) =>
      clutchIn(at(`${laid}, sitting\ndate: ${on}, candled: {clear: e1, fertile: e2}`), 'RF-1/1').eggs.map(
        fertilityOf,
      );
    expect(shown('2026-03-05')).toEqual([null, 'fertile', null]);
    expect(shown('2026-03-06')).toEqual(['clear', 'fertile', null]);
  });

  it('hatches the egg that the lamp showed fertile', () => {
    const known = at(
      `${laid}, sitting\ndate: 2026-03-10, candled: {fertile: e2}\ndate: 2026-03-15, hatched: 1`,
    );
    expect(fates(clutchIn(known, 'RF-1/1'))).toEqual(['e1 open', 'e2 hatched', 'e3 open']);
  });

  it('has a brood of six eggs at the most: the sisters of a chick of known age hatched within five days of it', () => {
    const known = at('date: 2026-03-24, checked: {chicks: 2}\ndate: 2026-03-28, aged: {10: c2}');
    const hatched = ['c1', 'c2'].map((ref) => days(birdIn(known, `RF-1/1/${ref}`).hatched as Span));
    expect(hatched).toEqual(['03-13…03-23', '03-18']);
  });
});
