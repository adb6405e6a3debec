import { describe, expect, it } from 'vitest';
import { clearRank } from '../../src/room/fertility.ts';
import { room } from '../rooms.ts';
import { clutchIn, waxbills } from './facts.ts';

const laid = 'date: 2026-03-01, laid: 1\ndate: 2026-03-05, laid: 4, sitting';

/** The eggs from the likeliest to hatch to the least. */
function likeliest(more: string): string[] {
  const { eggs } = clutchIn(room({ P: waxbills(`${laid}\n${more}`) }, '2026-03-16'), 'LW-1/1');
  return [...eggs].sort((a, b) => clearRank(a) - clearRank(b)).map(({ ref }) => ref);
}

describe('which egg is likeliest to hatch', () => {
  it('is the pipped one, then fertile, then unseen, then dead, and a clear one last', () => {
    const seen = 'date: 2026-03-11, candled: {clear: e1, dead: e2, fertile: [e4, e5]}';
    expect(likeliest(`${seen}\ndate: 2026-03-15, pipped: e5`)).toEqual(['e5', 'e4', 'e3', 'e2', 'e1']);
  });

  it('is judged by the latest look at the lamp', () => {
    const twice =
      'date: 2026-03-09, candled: {clear: [e1, e2, e3, e4, e5]}\ndate: 2026-03-12, candled: {fertile: e3}';
    expect(likeliest(twice)[0]).toBe('e3');
  });

  it('an unsure lamp is as good as none', () => {
    expect(likeliest('date: 2026-03-11, candled: {unsure: e1, clear: e2}')).toEqual([
      'e1',
      'e3',
      'e4',
      'e5',
      'e2',
    ]);
  });

  it('hatching beats every lamp: a clear egg named by its ref hatched, with a word about it', () => {
    const log = `${laid}\ndate: 2026-03-11, candled: {clear: e1}\ndate: 2026-03-16, hatched: e1`;
    const known = room({ P: waxbills(log) }, '2026-03-16');
    expect(clutchIn(known, 'LW-1/1').eggs[0]?.fate?.kind).toBe('hatched');
    expect(known.findings.map(({ code }) => code)).toEqual(['hatched-though-clear']);
  });
});
