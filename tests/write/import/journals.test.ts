import { describe, expect, test } from 'vitest';
import { logs, plan, problems } from './importing.ts';

const mapping = `
  rows: clutches
  pair: <pair>
  cock: <cock>
  log:
    - {date: <paired>, paired}
    - {date: <laid>, laid: <eggs>}
    - {date: <hatched>, hatched: <chicks>}
`;

const headings = 'pair,cock,paired,laid,eggs,hatched,chicks';

describe('the clutches of a pair', () => {
  test('are numbered by their dates, not by the order of the rows', () => {
    const rows = `${headings}\nA-1,,,2024-06-01,5,,\nA-1,,,2024-03-01,4,,\n`;
    expect(logs(rows, mapping)['A-1']).toEqual([
      '{date: 2024-03-01, clutch: 1, laid: 4}',
      '{date: 2024-06-01, clutch: 2, laid: 5}',
    ]);
  });

  test('begin with their first egg: what was before belongs to none', () => {
    const rows = `${headings}\nA-1,,2024-02-01,2024-03-01,4,,\n`;
    expect(logs(rows, mapping)['A-1']).toEqual([
      '{date: 2024-02-01, paired}',
      '{date: 2024-03-01, clutch: 1, laid: 4}',
    ]);
  });

  test('are numbered as the table does it, where the mapping says so', () => {
    const own = mapping
      .replace('laid: <eggs>', 'clutch: <cock>, laid: <eggs>')
      .replace('  cock: <cock>\n', '');
    expect(logs(`${headings}\nA-1,1,,2024-03-01,4,,\n`, own)['A-1']).toEqual([
      '{date: 2024-03-01, clutch: 1, laid: 4}',
    ]);
  });
});

test('entries of one day stand in the order in which they happen', () => {
  const rows = `${headings}\nA-1,,,2024-03-19,4,2024-03-19,\nA-1,,2024-03-19,2024-05-19,4,,\n`;
  expect(logs(rows, mapping)['A-1']?.map((line) => line.replace(/clutch: \d, /, ''))).toEqual([
    '{date: 2024-03-19, paired}',
    '{date: 2024-03-19, laid: 4}',
    '{date: 2024-05-19, laid: 4}',
  ]);
});

describe('a journal', () => {
  const journal = (pair: string, cock = '') =>
    plan(`${headings}\n"${pair}","${cock}",,2024-03-01,4,,\n`, mapping).journals[0];

  test('is named after its pair, with what a file’s name cannot hold left out', () => {
    expect(journal('LW 1')?.path).toBe('pairs/LW-1.yaml');
    expect(journal('Zebrafinken Köln')?.path).toBe('pairs/Zebrafinken-Köln.yaml');
    expect(journal('..')?.path).toBe('pairs/-.yaml');
  });

  test('quotes what YAML would take for something else', () => {
    expect(journal('A-1', 'red: 14')?.text).toContain('cock: "red: 14"\n');
    expect(journal('A-1', 'LW 19 04')?.text).toContain('cock: LW 19 04\n');
  });

  test('knows which row each line came from', () => {
    const rows = `${headings}\nA-1,,,2024-06-01,5,,\nA-1,,,2024-03-01,4,,\n`;
    expect([...(plan(rows, mapping).journals[0]?.rows ?? [])]).toEqual([
      [5, 3],
      [6, 2],
    ]);
  });
});

test('two pairs whose files would be one are told', () => {
  const rows = `${headings}\nA 1,,,2024-06-01,5,,\na-1,,,2024-03-01,4,,\n`;
  expect(problems(rows, mapping)).toEqual([
    'old.csv row 3: the pairs `A 1` and `a-1` would share the file pairs/a-1.yaml',
  ]);
});
