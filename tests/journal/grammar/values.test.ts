import { describe, expect, it } from 'vitest';
import { housing } from '../../../src/journal/grammar/names.ts';
import {
  empty,
  fields,
  map,
  number,
  oneOrMore,
  text,
  wholeNumber,
  word,
} from '../../../src/journal/grammar/values.ts';
import { whoKey } from '../../../src/journal/grammar/who.ts';
import { readLog } from '../reading.ts';
import { typedValue } from './schemas.ts';

describe('scalars', () => {
  it.each([
    [text, '" two words "', { text: 'two words' }],
    [text, '"  "', 'empty-text'],
    [word('hen', 'cock'), '" hen "', 'hen'],
    [number('grams'), '" 4.5 "', 4.5],
    [wholeNumber(1), '" 3 "', 3],
    [text, '', 'wrong-value'],
    [empty, '', null],
    [empty, '~', 'wrong-value'],
    [word('hen', 'cock'), 'hen', 'hen'],
    [word('hen', 'cock'), 'Hen', 'unknown-word'],
    [number('grams'), '4.5', 4.5],
    [number('grams'), '4.333333333333333', 4.333333333333333],
    [number('grams'), '0', 'not-a-number'],
    [number('grams'), '9'.repeat(400), 'not-a-number'],
    [number('grams'), '-1', 'not-a-number'],
    [number('grams'), '1e3', 'not-a-number'],
    [number('grams'), '4,5', 'not-a-number'],
    [wholeNumber(1), '012', 12],
    [wholeNumber(1), '0', 'not-whole'],
    [wholeNumber(0), '0', 0],
    [wholeNumber(0), '1.5', 'not-whole'],
    [wholeNumber(0), '9999999', 'not-whole'],
  ])('%#: %s', (schema, typed, expected) => {
    expect(typedValue(schema, typed as string)).toEqual(expected);
  });
});

describe('collections', () => {
  const weights = map(word('hen', 'cock'), number('grams'));
  const state = fields({ state: word('lined', 'ready'), site: text });

  it.each([
    [oneOrMore(text), 'a', [{ text: 'a' }]],
    [oneOrMore(text), '[a, b]', [{ text: 'a' }, { text: 'b' }]],
    [oneOrMore(text), '[]', 'empty-list'],
    [oneOrMore(text), '{a: b}', 'wrong-value'],
    [
      weights,
      '{hen: 9.8, cock: 10}',
      [
        ['hen', 9.8],
        ['cock', 10],
      ],
    ],
    [weights, '{hen: 9,8}', 'comma-in-map'],
    [weights, '{}', 'empty-map'],
    [weights, '{hne: 9.8}', 'unknown-word'],
    [weights, '9.8', 'wrong-value'],
    [state, '{site: left}', { state: null, site: { text: 'left' } }],
    [state, '{state: linde, site: [x]}', 'unknown-word'],
    [state, '{stat: lined}', 'unknown-key'],
    [state, '{state: lined, gorse}', 'comma-in-map'],
    [state, '{state: lined, sit}', 'unknown-key'],
    [state, '{state: }', 'comma-in-map'],
    [state, '{}', 'empty-map'],
  ])('%#: %s', (schema, typed, expected) => {
    expect(typedValue(schema, typed as string)).toEqual(expected);
  });
});

describe('the words of a sick bird', () => {
  const told = map(whoKey, text);
  const typed = (said: string) =>
    (typedValue(told, said) as [{ refs: { text: string }[] }, { text: string }][]).map(
      ([whom, { text: words }]) => `${whom.refs[0]?.text}: ${words}`,
    );

  it('go on behind a comma', () => {
    expect(typed('{c1: thin, hen: fluffed, straining, on the floor}')).toEqual([
      'c1: thin',
      'hen: fluffed, straining, on the floor',
    ]);
  });

  it('are not another bird that stands behind one: of it nothing is known', () => {
    expect(typed('{hen: fluffed, cock}')).toEqual(['hen: fluffed']);
    expect(typed('{c1, hen: fluffed, straining}')).toEqual(['hen: fluffed, straining']);
  });

  it('stand before no bird', () => {
    expect(typedValue(told, '{straining, hen: fluffed}')).toBe('comma-in-map');
    expect(typedValue(told, '{cock}')).toBe('comma-in-map');
    expect(typedValue(told, '{hen: [fluffed], straining}')).toBe('comma-in-map');
  });

  it('may name a bird where they are not about one', () => {
    expect(typedValue(map(text, text), '{m: cock, hen}')).toEqual([[{ text: 'm' }, { text: 'cock, hen' }]]);
  });
});

// A ticked box says yes or no; a place may begin or end so.
it.each(['North flight', 'No 7', 'Bruno', 'the cage by the window, no', 'Yesterday’s'])(
  'a housing may be called %s',
  (name) => {
    expect(typedValue(housing, JSON.stringify(name))).toEqual({ text: name });
  },
);

it.each(['no', 'Yes', 'TRUE', '" false "'])('a housing is not called %s', (name) => {
  expect(typedValue(housing, name)).toBe('wrong-value');
});

it('what is not known is named, with all that is', () => {
  const { said, fixes } = readLog(
    '- {date: 2026-03-10, roosting: away}',
    '- {date: 2026-03-11, checked: {eggs: 2, nestlings: 1}}',
    '- {date: 2026-03-12, checked: {eggs: }}',
    '- {date: 2026-03-13, lost: {clear: }}',
  );
  expect(said).toEqual([
    '`away` is not a word known here',
    'there is no key `nestlings` here',
    '`eggs` stands alone behind a comma and would be lost',
    '`clear` stands alone behind a comma and would be lost',
  ]);
  expect(fixes.slice(0, 2)).toEqual(['one of nest, out', 'there are eggs, chicks']);
});
