import { describe, expect, test } from 'vitest';
import { definitions, type TableDefinition } from '../../../src/report/tables/definitions.ts';
import { measureNames } from '../../../src/rules/season/measures/index.ts';

const tables: Record<string, TableDefinition> = definitions;

describe.each(Object.entries(tables))('the table of %s', (_name, { columns, key, references }) => {
  const names = columns.map(({ name }) => name);

  test('names each column once, and says what it holds', () => {
    expect(new Set(names).size).toBe(names.length);
    for (const { doc } of columns) expect(doc).not.toBe('');
  });

  test('is told apart by columns that are never empty', () => {
    for (const part of key ?? []) expect(columns.find(({ name }) => name === part)?.required).toBe(true);
  });

  test('refers to columns that there are', () => {
    for (const { column, table, its } of references) {
      expect(names).toContain(column);
      expect(tables[table]?.columns.map(({ name }) => name)).toContain(its);
    }
  });
});

test('rates are those that are counted', () => {
  const column = tables.rates?.columns.find(({ name }) => name === 'rate');
  expect([...(column?.oneOf ?? [])].sort()).toEqual([...measureNames].sort());
});
