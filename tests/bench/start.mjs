/** How long a keeper waits: whole processes beside a Node that does nothing. */
import { spawnSync } from 'node:child_process';
import { root } from '../../bin/build/settings.mjs';
import { medians } from './measure.mjs';

const RUNS = 31;
const room = ['--journals', 'journals-example', '--date', '2026-05-17'];

// What an environment makes Node load before a program's first line is not the program's.
const { NODE_OPTIONS: _, NODE_EXTRA_CA_CERTS: __, ...env } = process.env;

/** @param {string[]} words */
const run = (words) => () => {
  const { status, stderr } = spawnSync(process.execPath, words, { cwd: root, env, encoding: 'utf8' });
  if (status !== 0) throw new Error(`node ${words.join(' ')} fails, so its time means nothing: ${stderr}`);
};

/** @returns {string[]} lines */
export function measureStart() {
  const times = medians(
    {
      'node -e 0': run(['-e', '0']),
      'nestlog --version': run(['bin/nestlog.js', '--version']),
      'nestlog --help': run(['bin/nestlog.js', '--help']),
      'nestlog due': run(['bin/nestlog.js', 'due', ...room]),
    },
    RUNS,
  );
  const base = times['node -e 0'];
  return Object.entries(times).map(
    ([name, time]) =>
      `${name.padEnd(20)}${time.toFixed(1).padStart(8)} ms${(time / base).toFixed(2).padStart(8)} ×`,
  );
}
