/** A club's records: 1,000 pairs in ten years, beside reading and hashing the same bytes. */
import { appendFileSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { line, medians } from './measure.mjs';
import { mustRun, runNode, withPeak } from './processes.mjs';
import { writeRoom } from './rooms.mjs';

const DATE = '2026-05-17';
const RUNS = 5;

const hashAll = `const { readdirSync, readFileSync } = require('node:fs');
const { createHash } = require('node:crypto');
for (const name of readdirSync(process.argv[1])) {
  createHash('sha256').update(readFileSync(process.argv[1] + '/' + name)).digest();
}`;

/** @returns {string[]} lines */
export function measureLarge() {
  const folder = mkdtempSync(join(tmpdir(), 'nestlog-bench-'));
  try {
    const room = join(folder, 'room');
    const { entries, bytes, files } = writeRoom(room, { pairs: 1000, years: 10, quietDays: 39, date: DATE });
    const cache = join(folder, 'cache');
    const due = ['bin/nestlog.js', 'due', '--journals', room, '--date', DATE];
    const head = `${entries.toLocaleString('en')} entries, ${(bytes / 1e6).toFixed(0)} MB`;
    const before = performance.now();
    const first = runNode([...withPeak, ...due], cache);
    const time = `${((performance.now() - before) / 1000).toFixed(1)} s`;
    if (first.failed !== null) return [head, `nestlog due fails after ${time}: ${first.failed}. NOT MET`];
    const times = medians(
      {
        'reading and hashing every byte': () => mustRun(['-e', hashAll, join(room, 'pairs')], cache),
        'nestlog due, again': () => mustRun(due, cache),
      },
      RUNS,
    );
    appendFileSync(String(files[0]), `  - {date: ${DATE}, checked}\n`);
    const start = performance.now();
    mustRun(due, cache);
    const changed = performance.now() - start;
    const [base, again] = [times['reading and hashing every byte'], times['nestlog due, again']];
    return [
      head,
      line('reading and hashing every byte', base, { base }),
      line('nestlog due, again', again, { base, limit: 4 }),
      line('nestlog due, one journal changed', changed, { base, limit: 8 }),
      `nestlog due, nothing kept from before: ${time}, ${first.memory.toFixed(0)} MB`,
    ];
  } finally {
    rmSync(folder, { recursive: true });
  }
}
