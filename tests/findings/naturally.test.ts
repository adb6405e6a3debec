import { expect, it } from 'vitest';
import { naturally } from '../../src/findings/naturally.ts';

it('counts where ids count', () => {
  expect(['LW-10', 'lw-9', 'LW-2', 'BF-1', 'LW-2'].sort(naturally)).toEqual([
    'BF-1',
    'LW-2',
    'LW-2',
    'lw-9',
    'LW-10',
  ]);
});
