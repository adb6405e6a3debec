import { describe, expect, it } from 'vitest';
import { type Files, room } from '../rooms.ts';
import { journal, waxbills } from './facts.ts';

const found = (files: Files, on = '2026-12-31') =>
  room(files, on).findings.map(({ code, at, args }) => ({ code, file: at.file, line: at.line, ...args }));

describe('a hen', () => {
  const one = (log: string) => journal('LW-1', 'lavender waxbill', log, 'hen: LW-20-11');
  const other = (log: string) => journal('LW-2', 'lavender waxbill', log, 'hen: LW-20-11');

  it('is in one pair: a clutch of hers begun elsewhere while she still lays here is an error', () => {
    const files = {
      a: one('date: 2026-03-01, laid: 1\ndate: 2026-03-05, laid: 2'),
      b: other('date: 2026-03-03, laid: 1'),
    };
    expect(found(files)).toMatchObject([
      { code: 'hen-in-two-pairs', file: 'pairs/b.yaml', hen: 'LW-20-11', pair: 'LW-1', other: 'LW-2' },
    ]);
  });

  it('who sits in one nest lays in no other: the last day on which she was seen there counts', () => {
    const begun = (sits: string) => ({
      a: one(`date: 2026-03-01, laid: 1\ndate: 2026-03-02, laid: 1\ndate: 2026-03-09, sitting: ${sits}`),
      b: other('date: 2026-02-01, paired\ndate: 2026-03-08, courting\ndate: 2026-03-09, laid: 1'),
    });
    for (const sits of ['hen', 'both'])
      expect(found(begun(sits))).toEqual([
        expect.objectContaining({
          code: 'hen-in-two-pairs',
          file: 'pairs/b.yaml',
          line: 7,
          day: '2026-03-09',
        }),
      ]);
    // The cock on the eggs, or somebody whom nobody told apart, says nothing of her.
    expect(found(begun('cock'))).toEqual([]);
    expect(found({ ...begun('hen'), b: other('date: 2026-03-10, laid: 1') })).toEqual([]);
  });

  it('is looked at in the order in which her clutches were begun, in whichever journal they stand', () => {
    const three = {
      a: one('date: 2026-05-01, laid: 1\ndate: 2026-05-05, laid: 2'),
      b: other('date: 2026-03-01, laid: 1\ndate: 2026-05-03, clutch: 2, laid: 1'),
    };
    expect(found(three)).toMatchObject([{ code: 'hen-in-two-pairs', pair: 'LW-1', other: 'LW-2', line: 6 }]);
    const twice = one('date: 2026-03-01, clutch: 1, laid: 1\ndate: 2026-03-02, clutch: 2, laid: 1');
    expect(found({ a: twice })).toEqual([]);
  });

  it('may have two nests of one pair at once', () => {
    const two = 'date: 2026-03-01, site: left, laid: 1\ndate: 2026-03-02, site: right, clutch: 2, laid: 1';
    expect(found({ a: one(`${two}\ndate: 2026-03-03, clutch: 1, laid: 1`) })).toEqual([]);
  });

  it('is found in the journal of the later nest, whatever is told elsewhere of that day', () => {
    const files = {
      a: one('date: 2026-03-01, laid: 1\ndate: 2026-03-05, laid: 2'),
      b: other('date: 2026-03-03, laid: 1'),
      c: journal('A-1', 'canary', 'date: 2026-03-03, paired'),
    };
    expect(found(files)).toMatchObject([{ code: 'hen-in-two-pairs', file: 'pairs/b.yaml' }]);
  });

  it('who lays in three nests at once is told for each two of them', () => {
    const all = {
      a: one('date: 2026-03-01, laid: 1\ndate: 2026-03-05, laid: 2'),
      b: other('date: 2026-03-02, laid: 1\ndate: 2026-03-04, laid: 1'),
      c: journal('LW-3', 'lavender waxbill', 'date: 2026-03-03, laid: 1', 'hen: LW-20-11'),
    };
    expect(found(all)).toMatchObject([
      { file: 'pairs/b.yaml', other: 'LW-2', pair: 'LW-1' },
      { file: 'pairs/c.yaml', other: 'LW-3', pair: 'LW-1' },
      { file: 'pairs/c.yaml', other: 'LW-3', pair: 'LW-2' },
    ]);
  });

  it('who still lays here is told of, though she began another clutch elsewhere meanwhile', () => {
    const between = {
      a: one('date: 2026-03-01, laid: 1\ndate: 2026-03-05, laid: 2'),
      b: other('date: 2026-03-02, laid: 1'),
      c: journal('LW-3', 'lavender waxbill', 'date: 2026-03-04, laid: 1', 'hen: LW-20-11'),
    };
    expect(found(between)).toMatchObject([
      { other: 'LW-2', pair: 'LW-1' },
      { other: 'LW-3', pair: 'LW-1' },
    ]);
  });

  it('may lay for another cock later', () => {
    const files = {
      a: one('date: 2026-03-01, laid: 1\ndate: 2026-03-05, laid: 2'),
      b: other('date: 2026-05-03, laid: 1'),
    };
    expect(found(files)).toEqual([]);
  });

  it('who is only one of several possible is accused of nothing', () => {
    const head = 'hen: [LW-20-11, LW-20-12]';
    const files = {
      a: journal('LW-1', 'lavender waxbill', 'date: 2026-03-01, laid: 1\ndate: 2026-03-05, laid: 2', head),
      b: journal('LW-2', 'lavender waxbill', 'date: 2026-03-03, laid: 1', head),
    };
    expect(found(files)).toEqual([]);
  });
});

