import { describe, expect, it } from 'vitest';
import { formatDay } from '../../../src/days.ts';
import { lifeEvents } from '../../../src/rules/stock/events.ts';
import type { Files } from '../../rooms.ts';
import { birdIn, seldomLookedAt, stock, threeGenerations } from './rooms.ts';

const life = (files: Files, name: string, on = '2026-06-01') =>
  lifeEvents(birdIn(stock(files, on), name)).map(
    ({ from, day, what }) => `${from === day ? '' : `${formatDay(from)}…`}${formatDay(day)} ${what}`,
  );

describe('a life', () => {
  it('tells of one day that a bird was unwell before what was done for it', () => {
    const files = {
      'birds.yaml': `
        birds:
          - {id: x, log: [{date: 2026-03-01, treated: as the vet ordered}, {date: 2026-03-01, unwell: fluffed}]}
      `,
    };
    expect(life(files, 'x')).toEqual([
      '2026-03-01 unwell: fluffed',
      '2026-03-01 treated: as the vet ordered',
    ]);
  });

  it('tells of each time that a bird was let out of quarantine', () => {
    const files = {
      'birds.yaml': `
        birds:
          - id: x
            log:
              - {date: 2026-01-01, arrived: cage 1}
              - {date: 2026-02-01, released}
              - {date: 2026-03-01, quarantine: 14}
              - {date: 2026-03-15, released}
      `,
    };
    expect(life(files, 'x').filter((line) => line.includes('quarantine'))).toEqual([
      '2026-02-01 let out of quarantine',
      '2026-03-15 let out of quarantine',
    ]);
  });

  it('of a bird that was bred here', () => {
    expect(life(threeGenerations, 'SON')).toEqual([
      '2024-03-12…2024-03-24 hatched in clutch LW-1/1',
      '2024-04-12 left the nest',
      '2024-05-01 fed itself',
      '2025-05-01 in flight 3',
      '2025-05-01 put together in LW-3: LW-1/1/c1 and GIRL',
    ]);
  });

  it('of one that came from outside, and died', () => {
    const files = {
      'birds.yaml': `
        birds:
          - id: x
            origin: the spring meeting
            log:
              - {date: 2026-01-02, arrived: cage 3}
              - {date: 2026-01-20, weighed: 8.4, moult: started}
              - {date: 2026-02-02, released: flight 1, treated: as the vet ordered}
              - {date: 2026-03-01, unwell: fluffed}
              - {date: 2026-03-03, died: unknown}
      `,
    };
    expect(life(files, 'x')).toEqual([
      '2026-01-02 arrived: the spring meeting',
      '2026-01-02 in cage 3',
      '2026-01-20 weighed 8.4 g',
      '2026-01-20 moult started',
      '2026-02-02 let out of quarantine',
      '2026-02-02 in flight 1',
      '2026-02-02 treated: as the vet ordered',
      '2026-03-01 unwell: fluffed',
      '2026-03-03 died: unknown',
    ]);
  });

  it('of one that was put to several, and left', () => {
    const files = {
      'birds.yaml': `
        birds:
          - id: y
            log:
              - {date: 2025-12-01, arrived: cage 3}
              - {date: 2025-12-05, moult: done}
              - {date: 2026-05-02, gone: sold}
      `,
      'LW-1':
        'pair: LW-1\ncock: y\nlog:\n  - {date: 2026-02-01, paired}\n  - {date: 2026-03-01, parted}\n  - {date: 2026-04-01, reunited}',
    };
    expect(life(files, 'y')).toEqual([
      '2025-12-01 arrived',
      '2025-12-01 in cage 3',
      '2025-12-05 moult done',
      '2026-02-01 put together in LW-1: y and unknown',
      '2026-03-01 no longer together in LW-1',
      '2026-04-01 put together in LW-1: y and unknown',
      '2026-05-02 sold',
    ]);
    const died = { 'birds.yaml': 'birds:\n  - {id: z, log: [{date: 2026-03-03, died}]}\n' };
    expect(life(died, 'z')).toEqual(['2026-03-03 died']);
  });

  it('of one that was lent and came home: both arrivals and the time between', () => {
    const files = {
      'birds.yaml': `
        birds:
          - id: x
            log:
              - {date: 2025-12-01, arrived: cage 3}
              - {date: 2026-01-05, gone: lent}
              - {date: 2026-02-10, moved: cage 9, weighed: 8.1, back}
              - {date: 2026-03-01, died: missing}
              - {date: 2026-03-02, back}
      `,
    };
    expect(life(files, 'x')).toEqual([
      '2025-12-01 arrived',
      '2025-12-01 in cage 3',
      '2026-01-05 lent',
      '2026-02-10 back',
      '2026-02-10 in cage 9',
      '2026-02-10 weighed 8.1 g',
      '2026-03-01 died: missing',
      '2026-03-02 found again',
    ]);
  });

  it('tells of all days on which it can have hatched or died, where nobody looked on each', () => {
    expect(life(seldomLookedAt, 'LW-1/1/c1')).toEqual([
      '2026-03-11…2026-03-18 hatched in clutch LW-1/1',
      '2026-03-21…2026-03-23 died: chilled',
    ]);
  });

  it('tells of foster parents', () => {
    const files = {
      'LW-1': `
        pair: LW-1
        species: lavender waxbill
        cock: A
        hen: B
        housing: flight 1
        log:
          - {date: 2026-03-01, laid: 1, clutch: 1}
          - {date: 2026-03-14, hatched: 1}
          - {date: 2026-03-16, fostered: {LW-2: c1}}
      `,
      'LW-2': 'pair: LW-2\ncock: P\nhen: Q\nhousing: flight 2\nlog:\n  - {date: 2026-02-01, paired}',
    };
    expect(life(files, 'LW-1/1/c1', '2026-03-20')).toEqual([
      '2026-03-11…2026-03-14 hatched in clutch LW-1/1',
      '2026-03-16 given to LW-2, in flight 2',
    ]);
  });
});
