import fc from 'fast-check';

// With a seed the same examples are tried again: a landing is not to hang on a case that nobody met before. Without
// one, as at home, every run tries new ones.
const seed = process.env.NESTLOG_SEED;
if (seed) fc.configureGlobal({ seed: Number(seed) });
