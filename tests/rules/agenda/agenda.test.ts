import { describe, expect, it } from 'vitest';
import { agenda, type Files } from '../../rooms.ts';
import { pair } from '../warnings/warned.ts';
import { ALL_OUT, FOUR_EGGS, hillFinches, lines, species, stands, THREE_CHICKS } from './hill-finch.ts';

const looks = (wish: string) => ({ 'nest-looks': wish });

describe('order', () => {
  const files = {
    ...species(),
    // Candled from the 8th.
    'HF-2': pair('HF-2', 'hill finch', FOUR_EGGS),
    // Four days earlier: late with the lamp from the 6th.
    'HF-10': pair(
      'HF-10',
      'hill finch',
      FOUR_EGGS.replace(/03-0(\d)/g, (_, d) => `02-${24 + Number(d)}`),
    ),
  };

  it('late comes first, then what is due, then what comes', () => {
    // HF-10 sat on 27 February: candling 4 … 5 March, hatch from 10 March, so live food from the 8th.
    const found = agenda(files, '2026-03-07', 3).map(
      ({ pair: where, task, state }) => `${state} ${where} ${task}`,
    );
    expect(found).toEqual([
      'late HF-10 candle',
      'coming HF-2 candle',
      'coming HF-10 live-food',
      'coming HF-10 hatch',
    ]);
  });

  it('within a day by pair, numbers as numbers', () => {
    const same = {
      ...species(),
      'HF-10': pair('HF-10', 'hill finch', FOUR_EGGS),
      'HF-2': pair('HF-2', 'hill finch', FOUR_EGGS),
    };
    expect(agenda(same, '2026-03-08', 0).map((item) => item.pair)).toEqual(['HF-2', 'HF-10']);
  });

  /** So many days later than the log says; within March. */
  const later = (log: string, days: number) =>
    log.replace(/03-(\d\d)/g, (_, d) => `03-${String(Number(d) + days).padStart(2, '0')}`);

  /** The tasks of a day in their order, without the hen's next egg. */
  const order = (logs: Files, on: string, days = 0) =>
    agenda(
      {
        ...species(),
        ...Object.fromEntries(Object.entries(logs).map(([id, log]) => [id, pair(id, 'hill finch', log)])),
      },
      on,
      days,
    )
      .filter(({ task }) => task !== 'next-egg')
      .map(({ pair: where, task, state }) => `${state} ${where} ${task}`);

  it('of what is late, what should have been done first', () => {
    // Candled by the 9th and by the 10th; a day later both are late.
    const found = order({ 'HF-1': later(FOUR_EGGS, 1), 'HF-2': FOUR_EGGS }, '2026-03-11');
    expect(found).toEqual(['late HF-2 candle', 'late HF-1 candle']);
  });

  it('of what is due, what there is least time left for', () => {
    // The lamp to the 22nd, the rings to the 23rd; warm nights, that begin on the 22nd, to the 24th.
    const found = order({ 'HF-1': THREE_CHICKS, 'HF-2': later(FOUR_EGGS, 13) }, '2026-03-22');
    expect(found).toEqual(['now HF-2 candle', 'now HF-1 ring', 'now HF-1 warm-nights']);
  });

  it('of what comes, what comes first, however long it has time', () => {
    // Hatching from the 14th to the 17th, the lamp on the 15th and 16th; then the lamp of HF-1 after that of HF-2.
    const hatching = order({ 'HF-1': later(FOUR_EGGS, 7), 'HF-2': FOUR_EGGS }, '2026-03-13', 3);
    expect(hatching.filter((line) => line.startsWith('coming'))).toEqual([
      'coming HF-2 hatch',
      'coming HF-1 candle',
    ]);
    const lamps = order({ 'HF-1': later(FOUR_EGGS, 1), 'HF-2': FOUR_EGGS }, '2026-03-07', 3);
    expect(lamps).toEqual(['coming HF-2 candle', 'coming HF-1 candle']);
  });

  it('within a day the room’s own tasks before those of the pairs', () => {
    const files = {
      ...hillFinches(FOUR_EGGS),
      'nestlog.yaml': 'routines:\n  - {name: water, every: 1, say: change the water}\n',
    };
    expect(agenda(files, '2026-03-09', 0).map(({ task }) => task)).toEqual(['water', 'candle']);
  });

  it('shows what begins within so many days, and no further', () => {
    // Live food from the 12th.
    expect(lines(hillFinches(FOUR_EGGS), 'live-food', '2026-03-05', 7)).toHaveLength(1);
    expect(lines(hillFinches(FOUR_EGGS), 'live-food', '2026-03-05', 6)).toEqual([]);
  });
});

