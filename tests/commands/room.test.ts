import { expect, test } from 'vitest';
import { openRoom } from '../../src/commands/room.ts';
import { day } from '../rooms.ts';
import { roomFolder } from './run.ts';

test('findings of reading, of the room and of the rules come in the order of their places', () => {
  const journals = roomFolder({
    'LW-1': `
      pair: LW-1
      species: lavender waxbill
      log:
        - {date: 2026-03-01, laid: 1}
        - {date: 2026-03-02, skip: candel}
        - {date: 2026-03-03, hatched: e9}
        - {date: 2026-03-04, laid: -1}
    `,
  });
  const on = day('2026-06-01');
  const { room } = openRoom({ journals, day: on, today: on });
  expect(room.findings.map(({ code, at }) => [code, at.line])).toEqual([
    ['unknown-task', 5],
    ['no-such-egg', 6],
    ['negative-count', 7],
  ]);
});
