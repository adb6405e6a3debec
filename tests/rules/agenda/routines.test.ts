import { describe, expect, it } from 'vitest';
import { routineWords } from '../../../src/rules/agenda/routines.ts';
import { type Files, record } from '../../rooms.ts';
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

const calcium = withRoutine(
  'name: calcium, after: paired, days: 3, every: 2, until: laid, say: calcium in the egg food',
);

const mornings = (log: string, room: Files, task: string, to = '2026-05-31') =>
  stands(hillFinches(log, {}, room), task, '2026-02-01', to);

describe('after something', () => {
  // Paired on 10 February: three days after is the 13th.
  it('is due so many days after it, and late until it is done', () => {
    expect(mornings('date: 2026-02-10, paired', calcium, 'calcium', '2026-02-20')).toEqual([
      '02-13 now',
      '02-14 … 02-20 late',
    ]);
  });

  it('comes again so many days after it was done', () => {
    const log = 'date: 2026-02-10, paired\ndate: 2026-02-14, done: calcium';
    expect(mornings(log, calcium, 'calcium', '2026-02-18')).toEqual([
      '02-13 now',
      '02-16 now',
      '02-17 … 02-18 late',
    ]);
  });

  it('ends with what it lasts until', () => {
    const log = 'date: 2026-02-10, paired\ndate: 2026-02-15, laid: 1';
    expect(mornings(log, calcium, 'calcium')).toEqual(['02-13 now', '02-14 late']);
  });

  it('begins anew when they are put together anew', () => {
    const log =
      'date: 2026-02-01, paired\ndate: 2026-02-03, laid: 1\ndate: 2026-02-10, parted\ndate: 2026-03-01, reunited';
    expect(mornings(log, calcium, 'calcium', '2026-03-05')).toEqual(['03-04 now', '03-05 late']);
  });

  it('without `every` once is enough', () => {
    const once = withRoutine('name: worm, after: paired, days: 3, say: worm them');
    expect(mornings('date: 2026-02-10, paired\ndate: 2026-02-14, done: worm', once, 'worm')).toEqual([
      '02-13 now',
    ]);
    // Given up thirty days after the 13th, 15 March.
    expect(mornings('date: 2026-02-10, paired', once, 'worm')).toEqual(['02-13 now', '02-14 … 03-15 late']);
  });

  it('done before it began does not count', () => {
    const once = withRoutine('name: worm, after: paired, days: 3, say: worm them');
    expect(
      mornings('date: 2026-02-05, done: worm\ndate: 2026-02-10, paired', once, 'worm', '2026-02-13'),
    ).toEqual(['02-13 now']);
  });

  it.each([
    ['laid', '2026-03-01'],
    ['sitting', '2026-03-03'],
    ['hatched', '2026-03-15'],
    ['fledged', '2026-04-05'],
    ['independent', '2026-04-25'],
    ['parted', '2026-04-28'],
  ])('counts from: %s', (after, on) => {
    const room = withRoutine(`name: look, after: ${after}, days: 0, say: look`);
    const log = `${ALL_OUT}date: 2026-04-25, independent: all\ndate: 2026-04-28, parted`;
    const first = stands(hillFinches(log, {}, room), 'look', '2026-02-25', on)[0];
    expect(first).toBe(`${on.slice(5)} now`);
  });

  it.each([
    ['paired', '2026-02-10', 'paired 10 Feb + 0 d'],
    ['laid', '2026-03-01', 'first egg 1 Mar + 0 d'],
    ['sitting', '2026-03-03', 'sitting since 3 Mar + 0 d'],
    ['hatched', '2026-03-15', 'first hatched 15 Mar + 0 d'],
    ['fledged', '2026-04-05', 'first fledged 5 Apr + 0 d'],
    ['independent', '2026-04-27', 'independent 27 Apr + 0 d'],
    ['parted', '2026-04-28', 'parted 28 Apr + 0 d'],
  ])('says what it counts from: %s', (after, day, why) => {
    const room = withRoutine(`name: look, after: ${after}, days: 0, say: look`);
    const log = `date: 2026-02-10, paired\n${ALL_OUT}date: 2026-04-25, independent: [c1, c2]\ndate: 2026-04-27, independent: c3\ndate: 2026-04-28, parted`;
    const [item] = lines(hillFinches(log, {}, room), 'look', day);
    // What happens to the pair is of no clutch.
    const clutch = after === 'paired' || after === 'parted' ? null : 1;
    expect(item).toMatchObject({ why, clutch, species: 'hill finch', pair: 'HF-1' });
  });

  it('counts from independence once the last feeds itself', () => {
    const room = withRoutine('name: look, after: independent, days: 0, say: look');
    const log = `${ALL_OUT}date: 2026-04-25, independent: [c1, c2]\ndate: 2026-04-27, independent: c3`;
    expect(mornings(log, room, 'look', '2026-04-28')).toEqual(['04-27 now', '04-28 late']);
    expect(mornings(ALL_OUT, room, 'look', '2026-04-28')).toEqual([]);
  });

  it('says when it was done and from what it began', () => {
    const log = 'date: 2026-02-10, paired\ndate: 2026-02-14, done: calcium';
    expect(lines(hillFinches(log, {}, calcium), 'calcium', '2026-02-16')[0]?.why).toBe(
      'done 14 Feb + 2 d; paired 10 Feb',
    );
  });

  it('counts from the last time it was done, by its own name and in its own pair', () => {
    const log = 'date: 2026-02-10, paired\ndate: 2026-02-13, done: calcium\ndate: 2026-02-16, done: calcium';
    const other = pair('HF-2', 'hill finch', 'date: 2026-02-10, paired\ndate: 2026-02-17, done: calcium');
    const room = { ...calcium, 'HF-2': other };
    const found = lines(hillFinches(log, {}, room), 'calcium', '2026-02-18').filter(
      (item) => item.pair === 'HF-1',
    );
    expect(found.map(({ why }) => why)).toEqual(['done 16 Feb + 2 d; paired 10 Feb']);
    const rooms = withRoutine(
      'name: calcium, after: paired, days: 3, every: 2, say: calcium',
      '  - {date: 2026-02-15, done: calcium}\n  - {date: 2026-02-17, done: water}\n',
    );
    expect(lines(hillFinches('date: 2026-02-10, paired', {}, rooms), 'calcium', '2026-02-17')[0]?.why).toBe(
      'done 15 Feb + 2 d; paired 10 Feb',
    );
  });

  it('ends on the very day of what it lasts until, and does not when that was before', () => {
    const until = withRoutine('name: calcium, after: paired, days: 0, until: laid, say: calcium');
    expect(mornings('date: 2026-02-10, paired, laid: 1', until, 'calcium', '2026-02-12')).toEqual([]);
    // Last year's eggs do not end this year's routine.
    const again = `date: 2026-02-01, laid: 1\ndate: 2026-02-05, lost: {broken: e1}, parted\ndate: 2026-02-10, reunited`;
    expect(mornings(again, until, 'calcium', '2026-02-10').at(-1)).toBe('02-10 now');
  });

  it('stays over long after the clutch that ended it, until they are put together anew', () => {
    const log = 'date: 2026-01-02, paired\ndate: 2026-01-10, laid: 1\ndate: 2026-01-12, lost: {broken: e1}';
    const on = (more: string, routine = calcium) =>
      lines(hillFinches(`${log}\n${more}`, {}, routine), 'calcium', '2026-09-30').map(({ why }) => why);
    const done = 'date: 2026-09-28, done: calcium';
    expect(on(done)).toEqual([]);
    const always = withRoutine('name: calcium, after: paired, days: 3, every: 2, say: calcium');
    expect(on(done, always)).toEqual(['done 28 Sep + 2 d; paired 2 Jan']);
    expect(on('date: 2026-09-20, parted\ndate: 2026-09-27, reunited')).toEqual(['reunited 27 Sep + 3 d']);
  });

  it('does not end with an arrival: that is of a bird, not of a pair', () => {
    const room = withRoutine('name: calcium, after: paired, days: 3, until: arrived, say: calcium');
    expect(mornings('date: 2026-02-10, paired', room, 'calcium', '2026-02-14')).toEqual([
      '02-13 now',
      '02-14 late',
    ]);
  });

  it('of a pair that was parted before it ever laid', () => {
    const room = withRoutine('name: look, after: parted, days: 1, say: look');
    expect(
      mornings('date: 2026-02-10, paired\ndate: 2026-02-20, parted', room, 'look', '2026-02-21'),
    ).toEqual(['02-21 now']);
  });

  it('keeps each pair apart, and has a line for one that has not laid', () => {
    const files = {
      ...species(),
      ...withRoutine('name: look, after: paired, days: 0, say: look'),
      'HF-1': pair('HF-1', 'hill finch', 'date: 2026-03-01, paired', 'housing: flight 1'),
      'HF-2': pair('HF-2', 'ridge finch', 'date: 2026-03-01, paired', 'housing: flight 2'),
    };
    const found = lines(files, 'look', '2026-03-01').map((item) => [item.pair, item.species, item.housing]);
    expect(found).toEqual([
      ['HF-1', 'hill finch', 'flight 1'],
      ['HF-2', 'ridge finch', 'flight 2'],
    ]);
  });

  it('is one line for a pair, whose eggs lie in the nest and in the incubator', () => {
    const room = withRoutine('name: look, after: laid, days: 0, say: look');
    const log = `${FOUR_EGGS}date: 2026-03-04, fostered: {incubator: [e1, e2]}`;
    expect(lines(hillFinches(log, {}, room), 'look', '2026-03-05')).toHaveLength(1);
  });

  it('skipped is another one', () => {
    const room = withRoutine('name: look, after: laid, days: 0, say: look');
    expect(
      lines(hillFinches(`${FOUR_EGGS}date: 2026-03-04, skip: candle`, {}, room), 'look', '2026-03-05'),
    ).toHaveLength(1);
  });

  it('is skipped for one clutch', () => {
    const room = withRoutine('name: look, after: laid, days: 5, say: look');
    expect(mornings(`${FOUR_EGGS}date: 2026-03-05, skip: look`, room, 'look')).toEqual([]);
    expect(mornings(FOUR_EGGS, room, 'look', '2026-03-06')).toEqual(['03-06 now']);
  });

  it('is one line for a clutch, though the nest holds guests besides', () => {
    const files = {
      ...species(),
      ...withRoutine('name: look, after: laid, days: 5, say: look'),
      // The guests come when the host has nothing of its own in the nest.
      'HF-1': pair('HF-1', 'hill finch', 'date: 2026-03-01, laid: 1\ndate: 2026-03-02, lost: {broken: e1}'),
      'HF-2': pair(
        'HF-2',
        'hill finch',
        'date: 2026-03-09, laid: 1\ndate: 2026-03-10, fostered: {HF-1: all}',
      ),
    };
    expect(
      lines(files, 'look', '2026-03-10')
        .filter((item) => item.pair === 'HF-1')
        .map(({ clutch }) => clutch),
    ).toEqual([1]);
  });
});

