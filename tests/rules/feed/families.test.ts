import { describe, expect, it } from 'vitest';
import { mouthsOn, nestFamilies } from '../../../src/rules/feed/families.ts';
import { day, type Files } from '../../rooms.ts';
import { HATCHED, pairRoom, SITTING, sources } from './rooms.ts';

const of = (files: Files, on: string) => nestFamilies(sources(files, on));
const family = (lines: readonly string[], on: string, species = 'lavender waxbill') => {
  const [first] = of(pairRoom(species, lines), on);
  if (first === undefined) throw new Error('no family');
  return first;
};

describe('a pair on eggs', () => {
  const { hatching, mouths, parents, young } = family(SITTING, '2026-03-10');

  it('expects them in the window of the forecast, each with its chance', () => {
    expect(hatching).toEqual([
      {
        clutch: 1,
        from: day('2026-03-14'),
        likely: day('2026-03-15'),
        to: day('2026-03-17'),
        eggs: 4,
        counted: true,
        expected: expect.closeTo(2.56, 9),
      },
    ]);
    expect(mouths).toHaveLength(4);
    for (const { hatches, earliest } of mouths) {
      expect(hatches.reduce((sum, { probability }) => sum + probability, 0)).toBeCloseTo(0.64, 9);
      expect(Math.min(...hatches.map((one) => one.day))).toBe(earliest);
    }
    expect(young).toEqual([]);
    expect(parents.map(({ id }) => id)).toEqual(['A', 'B']);
  });

  it('of a species that nobody knows is ready for them as long as eggs of any small bird may hatch', () => {
    const { hatching: days } = family(SITTING, '2026-03-10', 'cloud finch');
    // Sat on from 3–4 March; 10–25 d hold 9 in 10 of all, so 8 in 10 hatch within 11.7–23.3 d.
    expect(days).toMatchObject([{ from: day('2026-03-14'), to: day('2026-03-27'), eggs: 4 }]);
  });

  it('expects none of those that the lamp showed clear', () => {
    const candled = [...SITTING, 'date: 2026-03-09, candled: {fertile: [e1, e2], clear: [e3, e4]}'];
    expect(family(candled, '2026-03-10').hatching[0]).toMatchObject({
      eggs: 2,
      expected: expect.closeTo(1.6, 9),
    });
  });

  it('that nobody looks at may have hatched since the first of its days: the food does not begin anew every morning', () => {
    for (const on of ['2026-03-17', '2026-03-18', '2026-03-22']) {
      const { mouths: unseen, hatching: days } = family(SITTING, on);
      expect(unseen).toHaveLength(4);
      expect(Math.min(...unseen.map((one) => one.earliest))).toBe(day('2026-03-14'));
      expect(days[0]).toMatchObject({ from: day('2026-03-14'), to: day('2026-03-17') });
    }
  });

  it('whose eggs a look still found has no chick from before that look', () => {
    const looked = [...SITTING, 'date: 2026-03-16, checked'];
    const { mouths: seen } = family(looked, '2026-03-18');
    expect(new Set(seen.map((one) => one.earliest))).toEqual(new Set([day('2026-03-16')]));
  });

  it('gets no more food once a look after the last of their days still found eggs, or long after it', () => {
    expect(family([...SITTING, 'date: 2026-03-18, checked'], '2026-03-19').mouths).toEqual([]);
    expect(family(SITTING, '2026-04-10').mouths).toEqual([]);
  });

  it('counts the smallest live food for one that hatches only today', () => {
    const youngest = Math.max(
      ...family(SITTING, '2026-03-22').mouths.flatMap(({ hatches }) => hatches.map((one) => one.day)),
    );
    expect(youngest).toBe(day('2026-03-22'));
  });

  it('of unknown number may be as many as the species lays', () => {
    const glimpse = ['date: 2026-03-03, clutch: 1, laid: 2+, sitting'];
    const { mouths: some } = family(glimpse, '2026-03-10');
    expect(some.reduce((sum, { most }) => sum + most, 0)).toBe(5);
  });
});

describe('a pair with chicks', () => {
  it('feeds those that hatched, until they are independent, dead or gone', () => {
    expect(family(HATCHED, '2026-03-20').young).toHaveLength(4);
    const later = [
      ...HATCHED,
      'date: 2026-03-25, died: {cold: c1}',
      'date: 2026-04-03, fledged: all',
      'date: 2026-04-20, independent: c2',
    ];
    expect(family(later, '2026-04-21').young.map(({ ref }) => ref)).toEqual(['c3', 'c4']);
  });

  it('is known as it was on an earlier day', () => {
    const later = [
      ...HATCHED,
      'date: 2026-03-25, died: {cold: c1}',
      'date: 2026-04-03, fledged: all',
      'date: 2026-04-20, independent: all',
    ];
    const known = sources(pairRoom('lavender waxbill', later), '2026-05-01');
    const [pair] = known.room.pairs;
    if (pair === undefined) throw new Error('no pair');
    const number = (on: string) => mouthsOn(pair, day(on), known).length;
    expect(['2026-03-14', '2026-03-16', '2026-03-26', '2026-04-20'].map(number)).toEqual([0, 4, 3, 0]);
  });

  it('that were only heard stands for as many as may be there, and not for ever', () => {
    const heard = ['date: 2026-03-03, clutch: 1, sitting', 'date: 2026-03-16, heard'];
    expect(family(heard, '2026-03-20').mouths.map(({ most }) => most)).toEqual([5]);
    expect(family(heard, '2026-06-20').mouths).toEqual([]);
  });

  it('forgotten for months by their keeper are not fed for ever', () => {
    expect(family(HATCHED, '2026-12-01').young).toEqual([]);
  });
});

it('foster parents feed their guests, by the guests’ own species', () => {
  const files = pairRoom('lavender waxbill', [...HATCHED, 'date: 2026-03-18, fostered: {BF-1: c1}'], {
    'BF-1':
      'pair: BF-1\nspecies: Bengalese finch\ncock: C\nhen: D\nhousing: cage 3\nlog:\n  - {date: 2026-02-01, paired}\n',
  });
  const [foster, own] = of(files, '2026-03-20');
  expect(own?.young).toHaveLength(3);
  expect(foster?.mouths.map(({ facts }) => facts.species)).toEqual(['lavender waxbill']);
});

it('parents nobody named eat all the same', () => {
  const files = {
    'X-1':
      'pair: X-1\nspecies: lavender waxbill\nhen: B\nhousing: cage 3\nlog:\n  - {date: 2026-02-01, paired}\n',
  };
  expect(of(files, '2026-03-01')[0]).toMatchObject({ unnamed: 1, parents: [{ id: 'B' }] });
});

it('a cock taken away is no parent at that nest any more', () => {
  expect(
    family([...HATCHED, 'date: 2026-03-20, parted: {cock: flight 7}'], '2026-03-21').parents.map(
      ({ id }) => id,
    ),
  ).toEqual(['B']);
});
