/**
 * Relationship mathematics against textbooks, papers and other programs. Where no printed number exists, the value was
 * computed with exact fractions in Python and agrees with the R packages kinship2 1.9.6.2 and nadiv 2.18.0.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { commonAncestors } from '../../src/statistics/pedigree/common-ancestors.ts';
import { diversityOf } from '../../src/statistics/pedigree/diversity.ts';
import { founderEquivalents, founders } from '../../src/statistics/pedigree/founders.ts';
import { inbreeding, kinship, meanKinships, relate } from '../../src/statistics/pedigree/relationship.ts';
import { lines, type Named, namedPedigree } from '../statistics/pedigree/lines.ts';

const reference = process.env.NESTLOG_REFERENCE;

function theta(text: string, one: string, other: string): number {
  const { pedigree, of } = lines(text);
  return kinship(relate(pedigree), of(one), of(other));
}

const everyone = ({ names }: Named) => names.map((_, one) => one);

describe('kinship of two and F of their young (Falconer & Mackay 1996, Introduction to Quantitative Genetics, ch. 5)', () => {
  const family = `
    a1 = A × B;  a2 = A × B;  a3 = A × C
    b1 = a1 × D; b2 = a2 × E; b3 = a3 × F
    c1 = b1 × G; c2 = b2 × H
    d1 = a1 × K; x1 = M × N;  x2 = M × N; d2 = a1 × x1; d3 = a2 × x2`;
  it.each([
    ['full sibs', 'a1', 'a2', 1 / 4],
    ['parent and young', 'A', 'a1', 1 / 4],
    ['half sibs', 'a1', 'a3', 1 / 8],
    ['grandparent and grandchild', 'A', 'b1', 1 / 8],
    ['uncle and niece', 'a2', 'b1', 1 / 8],
    ['half uncle and niece', 'a3', 'b1', 1 / 16],
    ['first cousins', 'b1', 'b2', 1 / 16],
    ['half first cousins', 'b1', 'b3', 1 / 32],
    ['first cousins once removed', 'b1', 'c2', 1 / 32],
    ['second cousins', 'c1', 'c2', 1 / 64],
    ['double first cousins', 'd2', 'd3', 1 / 8],
    ['one with itself', 'A', 'A', 1 / 2],
    ['strangers', 'b1', 'K', 0],
  ])('%s', (_, one, other, expected) => {
    expect(theta(family, one, other)).toBe(expected);
  });
});

describe('lines bred the same way for generations (Wright 1921, Genetics 6:111; Falconer & Mackay 1996, table 5.1)', () => {
  function course(text: (t: number) => string, generations: number): number[] {
    const all = Array.from({ length: generations }, (_, t) => text(t + 1)).join('\n');
    const { pedigree, of } = lines(all);
    const relationship = relate(pedigree);
    return Array.from({ length: generations }, (_, t) => inbreeding(relationship, of(`x${t + 1}`)));
  }

  it('brother and sister: F = ¼ (1 + 2 F₁ + F₂)', () => {
    expect(
      course((t) => `x${t} = x${t - 1} × y${t - 1}; y${t} = x${t - 1} × y${t - 1}`, 10).slice(1),
    ).toEqual([1 / 4, 3 / 8, 1 / 2, 19 / 32, 43 / 64, 47 / 64, 201 / 256, 423 / 512, 55 / 64]);
  });

  it('young and their younger parent: the same numbers', () => {
    expect(course((t) => `x${t} = x${t - 1} × ${t === 1 ? 'y' : `x${t - 2}`}`, 7).slice(1)).toEqual([
      1 / 4,
      3 / 8,
      1 / 2,
      19 / 32,
      43 / 64,
      47 / 64,
    ]);
  });

  it('back to the same parent each time: towards ½', () => {
    expect(course((t) => `x${t} = A × x${t - 1}`, 8)).toEqual([
      0,
      1 / 4,
      3 / 8,
      7 / 16,
      15 / 32,
      31 / 64,
      63 / 128,
      127 / 256,
    ]);
  });

  it('half sibs, one cock and many hens: F = ⅛ (1 + 6 F₁ + F₂)', () => {
    const hens = [0, 1, 2, 3, 4, 5, 6, 7].map((t) => 2 ** (7 - t));
    const brood = (t: number) =>
      Array.from({ length: hens[t] as number }, (_, k) => `h${t}.${k} = c${t - 1} × h${t - 1}.${2 * k}`);
    const text = [1, 2, 3, 4, 5, 6, 7].flatMap((t) => [...brood(t), `c${t} = c${t - 1} × h${t - 1}.1`]);
    const { pedigree, of } = lines(text.join('\n'));
    const relationship = relate(pedigree);
    const course = [2, 3, 4, 5, 6, 7].map((t) => inbreeding(relationship, of(`c${t}`)));
    [0.125, 0.21875, 0.3046875, 0.380859375, 0.4487304688, 0.5091552734].forEach((expected, i) => {
      expect(course[i]).toBeCloseTo(expected, 9);
    });
  });
});

describe('Roan Gauntlet (Wright 1922, Am. Nat. 56:330; Lynch & Walsh 1998, ch. 7, examples 1 and 2)', () => {
  const herd = lines(`
    Roan Gauntlet = Royal Duke × Princess Royal
    Royal Duke = Grand Duke × Mimulus
    Princess Royal = Champion of England × Carmine
    Grand Duke = Champion of England × Duchess
    Mimulus = Champion of England × Mistletoe
    Carmine = The Czar × Cressida
    Duchess = Lord Raglan × ?
    Mistletoe = Lord Raglan × ?
    The Czar = Lord Raglan × ?`);
  const relationship = relate(herd.pedigree);
  const kin = (one: string, other: string) => kinship(relationship, herd.of(one), herd.of(other));

  it('is inbred to 2 (½)⁴ + 2 (½)⁷ = 9/64', () => {
    expect(inbreeding(relationship, herd.of('Roan Gauntlet'))).toBe(9 / 64);
    expect(kin('Royal Duke', 'Princess Royal')).toBe(9 / 64);
  });

  it('owes it to two ancestors, by Wright’s lines', () => {
    const found = commonAncestors(relationship, herd.of('Royal Duke'), herd.of('Princess Royal'));
    expect(found.map(({ ancestor, share }) => [herd.names[ancestor], share])).toEqual([
      ['Champion of England', 2 * (1 / 2) ** 4],
      ['Lord Raglan', 2 * (1 / 2) ** 7],
    ]);
  });

  it('has ancestors related as printed', () => {
    expect(inbreeding(relationship, herd.of('Royal Duke'))).toBe(5 / 32);
    expect(kin('Grand Duke', 'Carmine')).toBe(1 / 32);
    expect(kin('Mimulus', 'Carmine')).toBe(1 / 32);
    expect(kin('Mimulus', 'Champion of England')).toBe(1 / 4);
  });
});

/** The numerator relationship matrix: twice the kinships. */
function matrix(named: Named, order: string[]): number[][] {
  const relationship = relate(named.pedigree);
  const numbers = order.map(named.of);
  return numbers.map((one) =>
    [...(relationship.kinshipTable([[one]], numbers)[0] ?? [])].map((kin) => 2 * kin),
  );
}

