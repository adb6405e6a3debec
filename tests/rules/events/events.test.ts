import { describe, expect, it } from 'vitest';
import { type Day, formatDay } from '../../../src/days.ts';
import { understandRoom } from '../../../src/room/fold.ts';
import { clutchId, fullRef } from '../../../src/room/model.ts';
import { type EventEntry, eventsOf } from '../../../src/rules/events/events.ts';
import { day, type Files, record } from '../../rooms.ts';

function events(files: Files, on = '2026-06-01'): EventEntry[] {
  const read = record(files, on);
  return [...eventsOf(read, understandRoom(read, { day: day(on), today: day(on) }))];
}

const nameOf = (one: NonNullable<EventEntry['found']>[number]) => ('laid' in one ? fullRef(one) : one.id);
/** Key, word, whom, and the clutch of each statement. */
const lines = (files: Files, on?: string) =>
  events(files, on).map(({ key, what, found, clutch }) =>
    [key, what, found?.map(nameOf).join(' '), clutch === null ? null : `@${clutchId(clutch)}`]
      .filter((one) => one)
      .join(' '),
  );

const waxbills = (...entries: string[]) => ({
  'LW-1': `pair: LW-1\nspecies: lavender waxbill\ncock: A1\nhen: A2\nlog:\n${entries.map((entry) => `  - {${entry}}\n`).join('')}`,
});

const brood = [
  'date: 2026-03-01, clutch: 1, laid: 1',
  'date: 2026-03-02, laid: 1',
  'date: 2026-03-03, laid: 2, sitting',
  'date: 2026-03-09, candled: {fertile: 3, clear: e4}',
  'date: 2026-03-15, hatched: 2',
  'date: 2026-03-18, died: {cold: 1}, weighed: {hen: 8.4, c1: 3.1}',
];

describe('counts are told with whom they turned out to mean', () => {
  it('also young that were heard before they were counted', () => {
    const heard = [...brood.slice(0, 4), 'date: 2026-03-15, heard', 'date: 2026-03-17, hatched: 2'];
    expect(lines(waxbills(...heard)).at(-1)).toBe('hatched LW-1/1/e1 LW-1/1/e2 @LW-1/1');
  });

  it('from egg to chick, each with its clutch', () => {
    expect(lines(waxbills(...brood))).toEqual([
      'laid LW-1/1/e1 @LW-1/1',
      'laid LW-1/1/e2 @LW-1/1',
      'laid LW-1/1/e3 LW-1/1/e4 @LW-1/1',
      'sitting seen @LW-1/1',
      'candled fertile LW-1/1/e1 LW-1/1/e2 LW-1/1/e3 @LW-1/1',
      'candled clear LW-1/1/e4 @LW-1/1',
      'hatched LW-1/1/e1 LW-1/1/e2 @LW-1/1',
      'weighed A2',
      'weighed LW-1/1/c1 @LW-1/1',
      'died cold LW-1/1/c2 @LW-1/1',
    ]);
  });

  it('the sitting of each clutch with its own, whoever sits', () => {
    const two = [...brood, 'date: 2026-05-01, clutch: 2, laid: 1', 'date: 2026-05-02, laid: 1, sitting: hen'];
    expect(lines(waxbills(...two)).filter((line) => line.startsWith('sitting'))).toEqual([
      'sitting seen @LW-1/1',
      'sitting hen @LW-1/2',
    ]);
  });

  it('the sitting of each clutch, by whichever of the two and however often they were seen', () => {
    const two = [
      ...brood.slice(0, 4),
      'date: 2026-03-05, sitting: hen',
      'date: 2026-03-06, sitting: cock',
      'date: 2026-03-25, lost: {clear: all}',
      'date: 2026-05-01, clutch: 2, laid: 1',
      'date: 2026-05-02, laid: 1, sitting: hen',
      'date: 2026-05-03, sitting: cock',
    ];
    expect(lines(waxbills(...two)).filter((line) => line.startsWith('sitting'))).toEqual([
      'sitting seen @LW-1/1',
      'sitting hen @LW-1/1',
      'sitting cock @LW-1/1',
      'sitting hen @LW-1/2',
      'sitting cock @LW-1/2',
    ]);
  });

  it('a young bird that feeds itself from that day on is of its clutch to the last', () => {
    const grown = [
      ...brood.slice(0, 5),
      'date: 2026-04-05, fledged: all',
      'date: 2026-04-25, independent: all',
      'date: 2026-04-26, weighed: {1/c1: 8}',
    ];
    expect(lines(waxbills(...grown)).slice(-2)).toEqual([
      'independent LW-1/1/c1 LW-1/1/c2 @LW-1/1',
      'weighed LW-1/1/c1',
    ]);
  });

  it('what the record refuses is there as it is written, and about nobody', () => {
    const [, refused] = events(waxbills(brood[0] as string, 'date: 2026-03-02, lost: {clear: e7}'));
    expect(refused).toMatchObject({ key: 'lost', what: 'clear', found: [], clutch: null });
    expect(refused?.who).toMatchObject({ kind: 'refs', refs: [{ text: 'e7' }] });
  });

  it('eggs of two clutches are of none', () => {
    const two = [
      ...brood,
      'date: 2026-05-01, clutch: 2, laid: 1',
      'date: 2026-05-03, lost: {missing: [1/e4, 2/e1]}',
    ];
    expect(lines(waxbills(...two)).at(-1)).toBe('lost missing LW-1/1/e4 LW-1/2/e1');
  });

  it('a hen that was bred here is no matter of the clutch that she came of', () => {
    const daughter =
      'pair: LW-2\nspecies: lavender waxbill\nhen: LW-1/1/c1\nlog:\n  - {date: 2027-03-01, weighed: {hen: 8}}\n';
    const files = {
      ...waxbills(
        ...brood.slice(0, 5),
        'date: 2026-04-05, fledged: all',
        'date: 2026-04-25, independent: all',
      ),
      'LW-2': daughter,
    };
    expect(lines(files, '2027-03-02').at(-1)).toBe('weighed LW-1/1/c1');
  });
});

