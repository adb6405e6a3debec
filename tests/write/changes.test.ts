import { expect, test } from 'vitest';
import type { AgendaItem, WarningLine } from '../../src/rules/agenda/item.ts';
import { changesOf } from '../../src/write/changes.ts';
import { agenda } from '../rooms.ts';

const HEAD = 'pair: LW-1\nspecies: lavender waxbill\nlog:\n';
const LAID = ['2026-03-01', '2026-03-02', '2026-03-03', '2026-03-04']
  .map((date) => `  - {date: ${date}, laid: 1}\n`)
  .join('');

/** What one more entry changes, as task names. */
function changed(log: string, entry: string, on: string) {
  const items = (text: string) => agenda({ 'LW-1': HEAD + text }, on, 400);
  const { gone, begun, moved } = changesOf(
    { items: items(log), warnings: [] },
    { items: items(`${log}  - ${entry}\n`), warnings: [] },
  );
  const names = (list: readonly AgendaItem[]) => list.map(({ task }) => task);
  return { gone: names(gone), begun: names(begun), moved: names(moved.map(({ to }) => to)) };
}

test('sitting that was seen is no longer to be confirmed, and dates move with it', () => {
  const { gone, moved } = changed(LAID, '{date: 2026-03-06, sitting}', '2026-03-06');
  expect(gone).toContain('confirm-sitting');
  expect(moved).toContain('hatch');
});

test('a hatching brings the tasks of chicks', () => {
  const { begun } = changed(
    `${LAID}  - {date: 2026-03-04, sitting}\n`,
    '{date: 2026-03-16, hatched: 2}',
    '2026-03-16',
  );
  expect(begun).toEqual(expect.arrayContaining(['ring', 'fledge', 'independent']));
});

test('a note changes nothing', () => {
  expect(changed(LAID, '{date: 2026-03-05, note: "rain"}', '2026-03-06')).toEqual({
    gone: [],
    begun: [],
    moved: [],
  });
});

const task = (from: number): AgendaItem => ({
  ...(agenda({ 'LW-1': HEAD + LAID }, '2026-03-06')[0] as AgendaItem),
  from,
});

test('of several alike, those that stay are not told as moved', () => {
  const { moved, gone } = changesOf(
    { items: [task(1), task(2)], warnings: [] },
    { items: [task(2)], warnings: [] },
  );
  expect(moved).toEqual([]);
  expect(gone).toEqual([task(1)]);
});

test('a forecast whose likeliest day alone changed has moved', () => {
  const [from, to] = [10, 11].map((likely) => ({ ...task(9), to: 12, likely }));
  const { moved, gone, begun } = changesOf(
    { items: [from as AgendaItem], warnings: [] },
    { items: [to as AgendaItem], warnings: [] },
  );
  expect(moved).toEqual([{ from, to }]);
  expect([gone, begun]).toEqual([[], []]);
});

test('a warning is new where it was not there, or pressed less', () => {
  const warning: WarningLine = {
    ...{
      kind: 'unwell',
      level: 'watch',
      pair: 'LW-1',
      bird: null,
      clutch: null,
      housing: null,
      date: 0,
      text: '',
      check: '',
    },
  };
  const act: WarningLine = { ...warning, level: 'act' };
  const before = { items: [], warnings: [warning] };
  expect(changesOf(before, { items: [], warnings: [{ ...warning, date: 1 }, act] }).warnings).toEqual([act]);
});
