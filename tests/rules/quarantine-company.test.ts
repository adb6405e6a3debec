import { describe, expect, it } from 'vitest';
import { shortDay } from '../../src/days.ts';
import { quarantineOf } from '../../src/rules/quarantine.ts';
import { birdIn, waxbills } from '../room/facts.ts';
import { type Files, room } from '../rooms.ts';
import { birds, came, out, resident } from './quarantined.ts';
import { pair } from './warnings/warned.ts';

// Whom it was with, and what became of them, keeps a bird in quarantine.

// What it died of nobody knows until a vet has looked: the days of all who were with it begin anew (common practice).
describe('a death beside a bird in quarantine', () => {
  const beside = (...log: string[]) => birds(came('A', '2026-03-01'), came('B', '2026-03-01', ...log));

  it('lets the days begin anew', () => {
    expect(out(beside('date: 2026-03-10, died'), 'A')).toBe('9 Apr, B died');
  });

  it('in another cage does not, unless the bird was taken there ill', () => {
    const AWAY = 'date: 2026-03-09, moved: cage 8';
    const DEAD = 'date: 2026-03-14, died';
    expect(out(beside(AWAY, DEAD), 'A')).toBe('31 Mar');
    expect(out(beside('date: 2026-03-08, unwell: fluffed', AWAY, DEAD), 'A')).toBe('13 Apr, B died');
    const twice = ['date: 2026-03-03, unwell: fluffed', 'date: 2026-03-05, unwell: well again'];
    expect(out(beside(...twice, 'date: 2026-03-08, unwell: fluffed', AWAY, DEAD), 'A')).toBe(
      '13 Apr, B died',
    );
    expect(out(beside(...twice, AWAY, DEAD), 'A')).toBe('31 Mar');
    expect(out(beside(AWAY, 'date: 2026-03-09, died'), 'A')).toBe('8 Apr, B died');
  });

  it('lets them begin anew too where it was bred here, be it that nobody wrote that it ever left a nest', () => {
    const bred = (end: string): Files => ({
      ...birds(came('A', '2026-03-01')),
      'LW-1': waxbills('date: 2025-03-01, laid: 3, sitting\ndate: 2025-03-14, hatched: 3'),
      'LW-2': pair(
        'LW-2',
        'lavender waxbill',
        `date: 2026-02-01, paired\n${end}`,
        'cock: LW-1/1/c1\nhousing: cage 9',
      ),
    });
    expect(out(bred('date: 2026-03-10, died: cock'), 'A')).toBe('9 Apr, LW-1/1/c1 died');
  });

  it('in the flight that it was moved to once its days were over, does not', () => {
    const over = birds(
      came('A', '2026-03-01', 'date: 2026-03-31, moved: flight 2'),
      resident('H', 'date: 2026-04-20, died'),
    );
    expect(out(over, 'A', '2026-04-21')).toBe('31 Mar');
  });

  it('before another bird joins counts as long as that one did not', () => {
    const both = birds(
      came('A', '2026-03-01'),
      came('B', '2026-03-01', 'date: 2026-03-05, died'),
      came('C', '2026-03-12'),
    );
    expect(out(both, 'A', '2026-03-10')).toBe('4 Apr, B died');
    expect(out(both, 'A', '2026-03-12')).toBe('11 Apr with C');
  });

  it('counts too where the days are over and nobody let it out, for two months', () => {
    const late = (on: string) => out(beside(`date: ${on}, died`), 'A', '2026-06-15');
    expect(late('2026-05-30')).toBe('29 Jun, B died');
    expect(late('2026-05-31')).toBe('31 Mar');
  });
});

it('a bird that was thought dead and is found again never left, and joins nobody anew', () => {
  const found = resident(
    'H',
    'date: 2026-03-05, moved: cage 9',
    'date: 2026-03-08, died',
    'date: 2026-03-12, back',
  );
  expect(out(birds(came('A', '2026-03-01'), found), 'A')).toBe('4 Apr with H');
});

it('four are named, of five the fifth is counted', () => {
  const crowd = (...ids: string[]) =>
    birds(...ids.map((id) => came(id, '2026-03-11')), came('A', '2026-03-01'));
  expect(out(crowd('B', 'C', 'D', 'E'), 'A')).toBe('10 Apr with B, C, D and E');
  expect(out(crowd('B', 'C', 'D', 'E', 'F', 'G'), 'A')).toBe('10 Apr with B, C, D, E and 2 others');
});

describe('an illness beside a bird in quarantine', () => {
  /** The first day on which A may come out. */
  const free = (...log: string[]) => {
    const known = room(birds(came('A', '2026-03-01'), came('B', '2026-03-01', ...log)), '2026-06-30');
    return shortDay(quarantineOf(known, birdIn(known, 'A'))?.out ?? 0);
  };
  const ILL = 'date: 2026-03-28, unwell: fluffed';

  it('keeps it in until the ill one is well, though its days are over, and though the two were parted', () => {
    expect(free()).toBe('31 Mar');
    expect(free(ILL, 'date: 2026-04-03, unwell: well again')).toBe('3 Apr');
    const left = (on: string) =>
      free(ILL, `date: ${on}, moved: cage 8`, 'date: 2026-04-03, unwell: well again');
    expect(['2026-03-28', '2026-03-29'].map(left)).toEqual(['3 Apr', '3 Apr']);
    expect(free('date: 2026-03-27, moved: cage 8', ILL)).toBe('31 Mar');
  });

  it('of a mate from which it was parted before it went into quarantine is none of its company', () => {
    const shown = (parted: string) => {
      const known = room(
        {
          ...birds(
            resident('A', `date: 2026-03-01, moved: cage 9`, 'date: 2026-03-01, quarantine: 30'),
            `{id: H, log: [${['02-18', '03-01', '03-14', '03-26'].map((on) => `{date: 2026-${on}, unwell: fluffed}`).join(', ')}, {date: 2026-04-03, unwell: well again}]}`,
          ),
          'LW-1': waxbills(`date: 2026-02-01, courting\ndate: ${parted}, parted`, 'cock: A\nhen: H'),
        },
        '2026-06-30',
      );
      return shortDay(quarantineOf(known, birdIn(known, 'A'))?.out ?? 0);
    };
    expect(shown('2026-02-20')).toBe('31 Mar');
    expect(shown('2026-03-05')).toBe('3 Apr');
  });

  it('that begins two months after its days are over is another matter', () => {
    expect(free('date: 2026-05-30, unwell: fluffed')).toBe('14 Jun');
    expect(free('date: 2026-05-31, unwell: fluffed')).toBe('31 Mar');
  });

  it('that the other died of counts as the death that it was', () => {
    const short = birds(
      came('A', '2026-03-01', 'date: 2026-03-01, quarantine: 10'),
      came('B', '2026-03-01', 'date: 2026-03-04, unwell: fluffed', 'date: 2026-03-05, died'),
    );
    const known = room(short, '2026-03-06');
    expect(shortDay(quarantineOf(known, birdIn(known, 'A'))?.out ?? 0)).toBe('15 Mar');
  });
});
