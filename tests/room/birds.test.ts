import { describe, expect, it } from 'vitest';
import { housingOf } from '../../src/room/lives.ts';
import { day, type Files, room } from '../rooms.ts';
import { birdIn, codes, days, waxbills } from './facts.ts';

/** A bird list of one hen with this log, a line an entry. */
function list(log: string, head = ''): Files {
  const lines = log
    .trim()
    .split('\n')
    .map((line) => `      - {${line.trim()}}`);
  const more = head === '' ? [] : [`    ${head}`];
  return {
    'birds.yaml': [
      'birds:',
      '  - id: LW-20-11',
      '    species: lavender waxbill',
      ...more,
      '    log:',
      ...lines,
    ].join('\n'),
  };
}
const hen = (log: string, on: string, head = '') => birdIn(room(list(log, head), on), 'LW-20-11');
const apart = (log: string, on = '2026-12-31') => {
  const { quarantine } = hen(log, on);
  return quarantine && days({ from: quarantine.from, to: quarantine.until });
};

describe('a bird that comes', () => {
  it('lives where it was put, and stays apart for the room’s usual thirty days', () => {
    const bird = hen('date: 2026-03-01, arrived: cage 9', '2026-03-01');
    expect(housingOf(bird)).toBe('cage 9');
    // 1 March + 30 d = 31 March.
    expect(apart('date: 2026-03-01, arrived: cage 9')).toBe('03-01…03-31');
  });

  it('stays apart for as long as its own log says', () => {
    expect(apart('date: 2026-03-01, arrived: cage 9, quarantine: 45')).toBe('03-01…04-15');
    expect(apart('date: 2026-03-01, arrived: cage 9, quarantine: {until: 2026-05-01}')).toBe('03-01…05-01');
  });

  it('stays apart for the days that the room has set', () => {
    const files = {
      ...list('date: 2026-03-01, arrived: cage 9'),
      'nestlog.yaml': 'limits: {quarantine: 40}',
    };
    const { quarantine } = birdIn(room(files, '2026-03-02'), 'LW-20-11');
    expect(quarantine && days({ from: quarantine.from, to: quarantine.until })).toBe('03-01…04-10');
  });

  it('is released on a day, and apart again when something is found', () => {
    const log = 'date: 2026-03-01, arrived\ndate: 2026-04-02, released: flight 2';
    expect(hen(log, '2026-04-02')).toMatchObject({ released: day('2026-04-02') });
    expect(housingOf(hen(log, '2026-04-02'))).toBe('flight 2');
    expect(hen(`${log}\ndate: 2026-04-09, quarantine: 14`, '2026-04-09').released).toBeNull();
    expect(apart(`${log}\ndate: 2026-04-09, quarantine: 14`)).toBe('04-09…04-23');
  });
});

describe('a life in the bird list', () => {
  it('is told day by day, and nothing of it before its day', () => {
    const log = `
      date: 2026-03-02, weighed: 8.4
      date: 2026-03-09, unwell: fluffed
      date: 2026-03-10, treated: as the vet ordered
      date: 2026-08-01, moult: started
      date: 2026-09-20, moult: done
    `;
    expect(hen(log, '2026-12-31')).toMatchObject({
      weights: [{ grams: 8.4 }],
      unwell: [{ text: 'fluffed' }],
      treated: [{ text: 'as the vet ordered' }],
      moult: [{ state: 'started' }, { state: 'done' }],
    });
    expect(hen(log, '2026-03-09')).toMatchObject({ weights: [{ grams: 8.4 }], treated: [], moult: [] });
  });

  it('ends with death; what is told of later days is an error', () => {
    const known = room(list('date: 2026-03-02, died: old age\ndate: 2026-03-09, weighed: 8.4'), '2026-12-31');
    expect(birdIn(known, 'LW-20-11')).toMatchObject({
      fate: { kind: 'died', cause: 'old age' },
      weights: [],
    });
    expect(codes(known)).toEqual(['dead-bird']);
  });

  it('lent, and home again: the bird is here, and apart for thirty days from its return', () => {
    const log = 'date: 2026-03-01, arrived\ndate: 2026-05-01, gone: lent\ndate: 2026-09-01, back';
    expect(hen(log, '2026-05-01').fate).toMatchObject({ kind: 'gone', how: 'lent' });
    expect(hen(log, '2026-09-01').fate).toBeNull();
    // 1 September + 30 d = 1 October.
    expect(apart(log)).toBe('09-01…10-01');
  });

  it('has the sex that was seen last', () => {
    expect(hen('date: 2026-03-02, sexed: cock', '2026-03-02', 'sex: hen').sex).toBe('cock');
    expect(hen('date: 2026-03-02, sexed: cock', '2026-03-01', 'sex: hen').sex).toBe('hen');
  });

  it('written down twice counts once: the second is named with the line of the first', () => {
    const files = { 'birds.yaml': 'birds:\n  - {id: A, sex: cock}\n  - {id: A, sex: hen}\n' };
    const known = room(files, '2026-03-02');
    expect(birdIn(known, 'A').sex).toBe('cock');
    expect(known.findings.map(({ code, args }) => [code, args.line])).toEqual([['bird-twice', 2]]);
  });

  it('wears a ring of its own', () => {
    const files = { 'birds.yaml': 'birds:\n  - {id: A, ring: LW 20 001}\n  - {id: B, ring: LW 20 001}\n' };
    const known = room(files, '2026-03-02');
    expect(known.findings.map(({ code, args }) => [code, args.bird])).toEqual([['ring-twice', 'A']]);
  });
});

describe('a chick of this room in the bird list', () => {
  const files = {
    'birds.yaml': [
      'birds:',
      '  - id: Pearl',
      '    is: LW-1/1/c2',
      '    log:',
      '      - {date: 2026-07-01, moved: flight 5}',
    ].join('\n'),
    P: waxbills(
      'date: 2026-03-05, laid: 2, sitting\ndate: 2026-03-18, hatched: 2\ndate: 2026-04-06, fledged: 2\ndate: 2026-04-25, independent: 2',
      'cock: LW-19-04\nhen: LW-20-11\nhousing: cage 3',
    ),
  };

  it('is one bird: its clutch and parents from the journal, its later life from the list', () => {
    const pearl = birdIn(room(files, '2026-07-01'), 'Pearl');
    expect(pearl).toMatchObject({ ref: 'c2', sire: ['LW-19-04'], dam: ['LW-20-11'] });
    expect(pearl.stays.map(({ housing }) => housing)).toEqual(['cage 3', 'cage 3', 'flight 5']);
    expect(
      room(files, '2026-07-01')
        .birds.map(({ id }) => id)
        .sort(),
    ).toEqual(['LW-1/1/c1', 'LW-19-04', 'LW-20-11', 'Pearl']);
  });

  it('that no clutch has is named, once the whole record is seen', () => {
    const wrong = { ...files, 'birds.yaml': 'birds:\n  - {id: Pearl, is: LW-1/1/c3}\n' };
    expect(codes(room(wrong, '2026-07-01'))).toEqual(['no-such-chick-named']);
    expect(codes(room(wrong, '2026-03-18'))).toEqual([]);
  });
});