describe('of a bird that arrived', () => {
  const room = (log: string, until = '') => ({
    ...species(),
    ...withRoutine(`name: weigh, after: arrived, days: 2${until}, say: weigh it`),
    'birds.yaml': `birds:\n  - id: HF-9\n    species: hill finch\n    log:\n      - {date: 2026-03-01, arrived: cage 1}\n${log}`,
  });

  it('stands at the bird, where it lives', () => {
    expect(lines(room(''), 'weigh', '2026-03-03')).toMatchObject([
      { bird: 'HF-9', pair: null, housing: 'cage 1', why: 'arrived 1 Mar + 2 d', state: 'now' },
    ]);
  });

  it('begins anew when it comes home', () => {
    const log = '      - {date: 2026-03-20, gone: lent}\n      - {date: 2026-05-01, back}\n';
    expect(lines(room(log), 'weigh', '2026-05-03')).toMatchObject([
      { why: 'back 1 May + 2 d', state: 'now' },
    ]);
  });

  it('ends when the bird dies', () => {
    expect(lines(room('      - {date: 2026-03-02, died}\n'), 'weigh', '2026-03-03')).toEqual([]);
  });

  it('ends when it is put to a mate, where it lasts until then', () => {
    const mated = {
      'HF-1': pair('HF-1', 'hill finch', 'date: 2026-03-02, paired', 'cock: HF-9'),
      'HF-2': pair('HF-2', 'hill finch', 'date: 2026-02-02, paired', 'cock: HF-7'),
    };
    expect(lines({ ...room('', ', until: paired'), ...mated }, 'weigh', '2026-03-03')).toEqual([]);
    expect(lines({ ...room(''), ...mated }, 'weigh', '2026-03-03')).toHaveLength(1);
  });

  it('ends when it is put to a mate by another of its names', () => {
    const birds = (name: string) => ({
      ...room('', ', until: paired'),
      'birds.yaml': `birds:\n  - id: HF-9\n    ring: HF 25 014\n    species: hill finch\n    log:\n      - {date: 2026-03-01, arrived: cage 1}\n`,
      'HF-1': pair('HF-1', 'hill finch', 'date: 2026-03-02, paired', `cock: ${name}`),
    });
    expect(lines(birds('HF 25 014'), 'weigh', '2026-03-03')).toEqual([]);
    expect(lines(birds("'ring:HF 25 014'"), 'weigh', '2026-03-03')).toEqual([]);
    expect(lines(birds('HF 25 015'), 'weigh', '2026-03-03')).toHaveLength(1);
  });

  it('ends with nothing else than this bird’s pairing, after it came', () => {
    const mate = (log: string, head: string) => ({
      ...room('', ', until: paired'),
      'HF-1': pair('HF-1', 'hill finch', log, head),
    });
    const count = (log: string, head: string) => lines(mate(log, head), 'weigh', '2026-03-03').length;
    expect(count('date: 2026-03-01, paired', 'cock: HF-9\nhen: HF-8')).toBe(0);
    expect(count('date: 2026-03-02, paired', 'cock: HF-7\nhen: HF-8')).toBe(1);
    expect(count('date: 2026-02-20, paired', 'cock: HF-9\nhen: HF-8')).toBe(1);
    expect(count('date: 2026-02-20, paired\ndate: 2026-03-02, parted', 'cock: HF-9\nhen: HF-8')).toBe(1);
    expect(count('date: 2026-02-20, paired\ndate: 2026-03-02, reunited', 'cock: HF-9\nhen: HF-8')).toBe(0);
  });

  it('holds for a bird of this room that came home, though it feeds itself', () => {
    const log = `${ALL_OUT}date: 2026-04-25, independent: all\ndate: 2026-05-01, gone: {lent: c1}\ndate: 2026-06-01, back: c1`;
    const files = hillFinches(log, {}, withRoutine('name: weigh, after: arrived, days: 2, say: weigh it'));
    expect(lines(files, 'weigh', '2026-06-03').map(({ bird }) => bird)).toEqual(['HF-1/1/c1']);
  });

  it('ends when a young bird that came back to be fed feeds itself, where it lasts until then', () => {
    const until = withRoutine(
      'name: hand-feed, after: arrived, days: 1, every: 1, until: independent, say: feed it by hand',
    );
    const log = `${ALL_OUT}date: 2026-04-10, gone: {lent: c1}\ndate: 2026-04-20, back: c1\ndate: 2026-04-24, done: hand-feed`;
    const on = (more: string) =>
      lines(hillFinches(log + more, {}, until), 'hand-feed', '2026-04-25').map(({ bird }) => bird);
    expect(on('')).toEqual(['HF-1/1/c1']);
    expect(on('\ndate: 2026-04-25, independent: c1')).toEqual([]);
    // What it learned before it left is no end of what began when it came back.
    const grown = `${ALL_OUT}date: 2026-04-25, independent: all\ndate: 2026-05-01, gone: {lent: c1}\ndate: 2026-06-01, back: c1`;
    expect(lines(hillFinches(grown, {}, until), 'hand-feed', '2026-06-02')).toHaveLength(1);
  });
});

