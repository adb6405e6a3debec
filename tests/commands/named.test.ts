import { expect, it } from 'vitest';
import { mustBeOneOf, pairNamed } from '../../src/commands/named.ts';
import { UsageError } from '../../src/commands/usage-error.ts';
import { room } from '../rooms.ts';

const of = (id: string) => `pair: ${id}\nspecies: star finch\nlog:\n  - {date: 2026-03-01, paired}\n`;
const two = room({ 'SF-1': of('SF-1'), 'SF-2': of('SF-2') }, '2026-03-02');

it('a pair is found by its id', () => {
  expect(pairNamed('SF-1', two).id).toBe('SF-1');
});

it('a name that there is not is wrong usage, with the nearest one, or all, or none', () => {
  expect(() => pairNamed('SF 1', two)).toThrow(UsageError);
  expect(() => pairNamed('SF 1', two)).toThrow('no pair `SF 1` in this room; did you mean `SF-1`?');
  expect(() => pairNamed('aviary', two)).toThrow('there is SF-1, SF-2');
  expect(() => pairNamed('SF-1', { pairs: [] })).toThrow('there is none');
});

it('nothing asked for is nothing refused', () => {
  expect(() => mustBeOneOf('housing', null, [])).not.toThrow();
  expect(() => mustBeOneOf('housing', 'flight 1', [])).toThrow('no housing `flight 1` in this room');
});
