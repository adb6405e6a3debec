import { describe, expect, it } from 'vitest';
import { line, pair, spell, warned, waxbills } from './warned.ts';

// Passerines lay one egg a day: Woodall 1975, Ostrich 46:55-86. Parrots and doves every second day: IASRI e-course.
describe('two eggs in a day', () => {
  const log = 'date: 2026-03-04, laid: 1\n date: 2026-03-05, laid: 2';

  it('are asked about for a week, in a species whose sexes look alike as two hens', () => {
    const room = { 'LW-1': waxbills(log) };
    expect(spell(room, 'two-hens', '2026-03-01', '2026-03-31')).toEqual(['03-05 … 03-12 note']);
    expect(line(room, 'two-hens', '2026-03-05')).toMatchObject({
      text: 'Two eggs were laid by 5 Mar where one hen lays one every day. Cock and hen look alike in this species: two hens?',
    });
    expect(line(room, 'two-hens', '2026-03-05').check).toContain('whether an egg was written down twice');
    const named = { 'LW-1': waxbills(log, 'cock: LW-20-01\nhen: LW-20-11') };
    expect(warned(named, 'two-hens', '2026-03-05')).toHaveLength(1);
  });

  it('are told with the day on which they were found, whatever was laid or written before', () => {
    const before = `date: 2026-03-02, laid: 1\n date: 2026-03-03, laid: 1\n ${log.replace('03-04, laid: 1', '03-04, laid: 1, nest: lined')}`;
    expect(line({ 'LW-1': waxbills(before) }, 'two-hens', '2026-03-05').text).toMatch(
      /^Two eggs were laid by 5 Mar where/,
    );
  });

  it('are one line, also where one of them was taken to an incubator', () => {
    const room = { 'LW-1': waxbills(`${log}\n date: 2026-03-06, set: {incubator: e1}`) };
    expect(warned(room, 'two-hens', '2026-03-06')).toHaveLength(1);
  });

  it('are another hen’s where cock and hen differ', () => {
    const room = { 'ZF-1': pair('ZF-1', 'zebra finch', log) };
    const { text, check } = line(room, 'two-hens', '2026-03-05');
    expect(text).toContain('Does another hen lay in this nest?');
    expect(check).toMatch(/; which hens can get at the nest$/);
  });

  it('are nothing where they were found together at a first look, by count or by name', () => {
    for (const laid of ['2', '[e1, e2]']) {
      expect(
        warned({ 'LW-1': waxbills(`date: 2026-03-05, laid: ${laid}`) }, 'two-hens', '2026-03-05'),
      ).toEqual([]);
    }
  });

  it('are nothing where the nest was not looked into between them', () => {
    const room = { 'LW-1': waxbills('date: 2026-03-04, laid: 1\n date: 2026-03-06, laid: 2') };
    expect(warned(room, 'two-hens', '2026-03-06')).toEqual([]);
  });

  it('are nothing new where two hens are known to share the nest', () => {
    const room = { 'LW-1': waxbills(log, 'hen: [LW-20-11, LW-20-12]') };
    expect(warned(room, 'two-hens', '2026-03-05')).toEqual([]);
  });

  it('of a dove are two on one morning, not on two', () => {
    const dove = (text: string) => ({ 'DD-1': pair('DD-1', 'diamond dove', text) });
    expect(
      warned(dove('date: 2026-03-04, laid: 1\n date: 2026-03-05, laid: 1'), 'two-hens', '2026-03-05'),
    ).toEqual([]);
    expect(
      warned(
        dove('date: 2026-03-04, laid: 1\n date: 2026-03-04, time: 18:00, laid: 1'),
        'two-hens',
        '2026-03-05',
      ),
    ).toHaveLength(1);
    expect(
      line(
        dove('date: 2026-03-04, laid: 1\n date: 2026-03-04, time: 18:00, laid: 1'),
        'two-hens',
        '2026-03-05',
      ).text,
    ).toContain('where one hen lays one every 2 d');
  });
});