describe('in the words of a task', () => {
  const words = (files: Files) => {
    const [routine] = record(files, '2026-03-01').settings.routines;
    if (routine === undefined) throw new Error('no routine');
    return routineWords(routine);
  };

  it('says its days and when it is over', () => {
    expect(words(calcium)).toMatchObject({
      task: 'calcium',
      say: 'calcium in the egg food',
      when: 'paired + 3 d, again every 2 d',
      doneBy: '`done: calcium`',
      over: 'once `laid` is recorded',
    });
    expect(words(withRoutine('name: worm flights, every: 90, say: worm'))).toMatchObject({
      when: 'every 90 d',
    });
    expect(words(withRoutine('name: worm, after: paired, days: 3, say: worm them'))).toMatchObject({
      when: 'paired + 3 d',
      over: 'a month later, unless it comes again',
      explain: 'A routine of this room, from nestlog.yaml.',
    });
  });
});

describe('lasting until something in the course of the brood', () => {
  const greens = withRoutine('name: greens, after: hatched, days: 1, every: 1, until: fledged, say: greens');
  const stood = (end: string, room = greens) =>
    mornings(
      `${THREE_CHICKS}date: 2026-03-16, done: greens, lost: {undeveloped: e4}\ndate: 2026-03-19, ${end}`,
      room,
      'greens',
      '2026-04-30',
    );
  const UNTIL_THEN = ['03-17 now', '03-18 late'];

  it('ends when it happens', () => {
    expect(stood('fledged: 1')).toEqual(UNTIL_THEN);
  });

  it('ends when nobody of the brood is left, whatever became of them', () => {
    expect(stood('died: all')).toEqual(UNTIL_THEN);
    expect(stood('gone: {given: all}')).toEqual(UNTIL_THEN);
  });

  it('goes on for those that are left', () => {
    expect(stood('died: [c1, c2]').at(-1)).toBe('03-18 … 04-16 late');
  });

  it('goes on while one of the eggs waits in the incubator', () => {
    const turn = withRoutine('name: greens, after: laid, days: 12, every: 1, until: hatched, say: turn them');
    const log = `${FOUR_EGGS}date: 2026-03-05, set: {incubator: e1}, lost: {broken: [e2, e3, e4]}`;
    expect(mornings(log, turn, 'greens', '2026-03-14')).toEqual(['03-13 now', '03-14 late']);
    expect(mornings(`${log}\ndate: 2026-03-08, lost: {clear: e1}`, turn, 'greens', '2026-03-14')).toEqual([]);
  });

  it('until the next egg goes on without the brood', () => {
    const lean = withRoutine('name: greens, after: hatched, days: 1, every: 1, until: laid, say: greens');
    expect(stood('died: all', lean).at(-1)).toBe('03-18 … 04-16 late');
    expect(stood('died: all\ndate: 2026-03-25, laid: 1', lean).at(-1)).toBe('03-18 … 03-24 late');
  });

  it('says so in the words of a task', () => {
    const [routine] = record(greens, '2026-03-01').settings.routines;
    expect(routine && routineWords(routine).over).toBe(
      'once `fledged` is recorded, or nobody of the brood is left',
    );
  });
});
