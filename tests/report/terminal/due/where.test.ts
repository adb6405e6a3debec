import { expect, test } from 'vitest';
import { refs, subject, unsaid, where } from '../../../../src/report/terminal/due/where.ts';
import { item } from '../../mornings.ts';

test.each([
  [['e1', 'e2', 'e3', 'e4'], 'e1–e4'],
  [['e1', 'e2'], 'e1, e2'],
  [['e1', 'e2', 'e3', 'e5'], 'e1–e3, e5'],
  [['e9', 'e10', 'e11'], 'e9–e11'],
  [['e2', 'c3', 'c4'], 'e2, c3, c4'],
  [['c1', 'SF-2/1/c1', 'SF-2/1/c2'], 'c1, SF-2/1/c1, SF-2/1/c2'],
])('%j is %s', (who, words) => {
  expect(refs(who)).toBe(words);
});

test('a task is a pair’s, for some of its eggs or young; else a bird’s; else the room’s', () => {
  expect(subject(item({ who: ['c1', 'c2'] }))).toBe('LW-1 (c1, c2)');
  expect(subject(item({}))).toBe('LW-1');
  expect(subject(item({ pair: null, bird: 'SF-24-02' }))).toBe('SF-24-02');
  expect(subject(item({ pair: null, bird: 'SF-24-02', who: ['SF-24-02'] }))).toBe('SF-24-02');
  expect(subject(item({ bird: 'LW-19-04' }))).toBe('LW-1 (LW-19-04)');
  expect(subject(item({ pair: null }))).toBe('the room');
});

test('in a row with two clutches of one pair each is named with its clutch, also below the pair’s own heading', () => {
  const row = [item({ clutch: 1, who: ['c1'] }), item({ clutch: 2, who: ['e1'] })];
  expect(where(row as [(typeof row)[0]], unsaid)[0]?.[0]).toBe('LW-1 clutch 1 (c1), LW-1 clutch 2 (e1)');
  expect(where(row as [(typeof row)[0]], { ...unsaid, whose: true })[0]?.[0]).toBe(
    'clutch 1 (c1), clutch 2 (e1)',
  );
  const others = [item({ clutch: 1 }), item({ pair: 'LW-2', clutch: 2 })];
  expect(where(others as [(typeof others)[0]], unsaid)[0]?.[0]).toBe('LW-1, LW-2');
});
