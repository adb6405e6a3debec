import { expect, it } from 'vitest';
import { sizeLine, tooLong } from './sizes.mjs';

const file = (lines: number) => ({ path: `src/${lines}.ts`, text: 'x\n'.repeat(lines) });

it('lets 400 lines be and finds 401', () => {
  expect(tooLong([file(400), file(401)])).toEqual([
    { path: 'src/401.ts', line: 401, what: 'has 401 lines; the limit is 400' },
  ]);
});

it('counts files, median, 90th percentile, longest and sum', () => {
  const sizes = [10, 20, 30, 40, 50, 60, 70, 80, 90, 100].map(file);
  expect(sizeLine('src', sizes).split(/\s+/)).toEqual(['src', '10', '60', '100', '100', '550']);
});
