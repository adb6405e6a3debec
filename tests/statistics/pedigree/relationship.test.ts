import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pedigreeOf } from '../../../src/statistics/pedigree/pedigree.ts';
import {
  inbreeding,
  isCloser,
  kinship,
  meanKinships,
  relate,
} from '../../../src/statistics/pedigree/relationship.ts';
import { anyParents } from './any.ts';
import { lines } from './lines.ts';

type Parents = { sire: number; dam: number }[];

const related = (birds: Parents) =>
  relate(
    pedigreeOf(
      birds.map(({ sire }) => sire),
      birds.map(({ dam }) => dam),
    ),
  );

/** The table of all kinships, filled from the oldest on as in any textbook: the slow way to the same numbers. */
function tabular(birds: Parents): number[][] {
  const table: number[][] = [];
  birds.forEach(({ sire, dam }, one) => {
    const with_ = (parent: number, other: number) => (parent < 0 ? 0 : (table[parent]?.[other] as number));
    const row = birds.slice(0, one).map((_, other) => (with_(sire, other) + with_(dam, other)) / 2);
    row.push((1 + (sire < 0 || dam < 0 ? 0 : with_(sire, dam))) / 2);
    table.push(row);
    row.forEach((kin, other) => {
      (table[other] as number[])[one] = kin;
    });
  });
  return table;
}

it('a kinship that is another but for rounding is no closer than it', () => {
  expect(isCloser(0.125, 0.125 - 1e-15)).toBe(false);
  expect(isCloser(0.125, 0.125 + 1e-15)).toBe(false);
  expect(isCloser(0.125, 0.124)).toBe(true);
  expect(isCloser(0.124, 0.125)).toBe(false);
});

describe('for any pedigree', () => {
  it('kinships are those of the table, and alike from either side', () => {
    fc.assert(
      fc.property(anyParents, (birds) => {
        const table = tabular(birds);
        const all = birds.map((_, one) => one);
        const rows = related(birds).kinshipTable(
          all.map((one) => [one]),
          all,
        );
        rows.forEach((row, one) => {
          row.forEach((kin, other) => {
            expect(kin).toBeCloseTo(table[one]?.[other] as number, 12);
            expect(kin).toBeCloseTo(rows[other]?.[one] as number, 12);
          });
        });
      }),
    );
  });

  it('F lies between 0 and 1, and is 0 where a parent is unknown', () => {
    fc.assert(
      fc.property(anyParents, (birds) => {
        const relationship = related(birds);
        birds.forEach(({ sire, dam }, one) => {
          const f = inbreeding(relationship, one);
          expect(f).toBeGreaterThanOrEqual(0);
          expect(f).toBeLessThan(1);
          if (sire < 0 || dam < 0) expect(f).toBe(0);
        });
      }),
    );
  });

  it('the order in which the birds stand makes no difference', () => {
    const shuffled = anyParents.chain((birds) =>
      fc.tuple(fc.constant(birds), fc.shuffledSubarray([...birds.keys()], { minLength: birds.length })),
    );
    fc.assert(
      fc.property(shuffled, ([birds, order]) => {
        const place = new Map(order.map((one, at) => [one, at]));
        const moved = (one: number) => (one < 0 ? -1 : (place.get(one) as number));
        const other = order.map((one) => {
          const { sire, dam } = birds[one] as Parents[number];
          return { sire: moved(sire), dam: moved(dam) };
        });
        const here = related(birds);
        const there = related(other);
        birds.forEach((_, one) => {
          expect(inbreeding(there, moved(one))).toBeCloseTo(inbreeding(here, one), 13);
        });
      }),
    );
  });

  it('mean kinship is the mean of a bird’s kinships, its own included', () => {
    fc.assert(
      fc.property(anyParents, (birds) => {
        const relationship = related(birds);
        const all = birds.map((_, one) => one);
        const means = meanKinships(relationship, all);
        const sum = all.reduce((total, other) => total + kinship(relationship, 0, other), 0);
        expect(means[0]).toBeCloseTo(sum / all.length, 12);
      }),
    );
  });
});

describe('deep pedigrees', () => {
  it('forty generations of brother and sister come near to 1 and never reach it', () => {
    const text = Array.from({ length: 40 }, (_, t) => `x${t + 1} = x${t} × y${t}; y${t + 1} = x${t} × y${t}`);
    const { pedigree, of } = lines(text.join('\n'));
    const f = inbreeding(relate(pedigree), of('x40'));
    expect(f).toBeGreaterThan(0.999);
    expect(f).toBeLessThan(1);
  });

  it('two thousand do not overflow', () => {
    const depth = 2000;
    const sires = Int32Array.from({ length: depth }, (_, one) => one - 1);
    const dams = Int32Array.from({ length: depth }, (_, one) => (one < 2 ? -1 : one - 2));
    expect(inbreeding(relate(pedigreeOf(sires, dams)), depth - 1)).toBeCloseTo(1, 6);
  });
});

describe('on the Z chromosome', () => {
  const single = (names: string[], hens: string[]) =>
    Uint8Array.from(names, (name) => Number(hens.includes(name)));

  it('a cock and his daughter: half of her sons’ Z pairs are alike by descent', () => {
    const { pedigree, names, of } = lines('daughter = A × B');
    const z = relate(pedigree, single(names, ['B', 'daughter']));
    expect(kinship(z, of('A'), of('daughter'))).toBe(1 / 2);
    expect(kinship(relate(pedigree), of('A'), of('daughter'))).toBe(1 / 4);
  });

  it('a hen and her daughter share nothing, a hen and her son a half', () => {
    const { pedigree, names, of } = lines('daughter = A × B; son = A × B');
    const z = relate(pedigree, single(names, ['B', 'daughter']));
    expect(kinship(z, of('B'), of('daughter'))).toBe(0);
    expect(kinship(z, of('B'), of('son'))).toBe(1 / 2);
  });
});
