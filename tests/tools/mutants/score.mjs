/**
 * What a run says of the tests, in one line. Stryker's own table takes all mutants together; of a sample it would count
 * those that no test reaches in full, and the others by the share that was tried.
 */

/**
 * @typedef {'Killed' | 'Timeout' | 'Survived' | 'NoCoverage' | 'Ignored' | 'RuntimeError'} Status
 * @typedef {{ files: Record<string, { mutants: { id: string, status: Status | string }[] }> }} Report
 */

/** z of 95 %. */
const Z = 1.96;

/**
 * How many mutants there are, how many of the sample were told, and the share with its 95 % interval (Wilson 1927), which
 * says how far a sample may be off; of a whole run there is none.
 *
 * @param {Report} report
 * @param {number} each every so many-th mutant was tried
 * @param {number} from beginning with this one
 */
export function scoreOf({ files }, each = 1, from = 0) {
  const mutants = Object.values(files).flatMap((file) => file.mutants);
  const tried = mutants.filter(({ id }) => Number(id) % each === from % each);
  /** @param {Status} status */
  const count = (status) => tried.filter((mutant) => mutant.status === status).length;
  const killed = count('Killed');
  const timeout = count('Timeout');
  const survived = count('Survived');
  const noCoverage = count('NoCoverage');
  const told = killed + timeout;
  const judged = told + survived + noCoverage;
  return {
    mutants: mutants.length,
    tried: judged,
    killed,
    timeout,
    survived,
    noCoverage,
    atLoading: count('Ignored'),
    failed: count('RuntimeError'),
    score: judged === 0 ? null : told / judged,
    interval: each === 1 || judged === 0 ? null : wilson(told, judged),
  };
}

/**
 * @param {number} k
 * @param {number} n
 * @returns {[number, number]}
 */
function wilson(k, n) {
  const middle = (k + (Z * Z) / 2) / (n + Z * Z);
  const half = (Z / (n + Z * Z)) * Math.sqrt((k * (n - k)) / n + (Z * Z) / 4);
  return [middle - half, middle + half];
}

/**
 * @param {string} folder
 * @param {ReturnType<typeof scoreOf>} score
 */
export function scoreLine(folder, { mutants, tried, killed, timeout, survived, noCoverage, ...rest }) {
  const percent = (/** @type {number} */ share) => (share * 100).toFixed(1);
  const interval = rest.interval === null ? '' : ` (95 %: ${rest.interval.map(percent).join(' to ')} %)`;
  const score = rest.score === null ? 'nothing tried' : `score ${percent(rest.score)} %${interval}`;
  const parts = [
    `${mutants} mutants`,
    `${tried} tried`,
    `${killed} killed`,
    `${timeout} timed out`,
    `${survived} survived`,
    `${noCoverage} reached by no test`,
    `${rest.atLoading} left out, as they work at loading`,
  ];
  if (rest.failed > 0) parts.push(`${rest.failed} failed to run`);
  return `${folder}: ${parts.join(', ')}; ${score}`;
}
