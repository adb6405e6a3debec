import { describe, expect, it } from 'vitest';
import { room } from '../rooms.ts';
import { clutchIn, codes, due, fates, spell, waxbills } from './morning.ts';

describe('a brood hatched in the incubator and fed by hand', () => {
  const files = {
    a: waxbills(`
      date: 2026-03-01, laid: 1
      date: 2026-03-02, laid: 1
      date: 2026-03-03, laid: 1, pulled: all
      date: 2026-03-05, set: {incubator: all}
      date: 2026-03-17, hatched: 2
      date: 2026-03-18, lost: {clear: 1}
      date: 2026-04-05, fledged: 2
      date: 2026-04-20, independent: 2
    `),
  };

  it('fledges and is weaned by count, like any other: no chick is made up', () => {
    const known = room(files, '2026-04-20');
    expect(known.pairs[0]?.clutches).toHaveLength(1);
    expect(fates(clutchIn(known, 'LW-1/1'))).toEqual(['e1 hatched', 'e2 hatched', 'e3 lost (clear)']);
    const { chicks } = clutchIn(known, 'LW-1/1');
    expect(chicks.every(({ fledged, independent }) => fledged !== null && independent !== null)).toBe(true);
    expect(codes(known)).toEqual([]);
  });

  it('asks whether they are fed and feed themselves', () => {
    expect(due(files, '2026-03-18')).toContain('LW-1 first-feed');
    expect(due(files, '2026-04-19')).toContain('LW-1 independent');
  });

  it('has no nest to take down, no hen that stops brooding, no parent to watch', () => {
    for (const task of ['warm-nights', 'nest-down', 'watch-restart'])
      expect(spell(files, task, 'LW-1', '2026-03-17', '2026-05-20'), task).toEqual([]);
  });
});

describe('eggs that the keeper takes in hand', () => {
  it.each(['fostered: {hand: all}', 'set: {incubator: all}', 'pulled: all'])(
    'may break there: %s',
    (taken) => {
      const log = `date: 2026-03-01, laid: 1\ndate: 2026-03-04, laid: 3, sitting
      date: 2026-03-10, ${taken}\ndate: 2026-03-11, lost: {broken: 1}`;
      const known = room({ a: waxbills(log) }, '2026-03-11');
      expect(fates(clutchIn(known, 'LW-1/1'))).toEqual(['e1 lost (broken)', 'e2 open', 'e3 open', 'e4 open']);
      expect(codes(known)).toEqual([]);
    },
  );
});

describe('“back: 1” without saying who', () => {
  const log = (out: string) => `
    date: 2026-03-01, laid: 1
    date: 2026-03-04, laid: 3, sitting
    date: 2026-03-16, hatched: 3
    date: 2026-03-20, died: {chilled: c1}
    ${out}
  `;

  it('is the one that left the nest, not the one found dead, and nobody needs to be asked', () => {
    const known = room(
      { a: waxbills(log('date: 2026-04-01, fledged: c2\ndate: 2026-04-01, time: 19:00, back: 1')) },
      '2026-04-01',
    );
    const [c1, c2] = clutchIn(known, 'LW-1/1').chicks;
    expect([c1?.fate?.kind, c2?.fledged]).toEqual(['died', null]);
    expect(codes(known)).toEqual([]);
  });
});
