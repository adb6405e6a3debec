import { expect, it } from 'vitest';
import { careOf } from '../../../src/rules/account/care.ts';
import { record } from '../../rooms.ts';

/** What an account tells of these lines, one a day in February, and of those of the room. */
function careIn(room: string, ...lines: string[]) {
  const log = lines.map((line, i) => `  - {date: 2026-02-0${i + 1}, ${line}}\n`).join('');
  const files = { 'LW-1': `pair: LW-1\nlog:\n${log}`, 'nestlog.yaml': `log:\n${room}` };
  const { pairs, settings } = record(files, '2026-06-01');
  return careOf([...(pairs[0]?.entries ?? [])], settings.log, (text) =>
    text.startsWith('private') ? null : text,
  );
}

const care = (...lines: string[]) => careIn('', ...lines);

it.each([
  ['paired: {hen: X}', 'put together with a new hen'],
  ['paired: {cock: X}', 'put together with a new cock'],
  ['reunited', 'put together again'],
  ['parted: {cock: flight 7}', 'parted'],
  ['courting', 'courting'],
  ['courting: "private: quite a show"', 'courting'],
  ['chasing', 'some chasing'],
  ['chasing: {by: hen, level: mild}', 'mild chasing by the hen'],
  ['chasing: {by: cock, at: 2/c1, level: fierce}', 'fierce chasing by the cock, of the young'],
  ['chasing: {by: both, at: c12}', 'some chasing by both, of the young'],
])('%s: %s', (line, text) => {
  expect(care(line).together.map((one) => one.text)).toEqual([text]);
});

it('of a nest its state, place, height and stuff as far as they were written', () => {
  expect(care('nest: {site: "private: behind the boiler", height: 1.8 m}').nests[0]?.text).toBe(
    'nest, height 1.8 m',
  );
  expect(care('site: gorse, nest: removed').nests[0]?.text).toBe('removed, gorse');
});

it('what is said again is told once', () => {
  expect(care('food: greens', 'food: greens', 'food: [seed, greens]').food.map(({ text }) => text)).toEqual([
    'greens',
    'seed, greens',
  ]);
});

it('food of which nothing may be told is not told, whether the pair or the whole room was given it', () => {
  expect(care('food: "private: mix"').food).toEqual([]);
  const rooms = [
    '  - {date: 2026-02-01, food: "private: mix"}\n',
    '  - {date: 2026-02-02, note: swept}\n',
    '  - {date: 2026-02-03, food: seed}\n',
  ];
  expect(careIn(rooms.join('')).food.map(({ text }) => text)).toEqual(['seed (for the whole room)']);
});
