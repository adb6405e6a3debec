import { describe, expect, it } from 'vitest';
import { formatDay } from '../../../src/days.ts';
import { NEVER } from '../../../src/rules/ahead/fate.ts';
import { housingAhead } from '../../../src/rules/ahead/housing.ts';
import { weekly, weeksFrom, youngIn } from '../../../src/rules/ahead/weeks.ts';
import { broodsOf } from '../../../src/rules/brood.ts';
import { learnedDurations } from '../../../src/rules/durations.ts';
import { day, type Files, room } from '../../rooms.ts';
import { DRAWS, futures, layingPair } from './futures.ts';

function housing(files: Files, on: string, number = 12) {
  const stood = room(files, on);
  const courses = futures(stood);
  const weeks = weekly(courses, weeksFrom(stood.day, number), DRAWS);
  return housingAhead(stood, courses, {
    broods: broodsOf(stood, learnedDurations(stood)),
    weeks,
    draws: DRAWS,
  });
}

const REARED = [
  '{date: 2026-03-15, hatched: 4}',
  '{date: 2026-04-04, fledged: 4}',
  '{date: 2026-04-20, independent: 4}',
];
const NEXT = ['{date: 2026-04-18, clutch: 2, laid: 1}', '{date: 2026-04-22, laid: 4, sitting}'];

