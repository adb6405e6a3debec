import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { grouped } from '../src/grouped.ts';

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
