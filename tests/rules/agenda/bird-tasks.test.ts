import { describe, expect, it } from 'vitest';
import { pair } from '../warnings/warned.ts';
import { ALL_OUT, hillFinches, lines, species, stands } from './hill-finch.ts';

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

  it('waits while the bird is unwell', () => {
    const ill = '      - {date: 2026-03-30, unwell: fluffed}\n';
    expect(quarantine(bird(ill), '2026-04-02')).toEqual([]);
    expect(quarantine(bird(`${ill}      - {date: 2026-04-01, unwell: well again}\n`), '2026-04-02')).toEqual([
      '04-01 … 04-02 now',
    ]);
  });

  it.each(['released: flight 2', 'died', 'gone: sold'])('is over with: %s', (what) => {
    expect(quarantine(bird(`      - {date: 2026-04-01, ${what}}\n`))).toEqual(['03-31 now']);
  });

  it('begins anew when a bird comes home', () => {
    const log = '      - {date: 2026-03-20, gone: lent}\n      - {date: 2026-05-01, back}\n';
    expect(quarantine(bird(log), '2026-06-02')).toEqual(['05-31 … 06-02 now']);
  });
});

describe('notes of an age', () => {
  // Hatched 15 March: + 40 d is 24 April; nine months of 30.4 d are 274 d, 14 December.
  const grown = hillFinches(`${ALL_OUT}date: 2026-04-22, independent: all`);

  it('on the one day on which the first moult begins', () => {
    expect(stands(grown, 'moult', '2026-04-20', '2026-04-30')).toEqual(['04-24 now now now']);
    const moulting = hillFinches(
      `${ALL_OUT}date: 2026-04-22, independent: all\ndate: 2026-04-23, moult: {started: [c1, c2]}`,
    );
    expect(lines(moulting, 'moult', '2026-04-24').map(({ bird: who }) => who)).toEqual(['HF-1/1/c3']);
  });

  it('on the one day on which it is old enough to breed', () => {
    expect(stands(grown, 'of-age', '2026-12-10', '2026-12-20')).toEqual(['12-14 now now now']);
  });

  it('not for the dead and gone', () => {
    const log = `${ALL_OUT}date: 2026-04-22, independent: all\ndate: 2026-04-23, died: c1\ndate: 2026-04-23, gone: {sold: c2}`;
    expect(lines(hillFinches(log), 'moult', '2026-04-24').map(({ bird: who }) => who)).toEqual(['HF-1/1/c3']);
  });

  const mate = { 'HF-1': pair('HF-1', 'hill finch', 'date: 2026-02-01, paired') };
  it('for a young bird that came from outside', () => {
    // Hatched 1 February + 274 d is 2 November.
    const files = { ...bird('', '    hatched: 2026-02-01\n'), ...mate };
    expect(stands(files, 'of-age', '2026-10-30', '2026-11-05')).toEqual(['11-02 now']);
    // Forty days are over on 13 March, after it came.
    expect(stands(files, 'moult', '2026-03-01', '2026-03-31')).toEqual(['03-13 now']);
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
