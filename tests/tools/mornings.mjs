/**
 * The mornings of a room, day after day, as a keeper would have read them: `node tests/tools/mornings.mjs FROM DAYS`.
 * With `--new` only what each morning says for the first time, one line each: for reading a whole season at once.
 */
import { spawnSync } from 'node:child_process';
import { root } from '../../bin/build/settings.mjs';

const [from = '2026-02-01', days = '120', only] = process.argv.slice(2);
const start = Date.parse(from);

/**
 * @param {string} date
 * @param {string[]} more
 */
function due(date, ...more) {
  const words = ['bin/nestlog.js', 'due', '--journals', 'journals-example', '--date', date, ...more];
  return spawnSync(process.execPath, words, { cwd: root, encoding: 'utf8' }).stdout;
}

let before = new Set();
for (let i = 0; i < Number(days); i++) {
  const date = new Date(start + i * 86_400_000).toISOString().slice(0, 10);
  if (only !== '--new') {
    console.log(due(date));
    continue;
  }
  const { items, warnings, findings } = JSON.parse(due(date, '--json', '--days', '0'));
  const lines = [
    ...warnings.map(
      (/** @type {any} */ w) => `${w.level.toUpperCase()} ${w.kind} ${w.pair ?? w.bird ?? ''}: ${w.text}`,
    ),
    ...items.map(
      (/** @type {any} */ t) =>
        `${t.state} ${t.task} ${t.pair ?? t.bird ?? ''}${t.clutch === null ? '' : `/${t.clutch}`} ${t.who?.join(',') ?? ''} ${t.from}…${t.to ?? ''} (${t.why})`,
    ),
    ...findings.map((/** @type {any} */ f) => `FINDING ${f.file}:${f.line} ${f.code}`),
  ];
  console.log(`== ${date}, ${items.length} tasks`);
  for (const line of lines.filter((one) => !before.has(one))) console.log(`  ${line}`);
  before = new Set(lines);
}
