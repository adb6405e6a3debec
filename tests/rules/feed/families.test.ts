import { describe, expect, it } from 'vitest';
import { formatDay } from '../../../src/days.ts';
import { mouthsOn, nestFamilies } from '../../../src/rules/feed/families.ts';
import { mouthsThere } from '../../../src/rules/feed/mouths.ts';
import { day, type Files } from '../../rooms.ts';
import { HATCHED, pairRoom, SITTING, sources } from './rooms.ts';

const of = (files: Files, on: string) => nestFamilies(sources(files, on));
const family = (lines: readonly string[], on: string, species = 'lavender waxbill') => {
  const [first] = of(pairRoom(species, lines), on);
  if (first === undefined) throw new Error('no family');
  return first;
};

describe('a pair on eggs', () => {
  it('expects them in the window of the forecast, each with its chance', () => {
    const { hatching, mouths, parents, young } = family(SITTING, '2026-03-10');
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
    expect(new Set(mouths.flatMap(({ hatches }) => hatches.map((one) => formatDay(one.day))))).toEqual(
      new Set(['2026-03-14', '2026-03-15', '2026-03-16', '2026-03-17']),
    );
    expect(young).toEqual([]);
    expect(parents.map(({ id }) => id)).toEqual(['A', 'B']);
  });

  it('expects half of them by their likely day, and all by the last', () => {
    const one = ['date: 2026-03-01, clutch: 1, laid: 1, sitting'];
    const { hatching, mouths } = family(one, '2026-03-05');
    const [{ likely, to, expected } = { likely: 0, to: 0, expected: 0 }] = hatching;
    const by = (on: number) => mouthsThere(mouths, on).expected / expected;
    expect(by(likely - 1)).toBeLessThan(0.5);
    expect(by(likely)).toBeGreaterThanOrEqual(0.5);
    expect([by(to - 1) < 1, by(to)]).toEqual([true, expect.closeTo(1, 9)]);
  });

  it('of a species that nobody knows is ready for them as long as eggs of any small bird may hatch', () => {
    const { hatching: days } = family(SITTING, '2026-03-10', 'cloud finch');
    // Sat on from 3–4 March; 10–25 d hold 9 in 10 of all, so 8 in 10 hatch within 11.7–23.3 d.
    expect(days).toMatchObject([{ from: day('2026-03-14'), to: day('2026-03-27'), eggs: 4 }]);
  });

  it('of which one has pipped early is ready for that one at once', () => {
    const { mouths } = family([...SITTING, 'date: 2026-03-12, pipped: e1'], '2026-03-12');
    expect(mouths.map(({ earliest }) => formatDay(earliest))).toEqual([
      '2026-03-12',
      '2026-03-14',
      '2026-03-14',
      '2026-03-15',
    ]);
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
    const { mouths: seen, hatching } = family(looked, '2026-03-18');
    expect(new Set(seen.map((one) => one.earliest))).toEqual(new Set([day('2026-03-16')]));
    expect(hatching).toMatchObject([
      { from: day('2026-03-16'), likely: day('2026-03-16'), to: day('2026-03-17') },
    ]);
  });

  it('gets no more food once a look after the last of their days still found eggs, or long after it', () => {
    const looked = (on: string, then: string) => family([...SITTING, `date: ${on}, checked`], then);
    expect(looked('2026-03-18', '2026-03-19')).toMatchObject({ mouths: [], hatching: [] });
    expect(family(SITTING, '2026-04-10')).toMatchObject({ mouths: [], hatching: [] });
    // On the day of that look the chicks may still come, and a look on the last of their days tells nothing of what follows.
    expect(looked('2026-03-18', '2026-03-18').mouths).toHaveLength(4);
    expect(looked('2026-03-17', '2026-03-20').mouths).toHaveLength(4);
  });

  it('that has two nests is looked into nest by nest', () => {
    const here = SITTING.map((line) => (line.includes('laid') ? `${line}, site: low basket` : line));
    const other = (site: string) =>
      family([...here, `date: 2026-03-18, checked, site: ${site}`], '2026-03-19').mouths;
    expect(other('low basket')).toEqual([]);
    expect(other('high box')).toHaveLength(4);
  });

  it('expects them later in a room whose own clutches took longer', () => {
    const slow = (year: number) => `
      pair: LW-${year}
      species: lavender waxbill
      log:
        - {date: ${year}-01-02, after: ${year}-01-01, clutch: 1, laid: 1, sitting}
        - {date: ${year}-01-16, after: ${year}-01-15, hatched: 1}
        - {date: ${year}-01-17, died: 1}
    `;
    const files = {
      ...pairRoom('lavender waxbill', SITTING),
      ...Object.fromEntries([2021, 2022, 2023, 2024, 2025].map((year) => [`LW-${year}`, slow(year)])),
    };
    const own = of(files, '2026-03-10').find(({ pair }) => pair.id === 'LW-1');
    expect(own?.hatching).toMatchObject([{ from: day('2026-03-16'), to: day('2026-03-18') }]);
  });

  it('does not feed what hatches in the incubator', () => {
    expect(family([...SITTING, 'date: 2026-03-05, set: {incubator: all}'], '2026-03-10')).toMatchObject({
      mouths: [],
      hatching: [],
    });
  });

  it('counts the smallest live food for one that hatches only today', () => {
    const youngest = Math.max(
      ...family(SITTING, '2026-03-22').mouths.flatMap(({ hatches }) => hatches.map((one) => one.day)),
    );
    expect(youngest).toBe(day('2026-03-22'));
  });

  it('of unknown number may be as many as the species lays', () => {
    const glimpse = ['date: 2026-03-03, clutch: 1, laid: 2+, sitting'];
    const { mouths: some, hatching } = family(glimpse, '2026-03-10');
    expect(some.reduce((sum, { most }) => sum + most, 0)).toBe(5);
    expect(hatching).toMatchObject([{ eggs: 2, counted: false }]);
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
    expect(
      ['2026-03-14', '2026-03-15', '2026-03-24', '2026-03-25', '2026-04-19', '2026-04-20'].map(number),
    ).toEqual([0, 4, 4, 3, 3, 0]);
  });

  it('that were only heard stands for as many as may be there, and not for ever', () => {
    const heard = ['date: 2026-03-03, clutch: 1, sitting', 'date: 2026-03-16, heard'];
    expect(family(heard, '2026-03-20').mouths.map(({ most }) => most)).toEqual([5]);
    // Independent at 40 days at the latest (shipped profile): 25 April.
    expect(family(heard, '2026-04-25').mouths).toHaveLength(1);
    expect(family(heard, '2026-04-26').mouths).toEqual([]);
  });

  it('that were heard after one had died stands for as many as the species lays, less that one', () => {
    const some = [
      ...SITTING,
      'date: 2026-03-15, hatched: e1',
      'date: 2026-03-16, died: c1',
      'date: 2026-03-17, heard',
    ];
    const [heard] = family(some, '2026-03-17').mouths;
    expect(heard?.most).toBe(4);
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

describe('foster parents', () => {
  const foster = (log: string) => ({
    'BF-1': `pair: BF-1\nspecies: Bengalese finch\ncock: C\nhen: D\nhousing: cage 3\nlog:\n  - {date: 2026-02-01, paired}\n${log}`,
  });
  const families = (log: string, on: string) => {
    const given = [...SITTING, `date: ${on}, fostered: {BF-1: [e1, e2]}`];
    return of(pairRoom('lavender waxbill', given, foster(log)), on);
  };

  it('without a clutch of their own expect the eggs of their guests, and the pair that laid them only the others', () => {
    const [fosters, own] = families('', '2026-03-05');
    expect(fosters?.hatching).toMatchObject([{ clutch: null, eggs: 2, counted: true }]);
    expect(own?.hatching).toMatchObject([{ clutch: 1, eggs: 2 }]);
    expect([fosters?.mouths.length, own?.mouths.length]).toEqual([2, 2]);
  });

  it('with later eggs of their own expect the first of them all', () => {
    const later = '  - {date: 2026-03-08, clutch: 1, laid: 1}\n  - {date: 2026-03-09, laid: 1, sitting}\n';
    const [fosters] = families(later, '2026-03-10');
    // Their own hatch a week later than those of 3 March, of 11–13 days.
    expect(fosters?.hatching).toMatchObject([{ clutch: 1, eggs: 4, from: day('2026-03-14') }]);
  });
});

it('a parent that died is none any more', () => {
  const files = pairRoom('lavender waxbill', HATCHED, {
    'birds.yaml': 'birds:\n  - {id: A, sex: cock, log: [{date: 2026-03-20, died: age}]}\n',
  });
  expect(of(files, '2026-03-21')[0]?.parents.map(({ id }) => id)).toEqual(['B']);
  expect(of(files, '2026-03-19')[0]?.parents.map(({ id }) => id)).toEqual(['A', 'B']);
});

it('a parent that died is none any more, though nobody wrote where the pair lives', () => {
  const files = pairRoom('lavender waxbill', HATCHED, {
    'birds.yaml': 'birds:\n  - {id: A, sex: cock, log: [{date: 2026-03-20, died: age}]}\n',
  });
  const nowhere = { ...files, 'LW-1': files['LW-1']?.replace('housing: flight 2\n', '') ?? '' };
  expect(of(nowhere, '2026-03-21')[0]?.parents.map(({ id }) => id)).toEqual(['B']);
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
