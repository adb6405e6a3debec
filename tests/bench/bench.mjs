/**
 * `npm run bench`, or one part of it (`npm run bench reading`): how long a start takes, how fast journals are read, how
 * pedigrees and rooms grow; as ratios with their limits where there is something to stand on. All of it takes a quarter
 * of an hour on a quiet machine.
 */
import { runCompiled } from '../tools/compiled.mjs';
import { measureGrowth } from './growth.mjs';
import { measureLarge } from './large.mjs';
import { measureStart } from './start.mjs';

/**
 * @param {string} name
 * @param {string} measure the function that it exports
 */
const measured = async (name, measure) => (await runCompiled(`tests/bench/${name}.ts`, measure)).join('\n');

/** @type {Record<string, () => Promise<void>>} */
const parts = {
  start: async () => {
    console.log('start: medians of whole processes, in turn, in a clean environment');
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
  growth: async () => {
    console.log('growth: one run each, nothing kept from before');
    for (const one of measureGrowth()) console.log(one);
  },
  large: async () => {
    console.log('large: 1,000 pairs in ten years');
    console.log(measureLarge().join('\n'));
  },
};

await import('../../bin/build/bundle.mjs');
const [asked] = process.argv.slice(2);
for (const [name, measure] of Object.entries(parts)) {
  if (asked === undefined || asked === name) await measure();
}
