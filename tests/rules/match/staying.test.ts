import { describe, expect, it } from 'vitest';
import { matesOf, perhapsIn, spokenFor } from '../../../src/rules/match/staying.ts';
import { stockOf } from '../../../src/rules/stock/stock.ts';
import { type Files, room } from '../../rooms.ts';

const files: Files = {
  'LW-1': `
    pair: LW-1
    cock: A
    hen: B
    log:
      - {date: 2026-01-01, paired}
      - {date: 2026-02-01, parted}
      - {date: 2026-02-10, paired: {hen: C}}
      - {date: 2026-03-01, parted}
  `,
  'LW-2': 'pair: LW-2\ncock: D\nhen: E\nlog:\n  - {date: 2026-02-01, paired}',
  'LW-3':
    'pair: LW-3\ncock: F\nhen: G\nlog:\n  - {date: 2026-02-01, paired}\n  - {date: 2026-03-01, died: cock}',
};

function spoken(keep: string[], anew = false): Record<string, string> {
  const known = room(files, '2026-05-01');
  const stock = stockOf(known);
  const pairs = spokenFor(known, stock, { keep: new Set(keep), anew });
  return Object.fromEntries([...pairs].map(([one, pair]) => [one.id, pair]));
}

describe('spoken for', () => {
  it('are those whose pair was not parted', () => {
    expect(spoken([])).toEqual({ D: 'LW-2', E: 'LW-2' });
  });

  it('and those of a pair to keep: its latest two, not a mate of earlier days', () => {
    expect(spoken(['LW-1'])).toEqual({ A: 'LW-1', C: 'LW-1', D: 'LW-2', E: 'LW-2' });
  });

  it('only those, when all is thought out anew', () => {
    expect(spoken(['LW-1'], true)).toEqual({ A: 'LW-1', C: 'LW-1' });
  });

  it('nobody of a pair of which one is dead', () => {
    expect(spoken(['LW-3'], true)).toEqual({});
  });
});

it('who a pair is cannot be told where one of them may be several', () => {
  const known = room(
    { 'LW-1': 'pair: LW-1\ncock: [A, B]\nhen: C\nlog:\n  - {date: 2026-01-01, paired}' },
    '2026-05-01',
  );
  expect(matesOf(known.pairs[0] as never, stockOf(known))).toBeNull();
});

it('one of several in a pair that was not parted may be in it; who is the only one, or is parted, is not perhaps there', () => {
  const colony = (log: string) =>
    room(
      { 'LW-1': `pair: LW-1\ncock: [A, B]\nhen: C\nlog:\n  - {date: 2026-01-01, paired}\n${log}` },
      '2026-05-01',
    );
  const perhaps = (log: string) => {
    const known = colony(log);
    const stock = stockOf(known);
    const of = perhapsIn(known, stock);
    return stock.birds.map((one) => [one.id, of(one)]);
  };
  expect(perhaps('')).toEqual([
    ['A', ['LW-1']],
    ['B', ['LW-1']],
    ['C', []],
  ]);
  expect(perhaps('  - {date: 2026-02-01, parted}')).toEqual([
    ['A', []],
    ['B', []],
    ['C', []],
  ]);
});
