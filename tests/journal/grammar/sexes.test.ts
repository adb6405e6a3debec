import { expect, it } from 'vitest';
import { read, readLog } from '../reading.ts';

// Common practice: 1.0 is a cock, 0.1 a hen, 0.0.1 a bird that nobody could tell.
it.each([
  ['male', 'cock'],
  ['F', 'hen'],
  ['♀', 'hen'],
  ['1.0', 'cock'],
  ['0.1', 'hen'],
  ['not sexed', 'unknown'],
  ['?', 'unknown'],
])('a bird that is `%s` is answered with `%s`', (said, sex) => {
  expect(read(`birds: [{id: A, sex: ${JSON.stringify(said)}}]`, 'birds.yaml').fixes).toEqual([
    `did you mean \`${sex}\`?`,
  ]);
});

it.each([
  ['sexed: {male: c1}', 'cock'],
  ['sitting: female', 'hen'],
  ['feeding: {mother: c1}', 'hen'],
])('`%s` in a journal is answered with `%s`', (said, sex) => {
  expect(readLog(`- {date: 2026-03-10, ${said}}`).fixes).toEqual([`did you mean \`${sex}\`?`]);
});
