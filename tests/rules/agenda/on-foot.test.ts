import { describe, expect, it } from 'vitest';
import { formatDay } from '../../../src/days.ts';
import { agenda } from '../../rooms.ts';
import { line, morning, pair, warned } from '../warnings/warned.ts';

// King quail: 16–18 d of sitting from the last egg, brooded on the floor to 18–28 d (from memory). The chicks run and feed
// themselves from the day of hatching; water so shallow that they cannot drown: common practice.
const quails = (more = '', head = 'cock: KQ-1\nhen: KQ-2\nhousing: flight 3') => ({
  'Q-1': pair(
    'Q-1',
    'king quail',
    `date: 2026-03-20, clutch: 1, laid: 1\n date: 2026-03-26, laid: 6, sitting: hen\n ${more}`,
    head,
  ),
});
const hatched = 'date: 2026-04-12, hatched: 7';
const tasks = (files: Record<string, string>, on: string) =>
  agenda(files, on, 0).map(({ task, from, to }) => `${task} ${formatDay(from)} ${formatDay(to ?? from)}`);

describe('chicks that walk off as they hatch', () => {
  it('find tiny food and shallow water as they come, from the day before the first can', () => {
    expect(tasks(quails(), '2026-04-10')).toContain('chicks-on-foot 2026-04-10 2026-04-13');
    expect(tasks(quails(), '2026-04-09').join()).not.toContain('chicks-on-foot');
    expect(tasks(quails(hatched), '2026-04-15').join()).toContain('chicks-on-foot');
    expect(tasks(quails(hatched), '2026-04-16').join()).not.toContain('chicks-on-foot');
  });

  it('are kept warm from the hatching to the end of brooding', () => {
    expect(tasks(quails(hatched), '2026-04-12')).toContain('chick-warmth 2026-04-10 2026-05-10');
    expect(tasks(quails(hatched), '2026-05-10').join()).toContain('chick-warmth');
    expect(tasks(quails(hatched), '2026-05-11').join()).not.toContain('chick-warmth');
    const [all] = agenda(quails(hatched), '2026-04-12', 0).filter(({ task }) => task === 'chick-warmth');
    expect(all).toMatchObject({ who: null, housing: 'flight 3' });
    const dead = `${hatched}\n date: 2026-04-14, died: all`;
    expect(tasks(quails(dead), '2026-04-15').join()).not.toMatch(/chick-warmth|chicks-on-foot/);
  });

  it('leave no nest, and are fed by nobody', () => {
    for (const on of ['2026-04-12', '2026-04-13', '2026-04-21', '2026-05-01']) {
      expect(tasks(quails(hatched), on).join(), on).not.toMatch(/fledge|first-feed|warm-nights/);
    }
  });

  it('are moved as young that are out of the nest, and kept warm where they are', () => {
    const moved = `${hatched}\n date: 2026-04-20, moved: {all: brooder}`;
    const warm = agenda(quails(moved), '2026-04-21', 0).filter(({ task }) => task === 'chick-warmth');
    expect(warm.map(({ housing }) => housing)).toEqual(['brooder']);
    const some = quails(`${hatched}\n date: 2026-04-20, moved: {c1: brooder}`);
    const places = agenda(some, '2026-04-21', 0).filter(({ task }) => task === 'chick-warmth');
    expect(places.map(({ housing, who }) => `${housing} ${who?.length}`)).toEqual([
      'brooder 1',
      'flight 3 6',
    ]);
  });

  it('leave eggs behind that are asked about two days after the window, and a hollow that nobody takes down', () => {
    const left = quails('date: 2026-04-12, hatched: 5');
    expect(tasks(left, '2026-04-15').join()).toContain('unhatched');
    const weaned = quails('date: 2026-04-12, hatched: 7\n date: 2026-05-20, independent: all');
    expect(tasks(weaned, '2026-05-21').join()).not.toContain('nest-down');
  });

  it('of other species know nothing of it', () => {
    const finches = {
      'S-1': pair('S-1', 'star finch', 'date: 2026-03-26, laid: 4, sitting\n date: 2026-04-09, hatched: 4'),
    };
    expect(tasks(finches, '2026-04-10').join()).not.toMatch(/chick-warmth|chicks-on-foot/);
  });

  it('are watched from the day on which the cock may begin to hunt them', () => {
    expect(tasks(quails(hatched), '2026-05-03').join()).toContain('watch-restart');
  });
});

describe('a cock that hunts the hen beside such chicks', () => {
  const hunted = `${hatched}\n date: 2026-04-20, chasing: {by: cock, at: hen, level: fierce}`;

  it('is taken away and stays away: one parent that broods is enough', () => {
    const { text } = line(quails(hunted), 'chasing', '2026-04-20');
    expect(text).toContain(
      '7 chicks need warmth, and one parent that broods is enough: the one that chased stays apart',
    );
    const parted = quails(`${hunted}\n date: 2026-04-21, parted: {cock: cage 7}`);
    expect(morning(parted, '2026-04-21')).toEqual([]);
  });

  it('leaves them to a brooder where the hen is gone too', () => {
    const both = quails(`${hunted}\n date: 2026-04-21, parted: {cock: cage 7}\n date: 2026-04-22, died: hen`);
    const { level, text, check } = line(both, 'parent-lost', '2026-04-22');
    expect(level).toBe('act');
    expect(text).toContain('with 7 chicks to keep warm');
    expect(text).toContain('Nobody is left to keep them warm');
    expect(text).not.toContain('taken by');
    expect(check).toContain('a brooder at once');
    expect(warned(both, 'feeder-away', '2026-04-22')).toEqual([]);
  });
});
