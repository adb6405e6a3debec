import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { seasonJson } from '../../../src/report/json/season.ts';
import { seasonText } from '../../../src/report/terminal/season.ts';
import { widthOf } from '../../../src/report/terminal/width.ts';
import { type GroupingName, groupings } from '../../../src/rules/season/groupings.ts';
import { whole } from '../../whole.ts';
import { anyRoom, book, FOUR, LATER, pair, waxbills } from './rooms.ts';

const year = (of: string) => FOUR.replaceAll('2026-', `${of}-`);
const files = { 'LW-1': waxbills(`${year('2024')}\n${year('2025')}\n${year('2026')}`) };

describe('which clutches are in it', () => {
  it.each([
    ['2025', '2025', 1],
    ['2024..2025', '2024..2025', 2],
    ['all', 'all', 3],
    ['2020', '2020', 0],
  ])('%s', (asked, season, number) => {
    const found = book(files, '2026-07-01', asked);
    expect([found.season, found.totals.clutches.length]).toEqual([season, number]);
  });

  it('without a season, the one of the day stood on', () => {
    expect(book(files, '2025-07-01', '').season).toBe('2025');
  });

  it('a season from July runs across New Year', () => {
    const room = { 'nestlog.yaml': 'season-start: 07-01\n', 'LW-1': files['LW-1'] };
    const found = book(room, '2026-05-01', '2025');
    expect([found.season, found.totals.clutches.length, found.seasons]).toEqual([
      '2025/26',
      1,
      ['2023/24', '2024/25', '2025/26'],
    ]);
    expect(book(room, '2026-05-01', '').season).toBe('2025/26');
  });

  it('names the seasons of the room in order, whichever journal tells them', () => {
    const two = {
      'LW-1': waxbills(year('2026')),
      'LW-2': pair('LW-2', 'lavender waxbill', `${year('2024')}\n${year('2025')}`),
    };
    expect(book(two, '2026-07-01', '2020').seasons).toEqual(['2024', '2025', '2026']);
  });

  it('knows nothing later than the day stood on', () => {
    expect(book(files, '2025-12-31', 'all').totals.clutches).toHaveLength(2);
  });
});

describe('what it is compared with', () => {
  it('groups with a name beside one another, not what was not written down', () => {
    const nest = (id: string, housing: string) => {
      const years = ['2022', '2023', '2024', '2025'].map((of) =>
        `${FOUR}\n date: 2026-03-10, candled: {fertile: [e1, e2], clear: [e3, e4]}`.replaceAll(
          '2026-',
          `${of}-`,
        ),
      );
      return pair(id, 'lavender waxbill', years.join('\n'), housing);
    };
    const three = { A: nest('A', 'housing: cage 1'), B: nest('B', 'housing: cage 2'), C: nest('C', '') };
    const { blocks, comparison } = book(three, '2026-07-01', 'all', 'housing').by ?? {};
    expect(blocks?.map(({ name }) => name)).toEqual(['cage 1', 'cage 2', null]);
    // Two groups are one comparison: eight of sixteen eggs on either side.
    expect(comparison?.rates).toMatchObject([
      { measure: 'fertility', group: 'cage 1', rate: 0.5, other: 0.5, confidence: 0.95 },
    ]);
  });

  it('all seasons before', () => {
    expect(book(files, '2026-07-01', '2026').before?.season).toBe('2024..2025');
    expect(book(files, '2026-07-01', '2024').before).toBeNull();
    expect(book(files, '2026-07-01', 'all').before).toBeNull();
  });

  it('several seasons one by one', () => {
    expect(book(files, '2026-07-01', 'all').bySeason.map(({ name }) => name)).toEqual([
      '2024',
      '2025',
      '2026',
    ]);
    expect(book(files, '2026-07-01', '2026').bySeason).toEqual([]);
  });
});

/** Rooms of which little can be said. */
const BARE: [string, Record<string, string>][] = [
  ['no pair', {}],
  ['a pair without a clutch', { 'LW-1': waxbills('date: 2026-01-01, paired') }],
  ['one clutch that is open', { 'LW-1': waxbills(FOUR) }],
  ['all eggs clear', { 'LW-1': waxbills(`${FOUR}\n date: 2026-03-20, lost: {clear: all}`) }],
  ['every chick open', { 'LW-1': waxbills(`${FOUR}\n date: 2026-03-16, hatched: all`) }],
  [
    'no losses',
    {
      'LW-1': waxbills(
        `${FOUR}\n date: 2026-03-16, hatched: all\n date: 2026-04-03, fledged: all\n date: 2026-04-22, independent: all`,
      ),
    },
  ],
  ['eggs never candled', { 'LW-1': waxbills(`${FOUR}\n date: 2026-03-24, lost: all`) }],
  ['a nest never looked into', { 'LW-1': waxbills('date: 2026-03-16, heard') }],
  ['a sitting pair of unknown species', { X: pair('X', 'moon finch', 'date: 2026-03-16, sitting') }],
  [
    'all died on the day they hatched',
    { 'LW-1': waxbills(`${FOUR}\n date: 2026-03-16, hatched: all, died: all`) },
  ],
  ['all eggs taken', { 'LW-1': waxbills(`${FOUR}\n date: 2026-03-05, lost: {sold: all}`) }],
];

describe('a season of which little can be said', () => {
  it.each(BARE)('%s: figures or nulls or a sentence, never a number that is none', (_, room) => {
    for (const by of [null, ...(Object.keys(groupings) as GroupingName[])]) {
      const found = book(room, '2026-04-01', 'all', by);
      const text = seasonText(found, { width: 80, color: false });
      expect(text).not.toMatch(/NaN|Infinity|undefined|null|-0/);
      expect(whole(seasonJson(found, []))).not.toMatch(/NaN|Infinity|undefined|-0\b/);
      // No share without the number that it is of.
      for (const line of text
        .split('\n')
        .filter((one) => /^ {2}(fertile|hatched of|fledged of|independent of).*%/.test(one))) {
        expect(line).toMatch(/\d+ of \d+/);
      }
    }
  });

  it('no clutch is a sentence', () => {
    const text = seasonText(book(files, '2026-07-01', '2020'), { width: 80, color: false });
    expect(text).toContain('No clutch was begun in it. There are clutches in 2024, 2025, 2026;');
    expect(seasonText(book({}, '2026-07-01', '2026'), { width: 80, color: false })).toContain(
      'No journal of this room has a clutch yet.',
    );
  });
});

it('any season can be told, in any width, by anything', () => {
  fc.assert(
    fc.property(
      anyRoom,
      fc.constantFrom(...(Object.keys(groupings) as GroupingName[])),
      fc.constantFrom(60, 80, 120),
      (room, by, width) => {
        const found = book(room, LATER, 'all', by);
        const text = seasonText(found, { width, color: false });
        expect(text).not.toMatch(/NaN|Infinity|undefined|null/);
        for (const line of text.split('\n')) expect(widthOf(line)).toBeLessThanOrEqual(width);
        const json = JSON.parse(whole(seasonJson(found, [])));
        expect(JSON.stringify(json)).toBe(JSON.stringify(JSON.parse(JSON.stringify(json))));
      },
    ),
    { numRuns: 60 },
  );
});
