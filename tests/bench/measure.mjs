import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

/**
 * Measures several things in turn, so that a busy moment of the machine falls on all of them alike.
 * @template {string} Name
 * @param {Record<Name, () => void>} things
 * @param {number} runs of each, after one that does not count
 * @param {Partial<Record<Name, () => void>>} [before] what is made ready before each run, and not measured
 * @returns {Record<Name, number>} the median of each, in milliseconds
 */
export function medians(things, runs, before = {}) {
  const entries = /** @type {[Name, () => void][]} */ (Object.entries(things));
  const times = new Map(entries.map(([name]) => [name, /** @type {number[]} */ ([])]));
  for (let run = 0; run <= runs; run += 1) {
    for (const [name, thing] of entries) {
      before[name]?.();
      const start = performance.now();
      thing();
      if (run > 0) times.get(name)?.push(performance.now() - start);
    }
  }
  const rows = [...times].map(([name, list]) => [name, list.sort((a, b) => a - b)[Math.floor(runs / 2)]]);
  return Object.fromEntries(rows);
}

const root = fileURLToPath(new URL('../..', import.meta.url));
const peak = fileURLToPath(new URL('peak.cjs', import.meta.url));

/**
 * Runs Node with these words in a clean environment: what an environment makes Node load before a program's first line
 * is not the program's.
 * @param {string[]} words
 * @param {string} cache the folder in which the program keeps what it has read
 * @returns {{ memory: number, failed: string | null }} the most memory held, in megabytes
 */
export function runNode(words, cache) {
  const { NODE_OPTIONS: _, NODE_EXTRA_CA_CERTS: __, ...rest } = process.env;
  const { status, signal, stderr } = spawnSync(process.execPath, words, {
    cwd: root,
    env: { ...rest, XDG_CACHE_HOME: cache },
    encoding: 'utf8',
    stdio: ['ignore', 'ignore', 'pipe'],
    timeout: 600_000,
  });
  const memory = Number(/^peak (\d+)$/m.exec(stderr)?.[1] ?? Number.NaN) / 1024;
  const wrong =
    signal ??
    (/heap out of memory/.test(stderr) ? 'out of memory' : `exit ${status}: ${stderr.slice(0, 300)}`);
  return { memory, failed: status === 0 ? null : wrong };
}

/**
 * As {@link runNode}, for what must not fail.
 * @param {string[]} words
 * @param {string} cache
 */
export function mustRun(words, cache) {
  const { failed } = runNode(words, cache);
  if (failed !== null) throw new Error(`node ${words.join(' ')} fails, so its time means nothing: ${failed}`);
}

/** Words that make Node say at its end how much memory it held. */
export const withPeak = ['-r', peak];

/**
 * One line of a table: what, how long, how many times the base, and the limit beside it.
 * @param {string} name
 * @param {number} time in milliseconds
 * @param {{ base: number, limit?: number }} than
 */
export function line(name, time, { base, limit }) {
  const ratio = time / base;
  const verdict =
    limit === undefined ? '' : `  limit ${limit.toFixed(2)} ×  ${ratio <= limit ? 'met' : 'NOT MET'}`;
  return `${name.padEnd(44)}${time.toFixed(1).padStart(9)} ms${ratio.toFixed(2).padStart(8)} ×${verdict}`;
}
