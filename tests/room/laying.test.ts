import { describe, expect, it } from 'vitest';
import { room } from '../rooms.ts';
import { clutchIn, codes, days, journal, pairIn, waxbills } from './facts.ts';

const at = (log: string, head = '') => room({ P: waxbills(log, head) }, '2026-07-01');
describe('the days on which an egg can have been laid', () => {
  const spans = (log: string) => clutchIn(at(log), 'LW-1/1').eggs.map((egg) => days(egg.laid));

  it('are one a day, counted back from the look that found them', () => {
    expect(spans('date: 2026-03-01, laid: 1\ndate: 2026-03-05, laid: 4, sitting')).toEqual([
      '03-01',
      '03-02',
      '03-03',
      '03-04',
      '03-05',
    ]);
  });

  it('are wider where there were more days than eggs', () => {
    // Looked at on the 1st and the 5th, two new eggs: 2–4 March and 3–5 March.
    expect(spans('date: 2026-03-01, laid: 1\ndate: 2026-03-05, laid: 2')).toEqual([
      '03-01',
      '03-02…03-04',
      '03-03…03-05',
    ]);
  });

  it('are unknown at a first look that finds several: as old as the longest sitting, but no older than the pairing', () => {
    // Three eggs on the 20th: the last laid by the 20th and up to 13 d before, the first two days earlier.
    expect(spans('date: 2026-03-20, laid: 3')).toEqual(['03-05…03-18', '03-06…03-19', '03-07…03-20']);
    expect(spans('date: 2026-03-12, paired\ndate: 2026-03-20, laid: 3')).toEqual([
      '03-12…03-18',
      '03-13…03-19',
      '03-14…03-20',
    ]);
  });

  it('are no later bound by a clutch of which only a slip was written', () => {
    const slip = 'date: 2026-02-10, clutch: 1, laid: c1';
    const known = at(`${slip}\ndate: 2026-03-20, clutch: 2, laid: 3`);
    expect(clutchIn(known, 'LW-1/2').eggs.map((egg) => days(egg.laid))).toEqual([
      '03-05…03-18',
      '03-06…03-19',
      '03-07…03-20',
    ]);
  });

  it('of a hen that lays on are no more than her eggs took her, and three days that she left out', () => {
    // Two more on the 22nd, of the 21st and 22nd: e1 three eggs and three days before.
    expect(spans('date: 2026-03-20, laid: 3\ndate: 2026-03-22, laid: 2')).toEqual([
      '03-15…03-18',
      '03-16…03-19',
      '03-17…03-20',
      '03-21',
      '03-22',
    ]);
    // After a week without one, the next may be of anybody: nothing is known of the first.
    const paused = spans(
      'date: 2026-03-20, laid: 3\ndate: 2026-03-24, checked: {eggs: 3}\ndate: 2026-03-25, laid: 1',
    );
    expect(paused.slice(0, 1)).toEqual(['03-05…03-18']);
    // Nobody counted: an egg more may be an older one.
    expect(spans('date: 2026-03-20, laid: 3+\ndate: 2026-03-22, laid: 2').slice(0, 1)).toEqual([
      '03-05…03-18',
    ]);
  });

  it('of a hen that lays on say nothing of eggs out of which young came by then', () => {
    const found = 'date: 2026-03-20, clutch: 1, site: basket, checked: {eggs: 3}';
    const left = 'date: 2026-03-28, clutch: 1, site: gorse, fledged: 1';
    const more = 'date: 2026-03-28, time: 07:30, clutch: 1, laid: [e1]';
    expect(spans(`${found}\n${left}\n${more}`).slice(0, 2)).toEqual(['03-05…03-18', '03-16…03-19']);
  });

  it('of one egg at a first look are that day', () => {
    expect(spans('date: 2026-03-20, laid: 1')).toEqual(['03-20']);
  });

  it('of a nest seen empty lately are after that look', () => {
    expect(spans('date: 2026-03-17, checked: {eggs: 0}\ndate: 2026-03-20, laid: 2')).toEqual([
      '03-18…03-19',
      '03-19…03-20',
    ]);
  });

  it('of fewer than the species lays are fresh: a hen leaves out three days at the most; of a full clutch nothing is known', () => {
    // Looked at on the 10th; lavender waxbills lay four or five (species profile).
    const found = (count: number) => spans(`date: 2026-03-10, checked\ndate: 2026-03-20, laid: ${count}`)[0];
    // Three on the 20th: the first by the 18th, and no more than three days earlier.
    expect(found(3)).toBe('03-15…03-18');
    expect(found(4)).toBe('03-11…03-17');
    // The nest was seen empty on the 17th.
    expect(spans('date: 2026-03-17, checked: {eggs: 0}\ndate: 2026-03-20, laid: 3')).toEqual([
      '03-18',
      '03-19',
      '03-20',
    ]);
  });

  it('are not bounded by a look so long ago that every one of them can have come after it', () => {
    // 13 d before the 20th is the 7th: a look of that day bounds, one of the day before does not.
    expect(spans('date: 2026-03-07, checked\ndate: 2026-03-20, laid: 1')).toEqual(['03-17…03-20']);
    expect(spans('date: 2026-03-06, checked\ndate: 2026-03-20, laid: 1')).toEqual(['03-20']);
  });

  it('are since the keeper says, and never later than their own day', () => {
    expect(spans('date: 2026-03-20, after: 2026-03-16, laid: 2')).toEqual(['03-17…03-19', '03-18…03-20']);
    expect(spans('date: 2026-03-20, after: 2026-03-18, laid: 3')).toEqual(['03-18', '03-19', '03-20']);
  });

  it('of one nest know nothing of a look into the other', () => {
    const both = 'date: 2026-03-01, site: left, laid: 1\ndate: 2026-03-03, site: right, checked';
    expect(spans(`${both}\ndate: 2026-03-05, site: left, laid: 1`)).toEqual(['03-01', '03-02…03-05']);
    // Without a word of where it is the nest of its clutch.
    expect(spans(`${both}\ndate: 2026-03-05, laid: 1`)).toEqual(['03-01', '03-02…03-05']);
  });

  it('are every other day for a bird that lays so, however the eggs were found', () => {
    const text = waxbills('date: 2026-03-01, laid: 1\ndate: 2026-03-05, laid: 2').replace(
      'lavender waxbill',
      'budgerigar',
    );
    const { eggs } = clutchIn(room({ P: text }, '2026-03-05'), 'LW-1/1');
    expect(eggs.map((egg) => days(egg.laid))).toEqual(['03-01', '03-03', '03-05']);
  });
});

