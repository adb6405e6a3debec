import { describe, expect, test } from 'vitest';
import { traits } from '../../src/species/traits.ts';
import { readValue } from '../../src/species/value.ts';

describe('the short form of a keeper', () => {
  test.each([
    ['12-14', { low: 12, high: 14 }],
    ['12–14', { low: 12, high: 14 }],
    ['12 to 14', { low: 12, high: 14 }],
    ['13', { low: 13, high: 13 }],
  ])('%s', (text, value) => {
    expect(readValue(text, traits.incubation)).toMatchObject({
      sourced: { value, source: 'own profile' },
      problems: [],
    });
  });

  test('ring sizes keep their decimals', () => {
    expect(readValue('2.0-2.3', traits.ringSize).sourced?.value).toEqual({ low: 2, high: 2.3 });
  });

  test('a parent may drive before the young leave: days may be negative there, and nowhere else', () => {
    expect(readValue('-3', traits.restart).sourced?.value).toEqual({ low: -3, high: -3 });
    expect(readValue('-3', traits.incubation).problems).not.toEqual([]);
  });
});

test('the long form names source and grade', () => {
  const value = { range: '11-13', source: 'a handbook', grade: 'read', note: 'in warm rooms' };
  expect(readValue(value, traits.incubation).sourced).toEqual({
    value: { low: 11, high: 13 },
    source: 'a handbook',
    grade: 'read',
    note: 'in warm rooms',
  });
});

describe('what cannot be', () => {
  test.each([
    ['14-12', 'profile-reversed'],
    ['0', 'profile-not-positive'],
    ['a fortnight', 'profile-not-a-number'],
  ])('%s', (text, code) => {
    expect(readValue(text, traits.incubation).problems.map((problem) => problem.code)).toContain(code);
  });

  test('a word that is none of those known', () => {
    expect(readValue('lots', traits.liveFood).problems.map(({ code }) => code)).toEqual([
      'profile-unknown-word',
    ]);
  });
});

test.each(['', 'NA', '-999', 'unknown'])('“%s” is how a table writes that nothing is known', (text) => {
  expect(readValue(text, traits.incubation)).toEqual({ sourced: null, problems: [] });
});
