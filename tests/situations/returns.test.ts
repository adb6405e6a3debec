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

describe('a chick that died in an earlier brood', () => {
  it('is not the one put back by count: that is the one that came out too early', () => {
    const log = `
      date: 2026-03-20, died: {chilled: 1}
      date: 2026-04-06, fledged: 2
      date: 2026-04-25, independent: 2
      date: 2026-05-10, laid: 3, sitting
      date: 2026-05-22, hatched: 3
      date: 2026-06-06, fledged: 1
      date: 2026-06-06, time: 20:00, back: 1`;
    const known = room(files(log), '2026-06-06');
    expect(clutchIn(known, 'LW-1/1').chicks[0]?.fate).toMatchObject({ kind: 'died', cause: 'chilled' });
    expect(clutchIn(known, 'LW-1/2').chicks.map(({ fledged }) => fledged)).toEqual([null, null, null]);
    expect(codes(known)).toEqual([]);
  });
});

describe('a chick that was missing', () => {
  const first = 'date: 2026-04-06, fledged: [c1, c2]\ndate: 2026-04-25, independent: [c1, c2]';
  const missing = `${first}\ndate: 2026-04-07, died: {missing: c3}`;
  const second = `
    date: 2026-05-10, laid: 3, sitting
    date: 2026-05-22, hatched: 3
    date: 2026-06-01, died: {missing: c1}`;

  it('by count is the one that is still fed, and not one that would feed itself by now', () => {
    const known = room(files(`${missing}\n${second}\ndate: 2026-06-02, back: 1`), '2026-06-02');
    expect(birdIn(known, 'LW-1/2/c1').fate).toBeNull();
    expect(birdIn(known, 'LW-1/1/c3').fate?.kind).toBe('died');
    expect(codes(known)).toEqual([]);
  });

  it('is the one that would feed itself by now where nobody else is missing', () => {
    // Lavender waxbills feed themselves at 42 days at the latest (species profile).
    const known = room(files(`${missing}\ndate: 2026-06-02, back: 1`), '2026-06-02');
    expect(birdIn(known, 'LW-1/1/c3').fate).toBeNull();
  });

  it('lives in its cage and is fed by nobody where it fed itself before', () => {
    const log = `${first}\ndate: 2026-05-01, died: {missing: c1}\ndate: 2026-05-03, back: c1`;
    const known = room(files(log), '2026-05-03');
    expect(birdIn(known, 'LW-1/1/c1').stays.at(-1)).toMatchObject({
      housing: 'cage 3',
      nest: null,
      clutch: null,
    });
    expect([...pairIn(known, 'LW-1').here.young].map(({ ref }) => ref)).toEqual(['c3']);
  });
});

describe('a chick that another pair rears', () => {
  const foster = waxbills(
    'date: 2026-03-02, laid: 3, sitting\ndate: 2026-03-16, hatched: 1',
    'housing: cage 4',
  ).replace('pair: LW-1', 'pair: LW-2');
  const given = 'date: 2026-03-18, fostered: {LW-2: [c1, c2]}';
  const nestOf = (own: string, other = '') => {
    const known = room({ ...files(`${given}\n${own}`), b: `${foster}\n${other}` }, '2026-04-20');
    const { stays, fledged } = birdIn(known, 'LW-1/1/c1');
    const last = stays.at(-1);
    return [last?.nest?.id, last?.clutch?.pair.id, last?.housing, fledged, codes(known)];
  };
  const home = ['LW-2', 'LW-2', 'cage 4', null, []];

  it('and that fell out is put back where it is fed, whoever writes it down', () => {
    const out = '  - {date: 2026-04-01, fledged: LW-1/1/c1}';
    expect(nestOf('date: 2026-04-01, time: 19:00, back: c1', out)).toEqual(home);
    expect(nestOf('', `${out}\n  - {date: 2026-04-01, time: 19:00, back: LW-1/1/c1}`)).toEqual(home);
    expect(nestOf('', `${out}\n  - {date: 2026-04-01, time: 19:00, back: 1}`)).toEqual(home);
  });

  it('and that was missing is found there', () => {
    expect(nestOf('date: 2026-03-20, died: {missing: c1}\ndate: 2026-03-21, back: c1')).toEqual(home);
  });

  it('or one of that pair’s own, by count, is another rate: a hint asks which', () => {
    const known = nestOf(
      '',
      '  - {date: 2026-04-01, fledged: [c1, LW-1/1/c1]}\n  - {date: 2026-04-01, time: 19:00, back: 1}',
    );
    expect(known.at(-1)).toEqual(['guessed']);
  });

  it('is none of those that come back by count into the nest they left', () => {
    const known = nestOf(
      'date: 2026-04-01, fledged: c3\ndate: 2026-04-01, time: 19:00, back: 1',
      '  - {date: 2026-03-31, fledged: [c1, LW-1/1/c1]}',
    );
    expect(known.at(-1)).toEqual([]);
    expect(known.at(-2)).not.toBeNull();
  });
});

describe('a chick fed by hand', () => {
  it('and that was missing is fed by hand again', () => {
    const log =
      'date: 2026-03-18, fostered: {hand: c1}\ndate: 2026-03-20, died: {missing: c1}\ndate: 2026-03-21, back: c1';
    expect(birdIn(room(files(log), '2026-03-21'), 'LW-1/1/c1').stays.at(-1)).toMatchObject({
      housing: 'hand',
      nest: null,
    });
  });
});

describe('an egg that was missing and turned up', () => {
  it('in a foster’s nest lies there', () => {
    const foster = waxbills('date: 2026-03-02, laid: 3, sitting').replace('pair: LW-1', 'pair: LW-2');
    const log = `date: 2026-03-05, fostered: {LW-2: e4}
      date: 2026-03-07, lost: {missing: e4}
      date: 2026-03-08, back: e4`;
    const own = waxbills(`date: 2026-03-01, laid: 1\ndate: 2026-03-04, laid: 3, sitting\n${log}`, parents);
    const known = room({ a: own, b: foster }, '2026-03-08');
    expect(eggIn(known, 'LW-1/1/e4').places.at(-1)?.place).toMatchObject({
      kind: 'nest',
      pair: { id: 'LW-2' },
    });
    expect(pairIn(known, 'LW-2').here.eggs.size).toBe(4);
    expect(pairIn(known, 'LW-1').here.eggs.size).toBe(3);
  });

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
