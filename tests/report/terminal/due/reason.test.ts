import { expect, test } from 'vitest';
import { reasons } from '../../../../src/report/terminal/due/reason.ts';
import { unsaid } from '../../../../src/report/terminal/due/where.ts';
import { day, item } from '../../mornings.ts';

const standing = day('2026-05-17');

test('one item: its window, the nest, and what the dates rest on', () => {
  expect(reasons([item({ to: standing + 2, basis: '11–13 d, book' })], standing, unsaid)).toEqual([
    ['17–19 May', 'lavender waxbill, clutch 3', 'sitting since 12 May + 5–6 d (11–13 d, book)'],
  ]);
});

test('a single day that the left side names already is not repeated, but one that is past is', () => {
  expect(reasons([item({})], standing, unsaid)[0]?.[0]).toBe('lavender waxbill, clutch 3');
  const late = item({ state: 'late', from: standing - 2, to: standing - 2 });
  expect(reasons([late], standing, unsaid)[0]?.[0]).toBe('15 May');
});

test('several items with one reason tell it once', () => {
  expect(reasons([item({}), item({ pair: 'LW-2' })], standing, unsaid)).toEqual([
    ['lavender waxbill', 'sitting since 12 May + 5–6 d'],
  ]);
});

test('several items with reasons of their own tell each, with whom it concerns', () => {
  const items = [
    item({}),
    item({ pair: 'LW-2' }),
    item({ pair: 'CB-1', species: 'cordon-bleu', why: 'sitting since 11 May + 5–6 d' }),
  ];
  expect(reasons(items as [(typeof items)[0]], standing, unsaid)).toEqual([
    ['LW-1, LW-2: sitting since 12 May + 5–6 d'],
    ['CB-1: sitting since 11 May + 5–6 d'],
  ]);
});

test('what the heading says is not said again', () => {
  expect(reasons([item({ clutch: null })], standing, { ...unsaid, species: true })).toEqual([
    ['sitting since 12 May + 5–6 d'],
  ]);
});

test('two clutches of one pair are told apart', () => {
  const items = [
    item({ clutch: 1 }),
    item({ clutch: 2, why: 'sitting since 14 May + 5–6 d' }),
    item({ pair: 'LW-2', clutch: 2, why: 'x' }),
  ];
  expect(reasons(items as [(typeof items)[0]], standing, unsaid).slice(1)).toEqual([
    ['LW-1 clutch 1: sitting since 12 May + 5–6 d'],
    ['LW-1 clutch 2: sitting since 14 May + 5–6 d'],
    ['LW-2: x'],
  ]);
});
