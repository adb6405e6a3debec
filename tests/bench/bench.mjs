/**
 * `npm run bench`, or one part of it (`npm run bench reading`): how long a start takes, how fast
 * journals are read, and how pedigrees grow; as ratios where there is something to stand on.
 */
import { runCompiled } from '../tools/compiled.mjs';
import { measureStart } from './start.mjs';

/**
 * @param {string} name
 * @param {string} measure the function that it exports
 */
const measured = async (name, measure) => (await runCompiled(`tests/bench/${name}.ts`, measure)).join('\n');

/** @type {Record<string, () => Promise<void>>} */
const parts = {
  start: async () => {
    await import('../../bin/build/bundle.mjs');
    console.log('start: medians of whole processes, in turn');
    console.log(measureStart().join('\n'));
  },
  reading: async () => {
    console.log('reading: journal text to typed entries, beside bare YAML of the same text');
    console.log(await measured('reading', 'measureReading'));
  },
  pedigree: async () => {
    console.log('pedigree: inbreeding of every bird, kinship of the living');
    console.log(await measured('pedigree', 'measurePedigree'));
  },
};

const [asked] = process.argv.slice(2);
for (const [name, measure] of Object.entries(parts)) {
  if (asked === undefined || asked === name) await measure();
}
