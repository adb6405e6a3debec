import { describe, expect, test } from 'vitest';
import { formatDay } from '../../src/days.ts';
import type { Files } from '../rooms.ts';
import { ALL_OUT, FOUR_EGGS, hillFinches, lines, THREE_CHICKS } from '../rules/agenda/hill-finch.ts';
import { pair } from '../rules/warnings/warned.ts';

/** A room of one pair of a shipped species. */
const of = (species: string, log: string): Files => ({ 'XX-1': pair('XX-1', species, log) });

/** First, likely and last day of a task's line, as known on a day: `03-14 03-15 03-17`. */
function dates(files: Files, task: string, on: string, days = 60): string[] {
  return lines(files, task, on, days).map(({ from, likely, to }) =>
    [from, likely, to].map((one) => (one === null ? '–' : formatDay(one).slice(5))).join(' '),
  );
}

describe('facts of the trade in the dates of the agenda', () => {
  // "One egg is laid a day": Woodall 1975, Ostrich 46:55-86 (bronze mannikin), of perching birds in the early morning.
  // Canary, daily, "usually at dawn, between six and nine": pajaroscanarios.com. Others: common practice.
  test.each(['bronze mannikin', 'canary', 'zebra finch', 'lavender waxbill'])(
    'the %s: the next egg is looked for the morning after the last',
    (name) => {
      expect(dates(of(name, 'date: 2026-03-01, laid: 1'), 'next-egg', '2026-03-01')).toEqual([
        '03-02 – 03-02',
      ]);
    },
  );

  // Lovebird "every other day": IASRI e-course. Small doves, second egg two days later: a dove husbandry page.
  // Budgerigar and cockatiel the same: common practice.
  test.each(['peach-faced lovebird', 'diamond dove', 'budgerigar', 'cockatiel'])(
    'the %s: the next egg is looked for two mornings later',
    (name) => {
      expect(dates(of(name, 'date: 2026-03-01, laid: 1'), 'next-egg', '2026-03-01')).toEqual([
        '03-03 – 03-03',
      ]);
    },
  );

  // Captive zebra finches hatched "after 12 d of incubation": Ikebuchi et al. 2017, Zool. Sci. 34(5), by a summary.
  // Counted from full sitting, not from the first egg: common practice.
  test('a sitting of twelve days hatches on sitting + 12', () => {
    const twelve = hillFinches(FOUR_EGGS, { incubation: '12' });
    const [hatch] = lines(twelve, 'hatch', '2026-03-10', 30);
    expect(formatDay(hatch?.likely as number)).toBe('2026-03-15');
    expect(hatch?.why).toBe('sitting since 3 Mar + 12 d');
  });

  // Common practice: the parents must know the food before the chicks are there. An incubation of 11–13 d from
  // 3 March hatches from 14 March.
  test('live food is on offer two days before the first hatch is due', () => {
    expect(dates(of('lavender waxbill', FOUR_EGGS), 'live-food', '2026-03-08')).toEqual(['03-12 – 03-14']);
  });

  // Common practice; one stud candles "six days before they are due": Lockwood & Massey, Bird Scene. Day 5–7 of
  // sitting for finches, 7–8 for lovebirds: common practice.
  test.each([
    ['zebra finch', 5, 7],
    ['canary', 5, 7],
    ['lavender waxbill', 5, 7],
    ['peach-faced lovebird', 7, 8],
  ])('the %s: candled within day %i to %i of sitting', (name, low, high) => {
    const log = 'date: 2026-03-01, laid: 1, sitting\ndate: 2026-03-02, laid: 1, sitting';
    const [candle] = lines(of(name, `${log}\ndate: 2026-03-04, sitting`), 'candle', '2026-03-04', 20);
    const since = Date.UTC(2026, 2, 1) / 86_400_000;
    expect((candle?.from as number) - since).toBeGreaterThanOrEqual(low);
    expect((candle?.to as number) - since).toBeLessThanOrEqual(high);
  });

  // Common practice.
  test('young of a species that fledges at 20–22 d leave the nest around day 21', () => {
    expect(dates(hillFinches(THREE_CHICKS), 'fledge', '2026-03-20')).toEqual(['04-04 04-05 04-06']);
  });

  // "About the 7th day after hatch": Tierwelt, Beringung von Ziervögeln, of estrildids. Looked at from a day before:
  // common practice ("check from day X; fit when the ring just stays").
  test('an estrildid is looked at for its ring from the day before day 7', () => {
    expect(dates(of('lavender waxbill', THREE_CHICKS), 'ring', '2026-03-16')).toEqual(['03-21 – 03-23']);
  });

  // Common practice: the legs are looked at the morning after ringing and on the third day.
  test('ringed legs are looked at the next morning and on the third day', () => {
    const ringed = `${THREE_CHICKS}date: 2026-03-21, ringed: {c1: HF-01}`;
    expect(dates(hillFinches(ringed), 'ring-check', '2026-03-21')).toEqual([
      '03-22 – 03-22',
      '03-24 – 03-24',
    ]);
  });

  // Common practice.
  test('the nest is taken out after three nights in which no fledgling slept in it', () => {
    const out = (nights: number) =>
      `${ALL_OUT}date: 2026-04-05, lost: {clear: e4}\n` +
      Array.from({ length: nights }, (_, i) => `date: 2026-04-0${6 + i}, roosting: out\n`).join('');
    // Two are not enough: it waits until the young of the species no longer come back.
    expect(dates(hillFinches(out(2)), 'nest-down', '2026-04-09')).toEqual(['04-15 – 04-18']);
    expect(dates(hillFinches(out(3)), 'nest-down', '2026-04-09')).toEqual(['04-09 – 04-12']);
  });

  // Common practice: the cock may drive for the next nest within a week of the fledging, in some species at it.
  test.each(['lavender waxbill', 'zebra finch', 'bronze mannikin', 'diamond dove'])(
    'the %s: a driving parent is watched for within a week of the first fledging, with no end',
    (name) => {
      const [watch] = lines(of(name, ALL_OUT), 'watch-restart', '2026-04-05', 30);
      const fledged = Date.UTC(2026, 3, 5) / 86_400_000;
      expect((watch?.from as number) - fledged).toBeGreaterThanOrEqual(0);
      expect((watch?.from as number) - fledged).toBeLessThanOrEqual(7);
      expect(watch?.to).toBeNull();
    },
  );

  // Common practice: "back within about 4-7 d"; the agenda asks on the safe side of it, after four or five.
  test('stored eggs go back after four or five days', () => {
    const log = 'date: 2026-03-01, laid: 1, pulled: e1\ndate: 2026-03-02, laid: 1, pulled: e2';
    expect(dates(hillFinches(log), 'set-back', '2026-03-02')).toEqual(['03-05 – 03-06']);
  });

  // Thirty days apart: common practice.
  test('a new bird stays apart for thirty days', () => {
    const list =
      'birds:\n  - id: HF-9\n    species: zebra finch\n    log:\n      - {date: 2026-03-01, arrived: cage 1}\n';
    expect(dates({ 'birds.yaml': list }, 'quarantine-end', '2026-03-01')).toEqual(['03-31 – 04-02']);
  });
});
