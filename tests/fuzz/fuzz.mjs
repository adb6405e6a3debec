/**
 * `npm run fuzz`, or `npm run fuzz 5000 42`: slips in real journals and rooms written at random, so many, with that seed.
 * The program must read, understand and print them without breaking a law; see laws.ts.
 */
import { root } from '../../bin/build/settings.mjs';
import { runCompiled } from '../tools/compiled.mjs';

const RUNS = 200_000;
/** Chunks of so many rooms; after each a line is printed, so that the night can be watched. */
const CHUNK = 5_000;

const [runs = RUNS, seed = Math.trunc(Math.random() * 1e9)] = process.argv.slice(2).map(Number);
for (let done = 0; done < runs; done += CHUNK) {
  const lines = await runCompiled(
    'tests/fuzz/run.ts',
    'run',
    root,
    Math.min(CHUNK, runs - done),
    seed + done,
  );
  console.log(lines.join('\n'));
  if (lines.some((line) => line.endsWith('BROKEN'))) {
    process.exitCode = 1;
    break;
  }
}
