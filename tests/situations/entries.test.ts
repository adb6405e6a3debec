import { describe, expect, it } from 'vitest';
import { room } from '../rooms.ts';
import { birdIn, clutchIn, codes, eggIn, fates, spell, warned, waxbills } from './morning.ts';

const laid = `
  date: 2026-03-01, laid: 1
  date: 2026-03-04, laid: 3, sitting
`;
const hatched = `${laid}\ndate: 2026-03-16, hatched: [e1, e2, e3]`;

/** The room that two lines of one day make, in either order; they must make the same. */
function both(before: string, one: string, other: string, on: string) {
  const known = (lines: string[]) => room({ a: waxbills([before, ...lines].join('\n')) }, on);
  const [there, back] = [known([one, other]), known([other, one])];
  const facts = (it: typeof there) => [
    fates(clutchIn(it, 'LW-1/1')),
    clutchIn(it, 'LW-1/1').eggs.map(({ lamp }) => lamp),
    clutchIn(it, 'LW-1/1').chicks.map(({ fate }) => fate),
    codes(it),
  ];
  expect(facts(there)).toEqual(facts(back));
  return there;
}

describe('two helpers who write of one day', () => {
  it('the same counts once, with a hint', () => {
    const line = 'date: 2026-03-10, lost: {broken: 1}';
    const known = both(laid, line, line, '2026-03-10');
    expect(fates(clutchIn(known, 'LW-1/1'))).toEqual(['e1 lost (broken)', 'e2 open', 'e3 open', 'e4 open']);
    expect(codes(known)).toEqual(['same-entry']);
  });

  it('and call one egg clear and fertile make one room, whoever wrote first', () => {
    const known = both(
      laid,
      'date: 2026-03-10, candled: {clear: e1}',
      'date: 2026-03-10, candled: {fertile: e1}',
      '2026-03-10',
    );
    expect(eggIn(known, 'LW-1/1/e1').lamp).toHaveLength(2);
  });

  it('with times agree: the later look wins', () => {
    const known = both(
      laid,
      'date: 2026-03-10, time: 19:00, candled: {clear: e1}',
      'date: 2026-03-10, time: 07:00, candled: {fertile: e1}',
      '2026-03-10',
    );
    expect(eggIn(known, 'LW-1/1/e1').lamp.at(-1)?.saw).toBe('clear');
  });

  it('and both write of one death: it died once, and the second is shown', () => {
    const known = both(
      hatched,
      'date: 2026-03-20, died: {chilled: c1}',
      'date: 2026-03-20, died: {thrown out: c1}',
      '2026-03-20',
    );
    expect(birdIn(known, 'LW-1/1/c1').fate?.kind).toBe('died');
    expect(codes(known)).toEqual(['dead-bird']);
  });

  it('and count differently: the one that does not agree is asked about, and the journal’s eggs stay', () => {
    const known = both(
      laid,
      'date: 2026-03-13, checked: {eggs: 4}',
      'date: 2026-03-13, checked: {eggs: 3}',
      '2026-03-13',
    );
    expect(clutchIn(known, 'LW-1/1').eggs).toHaveLength(4);
    expect(codes(known)).toEqual(['counts-differ']);
    const files = { a: waxbills(`${laid}\ndate: 2026-03-13, checked: {eggs: 3}`) };
    expect(warned(files, 'counts-differ', '2026-03-13')).toHaveLength(1);
  });
});

describe('an entry that is corrected', () => {
  it('moves the days that are counted from it, and leaves nothing of the old behind', () => {
    const files = (day: number) => ({
      a: waxbills(`date: 2026-03-01, laid: 1\ndate: 2026-03-04, laid: 3\ndate: 2026-03-0${day}, sitting`),
    });
    const candle = (day: number) => spell(files(day), 'candle', 'LW-1', '2026-03-07', '2026-03-20');
    // Candling on day 5–6: from the 4th the 9th and 10th, from the 6th the 11th and 12th.
    expect(candle(4)).toEqual(['03-09 … 03-10']);
    expect(candle(6)).toEqual(['03-11 … 03-12']);
  });

  it('that was written late, between others, is as if it had been there all along', () => {
    const lines = hatched.trim().split('\n');
    const late = [...lines, 'date: 2026-03-10, candled: {clear: e4}'].join('\n');
    const known = room({ a: waxbills(late) }, '2026-03-16');
    expect(eggIn(known, 'LW-1/1/e4').lamp).toMatchObject([{ saw: 'clear' }]);
    expect(codes(known)).toEqual([]);
  });

  it('of an egg that nobody has stays one error; the rest of the day counts', () => {
    const known = room(
      { a: waxbills(`${laid}\ndate: 2026-03-10, candled: {fertile: [e1, e9]}`) },
      '2026-03-10',
    );
    expect(eggIn(known, 'LW-1/1/e1').lamp).toMatchObject([{ saw: 'fertile' }]);
    expect(codes(known)).toEqual(['no-such-egg']);
  });
});
