import { describe, expect, test } from 'vitest';
import { columnsOf, stageOf } from '../../../src/write/import/guess-columns.ts';
import { readTable } from '../../../src/write/import/table.ts';

const rolesOf = (csv: string) => columnsOf(readTable('t.csv', csv).table).map(({ role }) => role);

test('a heading with dates under it is a stage’s date, with numbers its count', () => {
  expect(rolesOf('hatched,Hatched\n2024-03-01,3\n,2\n')).toEqual(['hatched date', 'hatched count']);
  expect(rolesOf('incubation_start,clutch,hatchlings,firstEggDate\n2024-03-01,4,3,2024-02-26\n')).toEqual([
    'sitting date',
    'laid count',
    'hatched count',
    'laid date',
  ]);
});

test('pair, birds and housing go by their usual names', () => {
  expect(rolesOf('Pair No.,Species,Male,Hen ring,Cage,Remarks,Clutch no,moon\n1,x,a,b,c,d,2,full\n')).toEqual(
    ['pair', 'species', 'cock', 'hen', 'housing', 'note', 'clutch', null],
  );
});

test('a column without dates, in a heading that speaks of a stage, is nothing to go by', () => {
  expect(rolesOf('hatched\nwell\n')).toEqual([null]);
});

describe('a word for an event', () => {
  test.each([
    ['egg laid', 'laid'],
    ['Sits', null],
    ['sitting tight', 'sitting'],
    ['fertile', 'fertile'],
    ['infertile', 'clear'],
    ['clear egg', 'clear'],
    ['chicks hatched', 'hatched'],
    ['fledged', 'fledged'],
    ['chick found dead', 'hatched'],
    ['weaned', 'independent'],
    ['weather', null],
  ])('%s: %s', (word, stage) => expect(stageOf(word)).toBe(stage));
});
