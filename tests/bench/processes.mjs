import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { root } from '../../bin/build/settings.mjs';

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
  const said = stderr.split('\n').find((one) => /error/i.test(one)) ?? '';
  const wrong =
    signal ?? (/heap out of memory/.test(stderr) ? 'out of memory' : `exit ${status} ${said.slice(0, 80)}`);
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
