/** How long the files are. */
const LIMIT = 400;

/** @param {string} text */
const linesOf = (text) => text.split('\n').length - (text.endsWith('\n') ? 1 : 0);

/**
 * Files over the limit.
 * @param {import('./sources.mjs').SourceFile[]} sources
 * @returns {import('./sources.mjs').Complaint[]}
 */
export function tooLong(sources) {
  return sources
    .map(({ path, text }) => ({ path, line: linesOf(text) }))
    .filter(({ line }) => line > LIMIT)
    .map(({ path, line }) => ({ path, line, what: `has ${line} lines; the limit is ${LIMIT}` }));
}

/**
 * One line for a set of files: how many, the lines of the median, the 90th percentile and the longest, the sum.
 * @param {string} name
 * @param {import('./sources.mjs').SourceFile[]} sources
 */
export function sizeLine(name, sources) {
  const sizes = sources.map(({ text }) => linesOf(text)).sort((a, b) => a - b);
  /** @param {number} share */
  const at = (share) => sizes[Math.min(sizes.length - 1, Math.floor(sizes.length * share))] ?? 0;
  const sum = sizes.reduce((a, b) => a + b, 0);
  const cells = [sizes.length, at(0.5), at(0.9), at(1), sum].map((value) => String(value).padStart(8));
  return `${name.padEnd(8)}${cells.join('')}`;
}

export const sizeHead = `${'lines'.padEnd(8)}${['files', 'median', 'p90', 'longest', 'sum'].map((word) => word.padStart(8)).join('')}`;
