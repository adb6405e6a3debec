import { expect, test } from 'vitest';
import { logs, plan, problems } from './importing.ts';

const mapping = `
  rows: clutches
  pair: <pair>
  species: zebra finch
  log:
    - {date: <laid>, laid: <eggs>}
    - {date: <hatched>, hatched: <chicks>}
`;

const headings = 'pair,laid,eggs,hatched,chicks';

test('what cannot be is named by the row that says it, also far down a journal', () => {
  const rows = `${headings}\nA-1,2024-03-01,4,2024-03-17,3\nA-1,2024-06-01,4,2024-06-15,6\nA-2,2024-06-01,2,2024-06-15,3\n`;
  expect(problems(rows, mapping)).toEqual([
    expect.stringMatching(/^old\.csv row 3: A-1: /),
    expect.stringMatching(/^old\.csv row 4: A-2: 3 hatched, but in the nest of A-2 it is possible for 2/),
  ]);
});

test('findings of journals that are there are not the import’s', () => {
  const existing = {
    'pairs/B-1.yaml': 'pair: B-1\nspecies: zebra finch\nlog:\n  - {date: 2024-13-01, laid: 1}\n',
  };
  expect(logs(`${headings}\nA-1,2024-03-01,4,,\n`, mapping, { existing })['A-1']).toHaveLength(1);
});

test('the room’s own species profiles are known', () => {
  const own = { 'species/blue-thing.yaml': 'species: blue thing\nincubation: 12-14\n' };
  const blue = mapping.replace('zebra finch', 'blue thing');
  expect(plan(`${headings}\nA-1,2024-03-01,4,,\n`, blue, { existing: own }).hints).toEqual([]);
  expect(plan(`${headings}\nA-1,2024-03-01,4,,\n`, blue).hints).toHaveLength(1);
});

test('a cock whose name differs from the bird list only in capitals is told, as `check` tells it', () => {
  const existing = { 'birds.yaml': 'birds:\n  - {id: ZF-20-04, species: zebra finch}\n' };
  const cock = mapping.replace('  log:', '  cock: <cock>\n  log:');
  const rows = `${headings},cock\nA-1,2024-03-01,4,,,zf-20-04\n`;
  expect(plan(rows, cock, { existing }).hints).toMatchObject([
    { row: 2, text: expect.stringContaining('`zf-20-04` and `ZF-20-04` differ only in capitals') },
  ]);
});

test('a weight that can only be a slip of the pen is told by its row', () => {
  const weighed = mapping.replace('  log:', '  log:\n    - {date: <hatched> + 9, weighed: {c1: <grams>}}');
  const rows = `${headings},grams\nA-1,2024-03-01,4,2024-03-17,3,90\n`;
  expect(plan(rows, weighed).hints.map(({ row }) => row)).toEqual([2]);
});
