import { describe, expect, it } from 'vitest';
import { formatDay } from '../../src/days.ts';
import { timesHoused } from '../../src/rules/housed.ts';
import { day, room } from '../rooms.ts';

const END = day('2026-07-01');

/** Where the bird of this log lived, from when up to when. */
function housed(log: string, end = END): string[] {
  const lines = log.split('\n').map((one) => `      - {${one.trim()}}\n`);
  const list = `birds:\n  - id: LW-19-04\n    species: lavender waxbill\n    log:\n${lines.join('')}`;
  const [bird] = room({ 'birds.yaml': list }, '2026-06-30').birds;
  if (bird === undefined) throw new Error('no bird');
  return timesHoused(bird, end).map(
    ({ housing, from, to }) => `${housing} ${formatDay(from)} ${formatDay(to)}`,
  );
}

describe('a bird is housed', () => {
  it('in each housing until it is moved to the next, in the last until the end', () => {
    expect(housed('date: 2026-01-10, arrived: cage 1\ndate: 2026-02-10, moved: flight 2')).toEqual([
      'cage 1 2026-01-10 2026-02-10',
      'flight 2 2026-02-10 2026-07-01',
    ]);
  });

  it('not in a cage that it only passed through on a day, nor in one that nobody wrote of', () => {
    expect(
      housed(
        'date: 2026-01-10, arrived: cage 1\ndate: 2026-02-10, time: 08:00, moved: cage 2\ndate: 2026-02-10, time: 09:00, moved: flight 2',
      ),
    ).toEqual(['cage 1 2026-01-10 2026-02-10', 'flight 2 2026-02-10 2026-07-01']);
    const nest = 'pair: LW-1\nspecies: lavender waxbill\nlog:\n  - {date: 2026-03-16, hatched: 1}\n';
    const [chick] = room({ 'LW-1': nest }, '2026-06-30').birds;
    expect(chick && timesHoused(chick, END)).toEqual([]);
  });

  it('for one time, however often it is moved to where it is', () => {
    expect(housed('date: 2026-01-10, arrived: cage 1\ndate: 2026-02-10, moved: Cage 1')).toEqual([
      'cage 1 2026-01-10 2026-07-01',
    ]);
  });

  it('nowhere while it is lent', () => {
    const log = 'date: 2026-01-10, arrived: cage 1\ndate: 2026-03-01, gone: lent\ndate: 2026-05-01, back';
    expect(housed(log)).toEqual(['cage 1 2026-01-10 2026-03-01', 'cage 1 2026-05-01 2026-07-01']);
  });

  it('no longer than up to the end', () => {
    const log = 'date: 2026-01-10, arrived: cage 1\ndate: 2026-02-10, moved: flight 2';
    expect(housed(log, day('2026-02-01'))).toEqual(['cage 1 2026-01-10 2026-02-01']);
  });
});