describe('too many eggs for one hen', () => {
  const days = (n: number) =>
    Array.from({ length: n }, (_, i) => `date: 2026-03-${10 + i}, laid: 1`).join('\n');

  it('are more than two over a large clutch', () => {
    expect(warned({ 'LW-1': waxbills(days(7)) }, 'two-hens', '2026-03-17')).toEqual([]);
    const { level, text } = line({ 'LW-1': waxbills(days(8)) }, 'two-hens', '2026-03-17');
    expect(level).toBe('watch');
    expect(text).toContain('8 eggs lie in one clutch; 5 is a large one');
  });

  it('are so still when some of them broke, or all were taken to an incubator, after the last was laid', () => {
    for (const then of ['lost: {broken: e1}', 'set: {incubator: all}'])
      expect(
        warned({ 'LW-1': waxbills(`${days(8)}\n date: 2026-03-18, ${then}`) }, 'two-hens', '2026-03-18'),
        then,
      ).toMatchObject([{ level: 'watch' }]);
  });

  it.each([
    ['broke on the day of the last', 'date: 2026-03-17, lost: {broken: e1}'],
    ['went to an incubator while she laid', 'date: 2026-03-12, set: {incubator: [e1, e2]}'],
    ['went to another pair while she laid', 'date: 2026-03-12, fostered: {LW-2: [e1, e2]}'],
  ])('are not those of which some %s', (_what, then) => {
    const files = {
      'LW-1': waxbills(`${days(8)}\n ${then}`),
      'LW-2': pair('LW-2', 'lavender waxbill', 'date: 2026-03-10, laid: 1'),
    };
    expect(warned(files, 'two-hens', '2026-03-17')).toEqual([]);
  });

  it('are not those of a hen whose eggs are taken from her', () => {
    const log = `${days(8)}\n date: 2026-03-12, lost: {removed: [e1, e2]}`;
    expect(warned({ 'LW-1': waxbills(log) }, 'two-hens', '2026-03-17')).toEqual([]);
  });
});

