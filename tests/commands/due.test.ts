import { describe, expect, test } from 'vitest';
import { definition, run } from '../../src/commands/due.ts';
import type { Files } from '../rooms.ts';
import { runCommand } from './run.ts';

const room: Files = {
  'LW-1': `
    pair: LW-1
    species: lavender waxbill
    housing: flight 2
    log:
      - {date: 2026-03-01, clutch: 1, laid: 1}
      - {date: 2026-03-02, laid: 1}
      - {date: 2026-03-03, laid: 1}
      - {date: 2026-03-04, laid: 1, sitting}
  `,
  'DD-1': `
    pair: DD-1
    species: diamond dove
    housing: aviary
    log:
      - {date: 2026-03-08, clutch: 1, laid: 1, sitting}
  `,
};

const usual = { days: 7, by: 'urgency' as const };
const due = (files: Files, on: string, options = {}, json = false) =>
  runCommand({ run }, files, { on, today: on, json, options: { ...usual, ...options } });

test('tells what is to be done, on what the date rests, and ends with 0', async () => {
  const { text, exit } = await due(room, '2026-03-09');
  expect(text).toContain('candle the eggs');
  expect(text).toContain('sitting since 3–4 Mar + 5–6 d');
  expect(exit).toBe(0);
});

test('an empty morning is a good morning', async () => {
  const { text, exit } = await due({}, '2026-03-09');
  expect(text).not.toContain('TODAY');
  expect(exit).toBe(0);
});

test('a broken journal stands on top, and the rest of the morning below it', async () => {
  const { text } = await due(
    { ...room, 'SF-1': 'pair: SF-1\nlog:\n  - {date: 2026-03-01, laid: -1}\n' },
    '2026-03-09',
  );
  expect(text.indexOf('pairs/SF-1.yaml:3')).toBeGreaterThan(0);
  expect(text.indexOf('pairs/SF-1.yaml:3')).toBeLessThan(text.indexOf('candle the eggs'));
});

test('what lies beyond the days asked for is not shown', async () => {
  expect((await due(room, '2026-03-05')).text).not.toContain('hatching expected');
  expect((await due(room, '2026-03-05', { days: 14 })).text).toContain('hatching expected');
});

describe('narrowed', () => {
  test('to a pair, a housing, a species under any of its names', async () => {
    for (const only of [{ pair: 'LW-1' }, { housing: 'flight 2' }, { species: 'Estrilda caerulescens' }]) {
      const { text } = await due(room, '2026-03-09', only);
      expect(text).toContain('LW-1');
      expect(text).not.toContain('DD-1');
    }
  });

  test('a name that is not there is answered with the one that was probably meant', async () => {
    await expect(due(room, '2026-03-09', { pair: 'LW1' })).rejects.toThrow('did you mean `LW-1`?');
    await expect(due(room, '2026-03-09', { housing: 'flight 3' })).rejects.toThrow(
      'did you mean `flight 2`?',
    );
  });
});

test('the data have exactly the promised keys', async () => {
  const { text } = await due(room, '2026-03-09', {}, true);
  const morning = JSON.parse(text);
  expect(Object.keys(morning)).toEqual(['nestlog', 'date', 'room', 'items', 'warnings', 'findings']);
  const candle = morning.items.find((item: { task: string }) => item.task === 'candle');
  expect(candle).toEqual({
    task: 'candle',
    pair: 'LW-1',
    bird: null,
    clutch: 1,
    who: null,
    housing: 'flight 2',
    species: 'lavender waxbill',
    from: '2026-03-09',
    likely: null,
    to: '2026-03-10',
    state: 'now',
    why: 'sitting since 3–4 Mar + 5–6 d',
    basis: null,
  });
});

test('numbers and orders that make no sense are refused in a sentence', () => {
  const parse = (name: string) =>
    definition.options?.find(({ flags }) => flags.startsWith(`--${name}`))?.parse;
  expect(() => parse('days')?.('soon')).toThrow('--days takes a number of days');
  expect(() => parse('by')?.('colour')).toThrow('--by takes urgency, housing, pair');
});

test('explains a task, a routine of the room and a warning, and all that share a name', async () => {
  const routines = 'routines:\n  - {name: overdue, after: paired, days: 3, say: "look for stray eggs"}\n';
  const explain = async (name: string) =>
    (await due({ ...room, 'nestlog.yaml': routines }, '2026-03-09', { explain: name })).text;
  expect(await explain('candle')).toContain('candle: candle the eggs');
  expect(await explain('egg-binding')).toContain('level   ACT NOW');
  expect(await explain('overdue')).toMatch(/^overdue: look for stray eggs\n[\s\S]+\n\noverdue: a warning\n/);
});

test('asked for what there is not, it says what was probably meant, or all that there is', async () => {
  await expect(due(room, '2026-03-09', { explain: 'eg-binding' })).rejects.toThrow(
    'did you mean `egg-binding`?',
  );
  await expect(due(room, '2026-03-09', { explain: 'weather' })).rejects.toThrow(
    /the tasks .*candle.* and the warnings .*overdue/,
  );
});

test('an explanation is text, and neither data nor a page is made of it', async () => {
  const wrong = /^an explanation is text/;
  await expect(due(room, '2026-03-09', { explain: 'candle' }, true)).rejects.toThrow(wrong);
  await expect(due(room, '2026-03-09', { explain: 'candle', page: 'x.html' })).rejects.toThrow(wrong);
});

test('a shell offers the orders, and the names of tasks and warnings', () => {
  const offered = (flag: string) =>
    definition.options?.find(({ flags }) => flags.startsWith(`--${flag}`))?.completes;
  expect(offered('by')).toEqual(['urgency', 'housing', 'pair']);
  expect(offered('explain')).toEqual(expect.arrayContaining(['candle', 'egg-binding']));
});
