import { describe, expect, it } from 'vitest';
import { agenda, type Files } from '../../rooms.ts';
import { pair } from '../warnings/warned.ts';
import {
  ALL_OUT,
  FOUR_EGGS,
  hillFinches,
  lines,
  species,
  stands,
  THREE_CHICKS,
  withRoutine,
} from './hill-finch.ts';

/** The reasons that stand on a day for a room of HF-1 with this log and this routine, which is called `greens`. */
const whys = (log: string, routine: string, on: string, more: Files = {}) =>
  lines(
    hillFinches(log, {}, { ...withRoutine(`name: greens, ${routine}, say: greens`), ...more }),
    'greens',
    on,
  )
    .filter((item) => item.pair === 'HF-1')
    .map(({ why }) => why);

describe('of the whole room', () => {
  const worms = 'name: worm flights, every: 90, say: worm all flights';

  it('is due at once while it was never done', () => {
    const [item] = agenda(withRoutine(worms), '2026-05-01');
    expect(item).toMatchObject({
      task: 'worm flights',
      pair: null,
      bird: null,
      state: 'now',
      why: 'every 90 d; never done yet',
    });
  });

  it('counts from when it was last done, and is never given up', () => {
    // 1 February + 90 is 2 May.
    const room = withRoutine(worms, '  - {date: 2026-02-01, done: worm flights}\n');
    expect(stands(room, 'worm flights', '2026-02-01', '2026-09-30')).toEqual([
      '05-02 now',
      '05-03 … 09-30 late',
    ]);
  });

  it('says when it was done', () => {
    const room = withRoutine(
      worms,
      '  - {date: 2026-01-01, done: worm flights}\n  - {date: 2026-02-01, done: worm flights}\n',
    );
    expect(agenda(room, '2026-05-02', 0).map(({ why }) => why)).toEqual(['done 1 Feb + 90 d']);
  });

  it('what is written for later is not done yet', () => {
    const room = withRoutine(worms, '  - {date: 2026-06-01, done: worm flights}\n');
    expect(agenda(room, '2026-05-02', 0).map(({ why }) => why)).toEqual(['every 90 d; never done yet']);
  });

  it('done in a pair’s journal is done', () => {
    expect(
      stands(
        hillFinches('date: 2026-03-01, done: worm flights', {}, withRoutine(worms)),
        'worm flights',
        '2026-02-01',
        '2026-04-30',
      ),
    ).toEqual(['02-01 … 02-28 now']);
  });
});

describe('of a pair', () => {
  const daily = 'after: paired, days: 0, every: 2';

  it('done on the very day on which they were put together is done', () => {
    expect(whys('date: 2026-02-10, paired, done: greens', daily, '2026-02-12')).toEqual([
      'done 10 Feb + 2 d; paired 10 Feb',
    ]);
  });

  it('is not done with another routine in the same journal', () => {
    const log = 'date: 2026-02-10, paired\ndate: 2026-02-12, done: greens\ndate: 2026-02-13, done: water';
    expect(whys(log, daily, '2026-02-14')).toEqual(['done 12 Feb + 2 d; paired 10 Feb']);
  });

  it('is of no clutch, though they have one', () => {
    const files = hillFinches(
      `date: 2026-02-10, paired\n${FOUR_EGGS}`,
      {},
      withRoutine(`name: greens, ${daily}`),
    );
    expect(lines(files, 'greens', '2026-03-05')).toMatchObject([{ pair: 'HF-1', clutch: null }]);
  });

  it('is skipped with their clutch, until they are put together anew', () => {
    const log = `date: 2026-02-10, paired\n${FOUR_EGGS}date: 2026-03-05, skip: greens\n`;
    expect(whys(log, daily, '2026-03-06')).toEqual([]);
    const anew = `${log}date: 2026-03-10, lost: {clear: all}, parted\ndate: 2026-03-20, reunited\n`;
    expect(whys(anew, daily, '2026-03-20')).toEqual(['reunited 20 Mar + 0 d']);
    expect(whys(`${anew}date: 2026-03-20, skip: greens`, daily, '2026-03-20')).toEqual([]);
  });

  it('until the next egg ends with it, also in the midst of a clutch that they were put together for anew', () => {
    const log = 'date: 2026-03-01, laid: 1\ndate: 2026-03-02, parted\ndate: 2026-03-03, reunited\n';
    const until = `${daily}, until: laid`;
    expect(whys(log, until, '2026-03-03')).toEqual(['reunited 3 Mar + 0 d']);
    expect(whys(`${log}date: 2026-03-04, laid: 1`, until, '2026-03-04')).toEqual([]);
  });

  it('until the hatch ends on that very day, not with a brood that hatched before they were put together', () => {
    const until = `${daily}, until: hatched`;
    const hatched = 'date: 2026-03-15, after: 2026-03-14, hatched: [e1, e2, e3], reunited';
    expect(whys(`${FOUR_EGGS}date: 2026-03-14, reunited\n`, until, '2026-03-14')).toHaveLength(1);
    expect(whys(`${FOUR_EGGS}${hatched}`, until, '2026-03-15')).toEqual([]);
    expect(whys(`${THREE_CHICKS}date: 2026-03-16, reunited`, until, '2026-03-16')).toEqual([
      'reunited 16 Mar + 0 d',
    ]);
  });

  it('until the hatch goes on while they have no eggs at all', () => {
    expect(whys('date: 2026-02-10, paired', `${daily}, until: hatched`, '2026-02-10')).toHaveLength(1);
  });
});

