import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { groupings } from '../../../src/report/terminal/due/groups.ts';
import { dueText } from '../../../src/report/terminal/due.ts';
import { widthOf } from '../../../src/report/terminal/width.ts';
import type { AgendaItem, WarningLine } from '../../../src/rules/agenda/item.ts';
import { expectGolden } from '../../golden.ts';
import { FORBIDDEN, hostileText, withoutColour } from '../hostile.ts';
import { anyItem, busyMorning, day, item, morning, warning } from '../mornings.ts';

const standing = day('2026-05-17');

function shown(
  over: Parameters<typeof morning>[0],
  options: Partial<Parameters<typeof dueText>[1]> = {},
): string {
  return dueText(morning(over), { width: 80, color: false, by: 'urgency', ...options });
}

describe.each([60, 80, 120])('a busy morning at %i columns', (width) => {
  test.each(groupings)('by %s', (by) => {
    expectGolden(
      import.meta.url,
      `busy-${width}-${by}.txt`,
      dueText(busyMorning(), { width, color: false, by }),
    );
  });
});

test.each([80, 120])('a busy morning in colour at %i columns', (width) => {
  expectGolden(
    import.meta.url,
    `busy-${width}-colour.txt`,
    dueText(busyMorning(), { width, color: true, by: 'urgency' }),
  );
});

test('colour says nothing that the words do not', () => {
  for (const by of groupings) {
    const colored = dueText(busyMorning(), { width: 80, color: true, by });
    expect(colored).not.toBe(withoutColour(colored));
    expect(withoutColour(colored)).toBe(dueText(busyMorning(), { width: 80, color: false, by }));
  }
});

test('the morning of a usual room fits on a screen of fifty lines', () => {
  expect(dueText(busyMorning(), { width: 80, color: false, by: 'urgency' }).split('\n').length).toBeLessThan(
    50,
  );
});

describe('the words at the left say how pressing it is', () => {
  test.each<[string, Partial<AgendaItem>, string]>([
    ['late', { state: 'late', from: standing - 4, to: standing - 2 }, '  2 d late    candle'],
    ['on its last day', { from: standing - 2, to: standing }, '  last day    candle'],
    ['on its only day', { from: standing, to: standing }, '  today       candle'],
    ['with days left', { from: standing, to: standing + 3 }, '  to 20 May   candle'],
    ['without an end', { from: standing - 9, to: null }, '  now         candle'],
    ['tomorrow', { state: 'coming', from: standing + 1, to: standing + 1 }, '  tomorrow    candle'],
    ['later on', { state: 'coming', from: standing + 3, to: standing + 4 }, '  Wed 20 May  candle'],
    ['next year', { state: 'coming', from: day('2027-01-01'), to: null }, '  Fri 1 Jan 2027  candle'],
  ])('%s', (_, over, line) => {
    expect(shown({ items: [item(over)] })).toContain(`\n${line}`);
  });
});

describe('why', () => {
  test('names window, anchor and days, species and clutch', () => {
    expect(shown({ items: [item({ from: standing, to: standing + 1 })] })).toContain(
      '\n                17–18 May · lavender waxbill, clutch 3\n                sitting since 12 May + 5–6 d\n',
    );
  });

  test('names the likely day of a forecast and what it rests on', () => {
    const forecast = item({
      state: 'coming',
      from: standing + 1,
      likely: standing + 3,
      to: standing + 5,
      basis: '11–13 d, book',
    });
    expect(shown({ items: [forecast] })).toContain('18–22 May, likely Wed 20 May · lavender waxbill');
    expect(shown({ items: [forecast] })).toContain('sitting since 12 May + 5–6 d (11–13 d, book)\n');
    expect(shown({ items: [{ ...forecast, likely: standing + 1 }] })).toContain(
      '18–22 May, likely tomorrow · lavender waxbill',
    );
  });
});

describe('what several pairs share stands on one line', () => {
  const out = { task: 'live-food', say: 'put live food out', from: standing, to: standing + 2 };

  test('with the pairs by housing, in the order of their numbers', () => {
    const items = ['LW-10', 'LW-2', 'LW-1'].map((pair) => item({ ...out, pair }));
    const text = shown({ items: [...items, item({ ...out, pair: 'CB-2', housing: 'cage 4' })] });
    expect(text.match(/put live food out/g)).toHaveLength(1);
    expect(text).toContain(
      'put live food out  CB-2 · cage 4\n                                 LW-1, LW-2, LW-10 · flight 2\n',
    );
  });

  test('each with its own reason', () => {
    const items = [
      item({ ...out, why: 'hatch from 19 May − 2 d' }),
      item({ ...out, pair: 'CB-2', why: 'hatch from 20 May − 3 d' }),
    ];
    const text = shown({ items });
    expect(text).toContain('LW-1: hatch from 19 May − 2 d');
    expect(text).toContain('CB-2: hatch from 20 May − 3 d');
  });

  test('but not where windows differ', () => {
    const text = shown({ items: [item({ ...out }), item({ ...out, pair: 'CB-2', to: standing + 3 })] });
    expect(text.match(/put live food out/g)).toHaveLength(2);
  });
});

test('the most pressing comes first', () => {
  const say = ['one', 'two', 'three', 'four', 'five', 'six'];
  const items = [
    item({ say: 'six', state: 'coming', from: standing + 2, to: standing + 2 }),
    item({ say: 'five', state: 'coming', from: standing + 1, to: standing + 9 }),
    item({ say: 'four', to: null }),
    item({ say: 'three', to: standing }),
    item({ say: 'two', state: 'late', to: standing - 1 }),
    item({ say: 'one', state: 'late', to: standing - 5 }),
  ];
  expect(shown({ items }).match(new RegExp(`\\b(${say.join('|')})\\b`, 'g'))).toEqual(say);
});

