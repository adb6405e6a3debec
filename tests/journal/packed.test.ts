import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Entries, Entry } from '../../src/journal/entry.ts';
import { observations } from '../../src/journal/observations/index.ts';
import { PackedEntries } from '../../src/journal/packed.ts';
import { readFile } from '../../src/journal/record.ts';
import { understandRoom } from '../../src/room/fold.ts';
import { corpus } from '../fuzz/corpus.ts';
import { dateOf } from '../generators/lines.ts';
import { filesOf, wild } from '../generators/rooms.ts';
import { findingsOf, summaryOf } from '../generators/summary.ts';
import { day, record } from '../rooms.ts';
import { read, readLog } from './reading.ts';

const FILE = 'pairs/LW-1.yaml';

/** The entries packed, packed and kept, and packed and shared: all must be what they were. */
function waysOf(entries: Entries, file = FILE): Entry[][] {
  const packed = PackedEntries.of(file, entries);
  const kept = PackedEntries.from(file, JSON.parse(JSON.stringify(packed)));
  const ready = new Map();
  const shared = [packed.sharing(ready), kept.sharing(ready)].map((one) => [...one]);
  return [[...packed], [...packed], [...kept], ...shared];
}

/** Each by itself, so that a failure shows the entry. */
function expectSame(entries: Entries, file = FILE): void {
  const plain = [...entries];
  for (const way of waysOf(entries, file)) {
    expect(way).toHaveLength(plain.length);
    plain.forEach((entry, index) => {
      expect(way[index]).toStrictEqual(entry);
    });
  }
}

describe('packed entries say what the entries said, word by word and place by place', () => {
  it('whatever was observed, on lines of any indent, in braces or a key a line', () => {
    const examples = Object.values(observations).map(({ example }) => example);
    const entry = fc.tuple(
      fc.uniqueArray(fc.constantFrom(...examples), { minLength: 1, selector: (said) => said.split(':')[0] }),
      fc.constantFrom('', 'time: 07:30, ', 'after: 2026-02-27, ', 'clutch: 2, site: gorse, '),
      fc.option(fc.string({ unit: 'grapheme' }), { nil: undefined }),
      fc.constantFrom('2026-03-01', '2026-03-02', '1. 3. 2026'),
      fc.boolean(),
    );
    fc.assert(
      fc.property(fc.array(entry, { maxLength: 6 }), fc.constantFrom('', '  ', '    '), (entries, indent) => {
        const lines = entries.map(([said, when, note, date, block]) => {
          const end = note === undefined ? '' : `, note: ${JSON.stringify(note)}`;
          return block
            ? `${indent}- date: ${date}\n${said.map((one) => `${indent}  ${one.includes(':') ? one : `${one}:`}\n`).join('')}`
            : `${indent}- {date: ${date}, ${when}${said.join(', ')}${end}}\n`;
        });
        expectSame(read(`pair: LW-1\nlog:\n${lines.join('')}`).entries);
      }),
      { numRuns: 100 },
    );
  });

  it('in every journal that we have', () => {
    let some = 0;
    for (const files of corpus(fileURLToPath(new URL('../..', import.meta.url)))) {
      for (const { path, text } of files) {
        const { journal } = readFile(path, text).says;
        if (journal !== undefined) expectSame(journal.entries, path);
        some += journal?.entries.length ?? 0;
      }
    }
    expect(some).toBeGreaterThan(1000);
  });

  it('and a room is understood from them as from a list', () => {
    fc.assert(
      fc.property(wild, fc.integer({ min: 0, max: 140 }), (logs, on) => {
        const files = filesOf(logs);
        const [clock, date] = [{ day: day(dateOf(on)), today: day('2029-12-31') }, dateOf(on)];
        const packed = understandRoom(record(files, date), clock);
        const plain = understandRoom(
          record(files, date, ({ path, text }) => readFile(path, text)),
          clock,
        );
        expect(summaryOf(packed)).toEqual(summaryOf(plain));
        expect(findingsOf(packed)).toEqual(findingsOf(plain));
      }),
      { numRuns: 60 },
    );
  });
});

it('days are known, and entries of a key found, without making the others', () => {
  const { entries } = readLog(
    '- {date: 2026-03-01, laid: 1}',
    '- {date: 2026-03-02, laid: 1, done: [worm flights]}',
    '- {date: 2026-03-03, note: "done"}',
  );
  const packed = PackedEntries.of(FILE, entries);
  expect([0, 1, 2].map((index) => packed.dayOf(index))).toEqual(entries.map(({ date }) => date));
  expect([...packed.mentioning(['done', 'skip'])]).toEqual([entries[1]]);
  expect([...packed.mentioning(['skip'])]).toEqual([]);
});
