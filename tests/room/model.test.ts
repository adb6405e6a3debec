import { describe, expect, it } from 'vitest';
import { clutchId, fullRef, pairedSince, sameSite, together } from '../../src/room/model.ts';
import { day, room } from '../rooms.ts';
import { birdIn, clutchIn, eggIn, pairIn, waxbills } from './facts.ts';

const pair = (log: string) => pairIn(room({ P: waxbills(log) }, '2026-12-31'), 'LW-1');

describe('a pair', () => {
  it('is together from its first entry on, until it is parted and again when it is reunited', () => {
    expect(together(pair(''))).toBe(false);
    expect(together(pair('date: 2026-03-01, laid: 1'))).toBe(true);
    expect(together(pair('date: 2026-03-01, paired\ndate: 2026-04-01, parted'))).toBe(false);
    expect(
      together(pair('date: 2026-03-01, paired\ndate: 2026-04-01, parted\ndate: 2026-04-05, reunited')),
    ).toBe(true);
  });

  it('is one since it was put together last, or since its first entry where nobody wrote that', () => {
    expect(pairedSince(pair(''))).toBe(null);
    expect(pairedSince(pair('date: 2026-03-01, laid: 1\ndate: 2026-03-02, laid: 1'))).toBe(day('2026-03-01'));
    const log = 'date: 2026-03-01, checked\ndate: 2026-03-08, paired\ndate: 2026-04-01, parted';
    expect(pairedSince(pair(log))).toBe(null);
    expect(pairedSince(pair(`${log}\ndate: 2026-04-05, reunited`))).toBe(day('2026-04-05'));
  });
});

describe('names', () => {
  const known = room(
    {
      P: waxbills('date: 2026-03-05, clutch: 3, laid: 2\ndate: 2026-03-18, hatched: e2', 'hen: LW-20-11'),
    },
    '2026-03-18',
  );

  it('a clutch is its pair and number, an egg or chick its clutch and ref', () => {
    expect(clutchId(clutchIn(known, 'LW-1/3'))).toBe('LW-1/3');
    expect(fullRef(eggIn(known, 'LW-1/3/e2'))).toBe('LW-1/3/e2');
    expect(fullRef(birdIn(known, 'LW-1/3/c1'))).toBe('LW-1/3/c1');
  });

  it('a bird from outside is its own id', () => {
    expect(fullRef(birdIn(known, 'LW-20-11'))).toBe('LW-20-11');
  });
});

describe('a site', () => {
  it('that is not named may be any of the pair', () => {
    expect([
      sameSite('low', null),
      sameSite(null, 'low'),
      sameSite('low', 'low'),
      sameSite('low', 'high'),
    ]).toEqual([true, true, true, false]);
  });
});
