import { expect, test } from 'vitest';
import { warningLines } from '../../../../src/report/terminal/due/warnings.ts';
import { styles } from '../../../../src/report/terminal/style.ts';
import { day, warning } from '../../mornings.ts';

const standing = day('2026-05-17');
const page = { day: standing, width: 60, look: styles(false), gutter: 10 };

test('a warning says how much it presses, whom it concerns, since when, what was seen and what to check', () => {
  const seen = warning({
    level: 'act',
    date: standing - 1,
    text: 'e3 lies cold on the floor.',
    check: 'the other eggs.',
  });
  expect(warningLines([seen], page)).toEqual([
    '  ACT NOW     LW-1, clutch 3 · 16 May',
    '              e3 lies cold on the floor.',
    '              check: the other eggs.',
  ]);
});

test('a bird’s and the room’s own warning', () => {
  const heads = (over: Parameters<typeof warning>[0]) =>
    warningLines([warning({ pair: null, clutch: null, ...over })], page)[0];
  expect(heads({ bird: 'LW-20-11' })).toBe('  WATCH       LW-20-11 · today');
  expect(heads({})).toBe('  WATCH       the room · today');
});

test('the most pressing first, then the newest, then by pair', () => {
  const lines = warningLines(
    [
      warning({ pair: 'A', level: 'note' }),
      warning({ pair: 'B', level: 'act', date: standing - 3 }),
      warning({ pair: 'C-10', level: 'act' }),
      warning({ pair: 'C-9', level: 'act' }),
      warning({ pair: 'D', level: 'watch' }),
    ],
    page,
  );
  expect(lines.join('\n').match(/(A|B|C-\d+|D), clutch/g)).toEqual([
    'C-9, clutch',
    'C-10, clutch',
    'B, clutch',
    'D, clutch',
    'A, clutch',
  ]);
});
