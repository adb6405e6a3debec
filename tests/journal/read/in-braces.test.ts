import { expect, it } from 'vitest';
import { readLog } from '../reading.ts';

it.each([
  ['candled: e1 fertile', 'candled: {fertile: e1}'],
  ['candled: all fertile', 'candled: {fertile: all}'],
  ['checked: 3 chicks', 'checked: {chicks: 3}'],
  ['fostered: e1 to LW-2', 'fostered: {LW-2: e1}'],
  ['unwell: the hen', 'unwell: {hen: fluffed and straining}'],
  ['unwell: hen is fluffed', 'unwell: {hen: fluffed}'],
  ['unwell: fluffed hen', 'unwell: {hen: fluffed}'],
  ['unwell: very fluffed hen', 'unwell: {hen: very fluffed}'],
  ['candled: e1  fertile', 'candled: {fertile: e1}'],
  ['candled: " e1 fertile"', 'candled: {fertile: e1}'],
  ['ringed: c1 LW 26 014', 'ringed: {c1: LW 26 014}'],
  ['ringed: 26 014', 'ringed: {c1: LW 26 014}'],
  ['chasing: cock chases hen', 'chasing: {by: cock, at: hen, level: hard}'],
])(
  'words where braces belong, `%s`, are answered with those where they can be meant, else with an example',
  (said, example) => {
    expect(readLog(`- {date: 2026-03-01, ${said}}`).fixes[0]).toBe(`such as \`${example}\``);
  },
);

it.each([
  ['sitting: {cock: yes}', 'sitting: cock'],
  ['laid: {egg: one}', 'laid: 1'],
  ['sitting: {cock: yes, hen: no}', 'sitting: hen'],
])('braces where one word belongs, `%s`, are answered with the word where it is one', (said, example) => {
  expect(readLog(`- {date: 2026-03-01, ${said}}`).fixes[0]).toBe(`such as \`${example}\``);
});

it('a story is answered with an example', () => {
  const story = `hen ${'very '.repeat(20)}fluffed`;
  expect(readLog(`- {date: 2026-03-01, unwell: ${story}}`).fixes[0]).toContain(
    '{hen: fluffed and straining}',
  );
});