describe('looks into the nest', () => {
  it('freely: also when they are late', () => {
    expect(stands(hillFinches(FOUR_EGGS, looks('freely')), 'candle', '2026-03-05', '2026-03-15')).toEqual([
      '03-08 … 03-09 now',
      '03-10 … 03-11 late',
    ]);
  });

  it('sparingly: offered once, never late', () => {
    expect(stands(hillFinches(FOUR_EGGS, looks('sparingly')), 'candle', '2026-03-05', '2026-03-15')).toEqual([
      '03-08 … 03-09 now',
    ]);
  });

  it('sparingly: only the second egg is looked for', () => {
    const eggs = ['date: 2026-03-01, laid: 1', 'date: 2026-03-02, laid: 1'];
    const next = (log: string) =>
      stands(hillFinches(log, looks('sparingly')), 'next-egg', '2026-03-01', '2026-03-08');
    expect(next(eggs[0] as string)).toEqual(['03-02 now']);
    expect(next(eggs.join('\n'))).toEqual([]);
  });

  it('sparingly: what did not hatch is asked about until it is told', () => {
    const from = ['2026-03-01', '2026-07-01'] as const;
    expect(stands(hillFinches(FOUR_EGGS, looks('sparingly')), 'unhatched', ...from)).toEqual([
      '03-19 … 03-21 now',
      '03-22 … 05-20 late',
    ]);
    const told = `${FOUR_EGGS}date: 2026-03-25, lost: {clear: all}`;
    expect(stands(hillFinches(told, looks('sparingly')), 'unhatched', ...from)).toEqual([
      '03-19 … 03-21 now',
      '03-22 … 03-24 late',
    ]);
  });

  it('never, and sparingly: the egg that is left is asked about once the young are out of the nest', () => {
    for (const wish of ['never', 'sparingly'])
      expect(
        stands(hillFinches(ALL_OUT, looks(wish)), 'unhatched', '2026-03-01', '2026-07-01'),
        wish,
      ).toEqual(['04-15 … 04-18 now', '04-19 … 06-17 late']);
  });

  it('never: none, though all else is said', () => {
    const never = hillFinches(FOUR_EGGS, looks('never'));
    for (const task of ['next-egg', 'candle', 'unhatched', 'ring'])
      expect(stands(never, task, '2026-03-01', '2026-04-15'), task).toEqual([]);
    expect(stands(never, 'hatch', '2026-03-01', '2026-04-15')).toEqual(['03-14 … 03-17 now', '03-18 late']);
  });

  it('the pair’s own wish goes before the species’', () => {
    const files = {
      ...species(looks('never')),
      'HF-1': pair('HF-1', 'hill finch', FOUR_EGGS, 'nest-looks: freely'),
    };
    expect(lines(files, 'candle', '2026-03-08')).toHaveLength(1);
  });

  it('an incubator may be opened whatever the pair wishes', () => {
    const log = `${FOUR_EGGS}date: 2026-03-05, fostered: {incubator: all}`;
    expect(lines(hillFinches(log, looks('never')), 'candle', '2026-03-09')).toMatchObject([
      { housing: 'incubator' },
    ]);
  });

  it('none in the week before fledging', () => {
    // Rings go on from day 12 to 16, 27 … 31 March; from day 17, 1 April, the nest is left alone.
    const late = { 'ring-age': '13-16' };
    expect(stands(hillFinches(THREE_CHICKS, late), 'ring', '2026-03-16', '2026-04-10')).toEqual([
      '03-27 … 03-31 now',
    ]);
    // To day 20, but two days before the earliest fledging, day 18, 2 April, nobody opens the nest.
    const later = { 'ring-age': '13-20' };
    expect(stands(hillFinches(THREE_CHICKS, later), 'ring', '2026-03-16', '2026-04-10')).toEqual([
      '03-27 … 04-01 now',
    ]);
  });
});

