import { expect, test } from 'vitest';
import { restored } from '../../src/journal/kept-reading.ts';
import { PackedEntries } from '../../src/journal/packed.ts';
import { readFile, readSource } from '../../src/journal/record.ts';

const path = 'pairs/LW-1.yaml';
const text =
  'pair: LW-1\nlog:\n  - {date: 2026-03-01, ringed: {c1: LW 7}, note: "x"}\n  - {date: 2026-03-02, checked, nonsense}\n';

test('a reading that became JSON is the reading again, whether its entries were packed or not', () => {
  for (const reading of [readFile(path, text), readSource({ path, text })]) {
    const again = restored(path, JSON.parse(JSON.stringify(reading)));
    expect(again).toEqual(reading);
    expect([...(again.says.journal?.entries ?? [])]).toEqual([
      ...(readFile(path, text).says.journal?.entries ?? []),
    ]);
    expect(again.findings).toEqual(readFile(path, text).findings);
  }
  expect(readSource({ path, text }).says.journal?.entries).toBeInstanceOf(PackedEntries);
});

test('what is no journal is as it was', () => {
  const reading = readFile('nestlog.yaml', 'room: the back room\n');
  expect(restored('nestlog.yaml', JSON.parse(JSON.stringify(reading)))).toEqual(reading);
});