describe('young that must leave', () => {
  it('are those that feed themselves beside their parents', () => {
    const { leaving } = housing({ A: layingPair('A', 4, REARED) }, '2026-04-21');
    expect(leaving).toMatchObject([
      { pair: 'A', clutch: 'A/1', housing: 'cage A', ready: 4, days: null, nextClutch: null },
    ]);
  });

  it('are no longer those that were moved', () => {
    const one = [
      ...REARED,
      '{date: 2026-04-21, moved: {c1: young flight, c2: young flight, c3: young flight}}',
    ];
    expect(housing({ A: layingPair('A', 4, one) }, '2026-04-22').leaving).toMatchObject([{ ready: 1 }]);
  });

  it('are those to come, with the days and the hatch that they should be gone by', () => {
    const fed = REARED.slice(0, 2);
    const [first, next] = housing({ A: layingPair('A', 4, [...fed, ...NEXT]) }, '2026-04-23').leaving;
    expect(first).toMatchObject({ clutch: 'A/1', ready: 0, nextClutch: 'A/2' });
    expect(first?.young.mean).toBeGreaterThan(3);
    // Sat on since 18–22 April, twelve to fifteen days (shipped profile).
    expect(first?.nextHatch).toEqual({ from: day('2026-05-01'), to: day('2026-05-06') });
    expect(next).toMatchObject({ clutch: 'A/2', nextClutch: null, nextHatch: null });
  });

  // Zebra finches feed themselves at 28–42 days (shipped profile): of 15 March that is 12–26 April.
  it('are told where they live: those that were taken out before need not be gone by the next hatch', () => {
    const fed = [...REARED.slice(0, 2), '{date: 2026-04-10, moved: {c1: nursery}}', ...NEXT];
    const { leaving, empty } = housing({ A: layingPair('A', 4, fed) }, '2026-04-23');
    expect(
      leaving.slice(0, 2).map(({ clutch, housing: home, nextClutch }) => [clutch, home, nextClutch]),
    ).toEqual([
      ['A/1', 'nursery', null],
      ['A/1', 'cage A', 'A/2'],
    ]);
    expect(empty).toEqual([]);
    // Past the longest age of their kind three are left beside their parents.
    expect(housing({ A: layingPair('A', 4, fed) }, '2026-04-28').leaving[0]).toMatchObject({
      housing: 'cage A',
      ready: 3,
    });
  });

  it('leave from the first of them to the last, and none after the weeks that are looked at', () => {
    const fed = { A: layingPair('A', 4, REARED.slice(0, 2)) };
    const days = (number: number, on = '2026-04-05') => {
      const [one] = housing(fed, on, number).leaving;
      return one?.days === null || one === undefined ? null : [one.days.from, one.days.to].map(formatDay);
    };
    const [from, to] = days(12) ?? [];
    expect(from && from > '2026-04-09' && from < '2026-04-16').toBe(true);
    expect(to && to > '2026-04-20' && to < '2026-04-28').toBe(true);
    expect(days(2)?.[1]).toBe('2026-04-19');
    // On the last day of their species' age those of which nobody wrote leave from today on.
    expect(days(1, '2026-04-26')).toEqual(['2026-04-26', '2026-04-26']);
  });

  // Of 15 March the longest age of 42 days (shipped profile) is reached on 26 April; a month later nobody knows of them.
  it('leave until the day by which the last has in nine futures of ten, of those in which any does', () => {
    const files = { A: layingPair('A', 1, ['{date: 2026-03-15, hatched: 1}']) };
    const stood = room(files, '2026-03-16');
    const days = futures(stood).flatMap(({ independent }) => [...independent].filter((on) => on !== NEVER));
    expect(days.length / DRAWS).toBeLessThan(0.9);
    const to = housing(files, '2026-03-16').leaving[0]?.days?.to ?? 0;
    const share = (by: number) => days.filter((on) => on <= by).length / days.length;
    expect([share(to) >= 0.9, share(to - 1) >= 0.9]).toEqual([true, false]);
  });

  it('are ready once they are older than any that is still fed, also where nobody wrote that they feed themselves', () => {
    const fed = { A: layingPair('A', 4, REARED.slice(0, 2)) };
    const on = (date: string) => {
      const { leaving, occupied } = housing(fed, date);
      return [leaving[0]?.ready, occupied.map(({ now }) => now)];
    };
    expect(on('2026-04-26')).toEqual([0, []]);
    expect(on('2026-04-27')).toEqual([4, [4]]);
    expect(on('2026-05-26')).toEqual([4, [4]]);
    expect(on('2026-05-27')).toEqual([undefined, []]);
  });

  it('are not those that lived elsewhere since, nor those that are paired where they hatched', () => {
    const files = {
      A: layingPair('A', 4, [
        ...REARED,
        '{date: 2026-04-22, moved: {c1: young flight}}',
        '{date: 2026-12-01, moved: {1/c1: cage A}}',
      ]),
      B: 'pair: B\nspecies: zebra finch\ncock: A/1/c2\nhen: H\nhousing: cage A\nlog:\n  - {date: 2026-12-02, paired}\n',
    };
    expect(housing(files, '2026-12-01').leaving).toMatchObject([{ clutch: 'A/1', ready: 3 }]);
    expect(housing(files, '2026-12-02').leaving).toMatchObject([{ clutch: 'A/1', ready: 2 }]);
  });

  it('are nobody while none can feed itself in these weeks', () => {
    expect(housing({ A: layingPair('A', 4, REARED.slice(0, 1)) }, '2026-03-16', 2).leaving).toEqual([]);
  });

  it('are not those that died or were sold', () => {
    const gone = [...REARED, '{date: 2026-04-21, died: c1, gone: {sold: c2}}'];
    expect(housing({ A: layingPair('A', 4, gone) }, '2026-04-21').leaving).toMatchObject([{ ready: 2 }]);
  });

  it('are nobody where it was never written where the pair and its young live', () => {
    const nowhere = layingPair('A', 4, REARED).replace('housing: cage A\n', '');
    expect(housing({ A: nowhere }, '2026-04-21').leaving).toEqual([]);
  });

  it('should be gone by the next hatch of their own pair, not by that of another', () => {
    const other = layingPair('B', 4, NEXT).replace('cage B', 'cage 10');
    const [own] = housing({ A: layingPair('A', 4, REARED), B: other }, '2026-04-23').leaving;
    expect(own).toMatchObject({ clutch: 'A/1', nextClutch: null, nextHatch: null });
  });
});

it('fostered young must leave the pair that feeds them, not the one that laid them', () => {
  const own = layingPair('A', 4, [...REARED.slice(0, 1), '{date: 2026-03-16, fostered: {B: [c1, c2]}}']);
  const { leaving } = housing({ A: own, B: layingPair('B', 4) }, '2026-03-17');
  expect(leaving.map(({ pair, clutch, housing: where }) => [pair, clutch, where])).toContainEqual([
    'B',
    'A/1',
    'cage B',
  ]);
  expect(leaving.find(({ pair }) => pair === 'A')?.young.high).toBeLessThanOrEqual(2);
});

