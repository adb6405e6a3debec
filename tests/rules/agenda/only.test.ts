import { expect, test } from 'vitest';
import { onlyFor } from '../../../src/rules/agenda/only.ts';
import { room } from '../../rooms.ts';

const aviary = () =>
  room(
    {
      'LW-1':
        'pair: LW-1\nspecies: lavender waxbill\nhousing: flight 2\nlog:\n  - {date: 2026-03-01, paired}\n',
      'DD-1': 'pair: DD-1\nspecies: diamond dove\nhousing: aviary\nlog:\n  - {date: 2026-03-01, paired}\n',
      'birds.yaml':
        'birds:\n  - id: DD-9\n    species: diamond dove\n    log:\n      - {date: 2026-03-01, arrived: cage 1}\n',
    },
    '2026-03-02',
  );
const none = { pair: null, housing: null, species: null };
const at = (pair: string | null, bird: string | null = null) => ({ pair, bird });

test('without a wish everything is shown', () => {
  expect(onlyFor(aviary(), none)(at(null))).toBe(true);
});

test('a pair, a housing and a species narrow together', () => {
  expect(onlyFor(aviary(), { ...none, pair: 'LW-1' })(at('LW-1'))).toBe(true);
  expect(onlyFor(aviary(), { ...none, pair: 'LW-1' })(at('DD-1'))).toBe(false);
  expect(onlyFor(aviary(), { ...none, housing: 'aviary' })(at('DD-1'))).toBe(true);
  expect(onlyFor(aviary(), { ...none, species: 'diamond dove', housing: 'aviary' })(at('LW-1'))).toBe(false);
});

test('a bird outside a pair is found by where it lives and what it is', () => {
  expect(onlyFor(aviary(), { ...none, housing: 'cage 1' })(at(null, 'DD-9'))).toBe(true);
  expect(onlyFor(aviary(), { ...none, species: 'diamond dove' })(at(null, 'DD-9'))).toBe(true);
});

test('another housing or another species is not shown', () => {
  expect(onlyFor(aviary(), { ...none, housing: 'cage 1' })(at('DD-1'))).toBe(false);
  expect(onlyFor(aviary(), { ...none, species: 'diamond dove' })(at('LW-1'))).toBe(false);
  expect(onlyFor(aviary(), { ...none, species: 'lavender waxbill' })(at(null, 'DD-9'))).toBe(false);
});

test('a task is where it is done, not where its pair lives', () => {
  const warm = { ...at('LW-1'), housing: 'incubator' };
  expect(onlyFor(aviary(), { ...none, housing: 'incubator' })(warm)).toBe(true);
  expect(onlyFor(aviary(), { ...none, housing: 'flight 2' })(warm)).toBe(false);
});

test('a bird of a pair that lives in another housing is found there', () => {
  expect(onlyFor(aviary(), { ...none, housing: 'cage 1' })(at('DD-1', 'DD-9'))).toBe(true);
  expect(onlyFor(aviary(), { ...none, housing: 'aviary' })(at('DD-1', 'DD-9'))).toBe(false);
});

test('what concerns the whole room belongs to no pair', () => {
  expect(onlyFor(aviary(), { ...none, pair: 'LW-1' })(at(null))).toBe(false);
});
