import { expect, test } from 'vitest';
import { unknownSkips } from '../../../src/rules/agenda/skips.ts';
import { agenda, record } from '../../rooms.ts';

const LW = (skip: string) => ({
  'LW-1': `
    pair: LW-1
    species: lavender waxbill
    log:
      - {date: 2026-03-01, clutch: 1, laid: 1}
      - {date: 2026-03-02, laid: 1}
      - {date: 2026-03-03, laid: 1, sitting}
      - {date: 2026-03-04, skip: ${skip}}
  `,
  'nestlog.yaml': 'routines:\n  - {name: calcium, after: paired, days: 3, say: calcium in the egg food}\n',
});

test('a task of that name, or a routine of the room, can be skipped', () => {
  expect(unknownSkips(record(LW('candle'), '2026-06-01'))).toEqual([]);
  expect(unknownSkips(record(LW('calcium'), '2026-06-01'))).toEqual([]);
  expect(unknownSkips(record(LW('calcium, food: [greens, seed]'), '2026-06-01'))).toEqual([]);
});

test('a task that does not exist is a hint with the one that was probably meant', () => {
  const [finding] = unknownSkips(record(LW('[hatch, candel]'), '2026-06-01'));
  expect(finding).toMatchObject({ code: 'unknown-task', args: { task: 'candel', suggestion: 'candle' } });
  expect(finding?.args).toMatchObject({ tasks: expect.stringContaining('candle, ') });
});

test('a skipped task is moot for that clutch', () => {
  const tasks = (skip: string) => agenda(LW(skip), '2026-03-08').map(({ task }) => task);
  expect(tasks('hatch')).toContain('candle');
  expect(tasks('candle')).not.toContain('candle');
});
