/**
 * `npm run mutants -- FOLDER [option of Stryker …]`: changes the code of a folder below `src` or of a file, a spot at a
 * time, and counts the changes that no test tells. A folder takes minutes. What is left over is printed, and kept in `.mutants/`,
 * so that the next run tries only what has changed; `--force` tries all anew.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { root } from '../../../bin/build/settings.mjs';
import { runCompiled } from '../compiled.mjs';
import { scoreLine, scoreOf } from './score.mjs';

const [folder = '', ...options] = process.argv.slice(2);
if (!/^src(\/|$)/.test(folder) || !existsSync(`${root}/${folder}`)) {
  console.error('Which folder? For example: npm run mutants -- src/statistics');
  process.exit(2);
}
const place = folder.replace(/\/$/, '');
const { status } = spawnSync(
  `${root}/node_modules/.bin/stryker`,
  ['run', 'tests/tools/mutants/stryker.config.mjs', ...options],
  { cwd: root, stdio: 'inherit', env: { ...process.env, NESTLOG_MUTANTS: place } },
);
process.exitCode = status ?? 1;
if (status === 0) {
  const report = JSON.parse(
    readFileSync(`${root}/.mutants/${place.replaceAll('/', '-')}-report.json`, 'utf8'),
  );
  const [each, from] = [process.env.NESTLOG_MUTANTS_EACH ?? 1, process.env.NESTLOG_MUTANTS_FROM ?? 0].map(
    Number,
  );
  const score = scoreOf(report, each, from, Boolean(process.env.NESTLOG_MUTANTS_LOADING));
  const share = { k: score.told, n: score.tried };
  /** @type {any} */
  const interval = each === 1 ? null : await runCompiled('src/statistics/proportions.ts', 'wilson', share);
  console.log(scoreLine(place, score, interval));
}
