import { expect, it } from 'vitest';
import type { Brood } from '../../../src/rules/brood.ts';
import { takersFor } from '../../../src/rules/warnings/takers.ts';
import { pair, view } from './warned.ts';

const sat = (id: string, species: string, first: number, eggs = 3) =>
  pair(id, species, `date: 2026-03-${String(first).padStart(2, '0')}, laid: ${eggs}, sitting: hen`);
const takers = (files: Record<string, string>, on = '2026-03-20') => {
  const known = view(files, on);
  return takersFor(known, known.broods.find((brood) => brood.pair.id === 'A') as Brood);
};
const a = sat('A', 'lavender waxbill', 10);

// Of one stage within two days, and of about one size: common practice.
it('a pair two days apart can take them, one three days apart cannot', () => {
  expect(takers({ A: a, B: sat('B', 'lavender waxbill', 12) })).toMatch(
    /^Could be taken by B \(hatch \d+ Mar, room for 2\)$/,
  );
  expect(takers({ A: a, B: sat('B', 'lavender waxbill', 13) })).toMatch(/^No pair/);
});

it('a pair with a full nest cannot', () => {
  expect(takers({ A: a, B: sat('B', 'lavender waxbill', 10, 5) })).toMatch(/^No pair/);
});

it('another species of its family and size can, and is named after its own', () => {
  const files = { A: a, B: sat('B', 'orange-cheeked waxbill', 10), C: sat('C', 'lavender waxbill', 10, 4) };
  expect(takers(files)).toMatch(/^Could be taken by C \(hatch .* and B \(orange-cheeked waxbill, hatch/);
  expect(takers({ A: a, B: sat('B', 'canary', 10) })).toMatch(/^No pair/);
});

it('chicks go to chicks of their age', () => {
  const hatched = (id: string, on: number, first: number) =>
    `${sat(id, 'lavender waxbill', first)}\n  - {date: 2026-03-${on}, hatched: 3}`;
  expect(takers({ A: hatched('A', 22, 10), B: hatched('B', 23, 11) }, '2026-03-25')).toBe(
    'Could be taken by B (hatched 23 Mar, room for 2)',
  );
  expect(takers({ A: hatched('A', 22, 10), B: hatched('B', 26, 13) }, '2026-03-27')).toMatch(/^No pair/);
});

it('a clear egg among them takes nobody out of the count', () => {
  const lamp = (journal: string) => `${journal}\n  - {date: 2026-03-17, candled: {clear: e1}}`;
  const files = { A: lamp(a), B: lamp(sat('B', 'lavender waxbill', 11)) };
  expect(takers(files)).toMatch(/^Could be taken by B \(hatch \d+ Mar, room for 2\)$/);
});

it('no more than three are named', () => {
  const files = Object.fromEntries(
    ['A', 'B', 'C', 'D', 'E'].map((id) => [id, sat(id, 'lavender waxbill', 10)]),
  );
  expect(takers(files).match(/room for/g)).toHaveLength(3);
});

it('a pair that lost one of the two cannot, nor one that is parted', () => {
  const b = sat('B', 'lavender waxbill', 10).replace('pair: B', 'pair: B\ncock: X-1\nhen: X-2');
  expect(takers({ A: a, B: b })).toMatch(/B/);
  for (const end of ['died: cock', 'parted', 'gone: {sold: hen}'])
    expect(takers({ A: a, B: `${b}\n  - {date: 2026-03-15, ${end}}` }), end).toMatch(/^No pair/);
});

it('of its own species the one with more room goes first', () => {
  const files = { A: a, B: sat('B', 'lavender waxbill', 10, 4), C: sat('C', 'lavender waxbill', 10, 3) };
  expect(takers(files)).toMatch(/^Could be taken by C \(.*room for 2\) and B \(.*room for 1\)$/);
});

it('a species more than twice as heavy cannot, nor one of another family, nor one of which nobody knows anything', () => {
  const kin = (mass: string, scientific = 'Estrilda astrild') => ({
    'species/great-waxbill.yaml': `species: great waxbill\nscientific: ${scientific}\nclutch: 4-5\nincubation: 11-13\nsitting-from: 3\n${mass}\n`,
    A: a,
    B: sat('B', 'great waxbill', 10),
  });
  // The lavender waxbill weighs 8.5 g.
  expect(takers(kin('adult-mass: 17'))).toMatch(/^Could be taken by B/);
  expect(takers(kin('adult-mass: 18'))).toMatch(/^No pair/);
  expect(takers(kin('also: [big waxbill]', 'Exemplum magnum'))).toMatch(/^No pair/);
  expect(takers(kin('adult-mass: 9', 'Serinus canaria'))).toMatch(/^No pair/);
  expect(takers({ A: a, B: sat('B', 'ridge finch', 10) })).toMatch(/^No pair/);
});

it('young that have left the nest take no place in it, whether somebody wrote so or not', () => {
  for (const flown of ['date: 2026-03-06, fledged: 3', 'date: 2026-03-06, note: "sunny"']) {
    const early = `date: 2026-02-03, laid: 3, sitting: hen\ndate: 2026-02-15, hatched: 3\n${flown}\ndate: 2026-03-10, clutch: 2, laid: 3, sitting: hen`;
    expect(takers({ A: a, B: pair('B', 'lavender waxbill', early) }), flown).toMatch(
      /^Could be taken by B \(hatch \d+ Mar, room for 2\)$/,
    );
  }
});

it('a pair whose own eggs lie in the incubator, or whose young of that age have flown, has no nest for them', () => {
  const away = `${sat('B', 'lavender waxbill', 10)}\n  - {date: 2026-03-11, set: {incubator: all}}`;
  expect(takers({ A: a, B: away })).toMatch(/^No pair/);
  const reared = (id: string, more = '') =>
    `${sat(id, 'lavender waxbill', 2)}\n  - {date: 2026-03-14, hatched: 3}${more}`;
  const flown = reared('B', '\n  - {date: 2026-03-31, fledged: all}');
  expect(takers({ A: reared('A'), B: reared('B') }, '2026-03-31')).toMatch(/^Could be taken by B/);
  expect(takers({ A: reared('A'), B: flown }, '2026-03-31')).toMatch(/^No pair/);
});

it('eggs and chicks of a species of which nobody knows anything go to nobody by themselves', () => {
  const strange = sat('A', 'ridge finch', 10);
  const b = sat('B', 'lavender waxbill', 10);
  const hatched = '\n  - {date: 2026-03-22, hatched: 3}';
  expect(takers({ A: strange, B: b })).toMatch(/^No pair/);
  expect(takers({ A: strange + hatched, B: b + hatched }, '2026-03-23')).toMatch(/^No pair/);
});

it('a pair of the same species can, also where nobody knows its weight; one whose usual clutch nobody knows cannot', () => {
  const known = (clutch: string) => ({
    'species/ridge-finch.yaml': `species: ridge finch\n${clutch}incubation: 11-13\nsitting-from: 3\n`,
    A: sat('A', 'ridge finch', 10),
    B: sat('B', 'ridge finch', 10),
  });
  expect(takers(known('clutch: 4-5\n'))).toMatch(/^Could be taken by B \(hatch \d+ Mar, room for 2\)$/);
  expect(takers(known(''))).toMatch(/^No pair/);
});
