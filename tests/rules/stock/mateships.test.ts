import { describe, expect, it } from 'vitest';
import { formatDay } from '../../../src/days.ts';
import { mateshipsByBird, mateshipsOf } from '../../../src/rules/stock/mateships.ts';
import { birdsByName } from '../../../src/rules/stock/names.ts';
import { type Files, room } from '../../rooms.ts';

const day = (of: number | null) => (of === null ? null : formatDay(of));

/** `cock hen from to`, in order, of the pair LW-1. */
function mates(log: string, more: Files = {}) {
  const files = { 'LW-1': `pair: LW-1\ncock: A\nhen: B\nlog:\n${log}`, ...more };
  const { pairs, birds } = room(files, '2026-06-01');
  const pair = pairs.find(({ id }) => id === 'LW-1');
  if (pair === undefined) throw new Error('no pair');
  return mateshipsOf(pair, birdsByName(birds)).map(({ cock, hen, from, to }) => [
    cock[0],
    hen[0],
    day(from),
    day(to),
  ]);
}

describe('who was with whom', () => {
  it('from the first line of the journal, where `paired` was not written', () => {
    expect(mates('  - {date: 2026-02-01, nest: building}')).toEqual([['A', 'B', '2026-02-01', null]]);
  });

  it('the first mate as well, where she was lost or replaced before anybody wrote of eggs', () => {
    const begun = '  - {date: 2026-02-01, courting}\n';
    const lost = '  - {date: 2026-02-10, died: hen}\n';
    const anew = '  - {date: 2026-02-20, paired: {hen: C}}\n  - {date: 2026-03-01, laid: 1}';
    expect(mates(begun + lost + anew)).toEqual([
      ['A', 'B', '2026-02-01', '2026-02-10'],
      ['A', 'C', '2026-02-20', null],
    ]);
    expect(mates(begun + anew)).toEqual([
      ['A', 'B', '2026-02-01', '2026-02-20'],
      ['A', 'C', '2026-02-20', null],
    ]);
  });

  it('until they were parted, and again from when they were reunited', () => {
    const log =
      '  - {date: 2026-02-01, paired}\n  - {date: 2026-03-01, parted}\n  - {date: 2026-04-01, reunited}';
    expect(mates(log)).toEqual([
      ['A', 'B', '2026-02-01', '2026-03-01'],
      ['A', 'B', '2026-04-01', null],
    ]);
  });

  it('a new mate ends what was before, parted or not', () => {
    const log = '  - {date: 2026-02-01, paired}\n  - {date: 2026-03-01, paired: {hen: C}}';
    expect(mates(log)).toEqual([
      ['A', 'B', '2026-02-01', '2026-03-01'],
      ['A', 'C', '2026-03-01', null],
    ]);
  });

  it('is one time where they were put together once more without a parting', () => {
    const log = '  - {date: 2026-02-01, paired}\n  - {date: 2026-03-01, reunited}';
    expect(mates(log)).toEqual([['A', 'B', '2026-02-01', null]]);
  });

  it('is no time before it where they were put together on the day of the first line', () => {
    const log = '  - {date: 2026-02-01, courting}\n  - {date: 2026-02-01, paired: {hen: C}}';
    expect(mates(log)).toEqual([['A', 'C', '2026-02-01', null]]);
  });

  it('the death of a bird that was back before they were put together ends nothing', () => {
    const birds = (log: string) => ({ 'birds.yaml': `birds: [{id: B, log: [${log}]}]` });
    const log = '  - {date: 2026-02-01, paired}';
    expect(mates(log, birds('{date: 2026-02-01, died: accident}'))).toEqual([
      ['A', 'B', '2026-02-01', '2026-02-01'],
    ]);
  });

  it('ends with the death of one', () => {
    const log = '  - {date: 2026-02-01, paired}\n  - {date: 2026-03-05, died: hen}';
    expect(mates(log)).toEqual([['A', 'B', '2026-02-01', '2026-03-05']]);
  });

  it('a pair of which nothing has happened yet is no pair yet', () => {
    expect(mates('  - {date: 2026-08-01, paired}')).toEqual([]);
  });
});

it('a hen put into another pair has left the one before; a cock may have two', () => {
  const files = {
    'LW-1': 'pair: LW-1\ncock: A\nhen: B\nlog:\n  - {date: 2026-02-01, paired}',
    'LW-2': 'pair: LW-2\ncock: A\nhen: C\nlog:\n  - {date: 2026-02-05, paired}',
    'LW-3': 'pair: LW-3\ncock: D\nhen: B\nlog:\n  - {date: 2026-03-01, paired}',
  };
  const { pairs, birds } = room(files, '2026-06-01');
  const find = birdsByName(birds);
  const of = (name: string) => {
    const bird = find(name);
    if (bird === null) throw new Error(`nobody called ${name}`);
    return (mateshipsByBird(pairs, find).get(bird) ?? []).map(({ pair, to }) => [pair.id, day(to)]);
  };
  expect(of('B')).toEqual([
    ['LW-1', '2026-03-01'],
    ['LW-3', null],
  ]);
  expect(of('A')).toEqual([
    ['LW-1', '2026-03-01'],
    ['LW-2', null],
  ]);
});

it('the mateships of a bird are in order, in whichever order the pairs stand; a hen that was parted left on that day', () => {
  const files = {
    'LW-1': 'pair: LW-1\ncock: A\nhen: B\nlog:\n  - {date: 2026-03-01, paired}',
    'LW-2':
      'pair: LW-2\ncock: D\nhen: B\nlog:\n  - {date: 2026-02-01, paired}\n  - {date: 2026-02-10, parted}',
  };
  const { pairs, birds } = room(files, '2026-06-01');
  const find = birdsByName(birds);
  const hen = find('B');
  const all = hen === null ? [] : (mateshipsByBird(pairs, find).get(hen) ?? []);
  expect(all.map(({ pair, to }) => [pair.id, day(to)])).toEqual([
    ['LW-2', '2026-02-10'],
    ['LW-1', null],
  ]);
});
