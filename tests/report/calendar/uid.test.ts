import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fingerprint, uidOf } from '../../../src/report/calendar/uid.ts';
import { hostileText } from '../hostile.ts';

const candle = { task: 'candle', pair: 'LW-1', bird: null, clutch: 3, apart: null };

describe('what names a task for good', () => {
  it('is the room, the task, whose it is and of which clutch', () => {
    expect(uidOf(candle, 'the finch room')).toBe('candle/pair=LW-1/clutch=3@the%20finch%20room.nestlog');
    expect(uidOf({ ...candle, task: 'ring', apart: '2026-03-16' }, null)).toBe(
      'ring/pair=LW-1/clutch=3/2026-03-16@room.nestlog',
    );
    expect(uidOf({ ...candle, pair: null, bird: 'LW-1', clutch: null }, null)).toBe(
      'candle/bird=LW-1@room.nestlog',
    );
  });

  it('is another one for every other task', () => {
    const name = fc.oneof(hostileText, fc.constantFrom('LW-1', 'a/b', 'a', 'b@c', 'c'));
    const task = fc.record({
      task: name,
      pair: fc.option(name),
      bird: fc.option(name),
      clutch: fc.option(fc.nat(3)),
      apart: fc.option(fc.constantFrom('2026-03-16', 'incubator')),
    });
    // Characters that cannot be seen are named alike wherever they stand in a text: compared by what is shown.
    fc.assert(
      fc.property(task, task, name, (one, other, room) => {
        const [a, b] = [uidOf(one, room), uidOf(other, room)];
        if (JSON.stringify(one) === JSON.stringify(other)) expect(a).toBe(b);
        expect(a).toMatch(/^[!-~]{1,255}$/);
        expect(b).not.toMatch(/[\s,;\\]/);
      }),
    );
  });

  it('has 255 octets at most, as RFC 5545 asks of programs, and tells long names apart by their ends', () => {
    const long = (end: string) => uidOf({ ...candle, pair: `${'Ü'.repeat(10_000)}${end}` }, 'the finch room');
    expect(long('1')).toHaveLength(255);
    expect(long('1')).not.toBe(long('2'));
  });
});

// Test vectors of the hash's authors, from memory.
it.each([
  ['', 'cbf29ce484222325'],
  ['a', 'af63dc4c8601ec8c'],
  ['foobar', '85944171f73967e8'],
])('FNV-1a of %j is %s', (text, hash) => {
  expect(fingerprint(text)).toBe(hash);
});