it('a cock may be in several pairs', () => {
  const files = {
    a: journal('LW-1', 'lavender waxbill', 'date: 2026-03-01, laid: 1\ndate: 2026-03-05, laid: 2', 'cock: C'),
    b: journal('LW-2', 'lavender waxbill', 'date: 2026-03-03, laid: 1', 'cock: C'),
  };
  expect(found(files)).toEqual([]);
});

describe('a parent', () => {
  it('named as such in the bird list or in a journal needs the clutch’s number there too', () => {
    const later = waxbills(`
      date: 2025-03-05, laid: 1
      date: 2025-03-20, lost: {clear: 1}
      date: 2025-04-05, laid: 1, sitting
      date: 2025-04-18, hatched: 1`);
    const named = (birds: string, head = '') =>
      found({
        'birds.yaml': `birds:\n  - ${birds}\n`,
        a: later,
        b: journal('LW-2', 'lavender waxbill', 'date: 2026-03-05, paired', head),
      }).map(({ code, file, line }) => `${code} ${file}:${line}`);
    expect(named('{id: A, dam: LW-1/2/c1}')).toEqual(['unpinned-parent birds.yaml:2']);
    expect(named('{id: A, is: LW-1/2/c1}')).toEqual(['unpinned-parent birds.yaml:2']);
    expect(named('{id: A}', 'cock: LW-1/2/c1')).toEqual(['unpinned-parent pairs/b.yaml:3']);
    expect(named('{id: A}', 'hen: LW-1/2/c1')).toEqual(['unpinned-parent pairs/b.yaml:3']);
    expect(named('{id: A, sire: B, is: LW-1/1/c1}')).toEqual(['no-such-chick-named birds.yaml:2']);
  });

  it('named as a chick of a later clutch has that clutch’s number written down, for numbers are only counted', () => {
    const log = (pin: string) => `
      date: 2025-03-05, laid: 1
      date: 2025-03-20, lost: {clear: 1}
      date: 2025-04-05, ${pin}laid: 1, sitting
      date: 2025-04-18, hatched: 1
    `;
    const files = (pin: string) => ({
      'birds.yaml': 'birds:\n  - {id: A, sire: LW-1/2/c1}\n',
      a: waxbills(log(pin)),
    });
    expect(found(files(''))).toMatchObject([
      { code: 'unpinned-parent', file: 'birds.yaml', line: 2, who: 'LW-1/2/c1', number: 2 },
    ]);
    expect(found(files('clutch: 2, '))).toEqual([]);
    // Written down in another pair's journal it says nothing of this one's.
    const elsewhere = journal('A-1', 'canary', 'date: 2025-04-05, clutch: 2, laid: 1');
    expect(found({ ...files(''), Z: elsewhere })).toMatchObject([{ code: 'unpinned-parent' }]);
    expect(found({ ...files(''), A: elsewhere })).toMatchObject([{ code: 'unpinned-parent' }]);
  });
});

