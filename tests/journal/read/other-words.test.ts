import { describe, expect, it } from 'vitest';
import { birdObservations } from '../../../src/journal/bird-observations/index.ts';
import type { ObservationDefinition } from '../../../src/journal/grammar/observation.ts';
import { observations } from '../../../src/journal/observations/index.ts';
import { readLog } from '../reading.ts';

const fix = (said: string) => readLog(`- {date: 2026-03-10, ${said}}`).fixes[0];

// What keepers call these things: common practice.
describe('a word that others use', () => {
  it.each([
    ['weaned: all', '`independent: all` (cracks seed and no longer begs)'],
    ['left nest: 3', '`fledged: 3` (left the nest)'],
    ['banded: {c1: LW 26 014}', '`ringed: {c1: LW 26 014}` (closed ring put on)'],
    ['Fertile: e1', '`candled: {fertile: e1}` (what the lamp showed)'],
    ['building', '`nest: building` (state of the nest, how it was made)'],
    ['building: yes', '`nest: building` (state of the nest, how it was made)'],
    [
      'building: cock with a straw',
      '`nest: building, note: "cock with a straw"` (state of the nest, how it was made)',
    ],
  ])('%s is answered with ours, as it would be written', (said, meant) => {
    expect(fix(said)).toBe(`did you mean ${meant}?`);
  });

  it('that may mean two things is answered with both', () => {
    expect(fix('chicks: 4')).toMatch(
      /^did you mean `hatched: 4` \(out of the shell\) or `checked: {chicks: 4}` \(/,
    );
  });

  it('with a value that ours does not take is answered with an example', () => {
    expect(fix('banded: [c1, c2]')).toBe('did you mean `ringed: {c1: LW 26 014}` (closed ring put on)?');
    expect(fix(`sick: {hen: ${'very '.repeat(20)}ill}`)).toContain('`unwell: {hen: fluffed and straining}`');
  });

  it('is not read: the entry counts without it', () => {
    const { entries, found } = readLog('- {date: 2026-03-10, weaned: all, checked}');
    expect(found).toEqual(['3:24 unknown-key']);
    expect(entries[0]?.saw.map(({ key }) => key)).toEqual(['checked']);
  });
});

describe.each<[string, Record<string, ObservationDefinition>]>([
  ['a pair', observations],
  ['a bird', birdObservations],
])('the other words of %s', (_whose, table) => {
  const words = Object.entries(table).flatMap(([key, { alsoSaid = [] }]) =>
    alsoSaid.map((word) => [word, key]),
  );

  it.each(words)('`%s` for `%s` is no word of ours, and written plainly', (word) => {
    expect(Object.keys(table)).not.toContain(word);
    expect(word).toMatch(/^[a-z]+(?: [a-z]+)*$/);
  });
});

it.each(
  ['', ': 2', ': all', ': e1', ': [c1, c2]', ': {c1: 4.5}', ': hen', ': flight 3'].map((value) => [value]),
)('whatever stands behind it, here `%s`, what is offered instead can be read', (value) => {
  for (const { alsoSaid = [] } of Object.values(observations) as ObservationDefinition[]) {
    for (const word of alsoSaid) {
      const offered = [...(fix(`${word}${value}`) ?? '').matchAll(/`([^`]+)`/g)].map(
        ([, text]) => text as string,
      );
      expect(offered, word).not.toEqual([]);
      for (const text of offered) expect(readLog(`- {date: 2026-03-10, ${text}}`).found, text).toEqual([]);
    }
  }
});
