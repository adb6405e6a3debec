import { describe, expect, test } from 'vitest';
import { speciesText } from '../../../src/report/terminal/species.ts';
import { widthOf } from '../../../src/report/terminal/width.ts';
import { speciesView } from '../../../src/rules/species/view.ts';
import { findSpecies } from '../../../src/species/find.ts';
import type { Profile } from '../../../src/species/profile.ts';
import { expectGolden } from '../../golden.ts';
import { record, room } from '../../rooms.ts';
import { lavender, view } from './species/kept-room.ts';

const plain = { width: 80, color: false };

test.each([80, 120])('a profile at %d columns', (width) => {
  expectGolden(import.meta.url, `${width}.txt`, speciesText(view, { width, color: false }));
});

test('colour adds nothing to the words', () => {
  const text = speciesText(view, { width: 80, color: true });
  expectGolden(import.meta.url, '80-colour.txt', text);
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are the colours
  expect(text.replace(/\u001b\[[\d;]*m/g, '')).toBe(speciesText(view, plain));
});

test.each([30, 45, 60, 80])('no line is wider than a terminal of %d columns', (width) => {
  for (const color of [true, false]) {
    for (const line of speciesText(view, { width, color }).split('\n'))
      expect(widthOf(line)).toBeLessThanOrEqual(width);
  }
});

describe('what this room saw stands beside the book', () => {
  test('clutches, what forecasts use, and how good they were', () => {
    const text = speciesText(view, { width: 200, color: false });
    expect(text).toContain('seen here    2 clutches, mean 13.0 d, 12.0–14.0');
    expect(text).toMatch(/forecasts {4}12\.\d d, nine in ten within .+ \(11–13 d, book; 2 own clutches\)/);
    expect(text).toMatch(/so far {7}half came within 1\.5 d of the likely day; /);
  });

  test('a species that is not kept has the book alone', () => {
    const text = speciesText(speciesView(room({}, '2026-06-01'), lavender), plain);
    expect(text).toContain('not kept in this room');
    expect(text).not.toContain('seen here');
  });
});

test('an unknown value is said to be unknown, never a number', () => {
  const bare = { ...lavender, moult: null };
  expect(speciesText({ ...view, profile: bare }, plain)).toMatch(/^moult +unknown$/m);
});

test('an own value says that it is one, and the others keep their source', () => {
  const files = { 'species/mine.yaml': 'species: lavender waxbill\nincubation: 12\n' };
  const profile = findSpecies('lavender waxbill', record(files, '2026-06-01').ownSpecies) as Profile;
  const text = speciesText(speciesView(room(files, '2026-06-01'), profile), plain);
  expect(text).toMatch(/^incubation +12 d +common practice · own profile$/m);
  expect(text).toMatch(/^sitting-from +egg 3–4 +from memory$/m);
});

test('a species known by one name only leaves no empty line for the others', () => {
  const files = { 'species/hill-finch.yaml': 'species: hill finch\nincubation: 12\n' };
  const profile = findSpecies('hill finch', record(files, '2026-06-01').ownSpecies) as Profile;
  expect(speciesText(speciesView(room(files, '2026-06-01'), profile), plain)).toMatch(
    /^hill finch\nnot kept in this room\n/,
  );
});
