import fc from 'fast-check';
import { mersenne } from 'pure-rand/generator/mersenne';
import { describe, expect, it } from 'vitest';
import { hashOf, randomOf } from '../../src/statistics/random.ts';

describe('a stream of chance', () => {
  it('is the same by the same name, and another by another', () => {
    const take = (name: string) => {
      const random = randomOf(name);
      return [random.uniform(), random.normal(), random.beta({ a: 2, b: 3 })];
    };
    expect(take('LW-1/2/e3')).toEqual(take('LW-1/2/e3'));
    expect(take('LW-1/2/e3')).not.toEqual(take('LW-1/2/e4'));
  });

  it('keeps to what each of its kinds can be', () => {
    fc.assert(
      fc.property(fc.string(), fc.double({ min: 1e-3, max: 1e6, noNaN: true }), (name, shape) => {
        const random = randomOf(name);
        const uniform = random.uniform();
        expect(uniform).toBeGreaterThanOrEqual(0);
        expect(uniform).toBeLessThan(1);
        expect(Number.isFinite(random.normal())).toBe(true);
        const share = random.beta({ a: shape, b: 1 });
        expect(share).toBeGreaterThanOrEqual(0);
        expect(share).toBeLessThanOrEqual(1);
      }),
    );
  });

  // Of 2,000 the shares beyond −1, 0, 1 and 2 lie within 0.04 of the table’s, some 3.6 standard errors at the least.
  it('has normal draws as the tables have them', () => {
    const random = randomOf('days');
    const draws = Array.from({ length: 2000 }, () => random.normal());
    const beyond = (z: number) => draws.filter((draw) => draw > z).length / draws.length;
    for (const [z, share] of [
      [-1, 0.8413],
      [0, 0.5],
      [1, 0.1587],
      [2, 0.0228],
    ] as const)
      expect(Math.abs(beyond(z) - share), `${z}`).toBeLessThan(0.04);
  });

  // ISO/IEC 14882 (C++), [rand.predef]: the 10,000th number of MT19937 with its usual seed 5489 (from memory).
  it('rests on the Mersenne twister as it was published', () => {
    const generator = mersenne(5489);
    for (let i = 1; i < 10_000; i++) generator.next();
    expect(generator.next() >>> 0).toBe(4_123_659_995);
  });
});

// The test values of FNV-1a, 32 bits, as its authors give them (from memory).
it.each([
  ['', 0x811c9dc5],
  ['a', 0xe40c292c],
  ['foobar', 0xbf9cf968],
])('names are hashed as FNV-1a does: %j', (text, hash) => {
  expect(hashOf(text)).toBe(hash);
});
