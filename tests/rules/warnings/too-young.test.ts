import { describe, expect, it } from 'vitest';
import type { Files } from '../../rooms.ts';
import { line, pair, spell, warned, waxbills } from './warned.ts';

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

  it('is not told with an egg that the mate before laid, but with the first since it came', () => {
    const before =
      'date: 2026-01-01, paired: {hen: LW-20-09}\n date: 2026-01-05, laid: 1\n date: 2026-01-20, parted';
    const room = files(`${before}\n date: 2026-02-01, paired: {hen: LW-25-11}\n date: 2026-03-10, laid: 1`);
    expect(line(room, 'too-young', '2026-02-03')).toMatchObject({
      text: expect.stringContaining('in a pair since 1 Feb;'),
      check: expect.stringMatching(/^no nest, or apart, until old enough/),
    });
    expect(warned(room, 'too-young', '2026-02-03')).toMatchObject([{ clutch: null }]);
    expect(line(room, 'too-young', '2026-03-10').check).toMatch(
      /^calcium on offer, and the hen each morning/,
    );
    expect(warned(room, 'too-young', '2026-03-10')).toMatchObject([{ clutch: 2 }]);
  });

  it('is nothing once it is dead, nor for a species of which nobody knows the age', () => {
    const died = files('date: 2026-02-01, paired\n date: 2026-02-03, died: hen');
    expect(spell(died, 'too-young', '2026-01-25', '2026-02-20')).toEqual(['02-01 … 02-02 watch']);
    const unknown = { ...files(''), 'LW-1': pair('LW-1', 'ridge finch', 'date: 2026-02-01, paired', heads) };
    expect(warned(unknown, 'too-young', '2026-02-03')).toEqual([]);
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

  it('is watched where both are too young, for the hen’s sake, and told with an egg of the very day', () => {
    const room: Files = {
      ...files('date: 2026-02-01, paired, laid: 1'),
      'birds.yaml':
        'birds:\n  - {id: LW-25-11, sex: hen, hatched: 2025-09-01}\n  - {id: LW-20-01, sex: cock, hatched: 2025-09-01}\n',
    };
    expect(line(room, 'too-young', '2026-02-01')).toMatchObject({
      level: 'watch',
      text: expect.stringContaining('with a first egg on 1 Feb'),
    });
  });

  it('is nothing for a bird of unknown age, or of several', () => {
    expect(
      warned(files('date: 2026-02-01, paired', '{id: LW-25-11, sex: hen}'), 'too-young', '2026-02-01'),
    ).toEqual([]);
  });
});
