import { describe, expect, it } from 'vitest';
import { LANES, walkOf } from '../../../src/statistics/pedigree/walk.ts';
import { lines } from './lines.ts';

const family = lines('b1 = a1 × a2; b2 = a3 × a4; c = b1 × b2; d = c × a1; other = x × y');
const { pedigree, of, names } = family;

describe('what ancestors gave', () => {
  it('a half to a parent, a quarter to a grandparent; by all lines together', () => {
    const walk = walkOf(pedigree);
    const reached = walk.up([[of('d')]]);
    const given = Object.fromEntries(reached.map((one) => [names[one], walk.given[one * LANES]]));
    expect(given).toEqual({
      d: 1,
      c: 1 / 2,
      b1: 1 / 4,
      b2: 1 / 4,
      a1: 5 / 8,
      a2: 1 / 8,
      a3: 1 / 8,
      a4: 1 / 8,
    });
  });

  it('several groups in one walk have what each has alone', () => {
    const walk = walkOf(pedigree);
    walk.up([[of('c')], [of('d'), of('other')]]);
    const at = (name: string) => [0, 1].map((group) => walk.given[of(name) * LANES + group]);
    expect(at('b1')).toEqual([1 / 2, 1 / 8]);
    expect(at('x')).toEqual([0, 1 / 4]);
  });

  it('is forgotten at the next walk', () => {
    const walk = walkOf(pedigree);
    walk.up([[of('d')]]);
    walk.up([[of('other')]]);
    expect(walk.given[of('a1') * LANES]).toBe(0);
  });

  it('on the Z a hen’s all to her sire, none to her dam', () => {
    const single = Uint8Array.from(names, (name) => Number(name === 'd'));
    const walk = walkOf(pedigree, single);
    walk.up([[of('d')]]);
    expect([walk.given[of('c') * LANES], walk.given[of('a1') * LANES]]).toEqual([1, 1 / 4]);
  });
});

it('ancestors come before their young, each once', () => {
  const all = walkOf(pedigree).ancestors([of('d'), of('c')]);
  expect(new Set(all).size).toBe(all.length);
  expect(all.map((one) => names[one]).sort()).toEqual(['a1', 'a2', 'a3', 'a4', 'b1', 'b2', 'c', 'd']);
  const place = (name: string) => all.indexOf(of(name));
  expect(place('a1')).toBeLessThan(place('b1'));
  expect(place('b1')).toBeLessThan(place('c'));
  expect(place('c')).toBeLessThan(place('d'));
});
