import { describe, expect, it } from 'vitest';
import { bySpecies, stockOf } from '../../../src/rules/stock/stock.ts';
import { room } from '../../rooms.ts';
import { birdIn, stock, threeGenerations } from './rooms.ts';

describe('the stock', () => {
  const known = () => stock(threeGenerations, '2025-06-20');

  it('has every bird of the list and every chick of every journal once, whatever names they have', () => {
    expect(known().birds.map(({ id }) => id)).toEqual([
      'A',
      'B',
      'C',
      'D',
      'GIRL',
      'LW-1/1/c2',
      'LW-2/1/c2',
      'LW-3/1/c1',
      'LW-3/1/c2',
      'LW-3/1/c3',
      'SON',
    ]);
  });

  it('knows who is with whom today', () => {
    const all = known();
    const pairOf = (name: string) => birdIn(all, name).current?.pair.id ?? null;
    expect(['SON', 'GIRL', 'C', 'A'].map(pairOf)).toEqual(['LW-3', 'LW-3', 'LW-2', null]);
  });

  it('gives those that are here their mean kinship with all of their species, themselves included', () => {
    const c1 = birdIn(known(), 'LW-3/1/c1');
    // Itself ½, two sibs ¼, parents ¼, four grandparents ⅛, two aunts and uncles ⅛: of eleven.
    expect(c1.meanKinship).toBeCloseTo((1 / 2 + 2 / 4 + 2 / 4 + 4 / 8 + 2 / 8) / 11, 12);
  });

  it('counts other species by themselves', () => {
    const two = stock(
      { 'birds.yaml': 'birds: [{id: x, species: zebra finch}, {id: y, species: canary}]' },
      '2026-01-01',
    );
    expect(birdIn(two, 'x').meanKinship).toBe(1 / 2);
    expect([...bySpecies(two.birds).keys()]).toEqual(['canary', 'zebra finch']);
  });

  it('leaves out young that were only heard: they are nobody in particular', () => {
    const heard = {
      'LW-1': `
        pair: LW-1
        species: lavender waxbill
        log:
          - {date: 2026-03-01, laid: 3, clutch: 1}
          - {date: 2026-03-15, heard}
      `,
    };
    expect(stock(heard, '2026-03-16').birds).toEqual([]);
  });
});

it('F of a chick of brother and sister is ¼', () => {
  const files = {
    ...threeGenerations,
    'LW-4': `
      pair: LW-4
      species: lavender waxbill
      cock: LW-3/1/c1
      hen: LW-3/1/c2
      log:
        - {date: 2026-03-01, laid: 1, clutch: 1}
        - {date: 2026-03-14, hatched: 1}
    `,
  };
  expect(birdIn(stock(files, '2026-04-01'), 'LW-4/1/c1').inbreeding).toBe(1 / 4);
});

it('a bird’s own species profile goes before the shipped one', () => {
  const files = {
    'species/lavender-waxbill.yaml': 'breeding-age: 20',
    'birds.yaml': 'birds: [{id: x, species: lavender waxbill, hatched: 2025-01-01}]',
  };
  expect(birdIn(stock(files, '2026-06-01'), 'x').age).toBe('young');
});

it('ten thousand birds, forty generations deep, take a moment only', () => {
  const birds = Array.from({ length: 10_000 }, (_, i) => {
    const first = Math.floor(i / 250) * 250 - 250;
    const parents =
      first < 0 ? '' : `, sire: z${first + ((i * 7) % 100)}, dam: z${first + 100 + ((i * 7) % 100)}`;
    return `  - {id: z${i}, species: zebra finch${parents}}`;
  });
  const files = { 'birds.yaml': `birds:\n${birds.join('\n')}\n` };
  const known = room(files, '2026-06-01');
  const before = performance.now();
  const folded = stockOf(known);
  expect(performance.now() - before).toBeLessThan(10_000);
  expect(birdIn(folded, 'z9999').inbreeding).toBeGreaterThan(0);
});