describe('a pedigree', () => {
  it('that bites its tail is one error, with the way round', () => {
    const birds =
      'birds:\n  - {id: A, sire: B}\n  - {id: B, sire: C}\n  - {id: C, sire: A}\n  - {id: D, sire: A}\n';
    expect(found({ 'birds.yaml': birds })).toMatchObject([
      { code: 'own-ancestor', line: 2, loop: 'A ← B ← C ← A' },
    ]);
  });

  it('in which two birds share their parents, or cousins pair, bites nothing', () => {
    const birds =
      'birds:\n  - {id: A}\n  - {id: B}\n  - {id: C, sire: A, dam: B}\n  - {id: D, sire: A, dam: B}\n  - {id: E, sire: C, dam: D}\n';
    expect(found({ 'birds.yaml': birds })).toEqual([]);
  });

  it('that leads into a loop is no part of it', () => {
    const birds =
      'birds:\n  - {id: D, sire: A}\n  - {id: A, sire: B, dam: C}\n  - {id: B, sire: A}\n  - {id: C}\n';
    expect(found({ 'birds.yaml': birds })).toMatchObject([
      { code: 'own-ancestor', line: 3, loop: 'A ← B ← A' },
    ]);
  });

  it('in which one bird is both parents is told of once', () => {
    const birds = 'birds:\n  - {id: A, sire: B, dam: B}\n  - {id: B, sire: A, dam: A}\n';
    expect(found({ 'birds.yaml': birds }).filter(({ code }) => code === 'own-ancestor')).toMatchObject([
      { line: 2, loop: 'A ← B ← A' },
    ]);
    expect(found({ 'birds.yaml': 'birds:\n  - {id: A, dam: A}\n' })).toMatchObject([
      { code: 'own-ancestor', loop: 'A ← A' },
    ]);
  });

  it('may bite its tail twice: each loop is told of', () => {
    const birds =
      'birds:\n  - {id: A, sire: B}\n  - {id: B, sire: A}\n  - {id: C, sire: D}\n  - {id: D, sire: C}\n';
    expect(found({ 'birds.yaml': birds })).toMatchObject([{ loop: 'A ← B ← A' }, { loop: 'C ← D ← C' }]);
  });

  it('may bite its tail through the father and through the mother of one bird', () => {
    const birds = 'birds:\n  - {id: A, sire: B, dam: C}\n  - {id: B, sire: A}\n  - {id: C, sire: A}\n';
    const loops = found({ 'birds.yaml': birds }).flatMap((one) => ('loop' in one ? [one.loop] : []));
    expect(loops.toSorted()).toEqual(['A ← B ← A', 'A ← C ← A']);
  });

  it('that bites its tail outside of the bird list is told of where the pair stands', () => {
    const files = {
      a: waxbills('date: 2026-03-05, laid: 1, sitting\ndate: 2026-03-18, hatched: 1', 'cock: LW-1/1/c1'),
    };
    expect(found(files)).toContainEqual(
      expect.objectContaining({
        code: 'own-ancestor',
        file: 'pairs/a.yaml',
        line: 1,
        loop: 'LW-1/1/c1 ← LW-1/1/c1',
      }),
    );
  });

  it('shows a chick that would be the parent of its own clutch', () => {
    const files = {
      a: waxbills('date: 2026-03-05, laid: 1, sitting\ndate: 2026-03-18, hatched: 1', 'cock: LW-1/1/c1'),
    };
    expect(found(files).map(({ code }) => code)).toContain('own-ancestor');
  });
});

describe('a routine', () => {
  const settings = 'routines:\n  - {name: calcium, every: 7}\n';

  it('that the room has may be done, in a journal and in the room’s own log', () => {
    const files = {
      'nestlog.yaml': `${settings}log:\n  - {date: 2026-03-01, done: calcium}\n`,
      a: waxbills('date: 2026-03-01, done: calcium'),
    };
    expect(found(files)).toEqual([]);
  });

  it('that it does not have is asked about, with the nearest that it has', () => {
    const files = {
      'nestlog.yaml': `${settings}log:\n  - {date: 2026-03-01, done: calcum}\n`,
      a: waxbills('date: 2026-03-01, done: [calcium, baths]'),
    };
    expect(found(files)).toMatchObject([
      { code: 'unknown-routine', file: 'nestlog.yaml', name: 'calcum', suggestion: 'calcium' },
      { code: 'unknown-routine', file: 'pairs/a.yaml', name: 'baths', suggestion: '' },
    ]);
    const left = { a: waxbills('date: 2026-03-02, paired'), b: waxbills('date: 2026-03-01, done: baths') };
    expect(found(left).map(({ code }) => code)).toEqual(['pair-twice']);
  });
});
