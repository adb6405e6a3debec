import { describe, expect, test } from 'vitest';
import {
  cellReader,
  dateTemplates,
  filled,
  filledLoosely,
  holesOf,
  plainHeading,
  sumOf,
  sumValue,
  templateOf,
} from '../../../src/write/import/template.ts';

const row: Record<string, string> = {
  year: '2016',
  box: '12A',
  Eggs: '5',
  hatched: '3.0',
  gone: 'NA',
  'a - b': '2',
  sex: 'M',
};

const cell = cellReader(
  { number: 2, cells: Object.values(row) },
  new Map(Object.keys(row).map((heading, index) => [plainHeading(heading), index])),
  new Set(['na']),
  new Map([['sex', new Map([['m', 'cock']])]]),
);

describe('text with columns in it', () => {
  test('is filled with the row’s cells, headings in any capitals', () => {
    expect(filled(templateOf('<year>-<BOX>'), cell)).toBe('2016-12A');
    expect(filled(templateOf('as it is'), cell)).toBe('as it is');
  });

  test('is nothing where a cell says nothing', () => {
    expect(filled(templateOf('<year> <gone>'), cell)).toBeNull();
    expect(filled(templateOf('<no such>'), cell)).toBeNull();
  });

  test('as a note it keeps what there is', () => {
    expect(filledLoosely(templateOf('<gone>; box <box>'), cell)).toBe('box 12A');
    expect(filledLoosely(templateOf('<box>, <gone>'), cell)).toBe('12A');
    expect(filledLoosely(templateOf('<gone>, <gone>'), cell)).toBeNull();
  });

  test('says the journal’s word for the table’s', () =>
    expect(filled(templateOf('<sex>'), cell)).toBe('cock'));

  test('names its columns', () => {
    expect(holesOf(templateOf('<a b> and <c>')).map(({ heading }) => heading)).toEqual(['a b', 'c']);
  });
});

describe('a sum', () => {
  const value = (source: string) => {
    const sum = sumOf(source);
    return sum === null ? 'no sum' : sumValue(sum, cell);
  };

  test.each([
    ['<Eggs> - <hatched>', 2],
    ['<Eggs> - 1', 4],
    ['10 - <Eggs> + <hatched>', 8],
    ['<a - b> + 1', 3],
    ['<Eggs> - <gone>', null],
    ['<Eggs> - <box>', { notANumber: '12A' }],
    ['<year>-<box>', 'no sum'],
    ['<Eggs>', 'no sum'],
    ['2 - 1', 'no sum'],
    ['cage - <box>', 'no sum'],
  ])('%s', (source, result) => expect(value(source)).toEqual(result));
});

describe('a date', () => {
  test('stands in a column, or is counted from one', () => {
    const ways = dateTemplates('<hatched on> or <sitting> + 13 or <laid> - 1 + <eggs>').map(
      ({ base, offset, source }) => ({
        base: base.source,
        terms: offset?.terms.map(({ sign, term }) => sign * Number(term.source) || term.source) ?? null,
        source,
      }),
    );
    expect(ways).toEqual([
      { base: '<hatched on>', terms: null, source: '<hatched on>' },
      { base: '<sitting>', terms: [13], source: '<sitting> + 13' },
      { base: '<laid>', terms: [-1, '<eggs>'], source: '<laid> - 1 + <eggs>' },
    ]);
  });

  test('may be put together from several columns', () => {
    expect(filled(dateTemplates('<year>-05-0<Eggs>')[0]?.base ?? templateOf(''), cell)).toBe('2016-05-05');
  });
});
