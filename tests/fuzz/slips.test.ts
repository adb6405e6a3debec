import { expect, test } from 'vitest';
import { root } from '../../bin/build/settings.mjs';
import { day } from '../rooms.ts';
import { brokenByReading } from './laws.ts';
import { slippedRooms, tryRooms, writtenRooms } from './slips.ts';

// The night's run of the same is `npm run fuzz`; here without its clock, as a test's time says nothing.
const seed = Number(process.env.NESTLOG_SEED ?? Math.trunc(Math.random() * 1e9));
const asked = (runs: number) => ({ runs, seed, clock: () => 0 });

test('slips in real journals lose no line, crash nothing, and put nobody in two places', () => {
  expect(tryRooms(slippedRooms(root), asked(300)).broken).toBeNull();
});

test('rooms written line by line keep every law, and the past stays as it was', () => {
  expect(tryRooms(writtenRooms, asked(60)).broken).toBeNull();
});

test('a law that is broken is told, with the smallest room that breaks it', () => {
  const { broken } = tryRooms(
    writtenRooms.map((trial) => ({ ...trial, law: () => ['the law'] })),
    asked(5),
  );
  expect(broken?.why).toContain('the law');
  expect(broken?.files.map(({ path }) => path)).toContain('pairs/LW-1.yaml');
});

test('an entry that YAML takes for words of the value above it is named', () => {
  const text =
    'pair: LW-1\n  - {date: 2026-03-23, laid: 1}\nspecies: star finch\nlog:\n  - {date: 2026-03-24, laid: 1}\n';
  expect(brokenByReading([{ path: 'pairs/lw-1.yaml', text }], day('2026-04-01'))).toEqual([]);
  const cut = 'pair: 26-03-01, paired}\n  - {date:LW-1\nspecies: star finch\nlog:\n';
  expect(brokenByReading([{ path: 'pairs/lw-1.yaml', text: cut }], day('2026-04-01'))).toEqual([]);
});

test('a line before the first key is not taken along by it, nor lost', () => {
  const log = 'pair: LW-1\nlog:\n  - {date: 2026-03-24, laid: 1}\n';
  const stray = '  - {date: 2026-03-23, laid: 1}\n';
  for (const text of [stray + log, `${stray}${stray}   species: star finch\n${log}`]) {
    expect(brokenByReading([{ path: 'pairs/lw-1.yaml', text }], day('2026-04-01'))).toEqual([]);
  }
});

test('a line whose quote is closed nowhere is named itself, not one below it', () => {
  const text =
    'pair: LW-1\nlog:\n  - {date: 2026-03-02, laid: "1}\n  -ate: 2026-03-03, laid: 1}\n1}\n  - {date: 2026-03-03, laid: 1}\n';
  expect(brokenByReading([{ path: 'pairs/lw-1.yaml', text }], day('2026-04-01'))).toEqual([]);
});