it('a bird on loan leaves its place to others', () => {
  const list = (log: string) =>
    `birds:\n  - {id: X, log: [{date: 2026-01-01, arrived: cage 9}${log}]}\n  - {id: Y, log: [{date: 2026-02-01, arrived: cage 9}, {date: 2026-02-20, moved: cage 8}]}\n`;
  const most = (log: string) =>
    housing({ 'birds.yaml': list(log) }, '2026-04-01').occupied.find(
      ({ housing: where }) => where === 'cage 9',
    );
  expect(most('')).toMatchObject({ now: 1, most: 2 });
  expect(most(', {date: 2026-01-05, gone: lent}, {date: 2026-03-01, back}')).toMatchObject({
    now: 1,
    most: 1,
  });
});

describe('where weaned young go', () => {
  const moves = '{date: 2026-04-22, moved: {c1: young flight, c2: young flight, c3: young flight}}';
  const files = {
    A: layingPair('A', 4, [
      ...REARED,
      moves,
      '{date: 2026-05-02, gone: {sold: [c1, c2]}}',
      '{date: 2026-05-03, clutch: 2, laid: 1}',
      '{date: 2026-05-07, laid: 4, sitting}',
    ]),
  };

  it('is where most of them went before, with the most that it ever held', () => {
    const { place } = housing(files, '2026-05-08');
    expect(place).toMatchObject({ housing: 'young flight', went: 3, moved: 3, now: 1, most: 3 });
    expect(formatDay(place?.mostOn ?? 0)).toBe('2026-04-22');
  });

  it('fills week by week if nobody leaves', () => {
    const weeks = housing(files, '2026-05-08').place?.weeks ?? [];
    expect(weeks[0]?.birds).toEqual({ mean: 1, low: 1, high: 1 });
    weeks.slice(1).forEach(({ birds }, i) => {
      expect(birds.mean).toBeGreaterThanOrEqual(weeks[i]?.birds.mean ?? 0);
    });
    expect(weeks.at(-1)?.birds.mean).toBeGreaterThan(2);
  });

  it('fills by all that are expected to feed themselves, beside those that live there', () => {
    const stood = room(files, '2026-05-08');
    const weeks = weeksFrom(stood.day, 12);
    const last = housing(files, '2026-05-08').place?.weeks.at(-1);
    const to = weeks.at(-1)?.to ?? 0;
    const { mean, low, high } = youngIn(futures(stood), { from: 0, to }, DRAWS).independent;
    expect(last).toMatchObject({ to, birds: { mean: 1 + mean, low: 1 + low, high: 1 + high } });
    expect(high).toBeGreaterThan(low);
  });

  it('is where most went, not where the first or the last did', () => {
    const two = [
      ...REARED,
      '{date: 2026-04-21, moved: {c1: cage 5}}',
      '{date: 2026-04-22, moved: {c2: young flight, c3: young flight}}',
      '{date: 2026-04-23, moved: {c4: cage 6}}',
    ];
    expect(housing({ A: layingPair('A', 4, two) }, '2026-04-24').place).toMatchObject({
      housing: 'young flight',
      went: 2,
      moved: 4,
    });
  });

  it('is told of those that were moved on the very day on which they were seen to feed themselves', () => {
    const log = (words: string) =>
      housing(
        { A: layingPair('A', 4, [...REARED.slice(0, 2), `{date: 2026-04-20, ${words}}`]) },
        '2026-04-21',
      ).place;
    expect(log('independent: 4, moved: {all: young flight}')).toMatchObject({ went: 4, now: 4 });
    expect(log('moved: {all: young flight}, independent: 4')).toMatchObject({ went: 4, now: 4 });
  });

  it('is where they were first put, whatever became of them there', () => {
    const sold = [...REARED, '{date: 2026-04-21, moved: {c1: sales cage}, gone: {sold: c1}}'];
    const { place } = housing({ A: layingPair('A', 4, sold) }, '2026-04-22');
    expect(place).toMatchObject({
      housing: 'sales cage',
      went: 1,
      now: 0,
      most: 0,
      mostOn: day('2026-04-22'),
    });
    const further = [
      ...REARED,
      '{date: 2026-04-21, moved: {c1: cage 5}}',
      '{date: 2026-04-25, moved: {c1: cage 6}}',
    ];
    expect(housing({ A: layingPair('A', 4, further) }, '2026-04-26').place?.housing).toBe('cage 5');
  });

  it('is not where they were fostered, nor where they stayed', () => {
    const fostered = layingPair('A', 4, [...REARED.slice(0, 1), '{date: 2026-03-16, fostered: {B: all}}']);
    const lines = [...REARED.slice(1), '{date: 2026-04-20, checked}']
      .map((line) => `    - ${line}\n`)
      .join('');
    const B = `\npair: B\nspecies: zebra finch\nhousing: cage B\nlog:\n    - {date: 2026-02-01, paired}\n${lines}`;
    const { place, leaving } = housing({ A: fostered, B }, '2026-04-21');
    expect(place).toBeNull();
    expect(leaving).toMatchObject([
      { pair: 'B', clutch: 'A/1', housing: 'cage B', ready: 4, nextClutch: null },
    ]);
    // While they are still fed, a pair without a clutch has no hatch to be gone by; a later one of its own is one.
    const next = (on: string, own = '') =>
      housing({ A: fostered, B: `${B}${own}` }, on).leaving[0]?.nextClutch;
    const laid = '    - {date: 2026-04-12, clutch: 1, laid: 1}\n    - {date: 2026-04-13, laid: 1, sitting}\n';
    expect([next('2026-04-14'), next('2026-04-14', laid)]).toEqual([null, 'B/1']);
    const moved = `${B}    - {date: 2026-04-22, moved: {A/1/c1: young flight}}\n`;
    expect(housing({ A: fostered, B: moved }, '2026-04-22').place).toMatchObject({
      housing: 'young flight',
      went: 1,
    });
  });

  it('is not known while none was ever moved', () => {
    expect(housing({ A: layingPair('A', 4) }, '2026-03-06').place).toBeNull();
  });
});

