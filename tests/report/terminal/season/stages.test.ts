import { expect, it } from 'vitest';
import { stageLines } from '../../../../src/report/terminal/season/stages.ts';
import { book, known, ON, page, waxbills } from '../../seasons.ts';

it('each stage has its days, losses and survival', () => {
  const lines = stageLines(book(known, ON).totals, page());
  expect(lines.slice(0, 5)).toEqual([
    '  stage         days watched  lost    a day  the whole stage  95 %',
    '  laying                  12     0  100.0 %  100 % of 2.5 d   46–100 %',
    '  sitting                 42     0  100.0 %  100 % of 12 d    35–100 %',
    '  in the nest           59.5     1   98.3 %  72 % of 19 d     21–96 %',
    '  fledged, fed            55     0  100.0 %  100 % of 16 d    34–100 %',
  ]);
});

it('on a narrow page some columns are left out', () => {
  expect(stageLines(book(known, ON).totals, page(60))[0]).toBe(
    '  stage        days watched  lost  the whole stage  95 %',
  );
  expect(stageLines(book(known, ON).totals, page(46))[0]).toBe('  stage        lost  the whole stage  95 %');
});

it('nothing watched is nothing shown', () => {
  expect(
    stageLines(book({ 'LW-1': waxbills('date: 2026-03-01, laid: 1') }, '2026-03-01').totals, page()),
  ).toEqual([]);
});