describe('matrices that books print', () => {
  it('Mrode (2005, 2014), Linear Models for the Prediction of Animal Breeding Values, table 2.1', () => {
    const mrode = lines('3 = 1 × 2; 4 = 1 × ?; 5 = 4 × 3; 6 = 5 × 2');
    expect(matrix(mrode, ['1', '2', '3', '4', '5', '6'])).toEqual([
      [1, 0, 1 / 2, 1 / 2, 1 / 2, 1 / 4],
      [0, 1, 1 / 2, 0, 1 / 4, 5 / 8],
      [1 / 2, 1 / 2, 1, 1 / 4, 5 / 8, 9 / 16],
      [1 / 2, 0, 1 / 4, 1, 5 / 8, 5 / 16],
      [1 / 2, 1 / 4, 5 / 8, 5 / 8, 9 / 8, 11 / 16],
      [1 / 4, 5 / 8, 9 / 16, 5 / 16, 11 / 16, 9 / 8],
    ]);
  });

  it('the inverse that Mrode prints is the inverse', () => {
    const mrode = lines('3 = 1 × 2; 4 = 1 × ?; 5 = 4 × 3; 6 = 5 × 2');
    const inverse = [
      [11 / 6, 1 / 2, -1, -2 / 3, 0, 0],
      [1 / 2, 61 / 30, -1, 0, 8 / 15, -16 / 15],
      [-1, -1, 5 / 2, 1 / 2, -1, 0],
      [-2 / 3, 0, 1 / 2, 11 / 6, -1, 0],
      [0, 8 / 15, -1, -1, 38 / 15, -16 / 15],
      [0, -16 / 15, 0, 0, -16 / 15, 32 / 15],
    ];
    const product = matrix(mrode, ['1', '2', '3', '4', '5', '6']).map((row) =>
      inverse.map((_, j) => row.reduce((sum, value, k) => sum + value * (inverse[k]?.[j] ?? 0), 0)),
    );
    product.forEach((row, i) => {
      row.forEach((value, j) => {
        expect(value).toBeCloseTo(i === j ? 1 : 0, 12);
      });
    });
  });

  it('eight animals (course notes of the agricultural university KVL, section 7.5)', () => {
    const notes = lines('5 = 1 × 2; 6 = 1 × 2; 7 = 3 × 4; 8 = 5 × 6');
    const rows = matrix(notes, ['1', '2', '3', '4', '5', '6', '7', '8']);
    expect(rows[7]).toEqual([0.5, 0.5, 0, 0, 0.75, 0.75, 0, 1.25]);
    expect(rows[4]).toEqual([0.5, 0.5, 0, 0, 1, 0.5, 0, 0.75]);
  });

  it('ped2 of kinship2 (Sinnwell, Therneau & Schaid 2014), without its twins', () => {
    const ped2 = lines('3 = 1 × 2; 4 = 1 × 2; 7 = 3 × 5; 8 = 6 × 4; 9 = 6 × 4; 10 = 8 × 7');
    const row = matrix(ped2, ['1', '2', '3', '4', '5', '6', '7', '8', '9', '10'])[9]?.map((a) => a / 2);
    expect(row).toEqual([0.125, 0.125, 0.1875, 0.1875, 0.125, 0.125, 0.28125, 0.28125, 0.15625, 0.53125]);
  });
});

