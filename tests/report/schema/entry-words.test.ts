import { expect, test } from 'vitest';
import { observations } from '../../../src/journal/observations/index.ts';
import { entryWords } from '../../../src/report/schema/entry-words.ts';

const words = entryWords().map(({ word }) => word);
const of = (key: string) => words.filter((word) => word.split(/[.=]/)[0] === key);

test('every observation can be typed', () => {
  for (const key of Object.keys(observations)) expect(of(key)).not.toEqual([]);
});

test('with the words that it takes, or the way on to a value', () => {
  expect(of('laid')).toEqual(['laid=']);
  expect(of('sitting')).toEqual(['sitting', 'sitting=hen', 'sitting=cock', 'sitting=both', 'sitting=off']);
  expect(of('checked')).toEqual(['checked', 'checked.eggs=', 'checked.chicks=']);
  expect(of('ringed')).toEqual(['ringed.']);
  expect(of('died')).toEqual(['died=', 'died.']);
});
