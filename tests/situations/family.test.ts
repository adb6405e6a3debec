import { describe, expect, it } from 'vitest';
import { housingOf } from '../../src/room/lives.ts';
import { agenda, room } from '../rooms.ts';
import { birdIn, codes, due, journal, pairIn, waxbills } from './morning.ts';

const parents = 'cock: LW-19-04\nhen: LW-20-11\nhousing: flight 2';
const brood = `
  date: 2026-02-20, paired
  date: 2026-03-01, laid: 1
  date: 2026-03-04, laid: 3, sitting
  date: 2026-03-16, hatched: 3
`;
const files = (log: string) => ({ a: waxbills(`${brood}\n${log}`, parents) });
const housings = (log: string, on: string) => {
  const known = room(files(log), on);
  return ['LW-19-04', 'LW-20-11', 'LW-1/1/c1'].map((name) => housingOf(birdIn(known, name)));
};

describe('a family', () => {
  it('moves as one, and the young go on being fed by the same pair', () => {
    expect(housings('date: 2026-03-20, moved: flight 5', '2026-03-20')).toEqual([
      'flight 5',
      'flight 5',
      'flight 5',
    ]);
    expect(
      pairIn(room(files('date: 2026-03-20, moved: flight 5'), '2026-03-20'), 'LW-1').here.young.size,
    ).toBe(3);
  });

  it('put together again in another flight takes its young along', () => {
    const log = 'date: 2026-03-20, parted: {cock: flight 7}\ndate: 2026-03-22, reunited: flight 5';
    expect(housings(log, '2026-03-22')).toEqual(['flight 5', 'flight 5', 'flight 5']);
    expect(pairIn(room(files(log), '2026-03-22'), 'LW-1').here.young.size).toBe(3);
  });

  it('leaves young where they are that were taken to another flight before, whoever still feeds them', () => {
    const away = 'date: 2026-04-04, fledged: 3\ndate: 2026-04-08, moved: {c1: nursery}';
    for (const move of ['moved: flight 5', 'reunited: flight 5'])
      expect(housings(`${away}\ndate: 2026-04-09, ${move}`, '2026-04-09'), move).toEqual([
        'flight 5',
        'flight 5',
        'nursery',
      ]);
  });

  it('leaves behind a cock that was parted', () => {
    const log = 'date: 2026-03-20, parted: {cock: flight 7}\ndate: 2026-03-22, moved: flight 5';
    expect(housings(log, '2026-03-22')).toEqual(['flight 7', 'flight 5', 'flight 5']);
  });

  it('leaves the dead where they died', () => {
    const log = 'date: 2026-03-20, died: cock\ndate: 2026-03-22, moved: flight 5';
    expect(housings(log, '2026-03-22')).toEqual(['flight 2', 'flight 5', 'flight 5']);
  });
});

describe('a new mate', () => {
  const widowed = 'date: 2026-03-20, died: hen';

  it('is known from that day: who she is, what she is, where she lives', () => {
    const known = room(files(`${widowed}\ndate: 2026-05-01, paired: {hen: LW-21-01}`), '2026-05-01');
    expect(birdIn(known, 'LW-21-01')).toMatchObject({ sex: 'hen', firstSeen: known.day });
    expect(housingOf(birdIn(known, 'LW-21-01'))).toBe('flight 2');
  });

  it('of a widowed bird is no cause for a hint; of one whose mate is still there it is', () => {
    const paired = 'date: 2026-05-01, paired: {hen: LW-21-01}';
    expect(codes(room(files(`${widowed}\n${paired}`), '2026-05-01'))).toEqual([]);
    expect(codes(room(files(paired), '2026-05-01'))).toEqual(['paired-anew']);
    expect(codes(room(files(`date: 2026-04-30, parted\n${paired}`), '2026-05-01'))).toEqual([]);
  });

  it('cannot be one that is dead: nobody is paired with her again', () => {
    expect(codes(room(files(`${widowed}\ndate: 2026-05-01, paired`), '2026-05-01'))).toEqual(['dead-bird']);
  });

  it('bred here feeds itself, though nobody wrote so', () => {
    const two = {
      ...files('date: 2026-04-03, fledged: 3\ndate: 2026-04-20, independent: [c2, c3]'),
      b: journal(
        'LW-2',
        'lavender waxbill',
        'date: 2026-12-01, paired',
        'cock: LW-1/1/c1\nhousing: flight 9',
      ),
    };
    const known = room(two, '2026-12-01');
    expect(birdIn(known, 'LW-1/1/c1').independent).not.toBeNull();
    expect(housingOf(birdIn(known, 'LW-1/1/c1'))).toBe('flight 9');
    expect(pairIn(known, 'LW-1').here.young.size).toBe(0);
    expect(pairIn(room(two, '2026-11-30'), 'LW-1').here.young.size).toBe(1);
  });
});