it('the Z chromosome: kinship2’s matrix for the X with the sexes exchanged, on ped2', () => {
  const ped2 = lines('3 = 1 × 2; 4 = 1 × 2; 7 = 3 × 5; 8 = 6 × 4; 9 = 6 × 4; 10 = 8 × 7');
  const cocks = ['1', '3', '6', '8', '9'];
  const single = Uint8Array.from(ped2.names, (name) => Number(!cocks.includes(name)));
  const relationship = relate(ped2.pedigree, single);
  const kin = (one: string, other: string) => kinship(relationship, ped2.of(one), ped2.of(other));
  for (const name of ped2.names) expect(kin(name, name)).toBe(cocks.includes(name) ? 1 / 2 : 1);
  expect(kin('1', '4')).toBe(0.5);
  expect(kin('2', '3')).toBe(0.5);
  expect(kin('2', '4')).toBe(0);
  expect(kin('3', '7')).toBe(0.5);
  expect(kin('8', '9')).toBe(0.375);
  expect(kin('8', '10')).toBe(0.5);
  expect(kin('9', '10')).toBe(0.375);
});

describe('founders, by enumeration of every segregation (definitions of Lacy 1989 and Ballou & Lacy 1995)', () => {
  it.each([
    ['three full sibs', 'x = A × B; y = A × B; z = A × B', 'x y z', 1 / 3, 1.5, 2, [1 / 2, 1 / 2]],
    [
      'a backcross beside its half sibs',
      'E = A × B; F = A × B; G = A × C; H = D × E',
      'F G H',
      17 / 72,
      36 / 17,
      24 / 7,
      [5 / 12, 1 / 4, 1 / 6, 1 / 6],
    ],
    [
      'four young of half sibs',
      'p = A × B; q = A × C; c1 = p × q; c2 = p × q; c3 = p × q; c4 = p × q',
      'c1 c2 c3 c4',
      3 / 8,
      4 / 3,
      8 / 3,
      [1 / 2, 1 / 4, 1 / 4],
    ],
  ])('%s', (_, text, living, meanKinship, genomes, equivalents, shares) => {
    const named = lines(text);
    const members = living.split(' ').map(named.of);
    const diversity = diversityOf(meanKinships(relate(named.pedigree), members));
    const contributions = founders(named.pedigree, members);
    expect(diversity?.meanKinship).toBeCloseTo(meanKinship, 14);
    expect(diversity?.geneDiversity).toBeCloseTo(1 - meanKinship, 14);
    expect(diversity?.founderGenomes).toBeCloseTo(genomes, 12);
    expect(founderEquivalents(contributions)).toBeCloseTo(equivalents, 12);
    contributions.forEach(({ share }, i) => {
      expect(share).toBeCloseTo(shares[i] as number, 14);
    });
  });

  it('the second of them bird by bird: mean kinships ¼, 11/48, 11/48', () => {
    const named = lines('E = A × B; F = A × B; G = A × C; H = D × E');
    const means = meanKinships(relate(named.pedigree), ['F', 'G', 'H'].map(named.of));
    expect([...means]).toEqual([1 / 4, 11 / 48, 11 / 48].map((value) => expect.closeTo(value, 14)));
  });
});

