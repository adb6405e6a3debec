import { describe, expect, it } from 'vitest';
import { pair } from '../warnings/warned.ts';
import { ALL_OUT, FOUR_EGGS, hillFinches, lines, species, stands, THREE_CHICKS } from './hill-finch.ts';

const bird = (log: string, head = '') => ({
  ...species(),
  'birds.yaml': `birds:\n  - id: HF-9\n    species: hill finch\n${head}    log:\n      - {date: 2026-03-01, arrived: cage 1}\n${log}`,
});
const quarantine = (files: Record<string, string>, to = '2026-06-30') =>
  stands(files, 'quarantine-end', '2026-03-01', to);

describe('the end of quarantine', () => {
  // Thirty days (common practice): 1 March + 30 is 31 March; given up sixty days later, 30 May.
  it('is due thirty days after arrival', () => {
    expect(quarantine(bird(''))).toEqual(['03-31 … 04-02 now', '04-03 … 05-30 late']);
    expect(lines(bird(''), 'quarantine-end', '2026-03-31')).toMatchObject([
      { bird: 'HF-9', pair: null, who: ['HF-9'], housing: 'cage 1', why: 'arrived 1 Mar + 30 d' },
    ]);
  });

  it('is the room’s own where it says so', () => {
    const files = { ...bird(''), 'nestlog.yaml': 'limits: {quarantine: 45}\n' };
    expect(quarantine(files, '2026-04-17')).toEqual(['04-15 … 04-17 now']);
  });

  it('begins anew where the keeper says so', () => {
    expect(quarantine(bird('      - {date: 2026-03-10, quarantine: 30}\n'), '2026-04-11')).toEqual([
      '04-09 … 04-11 now',
    ]);
    expect(
      quarantine(bird('      - {date: 2026-03-10, quarantine: {until: 2026-04-20}}\n'), '2026-04-20'),
    ).toEqual(['04-20 now']);
  });

  it('says how it began: it came, it came home, or the keeper set it apart', () => {
    const why = (log: string, on: string) => lines(bird(log), 'quarantine-end', on).map((item) => item.why);
    const apart = '      - {date: 2026-03-10, quarantine: 30}\n';
    expect(why(apart, '2026-04-09')).toEqual(['apart since 10 Mar + 30 d']);
    const home = '      - {date: 2026-03-20, gone: lent}\n      - {date: 2026-05-01, back}\n';
    expect(why(`${home}${apart.replace('03-10', '05-10')}`, '2026-06-09')).toEqual([
      'apart since 10 May + 30 d',
    ]);
  });

  it('waits while the bird is unwell', () => {
    const ill = '      - {date: 2026-03-30, unwell: fluffed}\n';
    expect(quarantine(bird(ill), '2026-04-02')).toEqual([]);
    expect(quarantine(bird(`${ill}      - {date: 2026-04-01, unwell: well again}\n`), '2026-04-02')).toEqual([
      '04-01 … 04-02 now',
    ]);
  });

  it('is not late for the days in which the bird was unwell, or nobody said that it is well', () => {
    const ill = bird('      - {date: 2026-03-26, unwell: fluffed}\n');
    expect(quarantine(ill, '2026-04-13')).toEqual(['04-10 … 04-12 now', '04-13 late']);
    expect(lines(ill, 'quarantine-end', '2026-04-10')).toMatchObject([
      { why: 'arrived 1 Mar + 30 d, unwell until 10 Apr' },
    ]);
  });

  describe('in company', () => {
    const with2 = (second: string, first = '') => ({
      'birds.yaml': `birds:
  - {id: Q-1, log: [{date: 2026-03-01, arrived: q cage}${first}]}
  - {id: Q-2, log: [${second}]}
`,
    });
    const came = '{date: 2026-03-01, arrived: q cage}';
    const ill = '{date: 2026-03-28, unwell: fluffed on the floor}';
    /** The mornings on which Q-1 may be let out, up to the first on which it is late. */
    const outs = (files: Record<string, string>, to: string) =>
      quarantine(files, to).map((run) => run.replace('now now', 'now'));

    it('waits while one that shares the housing is unwell', () => {
      expect(outs(with2(`${came}, ${ill}`), '2026-04-14')).toEqual(['04-12 … 04-14 now']);
      expect(lines(with2(`${came}, ${ill}`), 'quarantine-end', '2026-04-12').map(({ why }) => why)).toEqual([
        'arrived 1 Mar + 30 d, Q-2 unwell until 12 Apr; ask an avian vet first',
        'arrived 1 Mar + 30 d, unwell until 12 Apr',
      ]);
      expect(lines(with2(`${came}, ${ill}`), 'quarantine-end', '2026-04-08', 7)).toEqual([]);
      const well = `${came}, ${ill}, {date: 2026-04-02, unwell: well again}`;
      expect(outs(with2(well), '2026-04-04')).toEqual(['04-02 … 04-04 now']);
    });

    it('waits too where the ill one is not in quarantine, or was taken out of the cage', () => {
      // An old bird of the room that the newcomer was brought to: the days begin anew with it on 5 March.
      const old = '{date: 2025-03-01, arrived: flight 2}, {date: 2025-04-01, released}';
      const joined = with2(`${old}, {date: 2026-03-05, moved: q cage}, {date: 2026-04-03, unwell: fluffed}`);
      expect(outs(joined, '2026-04-20')).toEqual(['04-18 … 04-20 now']);
      const apart = with2(`${came}, ${ill}, {date: 2026-03-29, moved: sick bay}`);
      expect(outs(apart, '2026-04-14')).toEqual(['04-12 … 04-14 now']);
    });

    it('says with whom the days began anew, and of illnesses only those that keep it in longer', () => {
      const why = (first: string, second: string, on: string) =>
        lines(with2(second, first), 'quarantine-end', on).find(({ bird: who }) => who === 'Q-1')?.why;
      const joins = came.replace('03-01', '03-11');
      expect(why('', joins, '2026-04-10')).toBe('with Q-2 since 11 Mar + 30 d');
      const early = ', {date: 2026-03-05, unwell: fluffed}, {date: 2026-03-08, unwell: well again}';
      expect(why(early, came, '2026-03-31')).toBe('arrived 1 Mar + 30 d');
      // Well again on the very day on which its days are over: it kept nobody in.
      const just = `${early}, {date: 2026-03-20, unwell: fluffed}, {date: 2026-03-31, unwell: well again}`;
      expect(why(just, came, '2026-03-31')).toBe('arrived 1 Mar + 30 d');
      // The last to be well again is named alone.
      const both = ', {date: 2026-03-29, unwell: fluffed}, {date: 2026-04-01, unwell: well again}';
      const last = `${came}, {date: 2026-03-29, unwell: fluffed}, {date: 2026-04-03, unwell: well again}`;
      expect(why(both, last, '2026-04-03')).toBe(
        'arrived 1 Mar + 30 d, Q-2 unwell until 3 Apr; ask an avian vet first',
      );
    });

    it('does not wait for one that fell ill elsewhere after they were parted', () => {
      const parted = with2(`${came}, {date: 2026-03-10, moved: cage 2}, ${ill}`);
      expect(lines(parted, 'quarantine-end', '2026-03-31').map(({ bird: who }) => who)).toEqual(['Q-1']);
    });

    it.each([
      ['in the cage', '{date: 2026-03-29, died: "fluffed, then dead"}'],
      ['where it was taken ill', `${ill}, {date: 2026-03-28, moved: sick bay}, {date: 2026-03-29, died}`],
      [
        'in the cage, which was spelt otherwise',
        '{date: 2026-03-02, moved: Q Cage}, {date: 2026-03-29, died}',
      ],
    ])('is counted anew from the day on which one that was with it died %s', (_where, log) => {
      const dead = with2(`${came}, ${log}`);
      expect(quarantine(dead, '2026-04-30')).toEqual(['04-28 … 04-30 now']);
      expect(lines(dead, 'quarantine-end', '2026-04-28')).toMatchObject([
        { bird: 'Q-1', why: 'Q-2 died 29 Mar + 30 d; ask an avian vet first' },
      ]);
    });

    it('is counted anew as well where the ill one dies after the thirty days, before anybody was let out', () => {
      const dead = with2(`${came}, ${ill}, {date: 2026-04-02, died}`);
      expect(quarantine(dead, '2026-05-04')).toEqual(['05-02 … 05-04 now']);
    });

    it('is over with `released`, whoever died before', () => {
      const dead = with2(`${came}, {date: 2026-03-29, died}`, ', {date: 2026-04-03, released: flight 2}');
      expect(quarantine(dead)).toEqual([]);
    });

    it('is not asked again of birds that live together for years and were never said to be released', () => {
      const late = with2(`${came}, {date: 2026-08-01, unwell: fluffed}, {date: 2026-08-05, died}`);
      expect(stands(late, 'quarantine-end', '2026-07-01', '2026-10-01')).toEqual([]);
    });
  });

  it.each(['released: flight 2', 'died', 'gone: sold'])('is over with: %s', (what) => {
    expect(quarantine(bird(`      - {date: 2026-04-01, ${what}}\n`))).toEqual(['03-31 now']);
  });

  it('begins anew when a bird comes home', () => {
    const log = '      - {date: 2026-03-20, gone: lent}\n      - {date: 2026-05-01, back}\n';
    expect(quarantine(bird(log), '2026-06-02')).toEqual(['05-31 … 06-02 now']);
    expect(lines(bird(log), 'quarantine-end', '2026-06-01')).toMatchObject([{ why: 'back 1 May + 30 d' }]);
  });
});

