import { expect, it } from 'vitest';
import { aside, indented, section, textOf } from '../../../src/report/terminal/page.ts';
import { page } from '../seasons.ts';

it('a part without lines has no title', () => {
  expect(section('LOSSES', [], page())).toEqual([]);
  expect(section('LOSSES', ['  none'], page())).toEqual(['LOSSES', '  none']);
});

it('paragraphs are set in and wrapped', () => {
  expect(indented('one two three', page(9))).toEqual(['  one two', '  three']);
  expect(indented('one two three', page(9), { indent: 1, hanging: 2 })).toEqual([' one two', '   three']);
  expect(aside('one', page(9))).toEqual(['  one']);
});

it('blocks stand apart, and one without lines takes no room', () => {
  expect(textOf([['A', 'B'], [], ['C']])).toBe('A\nB\n\nC\n');
  expect(textOf([[]])).toBe('');
});
