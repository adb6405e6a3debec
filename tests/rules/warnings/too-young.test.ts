import { describe, expect, it } from 'vitest';
import type { Files } from '../../rooms.ts';
import { line, spell, warned, waxbills } from './warned.ts';

const heads = 'cock: LW-20-01\nhen: LW-25-11';
const files = (log: string, birds = '{id: LW-25-11, sex: hen, hatched: 2025-09-01}'): Files => ({
  'birds.yaml': `birds:\n  - ${birds}\n`,
  'LW-1': waxbills(log, heads),
});

// Least breeding age nine months: common practice. Wild zebra finches bred at 60–70 d (Emu 1994): able is not fit.
describe('a bird put to a mate too young', () => {
  it('is watched for a fortnight after they were put together, and again after the first egg', () => {
    const room = files('date: 2026-02-01, paired\n date: 2026-03-10, laid: 1');
    expect(spell(room, 'too-young', '2026-01-25', '2026-06-30')).toEqual([
      '02-01 … 02-15 watch',
      '03-10 … 03-24 watch',
    ]);
    expect(line(room, 'too-young', '2026-02-01').text).toBe(
      'The hen LW-25-11 is 5 months old in a pair since 1 Feb; 9 months is the least for the species. A hen that lays before she is grown is prone to egg binding.',
    );
  });

  it('is watched from the first entry on where nobody wrote when they were put together', () => {
    const room = files('date: 2026-02-01, nest: offered\n date: 2026-03-10, laid: 1');
    expect(spell(room, 'too-young', '2026-01-25', '2026-06-30')).toEqual([
      '02-01 … 02-15 watch',
      '03-10 … 03-24 watch',
    ]);
  });

  it('that laid is told with her first egg', () => {
    const room = files('date: 2026-02-01, paired\n date: 2026-03-10, laid: 1');
    expect(line(room, 'too-young', '2026-03-10').text).toMatch(
      /^The hen LW-25-11 is 6 months old with a first egg on 10 Mar; 9 months is the least for the species\./,
    );
  });

  it('is over when it is old enough, or parted', () => {
    const old = files('date: 2026-05-28, paired');
    expect(spell(old, 'too-young', '2026-05-20', '2026-06-30')).toEqual(['05-28 … 05-31 watch']);
    const parted = files('date: 2026-02-01, paired\n date: 2026-02-03, parted');
    expect(spell(parted, 'too-young', '2026-01-25', '2026-06-30')).toEqual(['02-01 … 02-02 watch']);
  });

  it('is a note where it is the cock', () => {
    const room = files('date: 2026-02-01, paired', '{id: LW-20-01, sex: cock, hatched: 2025-09-01}');
    expect(line(room, 'too-young', '2026-02-01')).toMatchObject({ level: 'note' });
    expect(line(room, 'too-young', '2026-02-01').text).toContain('The cock LW-20-01 is 5 months old');
  });

  it('is nothing for a bird of unknown age, or of several', () => {
    expect(
      warned(files('date: 2026-02-01, paired', '{id: LW-25-11, sex: hen}'), 'too-young', '2026-02-01'),
    ).toEqual([]);
  });
});