describe('notes of an age', () => {
  // Hatched 15 March: + 40 d is 24 April; nine months are 15 December, by the calendar.
  const grown = hillFinches(`${ALL_OUT}date: 2026-04-22, independent: all`);

  it('on the one day on which the first moult begins', () => {
    expect(stands(grown, 'moult', '2026-04-20', '2026-04-30')).toEqual(['04-24 now now now']);
    const moulting = hillFinches(
      `${ALL_OUT}date: 2026-04-22, independent: all\ndate: 2026-04-23, moult: {started: [c1, c2]}`,
    );
    expect(lines(moulting, 'moult', '2026-04-24').map(({ bird: who }) => who)).toEqual(['HF-1/1/c3']);
  });

  it('on the one day on which it is old enough to breed', () => {
    expect(stands(grown, 'of-age', '2026-12-10', '2026-12-20')).toEqual(['12-15 now now now']);
  });

  it('say what they are counted from', () => {
    expect(lines(grown, 'moult', '2026-04-24')[0]?.why).toBe('hatched 15 Mar + 40 d');
    expect(lines(grown, 'of-age', '2026-12-15')[0]?.why).toBe('hatched 15 Mar + 9 months');
  });

  it('are apart: who has moulted still comes of age', () => {
    const moulted = hillFinches(
      `${ALL_OUT}date: 2026-04-22, independent: all\ndate: 2026-04-23, moult: {started: all}`,
    );
    expect(lines(moulted, 'moult', '2026-04-24')).toEqual([]);
    expect(lines(moulted, 'of-age', '2026-12-15')).toHaveLength(3);
  });

  it('of a bird with a ring of 2025: old enough when the youngest of that year are; its moult nobody can foretell', () => {
    const ringed = bird('', '    hatched: 2025\n');
    // The last day of 2025 + nine months.
    expect(lines(ringed, 'of-age', '2026-09-30')).toMatchObject([{ why: 'hatched by 31 Dec + 9 months' }]);
    expect(stands(ringed, 'of-age', '2026-09-01', '2026-10-30')).toEqual(['09-30 now']);
    expect(stands(bird('', '    hatched: 2026\n'), 'moult', '2026-03-01', '2026-05-30')).toEqual([]);
  });

  it('the first moult where the hatch is known within a fortnight, and no day worse', () => {
    const seen = (after: string) =>
      hillFinches(
        `${FOUR_EGGS}date: 2026-03-28, after: ${after}, hatched: 1\ndate: 2026-04-12, fledged: all`,
      );
    // Hatched on one of the days from the 14th, or from the 13th, to the 28th of March; forty days on is 7 May.
    const notes = (after: string) => stands(seen(after), 'moult', '2026-04-20', '2026-06-30');
    expect([notes('2026-03-13'), notes('2026-03-12')]).toEqual([['05-07 now'], []]);
  });

  it('of age are young that were bred here, though nobody wrote of them since they hatched', () => {
    // Nine months, where all that was written of them is that they left the nest.
    expect(lines(hillFinches(ALL_OUT), 'of-age', '2026-12-15')).toHaveLength(3);
  });

  it('are not said where nobody knows the age', () => {
    const log = `${ALL_OUT}date: 2026-04-22, independent: all`;
    const unknown = hillFinches(log, { moult: '', 'breeding-age': '' });
    expect(lines(unknown, 'moult', '2026-04-24', 300)).toEqual([]);
    expect(lines(unknown, 'of-age', '2026-04-24', 300)).toEqual([]);
  });

  it('not for the dead and gone', () => {
    const log = `${ALL_OUT}date: 2026-04-22, independent: all\ndate: 2026-04-23, died: c1\ndate: 2026-04-23, gone: {sold: c2}`;
    expect(lines(hillFinches(log), 'moult', '2026-04-24').map(({ bird: who }) => who)).toEqual(['HF-1/1/c3']);
  });

  const mate = { 'HF-1': pair('HF-1', 'hill finch', 'date: 2026-02-01, paired') };
  it('for a young bird that came from outside', () => {
    // Hatched 1 February, nine months are 1 November.
    const files = { ...bird('', '    hatched: 2026-02-01\n'), ...mate };
    expect(stands(files, 'of-age', '2026-10-30', '2026-11-05')).toEqual(['11-01 now']);
    // Forty days are over on 13 March, after it came.
    expect(stands(files, 'moult', '2026-03-01', '2026-03-31')).toEqual(['03-13 now']);
  });

  it('on the very day of its arrival, too', () => {
    // 20 January + 40 d is 1 March.
    const files = { ...bird('', '    hatched: 2026-01-20\n'), ...mate };
    expect(stands(files, 'moult', '2026-03-01', '2026-03-05')).toEqual(['03-01 now']);
  });

  it('by its own species, not by that of the pairs here', () => {
    const files = (kind: string) => ({
      ...species(),
      ...mate,
      'birds.yaml': `birds:\n  - id: X-9\n${kind}    hatched: 2026-02-01\n    log:\n      - {date: 2026-02-01, arrived: cage 1}\n`,
    });
    expect(lines(files('    species: hill finch\n'), 'moult', '2026-03-13')).toHaveLength(1);
    expect(lines(files('    species: budgerigar\n'), 'moult', '2026-03-13')).toEqual([]);
    expect(lines(files(''), 'moult', '2026-03-13')).toEqual([]);
  });

  it('not for one that was older when it came', () => {
    const files = { ...bird('', '    hatched: 2026-01-01\n'), ...mate };
    expect(stands(files, 'moult', '2026-01-01', '2026-03-31')).toEqual([]);
  });
});