it('each housing is told with the birds that feed themselves there, and the most that ever did', () => {
  const moved = '{date: 2026-04-22, moved: {c1: young flight, c2: young flight}}';
  const sold = '{date: 2026-04-25, gone: {sold: c1}}';
  const { occupied } = housing({ A: layingPair('A', 4, [...REARED, moved, sold]) }, '2026-04-26');
  expect(occupied.map(({ housing: name, now, most }) => [name, now, most])).toEqual([
    ['cage A', 2, 4],
    ['young flight', 1, 2],
  ]);
});

it('housings are told in natural order, and only where somebody lives', () => {
  const one = (id: string, housing: string, more = '') =>
    `  - {id: ${id}, log: [{date: 2026-01-01, arrived: ${housing}}${more}]}\n`;
  const birds = `birds:\n${one('W', 'cage 10')}${one('X', 'cage 9')}${one('Y', 'cage 9')}${one('Z', 'cage 8', ', {date: 2026-02-01, gone: sold}')}`;
  expect(housing({ 'birds.yaml': birds }, '2026-03-01').occupied).toEqual([
    { housing: 'cage 9', now: 2, most: 2, mostOn: day('2026-03-01') },
    { housing: 'cage 10', now: 1, most: 1, mostOn: day('2026-03-01') },
  ]);
  expect(housing({ 'birds.yaml': birds }, '2026-01-01').occupied.map(({ now }) => now)).toEqual([1, 2, 1]);
});

it('the most that ever lived in a housing has the first day on which it was so', () => {
  const stay = (id: string, from: string, to: string) =>
    `  - {id: ${id}, log: [{date: ${from}, arrived: cage 9}, {date: ${to}, moved: cage 8}]}\n`;
  const birds = `birds:\n${stay('W', '2026-01-01', '2026-01-20')}${stay('X', '2026-01-05', '2026-01-10')}${stay('Y', '2026-01-12', '2026-03-20')}`;
  expect(housing({ 'birds.yaml': birds }, '2026-03-01').occupied).toContainEqual({
    housing: 'cage 9',
    now: 1,
    most: 2,
    mostOn: day('2026-01-05'),
  });
});