describe('of a brood', () => {
  it('is asked for where young of another pair are reared, of no clutch of theirs', () => {
    const files = {
      ...species(),
      ...withRoutine('name: greens, after: hatched, days: 1'),
      'HF-1': pair('HF-1', 'hill finch', `${THREE_CHICKS}date: 2026-03-20, fostered: {HF-2: all}`),
      'HF-2': pair('HF-2', 'hill finch', 'date: 2026-03-01, paired'),
    };
    expect(lines(files, 'greens', '2026-03-20').filter((item) => item.pair === 'HF-2')).toMatchObject([
      { clutch: null, why: 'first hatched 15 Mar + 1 d' },
    ]);
  });

  it('ends when nobody of it is left, though the pair has a later clutch', () => {
    const until = 'after: hatched, days: 1, until: fledged';
    const log = `${THREE_CHICKS}date: 2026-03-20, lost: {clear: e4}\n`;
    const later = 'date: 2026-03-21, laid: 1\n';
    expect(whys(`${log}${later}`, until, '2026-03-21')).toHaveLength(1);
    expect(whys(`${log}date: 2026-03-20, died: all\n${later}`, until, '2026-03-21')).toEqual([]);
  });

  it('goes on with one egg and one chick, or one egg in the nest and one in store', () => {
    const until = 'after: laid, days: 0, until: fledged';
    const two = 'date: 2026-03-01, laid: 1\ndate: 2026-03-02, laid: 1';
    const hatch = `${two}, sitting\ndate: 2026-03-14, after: 2026-03-13, hatched: e1`;
    expect(whys(hatch, until, '2026-03-14')).toHaveLength(1);
    expect(whys(`${two}, pulled: e2`, until, '2026-03-02')).toHaveLength(1);
    expect(whys(`${two}, lost: {broken: all}`, until, '2026-03-02')).toEqual([]);
  });

  it('begins with the independence of the last, which somebody saw of one at least', () => {
    const died = `${ALL_OUT}date: 2026-04-10, died: [c1, c2]\ndate: 2026-04-25, died: c3`;
    expect(whys(died, 'after: independent, days: 0', '2026-04-25')).toEqual([]);
  });
});

describe('of a bird that arrived', () => {
  const room = (done: string[], bird = 'date: 2026-03-01, arrived: cage 1'): Files => ({
    ...species(),
    ...withRoutine(
      'name: weigh, after: arrived, days: 2, every: 3, say: weigh it',
      done.map((on) => `  - {date: ${on}, done: weigh}\n`).join('') || undefined,
    ),
    'birds.yaml': `birds:\n  - {id: HF-9, species: hill finch, log: [{${bird}}]}\n`,
  });
  const why = (done: string[], on: string) => lines(room(done), 'weigh', on).map((item) => item.why);

  it('comes again so many days after it was last done, from the day of its coming on', () => {
    expect(why(['2026-03-03', '2026-03-06'], '2026-03-09')).toEqual(['done 6 Mar + 3 d; arrived 1 Mar']);
    expect(why(['2026-03-01'], '2026-03-04')).toEqual(['done 1 Mar + 3 d; arrived 1 Mar']);
  });

  it('what was done for others before it came is not done for this one', () => {
    expect(why(['2026-02-28'], '2026-03-03')).toEqual(['arrived 1 Mar + 2 d']);
  });

  it('is over once done where it does not come again, and a month late', () => {
    const once = (log: string) => ({
      ...room([]),
      ...withRoutine('name: weigh, after: arrived, days: 2', log),
    });
    const done = '  - {date: 2026-03-02, done: weigh}\n';
    expect(stands(once(done), 'weigh', '2026-03-02', '2026-03-10')).toEqual([]);
    // 3 March + 30 d is 2 April.
    expect(stands(room([]), 'weigh', '2026-03-02', '2026-04-10')).toEqual([
      '03-03 now',
      '03-04 … 04-02 late',
    ]);
  });
});