describe('eggs that are laid', () => {
  it('need a hen: what became of the cock does not matter', () => {
    const sold = (parent: string) =>
      codes(
        at(
          `date: 2026-03-01, gone: {sold: ${parent}}\ndate: 2026-03-05, laid: 4`,
          'cock: LW-19-04\nhen: LW-20-11',
        ),
      );
    expect([sold('cock'), sold('hen')]).toEqual([[], ['dead-bird']]);
  });

  it('are of the clutch before where the first of several came in time, whether they are counted or named', () => {
    const sizes = (who: string) =>
      pairIn(at(`date: 2026-03-05, laid: 2\ndate: 2026-03-12, laid: ${who}`), 'LW-1').clutches.map(
        ({ eggs }) => eggs.length,
      );
    expect(sizes('2')).toEqual([4]);
    expect(sizes('[e3, e4]')).toEqual([4]);
    expect(sizes('1')).toEqual([2, 1]);
  });

  it('beside chicks that have just hatched are the next clutch, and no question', () => {
    const daily = [1, 2, 3, 4, 5].map((on) => `date: 2026-03-0${on}, laid: 1`).join('\n');
    const known = at(`${daily}\ndate: 2026-03-14, hatched: [e1, e2, e3, e4]\ndate: 2026-03-15, laid: 1`);
    expect(pairIn(known, 'LW-1').clutches.map(({ eggs }) => eggs.length)).toEqual([5, 1]);
    expect(codes(known)).toEqual([]);
  });

  it('that turn out to be no eggs are no count: chicks come of what nobody saw, as before', () => {
    const log = 'date: 2026-03-05, sitting\ndate: 2026-03-07, laid: c2\ndate: 2026-03-18, hatched: 3';
    const { chicks } = clutchIn(at(log), 'LW-1/1');
    expect(chicks).toHaveLength(3);
    expect(codes(at(log))).toEqual(['not-an-egg']);
  });

  it('while those before are still waited for begin a clutch that is asked about', () => {
    const log = 'date: 2026-03-05, laid: 1\ndate: 2026-03-12, laid: 1';
    expect(at(log).findings.map(({ code, args }) => [code, args])).toEqual([
      ['which-clutch', { did: 'laid', taken: 'a new one, clutch 2', others: 'clutch 1', number: 2 }],
    ]);
  });
});

describe('eggs that come every other day', () => {
  const laidOn = (log: string) =>
    pairIn(room({ P: journal('BU-1', 'budgerigar', log) }, '2026-07-01'), 'BU-1').clutches.map(({ eggs }) =>
      eggs.map(({ laid }) => days(laid)).join(' '),
    );

  it('are counted back so from the look that found them; the oldest may have been sat on for as long as any', () => {
    // Budgerigars sit 20 days at the longest.
    expect(laidOn('date: 2026-03-20, laid: 3')).toEqual(['02-24…03-16 02-26…03-18 02-28…03-20']);
  });

  it('are of one clutch where the first of them came soon enough after the last that was seen', () => {
    expect(laidOn('date: 2026-03-01, laid: 1\ndate: 2026-03-13, laid: 3')).toHaveLength(1);
    expect(laidOn('date: 2026-03-01, laid: 1\ndate: 2026-03-14, laid: 3')).toHaveLength(2);
  });
});

describe('the eggs before', () => {
  const spans = (log: string, number = 1) =>
    clutchIn(at(log), `LW-1/${number}`).eggs.map((egg) => days(egg.laid));

  it('are no older than it took her to lay on, a gap of three days included, and any age after a longer one', () => {
    const looked = (on: number) =>
      spans(
        `date: 2026-03-22, laid: 2\ndate: 2026-03-${on - 1}, checked: {eggs: 2}\ndate: 2026-03-${on}, laid: 1`,
      );
    expect(looked(26)).toEqual(['03-21', '03-22', '03-26']);
    expect(looked(27)).toEqual(['03-08…03-21', '03-09…03-22', '03-27']);
  });

  it('were all laid before those in the other nest', () => {
    const left = [5, 6, 7].map((on) => `date: 2026-03-0${on}, site: left, laid: 1`).join('\n');
    expect(spans(`${left}\ndate: 2026-03-14, site: right, laid: 3`, 2)[0]).toBe('03-07…03-12');
  });

  it('of which one was seen to be sat on are found with the others, and nobody need assume it', () => {
    const found = at('date: 2026-03-05, sitting\ndate: 2026-03-12, laid: some');
    expect(clutchIn(found, 'LW-1/1').eggs.map(({ assumed }) => assumed)).toEqual([false]);
  });
});
