import fc from 'fast-check';
import { expect, it } from 'vitest';
import { naturally, naturallyNamed } from '../../src/findings/naturally.ts';

it('counts where ids count', () => {
  expect(['LW-10', 'lw-9', 'LW-2', 'BF-1', 'LW-2'].sort(naturally)).toEqual([
    'BF-1',
    'LW-2',
    'LW-2',
    'lw-9',
    'LW-10',
  ]);
});

it('what has no name comes last', () => {
  expect(['LW-10', null, 'LW-2', null].sort(naturallyNamed)).toEqual(['LW-2', 'LW-10', null, null]);
});

it('is the order of the Unicode collation algorithm with numbers, as ECMA-402 has it, also where none is asked', () => {
  const { compare } = new Intl.Collator('en', { numeric: true });
  const id = fc.string({
    unit: fc.constantFrom(...'aAbBzZ019-/ .:_éß×', '\u0301', '\u{1F426}', 'LW-', '10', '007'),
    maxLength: 8,
  });
  fc.assert(
    fc.property(id, id, id, (before, a, b) => {
      const [one, other] = [before + a, before + b];
      expect(Math.sign(naturally(one, other))).toBe(Math.sign(compare(one, other)));
    }),
    { numRuns: 5000 },
  );
});