test('warnings come before work, by level, each with its word and what to check', () => {
  const text = shown({
    items: [item({})],
    warnings: [warning({ level: 'note' }), warning({ level: 'watch' }), warning({ level: 'act' })],
  });
  expect(text.match(/ACT NOW|WATCH|note|check:|TODAY/g)).toEqual([
    'ACT NOW',
    'check:',
    'WATCH',
    'check:',
    'note',
    'check:',
    'TODAY',
  ]);
});

test('broken journals are told on top, as the agenda may lack what they say', () => {
  const at = { file: 'pairs/lw-1.yaml', line: 3, column: 5, length: 2 };
  const text = shown({
    findings: [{ code: 'negative-count', at, args: { text: '-1' } }],
    warnings: [warning({})],
  });
  expect(text.indexOf('pairs/lw-1.yaml:3:5: -1 ')).toBeLessThan(text.indexOf('WATCH'));
  expect(text).toContain('Nothing is due as far as the journals can be read.');
});

describe('an empty morning', () => {
  test('says so kindly', () => {
    expect(shown({})).toBe(
      [
        'Sunday 17 May 2026 · the finch room',
        '',
        'A quiet morning: nothing is late and nothing is due today. Nothing is foreseen',
        'either. Food, water and a look at every bird, all the same.',
        '',
      ].join('\n'),
    );
  });

  test('says when the next work comes', () => {
    const next = item({ state: 'coming', from: standing + 10, to: standing + 11 });
    expect(shown({ next })).toContain('After that: candle the eggs, LW-1 (Wed 27 May, in 10 d).');
  });

  test('with work ahead shows just that', () => {
    const text = shown({ items: [item({ state: 'coming', from: standing + 2 })] });
    expect(text).toContain('nothing is due today.\n\nCOMING\n');
  });
});

test('standing on another day is said', () => {
  expect(shown({ today: standing + 17 })).toContain('as it stands on that day; today is Wed 3 Jun');
});

test('a room without a name is only its date', () => {
  expect(shown({ room: null })).toMatch(/^Sunday 17 May 2026\n/);
});

describe('walking the room', () => {
  const items = [
    item({}),
    item({ pair: 'CB-10', housing: 'cage 10' }),
    item({ pair: 'CB-9', housing: 'cage 9' }),
    item({ pair: 'XX-1', housing: null }),
    item({ pair: null, clutch: null, species: null, housing: null, say: 'worm all flights' }),
    item({ pair: null, bird: 'SF-24-02', clutch: null, housing: 'cage 9', say: 'quarantine ends' }),
  ];
  const headings = (by: 'housing' | 'pair') =>
    shown({ items }, { by })
      .match(/^\S.*$/gm)
      ?.slice(2);

  test('by housing', () => {
    expect(headings('housing')).toEqual(['cage 9', 'cage 10', 'flight 2', 'housing not recorded']);
  });

  test('by pair, with species and housing in the heading', () => {
    expect(headings('pair')).toEqual([
      'CB-9 · lavender waxbill · cage 9',
      'CB-10 · lavender waxbill · cage 10',
      'LW-1 · lavender waxbill · flight 2',
      'SF-24-02 · lavender waxbill · cage 9',
      'XX-1 · lavender waxbill',
      'the room',
    ]);
  });
});

const anyWarning: fc.Arbitrary<WarningLine> = fc.record({
  kind: hostileText,
  level: fc.constantFrom('act', 'watch', 'note'),
  pair: fc.option(hostileText),
  bird: fc.option(hostileText),
  clutch: fc.option(fc.nat(9)),
  housing: fc.option(hostileText),
  date: fc.integer({ min: standing - 400, max: standing }),
  text: hostileText,
  check: hostileText,
});

const anyMorning = fc.record({
  room: fc.option(hostileText),
  items: fc.array(anyItem, { maxLength: 6 }),
  warnings: fc.array(anyWarning, { maxLength: 3 }),
  next: fc.option(anyItem),
});

test('whatever the journals hold, no line is wider than the page and nothing reaches the terminal but text', () => {
  fc.assert(
    fc.property(
      anyMorning,
      fc.integer({ min: 40, max: 130 }),
      fc.constantFrom(...groupings),
      fc.boolean(),
      (over, width, by, color) => {
        const text = withoutColour(shown(over, { width, by, color }));
        expect(text).not.toMatch(FORBIDDEN);
        for (const line of text.split('\n')) expect(widthOf(line)).toBeLessThanOrEqual(width);
      },
    ),
  );
});

test('no item is left out, however the morning is read', () => {
  const numbered = fc.array(
    fc.record({
      pair: fc.nat(99),
      housing: fc.nat(3),
      state: fc.constantFrom('late', 'now', 'coming'),
      to: fc.nat(2),
    }),
    { minLength: 1, maxLength: 12 },
  );
  fc.assert(
    fc.property(numbered, fc.constantFrom(...groupings), (some, by) => {
      const items = some.map(({ pair, housing, state, to }) =>
        item({ pair: `P-${pair}`, housing: `cage ${housing}`, state, to: standing + to }),
      );
      const words = shown({ items }, { by }).split(/[^\w-]+/);
      for (const { pair } of items) expect(words).toContain(pair);
    }),
  );
});
