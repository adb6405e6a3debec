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
