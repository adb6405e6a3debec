import { describe, expect, it } from 'vitest';
import { room } from '../rooms.ts';
import { birdIn, clutchIn, codes, eggIn, fates, journal, waxbills } from './facts.ts';

/** The room of a pair of lavender waxbills and one of Bengalese finches that sits. */
const given = (log: string) =>
  room(
    { P: waxbills(log), Q: journal('BF-1', 'bengalese finch', 'date: 2026-03-01, sitting') },
    '2026-04-01',
  );

describe('whoever is counted and taken away in one line, or in two of one visit', () => {
  const laid = 'date: 2026-03-01, laid: 1';
  const sat = 'date: 2026-03-05, laid: 4, sitting';

  it.each(['fostered: {BF-1: all}', 'set: {incubator: all}', 'pulled: all', 'lost: {deserted: all}'])(
    'lay in the nest before: all the eggs go, %s',
    (away) => {
      const known = given(`${laid}\ndate: 2026-03-04, checked: {eggs: 4}, ${away}`);
      const clutch = clutchIn(known, 'LW-1/1');
      expect([clutch.eggs.length, clutch.pair.here.eggs.size]).toEqual([4, 0]);
      expect(codes(known)).toEqual(['counted-as-laid']);
      const apart = given(`${laid}\ndate: 2026-03-04, checked: {eggs: 4}\ndate: 2026-03-04, ${away}`);
      expect(clutchIn(apart, 'LW-1/1').pair.here.eggs.size).toBe(0);
      // With its time, the look was after it; of a deserted nest it says nothing.
      if (away.startsWith('lost')) return;
      const hours = `date: 2026-03-04, time: 18:00, checked: {eggs: 4}\ndate: 2026-03-04, time: 08:00, ${away}`;
      expect(clutchIn(given(`${laid}\n${hours}`), 'LW-1/1').pair.here.eggs.size).toBeGreaterThan(0);
    },
  );

  it('are the chicks that were found, and not the egg beside them', () => {
    for (const who of ['all', '[c1, c2, c3]']) {
      const known = given(
        `${sat}\ndate: 2026-03-20, checked: {chicks: 3, eggs: 1}, fostered: {BF-1: ${who}}`,
      );
      const feeders = clutchIn(known, 'LW-1/1').chicks.map(({ stays }) => stays.at(-1)?.nest?.id);
      expect(feeders, who).toEqual(['BF-1', 'BF-1', 'BF-1']);
      expect(eggIn(known, 'LW-1/1/e4').places, who).toHaveLength(1);
      expect(codes(known), who).toEqual(['counted-as-hatched']);
    }
  });

  it('is what came instead where others bring theirs that day, and what lies beside the chicks that go', () => {
    const bf = 'date: 2026-03-03, laid: 4, sitting\ndate: 2026-03-08,';
    const exchange = (own: string, other: string) =>
      codes(
        room(
          {
            P: waxbills(`${sat}\ndate: 2026-03-08, ${own}`),
            Q: journal('BF-1', 'bengalese finch', `${bf} ${other}`),
          },
          '2026-03-09',
        ),
      );
    expect(exchange('fostered: {BF-1: all}', 'lost: {removed: all}, checked: {eggs: 4}')).toEqual([]);
    expect(
      exchange('fostered: {BF-1: all}, checked: {eggs: 4}', 'fostered: {LW-1: all}, checked: {eggs: 4}'),
    ).toEqual([]);
    expect(
      exchange(
        'pulled: e1, fostered: {BF-1: all}, checked: {eggs: 4}',
        'fostered: {LW-1: all}, checked: {eggs: 3}',
      ),
    ).toEqual([]);
    const hatched = `${sat}\ndate: 2026-03-18, hatched: 3\ndate: 2026-03-20, fostered: {BF-1: all}`;
    expect(codes(given(`${hatched}, checked: {eggs: 1, chicks: 0}`))).toEqual([]);
    // Two in the hand, and one counted: it was left.
    const named = given(
      `${sat}\ndate: 2026-03-20, fostered: {hand: [c1, c2]}, checked: {eggs: 1, chicks: 1}`,
    );
    expect(codes(named)).toContain('no-such-chick');
    expect(clutchIn(named, 'LW-1/1').pair.here.young.size).toBe(1);
  });

  it('is what was left where some are given away, and nothing where the nest was found empty', () => {
    const hatched = `${sat}\ndate: 2026-03-18, hatched: 3`;
    const left = given(`${hatched}\ndate: 2026-03-20, checked: {chicks: 1}, fostered: {hand: 2}`);
    expect(codes(left)).toEqual([]);
    const one = given(`${hatched}\ndate: 2026-03-20, checked: {chicks: 2}, fostered: {hand: c1}`);
    expect([codes(one), birdIn(one, 'LW-1/1/c1').stays.length]).toEqual([[], 2]);
    const gone = given(`${sat}\ndate: 2026-03-10, checked: {eggs: 0}, lost: {missing: all}`);
    expect([codes(gone), fates(clutchIn(gone, 'LW-1/1')).length]).toEqual([[], 4]);
    const clear = given(`${hatched}\ndate: 2026-03-25, checked: {chicks: 3, eggs: 0}, lost: {clear: all}`);
    expect(codes(clear)).toEqual([]);
  });
});
