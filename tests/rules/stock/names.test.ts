import { describe, expect, it } from 'vitest';
import { birdsByName } from '../../../src/rules/stock/names.ts';
import { room } from '../../rooms.ts';
import { threeGenerations } from './rooms.ts';

describe('a bird', () => {
  const find = birdsByName(room(threeGenerations, '2025-06-20').birds);

  it.each([
    ['SON', 'its id'],
    ['LW-1/1/c1', 'the chick it was'],
    ['LW 21', 'its ring'],
    ['ring:LW 21', 'its ring, said to be one'],
  ])('is found by %s, %s', (name) => {
    expect(find(name)?.id).toBe('SON');
  });

  it('that nobody knows is nobody', () => {
    expect(find('LW-9/1/c1')).toBeNull();
    expect(find('')).toBeNull();
  });
});

it('an id goes before a ring of the same letters', () => {
  const { birds } = room({ 'birds.yaml': 'birds: [{id: a, ring: b}, {id: b}]' }, '2026-01-01');
  expect(birdsByName(birds)('b')?.id).toBe('b');
});

it('a chick named by `is:` before it hatched is the bird of that item', () => {
  const find = birdsByName(room(threeGenerations, '2024-03-20').birds);
  expect(find('LW-1/1/c1')?.id).toBe('SON');
});
