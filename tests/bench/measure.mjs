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
