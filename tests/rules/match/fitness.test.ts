import { describe, expect, it } from 'vitest';
import type { Files } from '../../rooms.ts';
import { alone, match, pairsOf } from './rooms.ts';

const ON = '2026-05-17';

/** A cock without a fault and one hen, of whom the line of the bird list says more. */
function room(hen: string, more: Files = {}): Files {
  return {
    'birds.yaml': `birds:
  - {id: C, species: zebra finch, sex: cock, hatched: 2024-01-01}
  - {id: H, species: zebra finch, ${hen}}`,
    ...more,
  };
}

const why = (hen: string, more: Files = {}) => alone(match(room(hen, more), ON)).H;

describe('left out of the proposals', () => {
  it('nobody who is alive, here, sexed, old enough and free', () => {
    expect(pairsOf(match(room('sex: hen, hatched: 2024-01-01'), ON))).toEqual(['C × H']);
  });

  it('a bird whose sex nobody knows', () => {
    expect(why('hatched: 2024-01-01')).toBe('not sexed');
  });

  it('one that is too young by its profile, with the day on which it is not', () => {
    // Zebra finches: six months are the least (common practice).
    expect(why('sex: hen, hatched: 2026-01-10')).toBe('too young: 4 months, old enough on 10 Jul 2026');
  });

  it('one that is too young in any case, up to the day before it is old enough', () => {
    // The eldest that it can be, of 17 November, is six months old on 17 May.
    expect(why('sex: hen, hatched: 2025-11-17')).toBeUndefined();
    expect(why('sex: hen, hatched: 2025-11-18')).toBe('too young: 5 months, old enough on 18 May 2026');
  });

  it('one whose ring tells only its year, unless the youngest that it can be is old enough', () => {
    expect(why('sex: hen, hatched: 2025-11')).toBe(
      'may be too young: 5 to 6 months, surely old enough on 30 May 2026',
    );
    expect(why('sex: hen, hatched: 2026')).toBe('too young: 0 to 4 months, surely old enough on 17 Nov 2026');
    expect(why('sex: hen, hatched: 2025-10')).toBeUndefined();
  });

  it('not one that is old enough on this very day', () => {
    const born = 'sex: hen, hatched: 2026-01-10';
    expect(alone(match(room(born), '2026-07-10')).H).toBeUndefined();
    expect(alone(match(room(born), '2026-07-09')).H).toMatch(/^too young/);
  });

  it('the young in the nest and those that are still fed', () => {
    const rearing = (more: string) => `
      pair: ZF-1
      species: zebra finch
      log:
        - {date: 2026-04-01, laid: 1, sitting}
        - {date: 2026-04-14, hatched: 1}
        ${more}
    `;
    const young = (more: string) => {
      const found = match(room('sex: hen, hatched: 2024-01-01', { 'ZF-1': rearing(more) }), ON);
      return alone(found)['ZF-1/1/c1'];
    };
    expect(young('')).toBe('still in the nest or fed');
    expect(young('- {date: 2026-05-05, fledged: 1}')).toBe('still in the nest or fed');
    expect(young('- {date: 2026-05-05, fledged: 1}\n        - {date: 2026-05-16, independent: 1}')).toBe(
      'not sexed',
    );
  });

  it('one that the keeper asks to leave out', () => {
    const asked = match(room('sex: hen, hatched: 2024-01-01'), ON, { not: ['H'] });
    expect(alone(asked).H).toBe('left out as you asked');
  });

  it('one in quarantine, until that is over', () => {
    const arrived = (day: string) =>
      why(`sex: hen, hatched: 2024-01-01, log: [{date: ${day}, arrived: cage 3}]`);
    expect(arrived('2026-05-01')).toBe('in quarantine until 31 May');
    expect(arrived('2026-04-01')).toBeUndefined();
    // Of the last of thirty days it is the morning after that counts.
    expect(arrived('2026-04-18')).toBe('in quarantine until 18 May');
    expect(arrived('2026-04-17')).toBeUndefined();
  });

  it('one that fell ill before it was let out, until it is reckoned well again', () => {
    const log = '[{date: 2026-04-01, arrived: cage 3}, {date: 2026-05-10, unwell: fluffed}]';
    expect(why(`sex: hen, hatched: 2024-01-01, log: ${log}`)).toBe('in quarantine until 25 May');
  });

  it('one that was let out earlier is free', () => {
    const log = '[{date: 2026-05-01, arrived: cage 3}, {date: 2026-05-10, released: flight 1}]';
    expect(why(`sex: hen, hatched: 2024-01-01, log: ${log}`)).toBeUndefined();
  });

  it('one that was unwell within a fortnight', () => {
    expect(why('sex: hen, hatched: 2024-01-01, log: [{date: 2026-05-10, unwell: fluffed}]')).toBe(
      'unwell on 10 May (fluffed)',
    );
    expect(why('sex: hen, hatched: 2024-01-01, log: [{date: 2026-05-02, unwell: fluffed}]')).toBeUndefined();
  });

  it('one in a pair that was not parted', () => {
    const pair = 'pair: ZF-1\ncock: Z\nhen: H\nlog:\n  - {date: 2026-03-01, paired}';
    expect(why('sex: hen, hatched: 2024-01-01', { 'ZF-1': pair })).toBe('in ZF-1, which stays together');
  });

  it('nobody whose mate has died', () => {
    const pair =
      'pair: ZF-1\ncock: Z\nhen: H\nlog:\n  - {date: 2026-03-01, paired}\n  - {date: 2026-04-01, died: cock}';
    expect(why('sex: hen, hatched: 2024-01-01', { 'ZF-1': pair })).toBeUndefined();
  });

  it('the dead, the sold and the young in the nest', () => {
    const { leftOut, proposals } = match(
      room('sex: hen, hatched: 2024-01-01, log: [{date: 2026-05-01, gone: sold}]'),
      ON,
    );
    expect(proposals).toEqual([]);
    expect(leftOut.map(({ one }) => one.id)).toEqual(['C']);
  });
});

