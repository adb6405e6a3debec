import { describe, expect, it } from 'vitest';
import { type GroupingName, groupings, inGroupOrder, whole } from '../../../src/rules/season/groupings.ts';
import { book, FOUR, pair, short, waxbills } from './rooms.ts';

const groups = (files: Record<string, string>, by: GroupingName) =>
  book(files, '2026-07-01', 'all', by).by?.blocks.map(({ name, clutches }) => [name, clutches.length]);

const ended = `${FOUR}\n date: 2026-03-16, hatched: all\n date: 2026-03-18, died: all`;

describe('a season divided', () => {
  const files = {
    'LW-1': waxbills(
      `date: 2026-02-01, food: [sprouted seed, live food], nest: {site: gorse bundle}\n ${ended}`,
      'housing: flight 2\n cock: C1\n hen: H1',
    ),
    'ZF-1': pair('ZF-1', 'zebra finch', ended.replaceAll('2026-03', '2026-05')),
  };

  it.each<[GroupingName, [string | null, number][]]>([
    [
      'pair',
      [
        ['LW-1', 1],
        ['ZF-1', 1],
      ],
    ],
    [
      'species',
      [
        ['lavender waxbill', 1],
        ['zebra finch', 1],
      ],
    ],
    [
      'housing',
      [
        ['flight 2', 1],
        [null, 1],
      ],
    ],
    [
      'site',
      [
        ['gorse bundle', 1],
        [null, 1],
      ],
    ],
    [
      'food',
      [
        ['live food, sprouted seed', 1],
        [null, 1],
      ],
    ],
    [
      'hen',
      [
        ['H1', 1],
        [null, 1],
      ],
    ],
    [
      'cock',
      [
        ['C1', 1],
        [null, 1],
      ],
    ],
    [
      'month',
      [
        ['Mar', 1],
        ['May', 1],
      ],
    ],
    ['year', [['2026', 2]]],
  ])('by %s', (by, expected) => {
    expect(groups(files, by)).toEqual(expected);
  });

  it('what is on offer later than the hatching is not what they were reared on', () => {
    const late = {
      'LW-1': waxbills(`date: 2026-02-01, food: dry seed\n ${ended}\n date: 2026-03-20, food: live food`),
    };
    expect(groups(late, 'food')).toEqual([['dry seed', 1]]);
  });

  it('what the room’s log says is on offer is so for every pair, until its own journal or the room says otherwise', () => {
    const room = {
      'nestlog.yaml':
        'log:\n  - {date: 2026-02-01, food: [egg food]}\n  - {date: 2026-04-01, food: [dry seed]}\n',
    };
    expect(groups({ ...room, 'LW-1': waxbills(ended) }, 'food')).toEqual([['egg food', 1]]);
    const own = waxbills(`date: 2026-02-10, food: [live food]\n ${ended}`);
    expect(groups({ ...room, 'LW-1': own }, 'food')).toEqual([['live food', 1]]);
    const before = waxbills(`date: 2026-01-10, food: [live food]\n ${ended}`);
    expect(groups({ ...room, 'LW-1': before }, 'food')).toEqual([['egg food', 1]]);
  });

  it('of several chicks the first decides what was on offer; without any, the day on which they would have hatched', () => {
    const food = (more: string) => {
      const log = `date: 2026-02-01, food: dry seed\n ${FOUR}\n ${more}`;
      return groups({ 'LW-1': waxbills(log) }, 'food');
    };
    const apart = (on: string) =>
      [
        'date: 2026-03-16, hatched: e1',
        'date: 2026-03-18, hatched: e2',
        'date: 2026-03-25, lost: {clear: [e3, e4]}',
      ]
        .concat(`date: ${on}, food: live food`)
        .sort()
        .join('\n ');
    expect(food(apart('2026-03-17'))).toEqual([['dry seed', 1]]);
    expect(food(apart('2026-03-15'))).toEqual([['live food', 1]]);
    // Thirteen days at the most (shipped profile) after the first egg of 1 March.
    const clear = 'date: 2026-03-25, lost: {clear: all}';
    expect(food(`date: 2026-03-13, food: live food\n ${clear}`)).toEqual([['live food', 1]]);
    expect(food(`date: 2026-03-16, food: live food\n ${clear}`)).toEqual([['dry seed', 1]]);
  });

  it('eggs of a species that nobody knows would have hatched later than they were laid, too', () => {
    const log = `date: 2026-02-01, food: dry seed\n ${FOUR}\n date: 2026-03-08, food: live food\n date: 2026-04-25, lost: {clear: all}`;
    expect(groups({ 'MF-1': pair('MF-1', 'moor finch', log) }, 'food')).toEqual([['live food', 1]]);
  });

  it('a clutch lies in the nest that was told last before its first egg, or in the one that its entries name', () => {
    const site = (log: string) => groups({ 'LW-1': waxbills(log) }, 'site');
    const nests = (...days: string[]) =>
      days.map((on, i) => `date: ${on}, nest: {site: ${['gorse bundle', 'wicker basket'][i]}}`);
    const [gorse, wicker] = nests('2026-02-01', '2026-04-01');
    expect(site(`${gorse}\n ${ended}\n ${wicker}`)).toEqual([['gorse bundle', 1]]);
    expect(site(`${nests('2026-02-01', '2026-03-01').join('\n ')}\n ${ended}`)).toEqual([
      ['wicker basket', 1],
    ]);
    expect(site(`${gorse}\n date: 2026-02-10, nest: lined\n ${ended}`)).toEqual([['gorse bundle', 1]]);
    const named = `${gorse}\n ${ended.replace('date: 2026-03-01,', 'date: 2026-03-01, site: high box,')}`;
    expect(site(named)).toEqual([['high box', 1]]);
  });

  it('what hatched in the incubator is no pair’s, in no nest and on no offer of theirs', () => {
    const set = {
      'LW-1': waxbills(
        `date: 2026-02-01, food: live food, nest: {site: gorse bundle}\n ${FOUR}\n date: 2026-03-05, set: {incubator: all}\n date: 2026-03-20, lost: {clear: all}`,
        'hen: H1',
      ),
    };
    const hatching = (by: GroupingName) =>
      book(set, '2026-07-01', 'all', by).by?.blocks.map((block) => [block.name, short(block, 'hatchOfLaid')]);
    expect(hatching('pair')).toEqual([
      ['LW-1', '0/0'],
      [null, '0/4'],
    ]);
    for (const [by, name] of [
      ['site', 'gorse bundle'],
      ['food', 'live food'],
      ['hen', 'H1'],
    ] as const)
      expect(hatching(by), by).toEqual([
        [name, '0/0'],
        [null, '0/4'],
      ]);
    expect(book(set, '2026-07-01').byPair.map(({ name }) => name)).toEqual(['LW-1']);
  });

  it('what a pair without a clutch of its own sat on is its hen’s', () => {
    const foster = {
      'LW-1': waxbills(
        `${FOUR}\n date: 2026-03-06, fostered: {SF-1: all}\n date: 2026-03-06, checked`,
        'hen: H1',
      ),
      'SF-1': pair(
        'SF-1',
        'star finch',
        'date: 2026-02-01, paired\n date: 2026-03-20, lost: {clear: all}',
        'hen: H2',
      ),
    };
    expect(
      book(foster, '2026-07-01', 'all', 'hen').by?.blocks.map((block) => [
        block.name,
        short(block, 'hatchOfLaid'),
      ]),
    ).toEqual([
      ['H1', '0/0'],
      ['H2', '0/4'],
    ]);
  });

  it('what a pair without a clutch of its own sat on lay in the nest that was told last, on what that pair was offered', () => {
    const foster = {
      'LW-1': waxbills(
        `date: 2026-02-01, food: egg food\n ${FOUR}\n date: 2026-03-06, fostered: {SF-1: all}`,
      ),
      'SF-1': pair(
        'SF-1',
        'star finch',
        'date: 2026-02-01, paired, food: dry seed, nest: {site: wicker basket}\n date: 2026-03-10, food: live food\n date: 2026-03-20, food: greens\n date: 2026-03-25, lost: {clear: all}',
      ),
    };
    const last = (by: GroupingName) =>
      book(foster, '2026-07-01', 'all', by).by?.blocks.find((block) => block.rates.hatchOfLaid.n > 0)?.name;
    expect(last('site')).toBe('wicker basket');
    // The eggs of 1 March would have hatched on the 14th.
    expect(last('food')).toBe('live food');
  });

  it('an egg brought to another pair stands under what that pair was offered when its own young hatched', () => {
    const later = ended.replaceAll('2026-03-', '2026-04-');
    const foster = {
      'LW-1': waxbills(`${FOUR}\n date: 2026-04-05, fostered: {SF-1: e1}`),
      'SF-1': pair(
        'SF-1',
        'star finch',
        `date: 2026-02-01, food: dry seed\n date: 2026-03-28, food: live food\n ${later}\n date: 2026-05-05, lost: {dead-in-shell: LW-1/1/e1}`,
      ),
    };
    const blocks = book(foster, '2026-07-01', 'all', 'food').by?.blocks;
    expect(blocks?.map((block) => [block.name, block.rates.hatchOfLaid.n])).toEqual([
      ['live food', 5],
      [null, 0],
    ]);
  });

  it('a clutch belongs to the mates of its day', () => {
    const twice = `${ended}\n date: 2026-04-01, paired: {cock: C2}\n date: 2026-04-20, clutch: 2, laid: 1`;
    expect(groups({ 'LW-1': waxbills(twice, 'cock: C1') }, 'cock')).toEqual([
      ['C1', 1],
      ['C2', 1],
    ]);
  });

  it('one of several parents is named as such', () => {
    expect(groups({ 'LW-1': waxbills(ended, 'cock: [C1, C2]') }, 'cock')).toEqual([['C1 or C2', 1]]);
  });
});

it('every grouping has its name and words', () => {
  for (const [name, grouping] of Object.entries(groupings)) {
    expect(grouping.name).toBe(name);
    expect(grouping.says.length * grouping.nameless.length).toBeGreaterThan(0);
  }
  expect(whole.byCare).toBe(false);
});

it('groups stand in natural order, months in that of the year, what is unknown last', () => {
  expect(['LW-10', null, 'LW-2'].sort(inGroupOrder('pair'))).toEqual(['LW-2', 'LW-10', null]);
  expect(['Sep', 'Apr', 'Jan'].sort(inGroupOrder('month'))).toEqual(['Jan', 'Apr', 'Sep']);
  for (const some of [
    ['Sep', null, 'Apr'],
    [null, 'Apr', 'Sep'],
    ['Apr', 'Sep', null],
  ])
    expect(some.sort(inGroupOrder('month'))).toEqual(['Apr', 'Sep', null]);
  expect(inGroupOrder('pair')(null, null)).toBe(0);
});
