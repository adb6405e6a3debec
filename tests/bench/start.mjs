/** How long a keeper waits: whole processes beside a Node that does nothing. */
import { appendFileSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { line, medians } from './measure.mjs';
import { mustRun } from './processes.mjs';
import { writeRoom } from './rooms.mjs';

const RUNS = 21;
const DATE = '2026-05-17';

/** @returns {string[]} lines */
export function measureStart() {
  const folder = mkdtempSync(join(tmpdir(), 'nestlog-bench-'));
  try {
    const room = join(folder, 'room');
    const { entries, files } = writeRoom(room, { pairs: 10, years: 1, quietDays: 43, date: DATE });
    const [cache, cold] = [join(folder, 'cache'), join(folder, 'cold')];
    const due = ['bin/nestlog.js', 'due', '--journals', room, '--date'];
    let day = Date.parse(DATE);
    const times = medians(
      {
        'node -e 0': () => mustRun(['-e', '0'], cache),
        'nestlog --version': () => mustRun(['bin/nestlog.js', '--version'], cache),
        'nestlog --help': () => mustRun(['bin/nestlog.js', '--help'], cache),
        'nestlog due, again': () => mustRun([...due, DATE], cache),
        'nestlog due, a new day and one journal changed': () => {
          mustRun([...due, new Date(day).toISOString().slice(0, 10)], cache);
        },
        'nestlog due, nothing kept from before': () => mustRun([...due, DATE], cold),
      },
      RUNS,
      {
        'nestlog due, again': () => mustRun([...due, DATE], cache),
        'nestlog due, a new day and one journal changed': () => {
          day += 86_400_000;
          appendFileSync(
            String(files[0]),
            `  - {date: ${new Date(day).toISOString().slice(0, 10)}, checked}\n`,
          );
        },
        'nestlog due, nothing kept from before': () => rmSync(cold, { recursive: true, force: true }),
      },
    );
    const base = times['node -e 0'];
    /** @type {Record<string, number>} */
    const limits = {
      'nestlog --version': 1.35,
      'nestlog due, again': 2,
      'nestlog due, nothing kept from before': 9,
    };
    return [
      `a room of 10 pairs and a year, ${entries.toLocaleString('en')} entries`,
      ...Object.entries(times).map(([name, time]) =>
        line(name, time, { base, ...(limits[name] === undefined ? {} : { limit: limits[name] }) }),
      ),
    ];
  } finally {
    rmSync(folder, { recursive: true });
  }
}
