import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pedigreeOf } from '../../src/statistics/pedigree/pedigree.ts';
import { meanKinships, relate } from '../../src/statistics/pedigree/relationship.ts';

/** Sires and dams by number; −1 is unknown. */
interface Parents {
  sires: number[];
  dams: number[];
}

/** The last of them are living. */
const LIVING = 5000;
const GENERATIONS = 20;
/** So many of each generation make one breeding pair. */
const PER_PAIR = 4;

/** A generator with a fixed seed (mulberry32, public domain), so that every run measures the same birds. */
function randomly(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

/** Twenty generations that do not mix, of pairs that stay together; one parent in fifty is unknown. */
function synthetic(birds: number): Parents {
  const random = randomly(2026);
  const sires: number[] = [];
  const dams: number[] = [];
  const generation = birds / GENERATIONS;
  for (let one = 0; one < birds; one++) {
    const first = Math.floor(one / generation) * generation - generation;
    const pair = Math.floor((random() * generation) / PER_PAIR) * PER_PAIR;
    sires.push(first < 0 || random() < 0.02 ? -1 : first + pair);
    dams.push(first < 0 || random() < 0.02 ? -1 : first + pair + 1);
  }
  return { sires, dams };
}

/** The wild blue tits of the reference folder, where that is at hand. */
function wildBirds(): Parents | null {
  const reference = process.env.NESTLOG_REFERENCE;
  if (reference === undefined) return null;
  const rows = readFileSync(join(reference, 'nests/bluetit_edinburgh_F.csv'), 'utf8')
    .trim()
    .split('\n')
    .slice(1);
  const known = new Map(rows.map((row, one) => [row.split(',')[0], one]));
  const side = (column: number) => rows.map((row) => known.get(row.split(',')[column]) ?? -1);
  return { sires: side(1), dams: side(2) };
}

function measure(name: string, { sires, dams }: Parents): { line: string; time: number } {
  const start = performance.now();
  const relationship = relate(pedigreeOf(sires, dams));
  const time = performance.now() - start;
  const living = sires.map((_, one) => one).slice(-LIVING);
  const before = performance.now();
  meanKinships(relationship, living);
  const means = performance.now() - before;
  const columns = [`${time.toFixed(0)} ms`.padStart(10), `${means.toFixed(1)} ms`.padStart(10)];
  return { line: `${name.padEnd(26)}${columns.join('')}`, time };
}

/** Every F of a pedigree, then the mean kinships of the living. Gives the lines to print. */
export function measurePedigree(): string[] {
  const wild = wildBirds();
  const lines = [`${''.padEnd(26)}${'every F'.padStart(10)}${'kinships'.padStart(10)}`];
  if (wild !== null)
    lines.push(measure(`${wild.sires.length.toLocaleString('en')} wild blue tits`, wild).line);
  const sizes = [25_000, 50_000, 100_000];
  const measured = sizes.map((birds) => measure(`${birds.toLocaleString('en')} synthetic`, synthetic(birds)));
  const [first, , last] = measured as [{ time: number }, unknown, { time: number }];
  const power = Math.log(last.time / first.time) / Math.log(4);
  return [...lines, ...measured.map(({ line }) => line), `grows as birds to the power ${power.toFixed(2)}`];
}