it('a bird that was lent counts in no housing for these days, before or after it was moved', () => {
  const birds = `
    birds:
      - {id: X, log: [{date: 2026-01-01, arrived: cage 9}, {date: 2026-01-05, gone: lent}, {date: 2026-03-01, back}, {date: 2026-03-10, moved: cage 7}]}
      - {id: Y, log: [{date: 2026-02-01, arrived: cage 7}, {date: 2026-02-20, gone: sold}]}
      - {id: Z, log: [{date: 2026-02-01, arrived: cage 7}, {date: 2026-02-20, gone: sold}]}
  `;
  expect(housing({ 'birds.yaml': birds }, '2026-04-01').occupied).toEqual([
    { housing: 'cage 7', now: 1, most: 2, mostOn: day('2026-02-01') },
  ]);
});

it('young count nowhere before they feed themselves, wherever they are fed', () => {
  const byHand = layingPair('A', 4, [
    ...REARED.slice(0, 1),
    '{date: 2026-03-20, fostered: {hand: all}}',
    '{date: 2026-04-06, fledged: all}',
    '{date: 2026-04-20, independent: all}',
  ]);
  const birds =
    'birds:\n  - {id: Y, log: [{date: 2026-03-25, arrived: cage A}, {date: 2026-03-28, moved: cage 8}]}\n';
  const { occupied } = housing({ A: byHand, 'birds.yaml': birds }, '2026-03-26');
  expect(occupied).toEqual([{ housing: 'cage A', now: 1, most: 1, mostOn: day('2026-03-26') }]);
  expect(housing({ A: byHand, 'birds.yaml': birds }, '2026-04-21').occupied).toEqual([
    { housing: 'cage 8', now: 1, most: 1, mostOn: day('2026-04-21') },
    { housing: 'hand', now: 4, most: 4, mostOn: day('2026-04-21') },
  ]);
});

it('a housing with eggs or young in it does not stand empty, though no bird of the list lives there', () => {
  const empty = (on: string, more: readonly string[]) =>
    housing({ A: layingPair('A', 4, more), B: '\npair: B\nspecies: zebra finch\nhousing: cage 10\n' }, on)
      .empty;
  expect(empty('2026-03-06', [])).toEqual(['cage 10']);
  expect(empty('2026-03-16', ['{date: 2026-03-15, hatched: 4}'])).toEqual(['cage 10']);
  expect(empty('2026-03-06', ['{date: 2026-03-06, lost: {broken: all}}'])).toEqual(['cage 10', 'cage A']);
  // Neither the incubator nor the hand is a place to put a bird.
  expect(
    empty('2026-03-16', ['{date: 2026-03-15, hatched: 4}', '{date: 2026-03-16, fostered: {hand: all}}']),
  ).toEqual(['cage 10', 'cage A']);
});

it('a nest with eggs does not stand empty though its young were taken elsewhere; no housing is made of none', () => {
  const more = ['{date: 2026-03-15, hatched: 2}', '{date: 2026-03-16, moved: {c1: nursery, c2: nursery}}'];
  expect(housing({ A: layingPair('A', 4, more) }, '2026-03-16').empty).toEqual([]);
  const nowhere = layingPair('A', 4, more.slice(0, 1)).replace('housing: cage A\n', '');
  expect(housing({ A: nowhere }, '2026-03-16').empty).toEqual([]);
});

it('young that were only heard are nobody who lives anywhere, however old they would be', () => {
  const heard = layingPair('A', 4, ['{date: 2026-03-17, heard}', '{date: 2026-05-10, checked}']);
  expect(housing({ A: heard }, '2026-05-10').occupied).toEqual([]);
});

it('a housing stands empty where nobody of the record lives today', () => {
  const birds = `
    birds:
      - id: ZF-1
        species: zebra finch
        log:
          - {date: 2026-01-01, arrived: cage 9}
          - {date: 2026-02-01, moved: flight 1}
      - id: ZF-2
        species: zebra finch
        log:
          - {date: 2026-01-01, arrived: cage 8}
          - {date: 2026-02-01, died: unknown}
  `;
  expect(housing({ 'birds.yaml': birds }, '2026-03-01').empty).toEqual(['cage 8', 'cage 9']);
  expect(housing({ 'birds.yaml': birds }, '2026-01-15').empty).toEqual([]);
});

it('a cage that the keeper calls `store` stands empty as any other', () => {
  const birds =
    'birds:\n  - {id: X, log: [{date: 2026-01-01, arrived: store}, {date: 2026-02-01, moved: cage 1}]}\n';
  expect(housing({ 'birds.yaml': birds }, '2026-03-01').empty).toEqual(['store']);
});