it('is told while the record is being understood, and anew each time that it is walked through', () => {
  const read = record(waxbills(...brood), '2026-06-01');
  const told = eventsOf(read, understandRoom(read, { day: day('2026-06-01'), today: day('2026-06-01') }));
  const walk = told[Symbol.iterator]();
  const [egg] = walk.next().value?.found ?? [];
  const fate = () => (egg !== undefined && 'laid' in egg ? egg.fate : undefined);
  expect(fate()).toBe(null);
  while (!walk.next().done);
  expect(fate()).toMatchObject({ kind: 'hatched' });
  const said = () => [...told].map(({ key, what, at }) => [key, what, at.line]);
  expect(said()).toHaveLength(10);
  expect(said()).toEqual(said());
});

describe('everything that was written is there', () => {
  const files: Files = {
    ...waxbills(
      'date: 2026-03-01, note: "cold night"',
      'date: 2026-03-01, time: 07:30, after: 2026-02-27, checked',
    ),
    'nestlog.yaml':
      'routines:\n  - {name: worm count, every: 90}\nlog:\n  - {date: 2026-03-02, done: worm count, food: [greens], note: "all flights"}\n  - {date: 2026-03-04, note: "new lamp"}\n',
    'birds.yaml':
      'birds:\n  - id: B1\n    species: star finch\n    log:\n      - {date: 2026-03-03, weighed: 12.1}\n      - {date: 2026-03-05, note: "fluffed, watched"}\n',
  };

  it('bare notes, the room’s log and the birds’ own among it, in the order of days', () => {
    const told = events(files).map(({ day: on, key, what, amount, note, pair, bird }) =>
      [formatDay(on as Day).slice(5), key, what, amount, pair?.id, bird?.id, note]
        .filter((one) => one != null)
        .join(' '),
    );
    expect(told).toEqual([
      '03-01 note LW-1 cold night',
      '03-01 checked LW-1',
      '03-02 done worm count all flights',
      '03-02 food greens all flights',
      '03-03 weighed 12.1 B1',
      '03-04 note new lamp',
      '03-05 note B1 fluffed, watched',
    ]);
  });

  it('a note beside an observation once, with it; a bare one is about nobody', () => {
    const told = events(
      waxbills('date: 2026-03-01, checked, note: "warm"', 'date: 2026-03-02, note: "cold"'),
    );
    expect(told.map(({ key, note, found }) => [key, note, found])).toEqual([
      ['checked', 'warm', null],
      ['note', 'cold', null],
    ]);
  });

  it('of a bird’s own log with the bird', () => {
    const weighed = events(files).find(({ key }) => key === 'weighed');
    expect(weighed?.found?.map(nameOf)).toEqual(['B1']);
  });

  it('with the nest that it was seen in, where the pair has two', () => {
    const told = events(waxbills('date: 2026-03-01, site: low basket, checked', 'date: 2026-03-02, checked'));
    expect(told.map(({ site }) => site)).toEqual(['low basket', null]);
  });

  it('of one day in the order of the hours, those without an hour first', () => {
    const other =
      'pair: LW-2\nspecies: lavender waxbill\nlog:\n  - {date: 2026-03-01, time: 06:15, checked}\n  - {date: 2026-03-01, time: 00:00, checked}\n';
    const told = events({
      ...waxbills('date: 2026-03-01, time: 07:30, checked', 'date: 2026-03-01, checked'),
      'LW-2': other,
    });
    expect(told.map(({ pair, time }) => [pair?.id, time])).toEqual([
      ['LW-1', null],
      ['LW-2', 0],
      ['LW-2', 375],
      ['LW-1', 450],
    ]);
  });

  it('notes by themselves at their hour as well, and without one behind what was observed on their day', () => {
    const told = (...entries: string[]) => events(waxbills(...entries)).map(({ key, note }) => note ?? key);
    const timed = ['time: 07:30, checked', 'time: 06:15, note: "dark"'];
    for (const after of [[], ['date: 2026-03-02, checked']])
      expect(told(...timed.map((one) => `date: 2026-03-01, ${one}`), ...after).slice(0, 2)).toEqual([
        'dark',
        'checked',
      ]);
    expect(told('date: 2026-03-01, note: "cold night"', 'date: 2026-03-01, checked')).toEqual([
      'checked',
      'cold night',
    ]);
  });

  it('no note where only something that cannot be read was written', () => {
    expect(events(waxbills('date: 2026-03-01, weighed: heavy', 'date: 2026-03-02, checked'))).toHaveLength(1);
    const log = 'log:\n  - {date: 2026-03-01, done: [[]]}\n  - {date: 2026-03-02, note: "new lamp"}\n';
    expect(events({ 'nestlog.yaml': log }).map(({ note }) => note)).toEqual(['new lamp']);
  });

  it('with the time, what it came after, and where it stands', () => {
    const checked = events(files).find(({ key }) => key === 'checked');
    expect(checked).toMatchObject({
      time: 450,
      after: day('2026-02-27'),
      at: { file: 'pairs/LW-1.yaml', line: 7, column: 56 },
      part: 1,
    });
  });

  it('what stands at one place is numbered', () => {
    const places = events({ ...files, ...waxbills(...brood) }).map(({ at, part }) =>
      [at.file, at.line, at.column, part].join(':'),
    );
    expect(new Set(places).size).toBe(places.length);
    expect(places.filter((place) => place.startsWith('nestlog.yaml:4')).map((place) => place.at(-1))).toEqual(
      ['1', '2'],
    );
  });

  it('but nothing dated after the day stood on', () => {
    expect(events(files, '2026-03-02')).toHaveLength(4);
  });

  it('nor what a second journal of the same pair says, which the record leaves out', () => {
    const twice = { ...files, 'pairs/other.yaml': files['LW-1'] as string };
    expect(events(twice)).toHaveLength(events(files).length);
  });

  it('nor what a second item of the same bird says, note or not', () => {
    const again = `${files['birds.yaml']}  - id: B1\n    species: star finch\n    log:\n      - {date: 2026-03-06, weighed: 12}\n      - {date: 2026-03-07, note: "well"}\n`;
    expect(events({ ...files, 'birds.yaml': again })).toHaveLength(events(files).length);
  });
});
