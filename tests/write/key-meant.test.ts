import { expect, it } from 'vitest';
import { birdLog } from '../../src/journal/birds.ts';
import { pairLog } from '../../src/journal/pair-journal.ts';
import { keyMeant } from '../../src/write/key-meant.ts';

it('knows the keys of a log, whatever their capitals, and nothing like them', () => {
  expect(keyMeant('Laid', pairLog)).toBe('laid');
  expect(keyMeant('NOTE', pairLog)).toBe('note');
  expect(keyMeant('layed', pairLog)).toBeNull();
  expect(keyMeant('laid', birdLog)).toBeNull();
});
