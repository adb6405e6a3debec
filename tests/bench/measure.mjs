/**
 * Measures several things in turn, so that a busy moment of the machine falls on all of them alike.
 * @template {string} Name
 * @param {Record<Name, () => void>} things
 * @param {number} runs of each, after one that does not count
 * @returns {Record<Name, number>} the median of each, in milliseconds
 */
export function medians(things, runs) {
  const entries = /** @type {[Name, () => void][]} */ (Object.entries(things));
  for (const [, thing] of entries) thing();
  const times = new Map(entries.map(([name]) => [name, /** @type {number[]} */ ([])]));
  for (let run = 0; run < runs; run += 1) {
    for (const [name, thing] of entries) {
      const start = performance.now();
      thing();
      times.get(name)?.push(performance.now() - start);
    }
  }
  const rows = [...times].map(([name, list]) => [name, list.sort((a, b) => a - b)[Math.floor(runs / 2)]]);
  return Object.fromEntries(rows);
}
