import { expect, test } from 'vitest';
import { problems } from './importing.ts';

const mapping = `
  rows: events
  pair: <Pair>
  words: {Kind: {a: b}}
  skip: {Weather: [rain]}
  log:
    - {when: {What: egg}, date: <Dat>, laid: <Number>, note: "<Note>, <Who>"}
`;

test('every column that the mapping names and the table lacks is told, with the one that was probably meant', () => {
  expect(problems('Pair,Date,Number\nA-1,2024-03-04,1\n', mapping)).toEqual([
    'map.yaml: the table has no column <kind>',
    'map.yaml: the table has no column <Weather>',
    'map.yaml: the table has no column <What>',
    'map.yaml: the table has no column <Dat>',
    'map.yaml: the table has no column <Note>',
    'map.yaml: the table has no column <Who>',
  ]);
});

test('a heading that stands over two columns does not say which is meant', () => {
  const table = 'Pair,Laid,Eggs,eggs\nA-1,2024-03-04,4,fine\n';
  const wanted = 'rows: clutches\npair: <Pair>\nlog:\n  - {date: <Laid>, laid: <Eggs>}\n';
  expect(problems(table, wanted)).toEqual([
    'map.yaml: the columns 3 and 4 of the table are both called <Eggs>',
  ]);
});
