import { expect, test } from 'vitest';
import { begunText } from '../../../src/report/terminal/start.ts';

test('the new files and what comes next', () => {
  const said = {
    what: 'pair' as const,
    files: ['pairs/LW-4.yaml'],
    next: ['nestlog record LW-4 paired'],
    git: null,
    folder: '',
  };
  expect(begunText(said, { width: 80 })).toBe(
    'The journal is begun:\n  pairs/LW-4.yaml\n\nGo on with:\n  nestlog record LW-4 paired\n',
  );
});

test('a room elsewhere names its folder, and a line for the shell is never broken', () => {
  const hook = 'x'.repeat(100);
  const git = { hook, add: '# why\npairs/**/*.yaml merge=union\n' };
  const text = begunText(
    { what: 'room', files: ['nestlog.yaml'], next: [], git, folder: 'finches' },
    { width: 60 },
  );
  expect(text).toContain('\n  finches/nestlog.yaml\n');
  expect(text).toContain('add to it:\n  # why\n  pairs/**/*.yaml merge=union\n');
  expect(text).toContain(`\n  ${hook}\n`);
});