describe('an item', () => {
  it('says what, where, whom, when and why', () => {
    const files = { ...species(), 'HF-1': pair('HF-1', 'hill finch', THREE_CHICKS, 'housing: flight 2') };
    expect(lines(files, 'ring', '2026-03-21')).toMatchObject([
      {
        task: 'ring',
        pair: 'HF-1',
        bird: null,
        clutch: 1,
        who: ['c1', 'c2', 'c3'],
        housing: 'flight 2',
        species: 'hill finch',
        state: 'now',
        say: 'check whether the rings fit',
        why: 'hatched 15 Mar + 6–8 d',
        basis: null,
      },
    ]);
  });

  it('says how many days were counted: one, several, or without an end', () => {
    const why = (log: string, task: string, on: string) => lines(hillFinches(log), task, on)[0]?.why;
    expect(why('date: 2026-03-01, laid: 1', 'next-egg', '2026-03-02')).toMatch(/^e1 laid 1 Mar \+ 1 d/);
    expect(why(FOUR_EGGS, 'candle', '2026-03-08')).toBe('sitting since 3 Mar + 5–6 d');
    expect(why(ALL_OUT, 'watch-restart', '2026-04-10')).toBe('first fledged 5 Apr + 5 d');
  });

  it('is told from the same task for the same clutch: by the day of hatching, by the place', () => {
    const apart = (log: string, task: string, on: string) =>
      lines(hillFinches(log), task, on).map((item) => item.apart);
    expect(apart(FOUR_EGGS, 'candle', '2026-03-08')).toEqual([null]);
    const twoDays = `${FOUR_EGGS}date: 2026-03-15, hatched: [e1, e2]\ndate: 2026-03-16, hatched: e3`;
    expect(apart(twoDays, 'ring', '2026-03-22')).toEqual(['2026-03-15', '2026-03-16']);
    const split = `${FOUR_EGGS}date: 2026-03-05, fostered: {incubator: [e3, e4]}`;
    expect(apart(split, 'candle', '2026-03-09')).toEqual([null, 'incubator']);
  });

  it('is told apart by the species of guests too', () => {
    const files = {
      ...species(),
      'species/dale-finch.yaml': 'species: dale finch\nscientific: Exemplum vallicola\nring-age: 7-8\n',
      'HF-1': pair('HF-1', 'hill finch', THREE_CHICKS),
      'D-1': pair(
        'D-1',
        'dale finch',
        'date: 2026-03-15, hatched: 1\ndate: 2026-03-16, fostered: {HF-1: all}',
      ),
    };
    expect(lines(files, 'ring', '2026-03-22').map((item) => item.apart)).toEqual([
      '2026-03-15',
      'dale finch 2026-03-15',
    ]);
  });

  it('gives the reason alone where no days are counted from it', () => {
    const nights = ['05', '06', '07'].map((night) => `date: 2026-04-${night}, roosting: out`).join('\n');
    const [item] = lines(hillFinches(`${ALL_OUT}${nights}`), 'unhatched', '2026-04-08');
    expect(item).toMatchObject({ who: ['e4'], why: '3 nights with nobody in the nest, to 7 Apr' });
  });

  it('of a species that nobody has a profile of is named as the journal names it', () => {
    const files = { 'RF-1': pair('RF-1', 'ridge finch', THREE_CHICKS) };
    expect(lines(files, 'first-feed', '2026-03-16')).toMatchObject([{ species: 'ridge finch' }]);
    // Its eggs and rings have no days that could be counted.
    expect(agenda(files, '2026-03-21', 30).map(({ task }) => task)).toEqual([]);
  });

  it('names guests in full', () => {
    const files = {
      ...species(),
      'HF-1': pair('HF-1', 'hill finch', `${THREE_CHICKS}date: 2026-03-18, fostered: {HF-2: [c1, c2]}`),
      'HF-2': pair('HF-2', 'hill finch', 'date: 2026-03-10, paired'),
    };
    expect(
      lines(files, 'ring', '2026-03-21').map(({ pair: where, clutch, who }) => ({ where, clutch, who })),
    ).toEqual([
      { where: 'HF-1', clutch: 1, who: ['c3'] },
      { where: 'HF-2', clutch: null, who: ['HF-1/1/c1', 'HF-1/1/c2'] },
    ]);
  });
});

it('of those that are still in the nest the day of hatching is told, not that of the ones that left it', () => {
  const log = `${THREE_CHICKS}date: 2026-03-17, after: 2026-03-16, hatched: e4\ndate: 2026-04-05, fledged: [c1, c2, c3]`;
  const [left] = lines(hillFinches(log), 'fledge', '2026-04-06');
  expect(left?.who).toEqual(['c4']);
  expect(left?.why).toContain('hatched 17 Mar');
});
