import { expect, it } from 'vitest';
import { isPrivate } from '../../src/journal/private.ts';

it.each([
  'private: sold to a neighbour',
  'Private: sold',
  'PRIVATE : sold',
  '  private: sold',
  '(private: sold)',
  '"private: sold"',
  '\u200Bprivate: sold',
  'private – sold',
  'private, sold',
  'private; sold',
  'private. Sold',
  'private - sold',
  'private—sold',
  'private：sold',
  'private\n: sold',
  '\t private:',
  '* private: sold',
  '€ private: sold',
  'ｐrivate：sold'.normalize('NFKC'),
])('%s is the keeper’s own', (text) => {
  expect(isPrivate(text)).toBe(true);
});

it.each([
  'sat well',
  'a private corner of the flight',
  'sold in private, by letter',
  'privately: no',
  'private',
])('%s is not', (text) => {
  expect(isPrivate(text)).toBe(false);
});