/** Columns `id, sire, dam` and others of a comma-separated file without quotes. */
function table(file: string): Record<string, string>[] {
  const [head = '', ...rows] = readFileSync(join(reference as string, file), 'utf8')
    .trim()
    .split(/\r?\n/);
  const names = head.split(',');
  return rows.map((row) => {
    const values = row.split(',');
    return Object.fromEntries(names.map((name, i) => [name, values[i] ?? '']));
  });
}

function fromTable(rows: Record<string, string>[]): Named {
  return namedPedigree(rows.map(({ id = '', sire = '', dam = '' }) => [id, sire, dam]));
}

describe.skipIf(reference === undefined)('pedigrees of the reference folder (NESTLOG_REFERENCE)', () => {
  it('6,332 wild blue tits (Pick et al., CC BY 4.0): every F as three programs give it', () => {
    const rows = table('nests/bluetit_edinburgh_F.csv');
    const named = fromTable(rows);
    const relationship = relate(named.pedigree);
    expect(rows).toHaveLength(6332);
    const wrong = rows.filter(
      ({ id = '', F }) => !(Math.abs(inbreeding(relationship, named.of(id)) - Number(F)) < 1e-12),
    );
    expect(wrong).toEqual([]);
    expect(rows.filter(({ F }) => Number(F) > 0).length).toBeGreaterThan(10);
  });

  it.each(['fg90', 'mrode2', 'wray90'])('textbook pedigree %s: every F', (name) => {
    const rows = table(`nests/textbook_${name}_F.csv`);
    const named = fromTable(rows);
    const relationship = relate(named.pedigree);
    for (const { id = '', F } of rows) expect(inbreeding(relationship, named.of(id))).toBe(Number(F));
  });

  it('127 synthetic birds: every F, and all kinships together', () => {
    const rows = table('statistics/pedigree-synthetic-6gen.csv');
    const named = fromTable(rows);
    const relationship = relate(named.pedigree);
    for (const { id = '', F_exact = '' } of rows) {
      const [over = 0, under = 1] = F_exact.split('/').map(Number);
      expect(inbreeding(relationship, named.of(id))).toBeCloseTo(over / under, 14);
    }
    const all = everyone(named);
    const sum = meanKinships(relationship, all).reduce((total, mean) => total + mean * all.length, 0);
    expect(sum).toBeCloseTo(2630341 / 2048, 9);
  });

  it('and of its last generation, the 17 birds behind the longest lines', () => {
    const named = fromTable(table('statistics/pedigree-synthetic-6gen.csv'));
    const { generations } = named.pedigree;
    const last = everyone(named).filter((one) => generations[one] === 6);
    const diversity = diversityOf(meanKinships(relate(named.pedigree), last));
    expect(diversity?.meanKinship).toBeCloseTo(105373 / 591872, 12);
    expect(diversity?.geneDiversity).toBeCloseTo(0.821966573854, 11);
    expect(diversity?.founderGenomes).toBeCloseTo(2.80846137056, 10);
  });

  it('79 people of kinship2’s testped1: none inbred, all kinships together and of each with all', () => {
    const rows = table('statistics/testped1-79.csv');
    const named = fromTable(rows);
    const relationship = relate(named.pedigree);
    const all = everyone(named);
    const sums = [...meanKinships(relationship, all)].map((mean) => mean * all.length);
    for (const row of rows) {
      const one = named.of(row.id as string);
      expect(inbreeding(relationship, one)).toBe(0);
      expect(sums[one]).toBeCloseTo(Number(row.sum_kinship_with_all_79), 10);
    }
    expect(sums.reduce((total, sum) => total + sum, 0)).toBeCloseTo(164.5, 9);
  });
});
