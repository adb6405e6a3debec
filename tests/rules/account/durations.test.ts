import { describe, expect, it } from 'vitest';
import { durationsOf } from '../../../src/rules/account/durations.ts';
import { ownDurations } from '../../../src/rules/forecast/own-durations.ts';
import { room } from '../../rooms.ts';

const took = (...log: string[]) =>
  durationsOf(
    ownDurations(
      room(
        {
          'LW-1': [
            'pair: LW-1',
            'species: lavender waxbill',
            'log:',
            ...log.map((entry) => `  - {date: ${entry}}`),
          ].join('\n'),
        },
        '2026-07-01',
      ),
    ),
  );
const daily = [
  '2026-02-28, checked',
  '2026-03-01, laid: 1',
  '2026-03-02, laid: 1',
  '2026-03-03, laid: 1, sitting: off',
  '2026-03-04, laid: 1, sitting',
  '2026-03-15, checked',
  '2026-03-16, hatched: 4',
];
const weekly = [
  '2026-04-20, clutch: 2, laid: 1',
  '2026-04-21, clutch: 2, laid: 3, sitting: off',
  '2026-04-22, clutch: 2, sitting',
  '2026-04-30, clutch: 2, checked: {eggs: 4}',
  '2026-05-07, clutch: 2, hatched: 4',
];

describe('how long it took', () => {
  it('is known to the day where somebody looked each day', () => {
    expect(took(...daily)).toEqual([
      { kind: 'incubation', clutches: 1, unseen: 0, shortest: 12, longest: 12, mean: 12 },
    ]);
  });

  it('is known to the day where one day passed without a look', () => {
    const missed = daily.filter((entry) => entry !== '2026-03-15, checked');
    expect(took('2026-03-14, checked', ...missed)).toEqual([
      { kind: 'incubation', clutches: 1, unseen: 0, shortest: 12, longest: 12, mean: 12 },
    ]);
  });

  it('lies somewhere between the looks where somebody came by once a week', () => {
    // Sitting since 22 April; eggs were still there on the 30th, chicks on 7 May, and no egg hatches in ten days.
    expect(took(...weekly)).toEqual([
      { kind: 'incubation', clutches: 1, unseen: 1, shortest: 10, longest: 15, mean: 12.5 },
    ]);
  });

  it('counts those that nobody saw beside those that somebody did', () => {
    expect(took(...daily, '2026-04-01, died: all', ...weekly)).toMatchObject([
      { clutches: 2, unseen: 1, shortest: 10, longest: 15, mean: 12.25 },
    ]);
  });

  it('is nothing where no clutch hatched', () => {
    expect(took(...daily.slice(0, 5))).toEqual([]);
  });
});
