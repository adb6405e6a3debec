import { describe, expect, it } from 'vitest';
import { asClose, kinOf } from '../../../src/rules/stock/kin.ts';
import { kinship } from '../../../src/statistics/pedigree/relationship.ts';
import { birdIn, stock } from './rooms.ts';

const family = stock(
  {
    'birds.yaml': `
      birds:
        - {id: G, sex: cock}
        - {id: D, sex: hen}
        - {id: a, sex: cock, sire: G, dam: D}
        - {id: b, sex: hen, sire: G, dam: D}
        - {id: h, sex: hen, sire: G, dam: other}
        - {id: son, sex: cock, sire: a, dam: x}
        - {id: girl, sex: hen, sire: y, dam: b}
        - {id: girl-of-h, sex: hen, sire: z, dam: h}
        - {id: grandgirl, sex: hen, sire: w, dam: girl}
        - {id: p, sex: cock, sire: P, dam: Q}
        - {id: q, sex: hen, sire: P, dam: Q}
        - {id: pb, sex: cock, sire: p, dam: b}
        - {id: aq, sex: hen, sire: a, dam: q}
        - {id: stranger, sex: hen}
    `,
  },
  '2026-01-01',
);

describe('a cock and a hen are', () => {
  it.each([
    ['G', 'b', 'sire and daughter'],
    ['a', 'D', 'dam and son'],
    ['a', 'b', 'brother and sister'],
    ['a', 'h', 'half brother and sister'],
    ['G', 'girl', 'grandsire and granddaughter'],
    ['son', 'D', 'granddam and grandson'],
    ['a', 'girl', 'uncle and niece'],
    ['son', 'b', 'aunt and nephew'],
    ['a', 'girl-of-h', 'half uncle and niece'],
    ['son', 'h', 'half aunt and nephew'],
    ['son', 'girl', 'first cousins'],
    ['pb', 'aq', 'double first cousins'],
    ['son', 'grandgirl', 'as close as second cousins'],
    ['p', 'stranger', null],
  ])('%s and %s: %s', (cock, hen, kin) => {
    const [his, hers] = [birdIn(family, cock).ancestor, birdIn(family, hen).ancestor];
    expect(kinOf(his, hers, kinship(family.lineage.autosomes, his.number, hers.number))).toBe(kin);
  });
});

it.each([
  [1 / 2, 'as close as brother and sister'],
  [1 / 4, 'as close as brother and sister'],
  [0.2, 'as close as half brother and sister'],
  [1 / 16, 'as close as first cousins'],
  [1 / 32, 'as close as second cousins'],
  [1 / 256, 'more distant than second cousins'],
])('young inbred to %f: their parents are %s', (f, words) => {
  expect(asClose(f)).toBe(words);
});
