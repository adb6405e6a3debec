import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { byName, grouped, inTurn, keptIn } from '../src/grouped.ts';

it('of each name there is something under that name, in their order', () => {
  const eggs = byName(['laid', 'hatched'], (name) => name.length);
  expect(Object.entries(eggs)).toEqual([
    ['laid', 4],
    ['hatched', 7],
  ]);
});

describe('things by what they have in common', () => {
  it('stand beside their like, in the order in which they come', () => {
    const housings = grouped(['LW-2 flight', 'BF-1 cage', 'LW-1 flight'], (one) => one.split(' ')[1]);
    expect([...housings]).toEqual([
      ['flight', ['LW-2 flight', 'LW-1 flight']],
      ['cage', ['BF-1 cage']],
    ]);
  });

  it('are all there, once', () => {
    fc.assert(
      fc.property(fc.array(fc.nat()), (all) => {
        const groups = grouped(all, (one) => one % 3);
        expect([...groups.values()].flat().sort()).toEqual([...all].sort());
        for (const [rest, some] of groups) expect(some.every((one) => one % 3 === rest)).toBe(true);
      }),
    );
  });
});

describe('things some at a time', () => {
  it('come each once and in order, never none of them', () => {
    for (const length of [0, 1, 999, 1000, 1001, 2000]) {
      const all = Array.from({ length }, (_, number) => number);
      const parts = [...inTurn(all)];
      expect(parts.flat()).toEqual(all);
      expect(parts.every((part) => part.length > 0 && part.length <= 1000)).toBe(true);
    }
  });
});

it('what is kept by a name is made once, and of each name by itself', () => {
  const clutches = new Map<string, string[]>();
  for (const [pair, clutch] of [
    ['LW-1', '1'],
    ['LW-2', '1'],
    ['LW-1', '2'],
  ] as const)
    keptIn(clutches, pair, () => []).push(clutch);
  expect([...clutches]).toEqual([
    ['LW-1', ['1', '2']],
    ['LW-2', ['1']],
  ]);
});