describe('a hen that has laid as often as a year allows', () => {
  const clutches = (days: string[]) => `
    pair: ZF-1
    species: zebra finch
    cock: Z
    hen: H
    log:
      - {date: 2025-01-01, paired}
      ${days.map((day, i) => `- {date: ${day}, clutch: ${i + 1}, laid: 1}\n      - {date: ${day}, lost: {broken: 1}, time: 20:00}`).join('\n      ')}
      - {date: 2026-05-01, parted}
  `;
  const limits = 'limits: {clutches-per-year: 3}';
  const hen = 'sex: hen, hatched: 2024-01-01';

  it('rests until the oldest of them is a year old', () => {
    const log = clutches(['2025-08-01', '2025-11-01', '2026-02-01']);
    expect(why(hen, { 'ZF-1': log, 'nestlog.yaml': limits })).toBe(
      'resting: 3 clutches in a year, the limit is 3; free on 1 Aug 2026',
    );
  });

  it('rests after a single one where that is the limit', () => {
    const log = clutches(['2026-02-01']);
    expect(why(hen, { 'ZF-1': log, 'nestlog.yaml': 'limits: {clutches-per-year: 1}' })).toBe(
      'resting: 1 clutch in a year, the limit is 1; free on 1 Feb 2027',
    );
  });

  it('is the hen’s matter alone: the cock is free', () => {
    const log = clutches(['2025-08-01', '2025-11-01', '2026-02-01']).replace('cock: Z', 'cock: C');
    const found = alone(match(room(hen, { 'ZF-1': log, 'nestlog.yaml': limits }), ON));
    expect(found.C).not.toMatch(/resting/);
  });

  it('does not before the limit, nor where nobody set one', () => {
    const two = clutches(['2025-11-01', '2026-02-01']);
    expect(why(hen, { 'ZF-1': two, 'nestlog.yaml': limits })).toBeUndefined();
    const unknown = two.replace('species: zebra finch', 'species: ridge finch');
    const files = {
      ...room(hen, { 'ZF-1': unknown }),
      'birds.yaml': `birds:\n  - {id: C, species: ridge finch, sex: cock, hatched: 2024-01-01}\n  - {id: H, species: ridge finch, ${hen}}`,
    };
    expect(alone(match(files, ON)).H).toBeUndefined();
  });

  it('does not for clutches of more than a year ago', () => {
    const log = clutches(['2025-05-01', '2025-11-01', '2026-02-01']);
    expect(why(hen, { 'ZF-1': log, 'nestlog.yaml': limits })).toBeUndefined();
  });
});
