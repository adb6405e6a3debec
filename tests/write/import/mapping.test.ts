import { expect, test } from 'vitest';
import { readMapping } from '../../../src/write/import/mapping.ts';
import type { ImportProblem } from '../../../src/write/import/problem.ts';
import { dedent } from '../../rooms.ts';

function read(text: string) {
  const problems: ImportProblem[] = [];
  const mapping = readMapping('map.yaml', dedent(text), problems);
  return { mapping, said: problems.map(({ line, text: what }) => `${line ?? '-'}: ${what}`) };
}

test('a mapping is read as it is written', () => {
  const { mapping, said } = read(`
    rows: events
    separator: semicolon
    dates: day-first
    excel-dates: 1904
    nothing: NA
    pair: <Pair>
    words: {Sex: {m: cock}}
    skip: {What: weather}
    log:
      - {when: {What: [egg, Eggs]}, date: <Date>, laid: <N>}
  `);
  expect(said).toEqual([]);
  expect(mapping).toMatchObject({
    rows: 'events',
    separator: 'semicolon',
    dates: 'day-first',
    serials: '1904',
    nothing: new Set(['na']),
    words: new Map([['sex', new Map([['m', 'cock']])]]),
    skip: [{ heading: 'What', words: new Set(['weather']) }],
    log: [{ line: 10, when: [{ heading: 'What', words: new Set(['egg', 'eggs']) }] }],
  });
});

test('an empty mapping, one without pair, rows or log, is told what is missing', () => {
  expect(read('# nothing yet\n').said).toEqual(['-: the mapping is empty']);
  expect(read('species: zebra finch\n').said).toEqual([
    '-: `pair:` is missing',
    '-: `rows:` is missing',
    '-: `log:` is missing',
  ]);
});

test('capitals, as a phone puts them, make no other key', () => {
  const { mapping, said } = read(`
    Rows: clutches
    PAIR: <Pair>
    Log:
      - {Date: <Laid>, Laid: <Eggs>, When: {What: egg}}
  `);
  expect(said).toEqual([]);
  expect(mapping).toMatchObject({ rows: 'clutches', log: [{ when: [{ heading: 'What' }] }] });
  expect(mapping?.log[0]?.fields.pairs.map(([key]) => key.text)).toEqual(['date', 'laid']);
});

test('slips of the pen are errors of a line', () => {
  const { mapping, said } = read(`
    rows: clutchs
    pair: <Pair>
    dates: american
    speceis: zebra finch
    log:
      - {date: <Laid>, laide: <Eggs>}
      - {laid: <Eggs>}
      - laid
  `);
  expect(mapping).toBeNull();
  expect(said.map((one) => one.slice(0, 30))).toEqual([
    expect.stringMatching(/^1: /),
    expect.stringMatching(/^3: /),
    expect.stringMatching(/^4: there is no key `speceis`/),
    expect.stringMatching(/^6: there is no key `laide`/),
    expect.stringMatching(/^7: /),
    expect.stringMatching(/^8: /),
  ]);
});

test('a text that is no YAML is an error, not a crash', () => {
  expect(read('rows: [clutches\n').mapping).toBeNull();
  expect(read('log: 3\npair: a\nrows: events\n').said).not.toEqual([]);
});
