import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { root } from '../../bin/build/settings.mjs';
import { writeRoom } from '../bench/rooms.mjs';

let home: string;
let room: string;
beforeAll(() => {
  home = mkdtempSync(join(tmpdir(), 'nestlog-early-'));
  room = join(home, 'room');
  writeRoom(room, { pairs: 3, years: 0.5, date: '2026-05-17' });
});
afterAll(() => rmSync(home, { recursive: true }));

/** Runs the built program there and then. */
function nestlog(...words: string[]) {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    [join(root, 'bin/nestlog.js'), ...words, '--journals', room],
    { encoding: 'utf8', env: { PATH: process.env.PATH, HOME: home, NO_COLOR: '1', TZ: 'UTC' } },
  );
  return { status, stdout, stderr };
}

const answers = () => join(home, '.cache/nestlog/answers');
const due = (...more: string[]) => nestlog('due', '--date', '2026-05-17', ...more);

it('prints the morning again from what was kept', () => {
  const first = due();
  const [name = ''] = readdirSync(answers());
  const before = readFileSync(join(answers(), name));
  expect(due()).toEqual(first);
  expect(readFileSync(join(answers(), name))).toEqual(before);
});

it('keeps nothing of other commands, of what went wrong, nor without a cache', () => {
  rmSync(answers(), { recursive: true, force: true });
  nestlog('check');
  due('--days', 'many');
  due('--explain', 'candle');
  due('--no-cache');
  expect(() => readdirSync(answers())).toThrow('ENOENT');
});

it('says after any change, and again, what a run without a cache says', () => {
  const entries = fc.constantFrom(
    'laid: 1',
    'sitting',
    'checked',
    'lost: {broken: 1}',
    'unwell: {hen: fluffed}',
  );
  const edit = fc.record({
    pair: fc.integer({ min: 1, max: 4 }),
    on: fc.integer({ min: 10, max: 19 }),
    entries,
  });
  fc.assert(
    fc.property(edit, fc.boolean(), ({ pair, on, entries: said }, again) => {
      const file = join(room, 'pairs', `ro-${pair}.yaml`);
      const line = `  - {date: 2026-05-${on}, ${said}}\n`;
      writeFileSync(file, `${pair === 4 ? 'pair: RO-4\nlog:\n' : readFileSync(file)}${line}`);
      const fresh = due('--no-cache');
      expect(due()).toEqual(fresh);
      if (again) expect(due()).toEqual(fresh);
    }),
    { numRuns: 8 },
  );
});
