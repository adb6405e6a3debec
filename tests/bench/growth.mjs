/** Time and memory as records grow, from a hundred clutches to a hundred thousand, with nothing kept from before. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { runNode, withPeak } from './processes.mjs';
import { writeRoom } from './rooms.mjs';

const DATE = '2026-05-17';
/** Megabytes, at the largest size. */
const LIMIT = 1000;
const SIZES = [
  { pairs: 5, years: 5 },
  { pairs: 25, years: 10 },
  { pairs: 250, years: 10 },
  { pairs: 2500, years: 10 },
];
const COMMANDS = [['due'], ['season', 'all'], ['check'], ['export', 'clutches']];

/** @returns {Generator<string>} lines, as they come to be known */
export function* measureGrowth() {
  yield `${'clutches'.padStart(9)}${'entries'.padStart(11)}  ${COMMANDS.map((words) => `nestlog ${words.join(' ')}`.padStart(24)).join('')}`;
  for (const size of SIZES) {
    const folder = mkdtempSync(join(tmpdir(), 'nestlog-bench-'));
    try {
      const { entries } = writeRoom(folder, { ...size, date: DATE });
      const clutches = size.pairs * size.years * 4;
      const cells = COMMANDS.map((words) => {
        const options = ['--journals', folder, '--date', DATE, '--no-cache'];
        const start = performance.now();
        const { memory, failed } = runNode([...withPeak, 'bin/nestlog.js', ...words, ...options], folder);
        const seconds = ((performance.now() - start) / 1000).toFixed(2);
        return failed ?? `${seconds} s ${memory.toFixed(0)} MB${memory > LIMIT ? ' NOT MET' : ''}`;
      });
      yield `${clutches.toLocaleString('en').padStart(9)}${entries.toLocaleString('en').padStart(11)}  ${cells.map((cell) => cell.padStart(24)).join('')}`;
    } finally {
      rmSync(folder, { recursive: true });
    }
  }
  yield `limit: ${LIMIT} MB at 100,000 clutches`;
}
