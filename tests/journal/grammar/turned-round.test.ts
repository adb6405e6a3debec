import { describe, expect, it } from 'vitest';
import { readLog } from '../reading.ts';

/** What the finding says should be written, or null where the line is read as it stands. */
function meant(said: string): string | null {
  const { findings, fixes } = readLog(`- {date: 2026-03-20, ${said}}`);
  return findings[0]?.code === 'turned-round' ? (fixes[0] ?? null) : null;
}

describe('a map whose sides are turned round', () => {
  it.each([
    ['candled: {e1: fertile, e2: clear, e3: fertile}', 'candled: {fertile: [e1, e3], clear: e2}'],
    ['lost: {e3: clear}', 'lost: {clear: e3}'],
    ['died: {c1: cold}', 'died: {cold: c1}'],
    ['gone: {"c1, c2": sold}', 'gone: {sold: [c1, c2]}'],
    ['fostered: {e1: LW-2}', 'fostered: {LW-2: e1}'],
    ['fostered: {all: LW-2}', 'fostered: {LW-2: all}'],
    ['set: {2: incubator}', 'set: {incubator: 2}'],
    ['weighed: {4.5: c1}', 'weighed: {c1: 4.5}'],
    ['ringed: {LW 26 014: c1}', 'ringed: {c1: LW 26 014}'],
    ['moved: {flight 2: [c1, c2]}', 'moved: {c1: flight 2, c2: flight 2}'],
    ['unwell: {fluffed: hen}', 'unwell: {hen: fluffed}'],
  ])('is told of, `%s`, with the one that was meant', (said, write) => {
    expect(meant(said)).toBe(`write \`${write}\``);
  });

  it.each([
    'feeding: {cock: c1}',
    'feeding: {cock: all, hen: [c1, c2]}',
    'died: {cold: LW-22-11}',
    'moved: {LW-22-11: flight 2}',
    'moved: {hen: cage 4}',
    'moved: {LW-22-11: 4}',
    'ringed: {LW-22-11: 26014}',
    'unwell: {hen: quiet, c1: thin}',
    'treated: {all: a dust bath}',
    'fostered: {LW-2: all}',
    // The cock or the hen may be the cause.
    'died: {cock: c1}',
    'died: {hen: [c1, LW-22-11]}',
    'died: {cold: LW-22-11, hen: LW-22-12}',
    'died: {"hen, rough": LW-22-11}',
    'ringed: {c1: "26014"}',
  ])('is not seen in `%s`', (said) => {
    expect(readLog(`- {date: 2026-03-20, ${said}}`).findings).toEqual([]);
  });

  it('is no better where the other way cannot be either', () => {
    expect(readLog('- {date: 2026-03-20, candled: {e1: rosy}}').found).toEqual(['3:34 unknown-word']);
    expect(readLog('- {date: 2026-03-20, gone: {c1: sold, c2: moulted}}').found).toEqual([
      '3:31 unknown-word',
    ]);
    expect(readLog('- {date: 2026-03-20, candled: {e1: {fertile: 1}}}').found).toEqual(['3:34 unknown-word']);
    expect(readLog('- {date: 2026-03-20, moved: {hen: true}}').found).toEqual(['3:37 wrong-value']);
  });
});
