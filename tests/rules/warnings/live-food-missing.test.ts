import { expect, it } from 'vitest';
import { line, mixedNest, pair, spell, warned, waxbills } from './warned.ts';

const brood = `
  date: 2026-03-01, laid: 3
  date: 2026-03-02, sitting: hen
  date: 2026-03-14, hatched: 3
`;

// Without a steady supply chicks are abandoned or die: read for melba finch and orange-cheeked waxbill, from memory for
// the others.
it('chicks of a species that rears on live food press for three days and are watched for a week', () => {
  const files = { 'LW-1': waxbills(`date: 2026-02-20, food: [dry seed]\n${brood}`) };
  expect(spell(files, 'live-food-missing', '2026-03-01', '2026-04-10')).toEqual([
    '03-14 … 03-17 act',
    '03-18 … 03-21 watch',
  ]);
  expect(line(files, 'live-food-missing', '2026-03-14').text).toBe(
    '3 chicks in the nest, and the food written on 20 Feb names no live food. The lavender waxbill rears on live food: without it chicks are thrown out or starve.',
  );
});

it('where no food was ever written, that is said', () => {
  expect(line({ 'LW-1': waxbills(brood) }, 'live-food-missing', '2026-03-14').text).toContain(
    'no `food` was ever written for this pair',
  );
});

it.each([
  ['live food is offered', 'food: [live food, egg food]'],
  ['the crops are full without', 'crops: {full: all}'],
  ['no chick is left', 'died: all'],
])('it is over when %s', (_what, then) => {
  const files = { 'LW-1': waxbills(`${brood}\n date: 2026-03-16, ${then}`) };
  expect(spell(files, 'live-food-missing', '2026-03-01', '2026-04-10')).toEqual(['03-14 … 03-15 act']);
});

it.each([
  ['one crop is thin', 'date: 2026-03-16, crops: {full: [c1, c2], thin: c3}'],
  ['crops were full on the first day only', 'date: 2026-03-14, crops: {full: all}'],
  [
    'crops were full before they were thin',
    'date: 2026-03-15, crops: {full: all}\n date: 2026-03-16, crops: {thin: all}',
  ],
])('it stands while %s', (_what, then) => {
  const files = { 'LW-1': waxbills(`${brood}\n ${then}`) };
  expect(spell(files, 'live-food-missing', '2026-03-16', '2026-04-10')).toEqual([
    '03-16 … 03-17 act',
    '03-18 … 03-21 watch',
  ]);
});

it('it is counted from the first chick that needs live food, and is nothing for those that are fed by hand', () => {
  const log = `${brood.replace('hatched: 3', 'hatched: 2')}\n date: 2026-03-16, hatched: 1`;
  expect(spell({ 'LW-1': waxbills(log) }, 'live-food-missing', '2026-03-01', '2026-04-10')).toEqual([
    '03-14 … 03-17 act',
    '03-18 … 03-21 watch',
  ]);
  const hand = { 'LW-1': waxbills(`${brood}\n date: 2026-03-15, fostered: {hand: all}`) };
  expect(spell(hand, 'live-food-missing', '2026-03-01', '2026-04-10')).toEqual(['03-14 act']);
});

it('live food that is taken away while chicks are in the nest begins it anew', () => {
  const log = `date: 2026-03-10, food: [live food]\n${brood}\n date: 2026-03-20, food: [dry seed]`;
  expect(spell({ 'LW-1': waxbills(log) }, 'live-food-missing', '2026-03-01', '2026-04-10')).toEqual([
    '03-20 … 03-23 act',
    '03-24 … 03-27 watch',
  ]);
});

it('of two helpers on one day, the one that put live food out is believed', () => {
  const log = `${brood}\n date: 2026-03-15, food: [live food]\n date: 2026-03-15, food: [dry seed]`;
  expect(warned({ 'LW-1': waxbills(log) }, 'live-food-missing', '2026-03-16')).toEqual([]);
});

it('where live food is only advised, it is watched; where it is not needed, nothing is said', () => {
  expect(
    line({ 'CW-1': pair('CW-1', 'common waxbill', brood) }, 'live-food-missing', '2026-03-14'),
  ).toMatchObject({ level: 'watch' });
  expect(warned({ 'ZF-1': pair('ZF-1', 'zebra finch', brood) }, 'live-food-missing', '2026-03-14')).toEqual(
    [],
  );
});

it('guests that rear on live food are not forgotten among chicks that need none', () => {
  expect(line(mixedNest(), 'live-food-missing', '2026-03-16')).toMatchObject({
    level: 'act',
    text: expect.stringMatching(/^2 chicks in the nest, .* The lavender waxbill rears on live food/),
  });
});

it('of two species in one nest, the one that cannot do without is named', () => {
  const log = 'date: 2026-03-01, laid: 2, sitting: hen\n date: 2026-03-14, hatched: all';
  const files = {
    'CW-1': pair('CW-1', 'common waxbill', log),
    'LW-1': waxbills(`${log}\n date: 2026-03-15, fostered: {CW-1: all}`),
  };
  const { level, text } = line(files, 'live-food-missing', '2026-03-16');
  expect(level).toBe('act');
  expect(text).toMatch(/^4 chicks in the nest, .* The lavender waxbill rears on live food/);
});

it('chicks that left the nest are not counted among those in it', () => {
  const log = `${brood.replace('hatched: 3', 'hatched: 3, fledged: c1')}`;
  expect(line({ 'LW-1': waxbills(log) }, 'live-food-missing', '2026-03-14').text).toMatch(
    /^2 chicks in the nest/,
  );
});

it('guests that need live food are counted from their own hatching, not from that of chicks that need none', () => {
  const log = 'date: 2026-03-01, laid: 2, sitting: hen\n';
  const files = {
    'ZF-1': pair('ZF-1', 'zebra finch', `${log} date: 2026-03-12, hatched: all`),
    'LW-1': waxbills(`${log} date: 2026-03-15, hatched: all\n date: 2026-03-15, fostered: {ZF-1: all}`),
  };
  expect(spell(files, 'live-food-missing', '2026-03-10', '2026-04-10')).toEqual([
    '03-15 … 03-18 act',
    '03-19 … 03-22 watch',
  ]);
});

it('where live food is only advised, the line says no more than that', () => {
  expect(
    line({ 'CW-1': pair('CW-1', 'common waxbill', brood) }, 'live-food-missing', '2026-03-14').text,
  ).toContain('The common waxbill rears far better with live food.');
});
