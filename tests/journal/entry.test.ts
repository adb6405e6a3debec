import { expect, it } from 'vitest';
import { formatDay } from '../../src/days.ts';
import { entriesOf } from '../../src/journal/entry.ts';
import { record } from '../rooms.ts';

it('a pair is told of by its own journal alone, whatever the file is called', () => {
  const { pairs } = record(
    {
      'LW-1': `
        pair: LW-2
        log:
          - {date: 2026-03-01, paired}
          - {date: 2026-03-09, laid: 1}
      `,
      other: `
        pair: LW-1
        log:
          - {date: 2026-03-02, paired}
      `,
    },
    '2026-03-20',
  );
  const days = (pair: string) => entriesOf(pairs, pair).map(({ date }) => formatDay(date));
  expect(days('LW-2')).toEqual(['2026-03-01', '2026-03-09']);
  expect(days('LW-1')).toEqual(['2026-03-02']);
  expect(days('LW-3')).toEqual([]);
});
