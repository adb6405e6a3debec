import { describe, expect, it } from 'vitest';
import { enteredOn, housingOf } from '../../src/room/lives.ts';
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

describe('a bird of which only the year is known', () => {
  const hatched = (log: string, on: string, head = 'hatched: 2026') => {
    const span = hen(log, on, head).hatched;
    return span && days(span);
  };

  it('hatched in it, by the day on which it was first told of and by the day stood on', () => {
    const arrived = 'date: 2026-05-01, arrived: cage 9';
    expect(hatched(arrived, '2027-01-31')).toBe('01-01…05-01');
    expect(hatched(arrived, '2026-04-20')).toBe('01-01…04-20');
    expect(hatched('date: 2027-05-01, arrived: cage 9', '2027-05-01')).toBe('01-01…12-31');
  });

  it('hatched in its month, whatever was told of it before by a slip', () => {
    expect(hatched('date: 2026-03-01, arrived: cage 9', '2026-06-10', 'hatched: 2026-05')).toBe(
      '05-01…05-31',
    );
  });

  it('is still to hatch where the year has not begun', () => {
    expect(hatched('date: 2025-05-01, arrived: cage 9', '2025-06-01')).toBe('01-01');
  });
});

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
      fate: {
        kind: 'died',
        cause: 'old age',
        day: day('2026-03-02'),
        span: { from: day('2026-03-02'), to: day('2026-03-02') },
      },
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
    const home = hen(`${log}\ndate: 2026-10-03, moved: flight 2`, '2026-10-03');
    expect(home.arrived).toBe(day('2026-03-01'));
    expect(home.absences).toEqual([
      { fate: { kind: 'gone', day: day('2026-05-01'), how: 'lent' }, until: day('2026-09-01') },
    ]);
    expect(enteredOn(home)).toBe(day('2026-09-01'));
  });

  it('thought dead and found again in the room has not come into it anew', () => {
    const log = 'date: 2026-03-01, arrived\ndate: 2026-05-01, died: missing\ndate: 2026-05-04, back';
    expect(enteredOn(hen(log, '2026-05-05'))).toBe(day('2026-03-01'));
    expect(enteredOn(hen('date: 2026-05-05, weighed: 8.4', '2026-05-05'))).toBeNull();
  });

  it('bought back and put into the quarantine cage in one line: it is home before it is moved', () => {
    const log =
      'date: 2026-03-01, arrived\ndate: 2026-05-01, gone: sold\ndate: 2026-09-01, back, moved: cage 9, weighed: 8.1';
    expect(codes(room(list(log), '2026-09-01'))).toEqual([]);
    const home = hen(log, '2026-09-01');
    expect(housingOf(home)).toBe('cage 9');
    expect(home.weights).toHaveLength(1);
    expect(apart(`${log}, quarantine: 45`)).toBe('09-01…10-16');
  });

  it('escaped and caught again on one day: it is here', () => {
    const log = 'date: 2026-03-01, arrived\ndate: 2026-05-01, back\ndate: 2026-05-01, gone: escaped';
    expect(codes(room(list(log), '2026-05-01'))).toEqual([]);
    expect(hen(log, '2026-05-01').fate).toBeNull();
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

  it('is a chick that no other is: the first of two stays it, the second is asked about', () => {
    const files = {
      P: waxbills('date: 2026-03-05, clutch: 1, laid: 1\ndate: 2026-03-18, hatched: 1'),
      'birds.yaml': 'birds:\n  - {id: A, is: LW-1/1/c1}\n  - {id: B, is: LW-1/1/c1}\n',
    };
    const known = room(files, '2026-03-20');
    expect(birdIn(known, 'A').egg?.ref).toBe('e1');
    expect(birdIn(known, 'B').egg).toBeNull();
    expect(known.findings.map(({ code, args }) => [code, args.bird])).toEqual([['chick-named-twice', 'A']]);
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

describe('a bird of the list', () => {
  const species = (named: string) =>
    birdIn(room({ 'birds.yaml': `birds:\n  - {id: A${named}}\n` }, '2026-03-02'), 'A').species;

  it('has its species by the name of the profile, whatever it was called, and by its own where there is none', () => {
    expect(species(', species: Glaucestrilda caerulescens')).toBe('lavender waxbill');
    expect(species(', species: Ridge Finch')).toBe('Ridge Finch');
    expect(species('')).toBeNull();
  });

  it('has the hatching, parents and ring that its line gives', () => {
    const list =
      'birds:\n  - {id: A, ring: LW 20 001, hatched: 2020-05-04, sire: [B, C], dam: D}\n  - {id: E}\n';
    const known = room({ 'birds.yaml': list }, '2026-03-02');
    const hatched = { from: day('2020-05-04'), to: day('2020-05-04') };
    expect(birdIn(known, 'A')).toMatchObject({ ring: 'LW 20 001', hatched, sire: ['B', 'C'], dam: ['D'] });
    expect(birdIn(known, 'E')).toMatchObject({ ring: null, hatched: null, sire: [], dam: [], sex: null });
  });

  it('listed twice has the log of its first item; that of the second counts for nothing', () => {
    const item = (grams: number) => `  - {id: A, log: [{date: 2026-03-02, weighed: ${grams}}]}\n`;
    const known = room({ 'birds.yaml': `birds:\n${item(8.4)}${item(9.9)}` }, '2026-12-31');
    expect(birdIn(known, 'A').weights.map(({ grams }) => grams)).toEqual([8.4]);
    expect(codes(known)).toEqual(['bird-twice']);
  });

  it('that left is told of no more, with why in one sentence; that it left may be told twice on its day', () => {
    const later = (line: string) => {
      const known = room(list(`date: 2026-03-02, gone: sold\n${line}`), '2026-12-31');
      return known.findings.map(({ code, args }) => [code, args.who, args.did, args.why]);
    };
    const left = 'it left on 2026-03-02';
    expect(later('date: 2026-03-09, moult: started')).toEqual([['dead-bird', 'LW-20-11', 'moult', left]]);
    expect(later('date: 2026-03-09, gone: sold')).toEqual([['dead-bird', 'LW-20-11', 'gone', left]]);
    expect(later('date: 2026-03-02, time: 18:00, gone: sold')).toEqual([]);
    expect(later('date: 2026-03-02, time: 18:00, gone: given')).toEqual([
      ['dead-bird', 'LW-20-11', 'gone', left],
    ]);
    expect(later('date: 2026-03-02, time: 18:00, died')).toEqual([['dead-bird', 'LW-20-11', 'died', left]]);
  });

  it('found again, though taken for dead, is here, and does not stay apart as one from outside does', () => {
    const bird = hen('date: 2026-03-02, died: missing\ndate: 2026-03-09, back', '2026-03-09');
    expect([bird.fate, bird.quarantine, bird.arrived]).toEqual([null, null, null]);
    const lent = hen('date: 2026-03-02, gone: lent\ndate: 2026-03-09, back', '2026-03-09');
    expect([lent.fate, lent.arrived, lent.quarantine?.from]).toEqual([null, null, day('2026-03-09')]);
  });

  it('is in its nest again where it was missing as a nestling, whoever tells it', () => {
    const pair =
      'pair: LW-1\nspecies: lavender waxbill\nlog:\n  - {date: 2026-03-01, laid: 1, sitting: both}\n  - {date: 2026-03-14, hatched: e1}\n';
    const listed =
      'birds:\n  - id: LW-26-01\n    is: LW-1/1/c1\n    log:\n      - {date: 2026-03-18, died: missing}\n      - {date: 2026-03-18, time: 18:00, back}\n';
    const [nest] = room({ 'birds.yaml': listed, 'LW-1': pair }, '2026-03-19').pairs;
    expect([...(nest?.here.young ?? [])].map(({ ref }) => ref)).toEqual(['c1']);
  });

  it('is known of from the first line of its log on', () => {
    const log =
      'date: 2026-03-09, weighed: 8.4\ndate: 2026-03-02, moved: cage 9\ndate: 2026-03-05, unwell: fluffed';
    expect(hen(log, '2026-12-31').firstSeen).toBe(day('2026-03-02'));
    expect(hen(log, '2026-03-01').firstSeen).toBeNull();
    expect(hen(log, '2026-12-31')).toMatchObject({
      weights: [{ day: day('2026-03-09'), grams: 8.4 }],
      unwell: [{ day: day('2026-03-05'), text: 'fluffed' }],
      stays: [{ from: day('2026-03-02'), housing: 'cage 9', nest: null, clutch: null }],
    });
  });

  it('released without a word of where lives on where it was; arrived so, where nobody knows', () => {
    const log = 'date: 2026-03-01, arrived: cage 9\ndate: 2026-04-02, released';
    expect(housingOf(hen(log, '2026-04-02'))).toBe('cage 9');
    expect(housingOf(hen('date: 2026-03-01, arrived', '2026-04-02'))).toBeNull();
  });
});

describe('a nestling in the bird list', () => {
  it('moved to another cage goes on being fed by its parents, with its clutch; grown up, by nobody', () => {
    const files = {
      'birds.yaml': 'birds:\n  - {id: Pearl, is: LW-1/1/c1, log: [{date: 2026-04-10, moved: cage 7}]}\n',
      P: waxbills(
        'date: 2026-03-05, laid: 2, sitting\ndate: 2026-03-18, hatched: 2\ndate: 2026-04-06, fledged: 2',
        'housing: cage 3',
      ),
    };
    const known = room(files, '2026-04-10');
    expect(birdIn(known, 'Pearl').stays.at(-1)).toMatchObject({
      from: day('2026-04-10'),
      housing: 'cage 7',
      nest: { id: 'LW-1' },
      clutch: { number: 1 },
    });
    const P = `${files.P}\n  - {date: 2026-04-09, independent: 2}`;
    expect(birdIn(room({ ...files, P }, '2026-04-10'), 'Pearl').stays.at(-1)).toMatchObject({
      housing: 'cage 7',
      nest: null,
      clutch: null,
    });
  });
});
