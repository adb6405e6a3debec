import { describe, expect, it } from 'vitest';
import { root } from '../../bin/build/settings.mjs';
import { loadRoom } from '../../src/journal/load.ts';
import { readRoom } from '../../src/journal/record.ts';
import { understandRoom } from '../../src/room/fold.ts';
import { housingKey } from '../../src/room/housings.ts';
import { agenda, day, type Files, room } from '../rooms.ts';
import { birdIn } from './facts.ts';

const pair = (housing: string, ...log: string[]): Files => ({
  'LW-1': [
    'pair: LW-1',
    'species: lavender waxbill',
    'cock: A',
    'hen: B',
    `housing: ${housing}`,
    'log:',
    ...['date: 2026-02-01, paired', ...log].map((entry) => `  - {${entry}}`),
  ].join('\n'),
});
const alike = (files: Files, on = '2026-06-01') =>
  room(files, on).findings.filter(({ code }) => code === 'housing-alike');

describe('a housing', () => {
  it.each(['Flight 2', 'FLIGHT 2', '" flight  2 "'])(
    'is one place where %s is written for flight 2',
    (other) => {
      const files = {
        ...pair('flight 2', `date: 2026-03-01, moved: ${other}`, 'date: 2026-03-02, parted: {cock: Cage 7}'),
        'birds.yaml': `birds: [{id: C, log: [{date: 2026-03-01, arrived: cage 7}, {date: 2026-03-20, moved: ${other}}]}]\n`,
      };
      const known = room(files, '2026-06-01');
      expect(known.pairs.map(({ housing }) => housing)).toEqual(['flight 2']);
      expect(['A', 'B', 'C'].map((id) => birdIn(known, id).stays.at(-1)?.housing)).toEqual([
        'cage 7',
        'flight 2',
        'flight 2',
      ]);
      expect(known.findings).toEqual([]);
    },
  );

  it('is told as it was spelt first', () => {
    const files = pair(
      'Flight 2',
      'date: 2026-03-01, clutch: 1, laid: 4, sitting',
      'date: 2026-03-01, moved: flight 2',
    );
    expect(new Set(agenda(files, '2026-03-06').map(({ housing }) => housing))).toEqual(new Set(['Flight 2']));
  });

  it('has no blanks about its name', () => {
    expect(room(pair('" flight 2 "'), '2026-06-01').pairs[0]?.housing).toBe('flight 2');
  });

  it('is the same with an accent written as one letter or as two', () => {
    const files = pair('voli\u00e8re', 'date: 2026-03-01, moved: Volie\u0300re');
    expect(room(files, '2026-06-01').pairs[0]?.housing).toBe('voli\u00e8re');
    expect(alike(files)).toEqual([]);
  });

  it('of every room keeps its name: young in the `Hand` are in the hand', () => {
    const reared = pair(
      'flight 2',
      'date: 2026-03-01, clutch: 1, laid: 4, sitting',
      'date: 2026-03-14, hatched: 4',
      'date: 2026-04-04, fledged: 4',
      'date: 2026-04-05, moved: {all: Hand}',
    );
    expect(birdIn(room(reared, '2026-04-06'), 'LW-1/1/c1').stays.at(-1)?.housing).toBe('hand');
  });

  it('has one name in the whole room, however the keeper’s hand runs', () => {
    const clock = { day: day('2026-06-01'), today: day('2026-06-01') };
    let nth = 0;
    const files = loadRoom(`${root}/journals-example`).map((file) =>
      'text' in file
        ? {
            ...file,
            text: file.text.replace(/flight|cage/g, (word) => (nth++ % 2 === 0 ? word : word.toUpperCase())),
          }
        : file,
    );
    const { pairs, birds } = understandRoom(readRoom(files, clock), clock);
    const names = new Set(
      [
        ...pairs,
        ...pairs.flatMap(({ clutches }) => clutches),
        ...birds.flatMap(({ stays }) => stays),
      ].flatMap(({ housing }) => housing ?? []),
    );
    expect(nth).toBeGreaterThan(10);
    expect(names.size).toBe(new Set([...names].map(housingKey)).size);
  });
});

describe('a housing spelt almost as another', () => {
  it('is doubted where it is first named, once', () => {
    const found = alike(
      pair('flight 2', 'date: 2026-03-01, moved: flihgt 2', 'date: 2026-03-02, moved: {hen: flihgt 2}'),
    );
    expect(found).toMatchObject([{ at: { line: 8 }, args: { housing: 'flihgt 2', suggestion: 'flight 2' } }]);
  });

  it('is doubted too where it is one that every room has', () => {
    const found = alike(pair('flight 2', 'date: 2026-03-01, moved: incubater'));
    expect(found.map(({ args }) => args.suggestion)).toEqual(['incubator']);
  });

  it('is doubted without the blanks about it, and where a blank is missing', () => {
    const found = alike(pair('row 1 flight 2', 'date: 2026-03-01, moved: " row 1 flight2 "'));
    expect(found.map(({ args }) => args)).toEqual([
      { housing: 'row 1 flight2', suggestion: 'row 1 flight 2' },
    ]);
    expect(alike(pair('box 1 2', 'date: 2026-03-01, moved: box 12'))).toEqual([]);
  });

  it('is doubted between journals and the bird list', () => {
    const files = {
      ...pair('flight 2'),
      'birds.yaml': 'birds: [{id: C, log: [{date: 2026-03-01, arrived: fligt 2}]}]\n',
    };
    expect(alike(files)).toMatchObject([{ at: { file: 'birds.yaml' } }]);
  });

  it('is not doubted where its number is another, nor among hundreds of names that are codes', () => {
    expect(alike(pair('flight 2', 'date: 2026-03-01, moved: flight 3'))).toEqual([]);
    const code = (n: number) =>
      `cage ${String.fromCharCode(...[0, 1, 2, 3].map((i) => 97 + (Math.floor(n / 26 ** i) % 26)))}`;
    const many = Array.from(
      { length: 600 },
      (_, n) =>
        `date: 2026-03-01, time: "${String(8 + Math.floor(n / 60)).padStart(2, '0')}:${String(n % 60).padStart(2, '0')}", moved: ${code(n * 7)}`,
    );
    const found = alike(pair('flight 2', ...many, 'date: 2026-05-01, moved: fligth 2'));
    expect(found.map(({ args }) => args.suggestion).filter((one) => one === 'flight 2')).toEqual([
      'flight 2',
    ]);
    expect(found.length).toBeLessThan(210);
  });
});
