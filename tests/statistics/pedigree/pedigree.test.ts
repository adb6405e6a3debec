import { describe, expect, it } from 'vitest';
import { pedigreeOf, UNKNOWN } from '../../../src/statistics/pedigree/pedigree.ts';
import { lines } from './lines.ts';

const generationsOf = ({ pedigree, names }: ReturnType<typeof lines>) =>
  Object.fromEntries(names.map((name, one) => [name, pedigree.generations[one]]));

describe('generations', () => {
  it('a founder is 0, everyone else one more than the later of the parents', () => {
    const named = lines('c = a × b; d = a × c; e = ? × d; f = e × a');
    expect(generationsOf(named)).toEqual({ a: 0, b: 0, c: 1, d: 2, e: 3, f: 4 });
  });

  it('young may stand before their parents', () => {
    expect(generationsOf(lines('e = d × ?; d = a × c; c = a × b'))).toMatchObject({ a: 0, c: 1, d: 2, e: 3 });
  });

  it('may be a hundred thousand deep', () => {
    const depth = 100_000;
    const line = Int32Array.from({ length: depth }, (_, one) => one - 1);
    const { generations } = pedigreeOf(line, new Int32Array(depth).fill(UNKNOWN));
    expect(generations[depth - 1]).toBe(depth - 1);
  });
});

describe('a loop', () => {
  const looped = () =>
    lines('a = b × x; b = c × y; c = a × z; young = a × x; far = young × q; other = x × y');

  it('is cut at its members, and only there', () => {
    const { pedigree, of } = looped();
    for (const member of ['a', 'b', 'c']) {
      expect([pedigree.sires[of(member)], pedigree.dams[of(member)]]).toEqual([UNKNOWN, UNKNOWN]);
    }
    expect(pedigree.sires[of('young')]).toBe(of('a'));
    expect(pedigree.sires[of('other')]).toBe(of('x'));
  });

  it('is told of its members and of all who descend from them', () => {
    const { pedigree, names } = looped();
    const unsound = names.filter((_, one) => pedigree.unsound[one] === 1);
    expect(unsound.sort()).toEqual(['a', 'b', 'c', 'far', 'young']);
  });

  it('may be of one: a bird that is its own sire', () => {
    const own = lines('a = a × b; c = a × b').pedigree;
    expect([...own.unsound]).toEqual([1, 0, 1]);
    expect([...own.generations]).toEqual([0, 0, 1]);
  });

  it('without any nobody is unsound', () => {
    expect([...lines('c = a × b; d = c × a').pedigree.unsound]).toEqual([0, 0, 0, 0]);
  });
});
