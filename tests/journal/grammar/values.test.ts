import { describe, expect, it } from 'vitest';
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
import { typedValue } from './schemas.ts';

describe('scalars', () => {
  it.each([
    [text, '" two words "', { text: 'two words' }],
    [text, '"  "', 'empty-text'],
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
