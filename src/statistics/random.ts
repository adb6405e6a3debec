import { randomBeta } from 'd3-random';
import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { mersenne } from 'pure-rand/generator/mersenne';
import type { Beta } from './beta.ts';
import { normalQuantile } from './normal.ts';

/** A stream of chance that is the same whenever it is asked for by the same name. */
export interface Random {
  /** From 0 up to, but never, 1. */
  uniform(): number;
  /** Of the standard normal distribution. */
  normal(): number;
  beta(of: Beta): number;
}

/**
 * The stream of that name. Streams of different names have nothing to do with one another: one egg more takes nothing
 * from the stream of any other.
 *
 * Source of the generator: Matsumoto & Nishimura 1998, ACM Transactions on Modeling and Computer Simulation 8:3–30
 * (MT19937). Betas are made of two gammas after Marsaglia & Tsang 2000, ACM Transactions on Mathematical Software
 * 26:363–372, by d3-random.
 */
export function randomOf(name: string): Random {
  const generator = mersenne(hashOf(name));
  const uniform = () => uniformFloat64(generator);
  const betas = randomBeta.source(uniform);
  return {
    uniform,
    normal: () => normalQuantile(Math.max(uniform(), HALF_STEP)),
    beta: ({ a, b }) => betas(a, b)(),
  };
}

/** Half of the generator's step: keeps 0, whose quantile is −∞, out. */
const HALF_STEP = 2 ** -54;

/** FNV-1a, 32 bits (Fowler, Noll & Vo; offset and prime from memory, held against their test values). */
export function hashOf(text: string): number {
  let hash = 0x811c9dc5;
  for (const byte of new TextEncoder().encode(text)) hash = Math.imul(hash ^ byte, 0x01000193);
  return hash >>> 0;
}
