/**
 * What a run says of the tests, in one line. Stryker's own table takes all mutants together; of a sample it would count
 * those that no test reaches in full, and the others by the share that was tried.
 */

/**
 * @typedef {'Killed' | 'Timeout' | 'Survived' | 'NoCoverage' | 'Ignored' | 'RuntimeError'} Status
 * @typedef {{ files: Record<string, { mutants: { id: string, status: Status | string }[] }> }} Report
 */

/**
 * How many mutants there are, and what became of those of the sample.
 *
 * @param {Report} report
 * @param {number} each every so many-th mutant was tried
 * @param {number} from beginning with this one
 * @param {boolean} atLoading whether those were tried that work at loading; all others, reached or not, were left out
 */
export function scoreOf({ files }, each = 1, from = 0, atLoading = false) {
  const mutants = Object.values(files).flatMap((file) => file.mutants);
  const tried = mutants.filter(({ id }) => Number(id) % each === from % each);
  /** @param {Status} status */
  const count = (status) => tried.filter((mutant) => mutant.status === status).length;
  const [killed, timeout, survived, noCoverage] = [
    count('Killed'),
    count('Timeout'),
    count('Survived'),
    atLoading ? 0 : count('NoCoverage'),
  ];
  return {
    mutants: mutants.length,
    tried: killed + timeout + survived + noCoverage,
    told: killed + timeout,
    killed,
    timeout,
    survived,
    noCoverage,
    atLoading: count('Ignored'),
    failed: count('RuntimeError'),
  };
}

/**
 * @param {string} folder
 * @param {ReturnType<typeof scoreOf>} score
 * @param {{ low: number, high: number } | null} interval how far a sample may be off
 */
export function scoreLine(folder, score, interval = null) {
  const percent = (/** @type {number} */ share) => (share * 100).toFixed(1);
  const off = interval === null ? '' : ` (95 %: ${percent(interval.low)} to ${percent(interval.high)} %)`;
  const parts = [
    `${score.mutants} mutants`,
    `${score.tried} tried`,
    `${score.killed} killed`,
    `${score.timeout} timed out`,
    `${score.survived} survived`,
    `${score.noCoverage} reached by no test`,
    `${score.atLoading} left out, as they work at loading`,
    ...(score.failed > 0 ? [`${score.failed} failed to run`] : []),
  ];
  const share = score.tried === 0 ? 'nothing tried' : `score ${percent(score.told / score.tried)} %${off}`;
  return `${folder}: ${parts.join(', ')}; ${share}`;
}
