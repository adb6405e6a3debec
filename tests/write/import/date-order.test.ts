import { describe, expect, test } from 'vitest';
import { formatDay } from '../../../src/days.ts';
import { type DateOrder, dateForm, type SerialSystem } from '../../../src/write/import/date-forms.ts';
import { decideOrder, resolveDate } from '../../../src/write/import/date-order.ts';
import type { ImportProblem } from '../../../src/write/import/problem.ts';

/** What is decided on the dates of one column, from row 2 on. */
function decided(texts: string[], said: DateOrder | null = null) {
  const problems: ImportProblem[] = [];
  const dates = texts.map((text, index) => ({ row: index + 2, column: 'laid', text, form: dateForm(text) }));
  const { order, because } = decideOrder('t.csv', dates, said, problems);
  return { order, because, asked: problems.map(({ row, text, hint }) => `row ${row}: ${text}; ${hint}`) };
}

const question = 'write `dates: day-first` or `dates: month-first` into the mapping';

describe('day-first and month-first dates', () => {
  test('are told apart by one that can be nothing else, which is named', () => {
    expect(decided(['05/06/2016', '31/05/2016'])).toEqual({
      order: 'day-first',
      because: 'row 3, laid: 31/05/2016 can be nothing else',
      asked: [],
    });
    expect(decided(['05/06/2016', '05/31/2016']).order).toBe('month-first');
  });

  test('are asked about where no date tells', () => {
    expect(decided(['05/06/2016', '07/08/2016'])).toEqual({
      order: null,
      because: null,
      asked: [
        `row 2: \`05/06/2016\` may be 2016-06-05 or 2016-05-06, and no date of the table tells which; ${question}`,
      ],
    });
  });

  test('are asked about where the table says both', () => {
    expect(decided(['31/05/2016', '05/31/2016']).asked).toEqual([
      `row 3: \`05/31/2016\` can only be month-first, but \`31/05/2016\` in row 2 can only be day-first; ${question}`,
    ]);
  });

  test('are asked about where the year has two figures', () => {
    expect(decided(['31/05/16']).asked[0]).toMatch(/^row 2: `31\/05\/16` has a year of two figures/);
  });

  test('are as the mapping says', () => {
    expect(decided(['05/06/2016'], 'month-first').order).toBe('month-first');
  });

  test('need no order where every date says its own', () => {
    expect(decided(['2016-05-31', '31 May 2016', '31.05.2016'])).toEqual({
      order: null,
      because: null,
      asked: [],
    });
  });
});

describe('a date of the table', () => {
  const resolved = (text: string, order: DateOrder | null = null, serials: SerialSystem | null = null) => {
    const read = resolveDate({ text, form: dateForm(text) }, order, serials);
    return 'day' in read ? formatDay(read.day) : `${read.wrong}; ${read.hint}`;
  };

  test('is read in the order of the table, and nothing else', () => {
    expect(resolved('05/06/2016', 'day-first')).toBe('2016-06-05');
    expect(resolved('05/06/2016', 'month-first')).toBe('2016-05-06');
    expect(resolved('05/31/2016', 'day-first')).toBe(
      '`05/31/2016` is no date when read day-first; is it 2016-05-31?',
    );
    expect(resolved('05/06/2016')).toMatch(/^`05\/06\/2016` can be read in more than one way/);
  });

  test('may be a spreadsheet’s number, once the mapping says which', () => {
    expect(resolved('42502', null, '1900')).toBe('2016-05-12');
    expect(resolved('42502')).toMatch(
      /2016-05-12, or 2020-05-13 in a file from an old Mac; .*excel-dates: 1900/,
    );
  });
});
