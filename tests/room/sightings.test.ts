import { describe, expect, it } from 'vitest';
import { inOrder } from '../../src/room/sightings.ts';
import { day, type Files, record } from '../rooms.ts';
import { waxbills } from './facts.ts';

/** What was seen, in order, as keys. */
function order(files: Files, until = '2026-12-31'): string[] {
  const { pairs, birds } = record(files, until);
  return [...inOrder(pairs, birds, day(until))].map(({ observation }) => observation.key);
}

const lines = [
  'date: 2026-03-01, laid: 1',
  'date: 2026-03-04, time: 07:00, laid: 2',
  'date: 2026-03-04, time: 18:30, sitting',
  'date: 2026-03-16, hatched: 1',
  'date: 2026-02-01, paired',
];

describe('what was seen is told in the order in which it happened', () => {
  it('by date and time, whatever the order of the lines', () => {
    const told = ['paired', 'laid', 'laid', 'sitting', 'hatched'];
    expect(order({ P: waxbills(lines.join('\n')) })).toEqual(told);
    expect(order({ P: waxbills([...lines].reverse().join('\n')) })).toEqual(told);
  });

  it('within a day in the order of the trade, though written down otherwise', () => {
    const day =
      'date: 2026-03-16, died: c1, ringed: {c2: "7"}, lost: {clear: e3}, hatched: 2, sitting, laid: 1, paired';
    expect(order({ P: waxbills(day) })).toEqual([
      'paired',
      'laid',
      'sitting',
      'hatched',
      'lost',
      'ringed',
      'died',
    ]);
  });

  it('a visit without a time before those of the day that have one', () => {
    const day = 'date: 2026-03-04, time: 06:00, laid: 1\ndate: 2026-03-04, sitting';
    expect(order({ P: waxbills(day) })).toEqual(['sitting', 'laid']);
  });

  it('with the logs of the bird list among those of the pairs', () => {
    const birds = `
      birds:
        - id: LW-20-11
          species: lavender waxbill
          log:
            - {date: 2026-03-02, weighed: 8.4}
            - {date: 2026-01-10, arrived: cage 1}
    `;
    const files = {
      'birds.yaml': birds,
      P: waxbills('date: 2026-03-01, laid: 1\ndate: 2026-03-03, laid: 1'),
    };
    expect(order(files)).toEqual(['arrived', 'laid', 'weighed', 'laid']);
  });

  it('and what is dated later than the day is not told', () => {
    expect(order({ P: waxbills(lines.join('\n')) }, '2026-03-03')).toEqual(['paired', 'laid']);
  });
});
