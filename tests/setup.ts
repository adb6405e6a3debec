import fc from 'fast-check';
import { afterAll, type RunnerTestFile } from 'vitest';
import { expectAllAsked } from './golden.ts';

// With a seed the same examples are tried again: a landing is not to hang on a case that nobody met before. Without
// one, as at home, every run tries new ones.
const seed = process.env.NESTLOG_SEED;
if (seed) fc.configureGlobal({ seed: Number(seed) });

// biome-ignore lint/correctness/noEmptyPattern: vitest reads there which fixtures a hook wants.
afterAll(({}, file) => expectAllAsked(file as RunnerTestFile));