describe('rest for a hen that has had her year’s clutches', () => {
  const year = (more = '', limit = '1') => ({
    ...species({ 'clutches-per-year': limit }),
    'HF-1': pair('HF-1', 'hill finch', `${ALL_OUT}${more}`, 'cock: HF-10\nhen: HF-11'),
  });

  it('from the first fledging of the last clutch, for sixty days', () => {
    // 5 April + 60 is 4 June.
    expect(stands(year(), 'rest', '2026-03-01', '2026-07-01')).toEqual(['04-05 … 06-04 now']);
    expect(lines(year(), 'rest', '2026-04-05')).toMatchObject([{ pair: 'HF-1', who: ['HF-11'], to: null }]);
  });

  it('says how many clutches, from when, and when she is free again', () => {
    // The first egg on 1 March 2026, a year on.
    expect(lines(year(), 'rest', '2026-04-05')[0]?.why).toBe(
      '1 clutch in a year, the limit is 1; first fledged 5 Apr; free again 1 Mar',
    );
  });

  it('counts from the first that left the nest, and not before one has', () => {
    const log = `${THREE_CHICKS}date: 2026-04-04, fledged: c1\ndate: 2026-04-07, fledged: all\n`;
    const out = { ...year(), 'HF-1': pair('HF-1', 'hill finch', log, 'cock: HF-10\nhen: HF-11') };
    expect(stands(out, 'rest', '2026-03-20', '2026-04-08')).toEqual(['04-04 … 04-08 now']);
    const none = { ...year(), 'HF-1': pair('HF-1', 'hill finch', THREE_CHICKS, 'cock: HF-10\nhen: HF-11') };
    expect(stands(none, 'rest', '2026-03-20', '2026-04-08')).toEqual([]);
  });

  it('is over with a nest that was taken out that day, not with one taken out before', () => {
    expect(lines(year('date: 2026-04-05, nest: removed'), 'rest', '2026-04-05')).toEqual([]);
    expect(lines(year('date: 2026-02-20, nest: removed'), 'rest', '2026-04-05')).toHaveLength(1);
    expect(lines(year('date: 2026-04-06, nest: cleaned'), 'rest', '2026-04-06')).toHaveLength(1);
    expect(lines(year('date: 2026-04-06, skip: nest-down'), 'rest', '2026-04-06')).toHaveLength(1);
  });

  it('is said where her last clutch was, and of a hen that is known', () => {
    const again = 'date: 2026-05-01, laid: 1\ndate: 2026-05-02, laid: 1\n';
    const two = {
      ...year('date: 2026-04-07, parted\n'),
      'HF-2': pair('HF-2', 'hill finch', again, 'cock: HF-20\nhen: HF-11'),
    };
    expect(lines(two, 'rest', '2026-05-10')).toEqual([]);
    const together = { ...year(), 'HF-2': pair('HF-2', 'hill finch', again, 'cock: HF-20\nhen: HF-11') };
    expect(lines(together, 'rest', '2026-05-10')).toEqual([]);
    const reared = 'date: 2026-05-01, laid: 1\ndate: 2026-05-15, hatched: 1\ndate: 2026-06-04, fledged: 1';
    const later = { ...year(), 'HF-2': pair('HF-2', 'hill finch', reared, 'cock: HF-20\nhen: HF-11') };
    expect(lines(later, 'rest', '2026-06-04').map((item) => item.pair)).toEqual(['HF-2']);
    expect(lines(later, 'rest', '2026-06-04')[0]?.why).toMatch(/^2 clutches in a year, the limit is 1; /);
    const hens = (head: string) => ({ ...year(), 'HF-1': pair('HF-1', 'hill finch', ALL_OUT, head) });
    expect(lines(hens('cock: HF-10'), 'rest', '2026-04-05')).toEqual([]);
    expect(lines(hens('cock: HF-10\nhen: [HF-11, HF-12]'), 'rest', '2026-04-05')).toEqual([]);
  });

  it('is not asked for where neither the species nor the room has a limit', () => {
    expect(lines(year('', ''), 'rest', '2026-04-05')).toEqual([]);
    const limited = { ...year('', ''), 'nestlog.yaml': 'limits: {clutches-per-year: 1}\n' };
    expect(lines(limited, 'rest', '2026-04-05')).toHaveLength(1);
  });

  it('not before the limit', () =>
    expect(stands(year('', '2'), 'rest', '2026-03-01', '2026-07-01')).toEqual([]));

  it.each([
    ['parted', 'date: 2026-04-07, parted'],
    ['the nest taken out', 'date: 2026-04-07, nest: removed'],
    ['the hen’s death', 'date: 2026-04-07, died: hen'],
    ['the keeper’s wish', 'date: 2026-04-07, skip: rest'],
  ])('is over with: %s', (_what, line) => {
    expect(stands(year(line), 'rest', '2026-03-01', '2026-07-01')).toEqual(['04-05 … 04-06 now']);
  });
});
