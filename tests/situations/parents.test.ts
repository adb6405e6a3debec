import { describe, expect, it } from 'vitest';
import { housingOf } from '../../src/room/lives.ts';
import { together } from '../../src/room/model.ts';
import { room } from '../rooms.ts';
import { birdIn, clutchIn, codes, due, journal, morning, pairIn, warned, waxbills } from './morning.ts';

const sitting = `
  date: 2026-03-01, laid: 1
  date: 2026-03-04, laid: 3, sitting
`;
const parents = 'cock: LW-19-04\nhen: LW-20-11\nhousing: flight 2';

describe('a cock with two hens', () => {
  const second = (log: string) =>
    journal('LW-2', 'lavender waxbill', log, 'cock: LW-19-04\nhen: LW-20-12\nhousing: flight 2');
  const files = (more = '') => ({
    a: waxbills(`${sitting}\n${more}`, parents),
    b: second('date: 2026-03-03, laid: 1\ndate: 2026-03-06, laid: 3, sitting'),
  });

  it('fathers both clutches, and nothing is wrong with that', () => {
    const known = room(files(), '2026-03-08');
    expect(['LW-1/1', 'LW-2/1'].map((name) => clutchIn(known, name).cock)).toEqual([
      ['LW-19-04'],
      ['LW-19-04'],
    ]);
    expect(codes(known)).toEqual([]);
  });

  it('is one bird: when he dies, both hens have lost him', () => {
    const dead = files('date: 2026-03-08, died: {unknown: cock}');
    expect(warned(dead, 'parent-lost', '2026-03-08').map(({ pair }) => pair)).toEqual(['LW-1', 'LW-2']);
    expect(codes(room(dead, '2026-03-08'))).toEqual([]);
  });
});

describe('colony birds whose parents nobody knows', () => {
  const files = (more = '') => ({
    a: journal(
      'ZF-1',
      'zebra finch',
      `date: 2026-03-01, laid: 4\ndate: 2026-03-04, sitting\ndate: 2026-03-16, hatched: 3\n${more}`,
      'cock: [ZF-11, ZF-12]\nhen: unknown\nhousing: aviary',
    ),
  });

  it('have a clutch like any other, its chicks of one of two cocks and an unknown hen', () => {
    const known = room(files(), '2026-03-16');
    expect(birdIn(known, 'ZF-1/1/c1')).toMatchObject({ sire: ['ZF-11', 'ZF-12'], dam: [] });
    expect(codes(known)).toEqual([]);
    expect(due(files(), '2026-03-17', 'ZF-1')).toContain('ZF-1 first-feed');
  });

  it('cannot have “the hen” die: which bird that was has to be said', () => {
    expect(codes(room(files('date: 2026-03-20, died: hen'), '2026-03-20'))).toEqual(['parent-unknown']);
    expect(codes(room(files('date: 2026-03-20, died: ZF-12'), '2026-03-20'))).toEqual([]);
  });
});

describe('a hen lost with eggs in the nest', () => {
  const files = (more = '') => ({
    a: waxbills(`${sitting}\ndate: 2026-03-08, died: {unknown: hen}\n${more}`, parents),
    b: journal(
      'LW-2',
      'lavender waxbill',
      'date: 2026-03-02, laid: 1\ndate: 2026-03-05, laid: 3, sitting: hen',
      'hen: LW-20-12',
    ),
    c: journal('BF-9', 'bengalese finch', 'date: 2026-01-05, laid: 5, sitting', 'hen: BF-20-01'),
  });

  it('is a matter of this morning, with who could take them: a pair that began within two days, not one long past', () => {
    const [line, ...more] = warned(files(), 'parent-lost', '2026-03-08');
    expect(more).toEqual([]);
    expect(line).toMatchObject({ level: 'act', pair: 'LW-1' });
    expect(line?.text).toContain('LW-2');
    expect(line?.text).not.toContain('BF-9');
  });

  it('is less pressing once the cock was seen going on alone', () => {
    const [line] = warned(files('date: 2026-03-09, sitting: cock'), 'parent-lost', '2026-03-09');
    expect(line?.level).toBe('watch');
  });

  it('ends when the eggs are with another pair', () => {
    const given = files('date: 2026-03-08, time: 18:00, fostered: {LW-2: all}');
    expect(warned(given, 'parent-lost', '2026-03-09')).toEqual([]);
    expect(pairIn(room(given, '2026-03-09'), 'LW-2').here.eggs.size).toBe(8);
  });

  it('a dead hen lays no more: what is written of her later is an error', () => {
    expect(codes(room(files('date: 2026-03-10, laid: 1'), '2026-03-10'))).toEqual(['dead-bird']);
  });
});

describe('a hard-chasing cock', () => {
  const brood = `
    ${sitting}
    date: 2026-03-16, hatched: 4
    date: 2026-04-03, fledged: 4
    date: 2026-04-10, chasing: {by: cock, at: hen, level: hard}
  `;
  const parted = `${brood}\ndate: 2026-04-11, parted: {cock: flight 7}`;
  const reunited = `${parted}\ndate: 2026-04-14, reunited`;
  const files = (log: string) => ({ a: waxbills(log, parents) });
  const kinds = (log: string, on: string) =>
    morning(files(log), on)
      .map(({ kind }) => kind)
      .filter((kind) => kind === 'chasing' || kind === 'feeder-away');

  it('with young still fed is a matter of this morning, and no order to take him', () => {
    const [line] = warned(files(brood), 'chasing', '2026-04-10');
    expect(line?.level).toBe('act');
    expect(line?.text).toContain('do not take the cock before you saw who feeds');
  });

  // Common practice: when a feeder was parted, look at each chick’s crop within hours.
  it('parted no longer chases; now the question is who feeds the young', () => {
    expect(kinds(parted, '2026-04-11')).toEqual(['feeder-away']);
    const known = room(files(parted), '2026-04-11');
    expect(housingOf(birdIn(known, 'LW-19-04'))).toBe('flight 7');
    expect(pairIn(known, 'LW-1').here.young.size).toBe(4);
  });

  it('parted with every crop seen full on a later day leaves nothing to ask', () => {
    expect(kinds(`${parted}\ndate: 2026-04-12, crops: {full: all}`, '2026-04-12')).toEqual([]);
  });

  it('put back is with them again', () => {
    expect(kinds(reunited, '2026-04-14')).toEqual([]);
    const known = room(files(reunited), '2026-04-14');
    expect(together(pairIn(known, 'LW-1'))).toBe(true);
    expect(housingOf(birdIn(known, 'LW-19-04'))).toBe('flight 2');
  });
});

describe('a cock that gets another hen while the young of the first are fed', () => {
  const brood = `
    date: 2026-02-01, paired
    ${sitting.trim()}
    date: 2026-03-16, hatched: 3
    date: 2026-04-04, fledged: 3
  `;
  const anew = (more: string) => ({
    a: waxbills(`${brood}\n${more}\ndate: 2026-04-09, paired: {hen: LW-21-02}`, parents),
  });

  it('on the day on which she was taken away: it is asked who feeds them, and not after the new one', () => {
    const files = anew('date: 2026-04-09, parted: {hen: cage 1}');
    const [line, ...more] = warned(files, 'feeder-away', '2026-04-09');
    expect(more).toEqual([]);
    expect(line?.text).toContain('The hen LW-20-11 was taken away on 9 Apr');
    expect(housingOf(birdIn(room(files, '2026-04-09'), 'LW-21-02'))).toBe('flight 2');
    expect(due(files, '2026-04-10')).toContain('LW-1 watch-restart');
  });
});