describe('one cock in two journals', () => {
  const second = (log: string) =>
    journal('LW-2', 'lavender waxbill', `date: 2026-02-20, paired\n${log}`, 'cock: LW-19-04\nhen: LW-20-12');
  const both = (one: string, other: string, listed = '') => ({
    ...files(one),
    b: second(other),
    'birds.yaml': `birds:\n  - id: LW-19-04\n    species: lavender waxbill\n    log:\n      - {date: 2026-01-02, arrived: flight 2}\n${listed}`,
  });

  it('that died may be told in each of them, and in the bird list; the cause is kept from where it stands', () => {
    const listed = '      - {date: 2026-03-20, died: old age}\n';
    const known = room(
      both('date: 2026-03-20, died: cock', 'date: 2026-03-20, died: cock', listed),
      '2026-03-20',
    );
    expect(codes(known)).toEqual([]);
    expect(birdIn(known, 'LW-19-04').fate).toMatchObject({ kind: 'died', cause: 'old age' });
  });

  it('that went on loan too', () => {
    const lent = 'date: 2026-03-20, gone: {lent: cock}';
    expect(codes(room(both(lent, lent), '2026-03-20'))).toEqual([]);
  });

  it('cannot die on two days, or of two causes', () => {
    const on = (one: string, other: string) => codes(room(both(one, other), '2026-03-22'));
    expect(on('date: 2026-03-20, died: cock', 'date: 2026-03-21, died: cock')).toEqual(['dead-bird']);
    expect(on('date: 2026-03-20, died: {cold: cock}', 'date: 2026-03-20, died: {cat: cock}')).toEqual([
      'dead-bird',
    ]);
  });
});

describe('begging that is heard', () => {
  const second = `
    date: 2026-04-03, fledged: 3
    date: 2026-04-04, lost: {clear: e4}
    date: 2026-04-10, laid: 1
  `;

  it('while fledglings are fed and the new eggs are days old is theirs: nothing has hatched', () => {
    const known = room(files(`${second}\ndate: 2026-04-12, heard: begging`), '2026-04-12');
    expect(pairIn(known, 'LW-1').clutches.map(({ chicks }) => chicks.length)).toEqual([3, 0]);
    expect(codes(known)).toEqual([]);
    expect(due(files(`${second}\ndate: 2026-04-12, heard: begging`), '2026-04-13')).not.toContain(
      'LW-1 first-feed',
    );
  });

  it('over eggs laid two days ago and nobody else in the nest is a slip', () => {
    const log = waxbills('date: 2026-03-01, laid: 1\ndate: 2026-03-03, heard: begging', parents);
    expect(codes(room({ a: log }, '2026-03-03'))).toEqual(['hatched-too-soon']);
  });
});

describe('a nest that was miscounted', () => {
  const laid = 'date: 2026-03-01, laid: 1\ndate: 2026-03-02, laid: 1';

  it('has no chicks while its eggs are two days old, whatever was counted', () => {
    const known = room(
      { a: waxbills(`${laid}\ndate: 2026-03-03, checked: {chicks: 2}`, parents) },
      '2026-03-03',
    );
    expect(pairIn(known, 'LW-1').here.eggs.size).toBe(2);
    expect(codes(known)).toEqual(['counts-differ']);
  });
});

describe('what cannot be', () => {
  it('is a grown bird fostered', () => {
    const known = room(
      {
        ...files('date: 2026-03-20, fostered: {BF-1: cock}'),
        b: journal('BF-1', 'bengalese finch', 'date: 2026-01-01, paired'),
      },
      '2026-03-20',
    );
    expect(codes(known)).toEqual(['impossible']);
    expect(pairIn(known, 'BF-1').guests.size).toBe(0);
  });

  it('is an egg hatched three days after it was set from store, however long it lay there', () => {
    const stored = `
      date: 2026-03-01, laid: 1, pulled: e1
      date: 2026-03-10, set: e1
    `;
    const hatched = (on: string) =>
      codes(room({ a: waxbills(`${stored}\ndate: ${on}, hatched: e1`, parents) }, on));
    expect(hatched('2026-03-13')).toEqual(['hatched-too-soon']);
    expect(hatched('2026-03-22')).toEqual([]);
  });

  it('is a chick younger than the days since it was seen', () => {
    const log = waxbills('date: 2026-03-10, hatched: 2\ndate: 2026-03-16, aged: {3: c1}', parents);
    expect(codes(room({ a: log }, '2026-03-16'))).toEqual(['impossible']);
  });
});

describe('young that were taken to another flight before they feed themselves', () => {
  const away = 'date: 2026-04-04, fledged: 3\ndate: 2026-04-10, moved: {"c1, c2": nursery}';
  const tasks = (log: string, on: string) =>
    agenda(files(log), on, 0).map(({ task, housing, who, apart }) => [task, housing, who, apart]);

  // Lavender waxbills feed themselves at 30 to 40 days.
  it('are seen to where they live, and those that stayed where they stayed', () => {
    expect(tasks(away, '2026-04-20').filter(([task]) => task === 'independent')).toEqual([
      ['independent', 'nursery', ['c1', 'c2'], 'nursery'],
      ['independent', 'flight 2', ['c3'], null],
    ]);
  });

  it('are in no danger from parents that would drive them, once all of them are out', () => {
    const all = away.replace('"c1, c2"', 'all');
    const watched = (log: string) => tasks(log, '2026-04-12').some(([task]) => task === 'watch-restart');
    expect([watched(away), watched(all)]).toEqual([true, false]);
  });
});
