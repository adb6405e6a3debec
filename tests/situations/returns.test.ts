import { describe, expect, it } from 'vitest';
import { room } from '../rooms.ts';
import { birdIn, clutchIn, codes, days, due, eggIn, pairIn, waxbills } from './morning.ts';

const brood = `
  date: 2026-03-01, laid: 1
  date: 2026-03-04, laid: 3, sitting
  date: 2026-03-16, hatched: 3
`;
const parents = 'cock: LW-19-04\nhen: LW-20-11\nhousing: cage 3';
const files = (log: string) => ({ a: waxbills(`${brood}\n${log}`, parents) });

describe('a chick found on the floor and put back', () => {
  const back = 'date: 2026-04-01, fledged: c2\ndate: 2026-04-01, time: 19:00, back: c2';

  it('is in the nest again, and fledges anew on its day', () => {
    const known = room(files(back), '2026-04-01');
    expect(birdIn(known, 'LW-1/1/c2').fledged).toBeNull();
    expect(pairIn(known, 'LW-1').here.young.size).toBe(3);
    const later = room(files(`${back}\ndate: 2026-04-04, fledged: all`), '2026-04-04');
    expect(clutchIn(later, 'LW-1/1').chicks.every(({ fledged }) => fledged?.day === later.day)).toBe(true);
    expect(codes(later)).toEqual([]);
  });

  it('was never out, for the morning: nothing is asked that follows a fledging', () => {
    // A parent may drive from five days after the first fledging: 6 April, had it counted.
    expect(due(files('date: 2026-04-01, fledged: c2'), '2026-04-06')).toContain('LW-1 watch-restart');
    expect(due(files(back), '2026-04-06')).not.toContain('LW-1 watch-restart');
  });

  it('that is in the nest already cannot be put back', () => {
    expect(codes(room(files('date: 2026-03-20, back: c2'), '2026-03-20'))).toEqual(['impossible']);
  });

  it('written off as dead lives after all', () => {
    const log = 'date: 2026-03-20, died: {missing: c2}\ndate: 2026-03-21, back: c2';
    const known = room(files(log), '2026-03-21');
    expect(birdIn(known, 'LW-1/1/c2').fate).toBeNull();
    expect(pairIn(known, 'LW-1').here.young.size).toBe(3);
  });
});

describe('an egg that was missing and turned up', () => {
  it('is in its nest again, as it was', () => {
    const log = 'date: 2026-03-18, lost: {missing: e4}\ndate: 2026-03-19, back: e4';
    const known = room(files(log), '2026-03-19');
    expect(eggIn(known, 'LW-1/1/e4').fate).toBeNull();
    expect([...pairIn(known, 'LW-1').here.eggs].map(({ ref }) => ref)).toEqual(['e4']);
  });
});

describe('a cock lent to another keeper', () => {
  const lent = 'date: 2026-05-10, gone: {lent: cock}';
  const home = `${lent}\ndate: 2026-07-01, back: cock`;

  it('is away: nothing can be told of him', () => {
    const known = room(files(`${lent}\ndate: 2026-06-01, weighed: {cock: 8.4}`), '2026-06-01');
    expect(birdIn(known, 'LW-19-04').fate).toMatchObject({ kind: 'gone', how: 'lent' });
    expect(codes(known)).toEqual(['dead-bird']);
  });

  // Common practice: thirty days apart. 1 July + 30 d = 31 July.
  it('comes home as a bird from outside does: apart for thirty days', () => {
    const { fate, quarantine } = birdIn(room(files(home), '2026-07-01'), 'LW-19-04');
    expect(fate).toBeNull();
    expect(quarantine && days({ from: quarantine.from, to: quarantine.until })).toBe('07-01…07-31');
    expect(due(files(home), '2026-07-30')).not.toContain('LW-19-04 quarantine-end');
    expect(due(files(home), '2026-07-31')).toContain('LW-19-04 quarantine-end');
  });
});
