import { expect, it } from 'vitest';
import { careOf } from '../../../src/rules/account/care.ts';
import { record } from '../../rooms.ts';

/** What an account tells of these lines, where nothing has to be withheld. */
function care(...lines: string[]) {
  const log = lines.map((line) => `  - {date: 2026-02-01, ${line}}\n`).join('');
  const [journal] = record({ 'LW-1': `pair: LW-1\nlog:\n${log}` }, '2026-06-01').pairs;
  return careOf([...(journal?.entries ?? [])], [], (text) => (text.startsWith('private') ? null : text));
}

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
  expect(care('food: greens', 'food: greens', 'food: seed').food.map(({ text }) => text)).toEqual([
    'greens',
    'seed',
  ]);
});

it('food of which nothing may be told is not told', () => {
  expect(care('food: "private: mix"').food).toEqual([]);
});
