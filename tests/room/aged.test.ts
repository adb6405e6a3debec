import { describe, expect, it } from 'vitest';
import { clutchIn, codes, until } from './facts.ts';
import { at, laid } from './waxbill-log.ts';

const { chicks } = until;
/** The age that each egg and each chick of the clutch was given, and what was found doubtful. */
const ages = (log: string) => {
  const known = at(log);
  const { eggs, chicks: young } = clutchIn(known, 'LW-1/1');
  const told = (all: readonly { aged: { days: number } | null }[]) =>
    all.map(({ aged }) => aged?.days ?? '-').join(' ');
  return { eggs: told(eggs), chicks: told(young), codes: codes(known) };
};

describe('an age told of all, where one egg is left beside the chicks', () => {
  it('is theirs where each can have hatched on that day, and the egg’s where not', () => {
    const all = (days: number) => ages(`${chicks}\ndate: 2026-03-24, aged: {${days}: all}`);
    expect(all(6)).toEqual({ eggs: '- - - -', chicks: '6 6 6', codes: [] });
    expect(all(5)).toEqual({ eggs: '- - - 5', chicks: '- - -', codes: [] });
    expect(all(12)).toEqual({ eggs: '- - - 12', chicks: '- - -', codes: [] });
  });
});

it('a chick may be called by its egg beside one that is called by itself', () => {
  expect(ages(`${chicks}\ndate: 2026-03-24, aged: {6: [c1, e2]}`)).toEqual({
    eggs: '- - - -',
    chicks: '6 6 -',
    codes: [],
  });
});

it('the age of a chick changes nothing of when its egg was seen laid', () => {
  const before = laid(chicks);
  expect(laid(`${chicks}\ndate: 2026-03-24, aged: {6: c1}`)).toBe(before);
});