describe('a clutch that is all clear', () => {
  const eggs = `
    date: 2026-03-01, laid: 1
    date: 2026-03-02, laid: 1
    date: 2026-03-03, laid: 1
    date: 2026-03-04, laid: 1, sitting: hen`;

  it('asks for two hens where the sexes look alike', () => {
    const room = { 'LW-1': waxbills(`${eggs}\n date: 2026-03-10, candled: {clear: all}`) };
    expect(spell(room, 'two-hens', '2026-03-01', '2026-03-31')).toEqual(['03-10 … 03-17 note']);
    expect(line(room, 'two-hens', '2026-03-10').text).toBe(
      'All 4 eggs are clear. Cock and hen look alike in this species: two hens?',
    );
    expect(line(room, 'two-hens', '2026-03-10').check).toMatch(
      /who sings and who sits, and a feather for sexing$/,
    );
  });

  it('is no sign where it is a single egg, however few the species lays', () => {
    const files = (log: string) => ({
      'species/cliff-pigeon.yaml': 'species: cliff pigeon\nsexes: alike\nclutch: 1-2\nincubation: 13-15\n',
      'CP-1': pair('CP-1', 'cliff pigeon', log),
    });
    const one = 'date: 2026-03-01, laid: 1, sitting';
    const two = 'date: 2026-03-01, laid: 1\ndate: 2026-03-02, laid: 1, sitting';
    expect(
      warned(files(`${one}\ndate: 2026-03-12, candled: {clear: all}`), 'two-hens', '2026-03-12'),
    ).toEqual([]);
    expect(
      line(files(`${two}\ndate: 2026-03-12, candled: {clear: all}`), 'two-hens', '2026-03-12').text,
    ).toBe('All 2 eggs are clear. Cock and hen look alike in this species: two hens?');
  });

  it('is louder with two eggs in a day', () => {
    const log = `
      date: 2026-03-01, laid: 1
      date: 2026-03-02, laid: 2
      date: 2026-03-03, laid: 1, sitting: hen
      date: 2026-03-09, candled: {clear: all}`;
    const room = { 'LW-1': waxbills(log) };
    expect(line(room, 'two-hens', '2026-03-09')).toMatchObject({
      level: 'watch',
      text: expect.stringMatching(/^Two eggs were laid by 2 Mar .*; all 4 eggs are clear\./),
    });
    expect(spell(room, 'two-hens', '2026-03-01', '2026-03-31')).toEqual([
      '03-02 … 03-08 note',
      '03-09 … 03-16 watch',
    ]);
  });

  it.each([
    [
      'one of them was not candled',
      `${eggs.replace(', sitting: hen', '')}\n date: 2026-03-05, laid: 1, sitting: hen\n date: 2026-03-10, candled: {clear: [e1, e2, e3, e4]}`,
    ],
    [
      'they are fewer than usual',
      'date: 2026-03-01, laid: 1\n date: 2026-03-02, laid: 1, sitting\n date: 2026-03-10, candled: {clear: all}',
    ],
    ['candled before their day', `${eggs}\n date: 2026-03-06, candled: {clear: all}`],
    [
      'one of them has pipped',
      `${eggs}\n date: 2026-03-08, candled: {clear: all}\n date: 2026-03-10, pipped: e1`,
    ],
    [
      'of a pair with a fertile egg before',
      `
      date: 2025-03-01, laid: 1
      date: 2025-03-03, laid: 1, sitting: hen
      date: 2025-03-10, candled: {fertile: e1, clear: e2}
      date: 2025-03-20, lost: {addled: all}
      ${eggs}
      date: 2026-03-10, candled: {clear: all}`,
    ],
    [
      'of a pair of which a chick died in the shell before',
      `
      date: 2025-03-01, laid: 2
      date: 2025-03-03, sitting: hen
      date: 2025-03-20, lost: {dead-in-shell: e1, clear: e2}
      ${eggs}
      date: 2026-03-10, candled: {clear: all}`,
    ],
    [
      'of a pair with a dead germ under the lamp before',
      `
      date: 2025-03-01, laid: 2
      date: 2025-03-03, sitting: hen
      date: 2025-03-12, candled: {dead: e1, clear: e2}
      date: 2025-03-20, lost: {addled: all}
      ${eggs}
      date: 2026-03-10, candled: {clear: all}`,
    ],
  ])('says nothing when %s', (_why, log) => {
    expect(warned({ 'LW-1': waxbills(log) }, 'two-hens', '2026-03-10')).toEqual([]);
  });

  it('says nothing where cock and hen differ', () => {
    const room = { 'ZF-1': pair('ZF-1', 'zebra finch', `${eggs}\n date: 2026-03-10, candled: {clear: all}`) };
    expect(warned(room, 'two-hens', '2026-03-10')).toEqual([]);
  });

  it('is known from the day on which they were told clear, whatever the lamp showed too early or could not show', () => {
    const log = `${eggs}\n date: 2026-03-05, candled: {clear: all}\n date: 2026-03-10, candled: {clear: all}\n date: 2026-03-12, candled: {unsure: e1}`;
    expect(spell({ 'LW-1': waxbills(log) }, 'two-hens', '2026-03-01', '2026-03-31')).toEqual([
      '03-10 … 03-17 note',
    ]);
  });

  it('is known when the last of them was told clear, by the lamp or when it was taken out as clear', () => {
    const one = (then: string) =>
      spell({ 'LW-1': waxbills(`${eggs}\n ${then}`) }, 'two-hens', '2026-03-01', '2026-03-31');
    expect(
      one('date: 2026-03-10, candled: {clear: [e1, e2]}\n date: 2026-03-12, candled: {clear: [e3, e4]}'),
    ).toEqual(['03-12 … 03-19 note']);
    expect(one('date: 2026-03-14, lost: {clear: all}')).toEqual(['03-14 … 03-21 note']);
    expect(one('date: 2026-03-10, candled: {clear: all}\n date: 2026-03-14, lost: {eaten: all}')).toEqual([
      '03-10 … 03-17 note',
    ]);
  });

  it('is settled by a new hen as by a new cock', () => {
    const log = `${eggs}\n date: 2026-03-10, candled: {clear: all}\n date: 2026-03-12, paired: {hen: LW-20-12}`;
    expect(spell({ 'LW-1': waxbills(log, 'hen: LW-20-11') }, 'two-hens', '2026-03-01', '2026-03-31')).toEqual(
      ['03-10 … 03-11 note'],
    );
  });

  it('is settled by a new mate', () => {
    const log = `${eggs}\n date: 2026-03-10, candled: {clear: all}\n date: 2026-03-12, parted\n date: 2026-03-13, paired: {cock: LW-20-09}`;
    expect(
      spell({ 'LW-1': waxbills(log, 'cock: LW-20-01') }, 'two-hens', '2026-03-01', '2026-03-31'),
    ).toEqual(['03-10 … 03-12 note']);
  });
});
