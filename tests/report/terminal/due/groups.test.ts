import { expect, test } from 'vitest';
import { groupsBy } from '../../../../src/report/terminal/due/groups.ts';
import { item } from '../../mornings.ts';

test('a pair’s heading says its species and housing where all its tasks agree on them', () => {
  const [moved] = groupsBy('pair', [item({}), item({ housing: 'cage 4' })]);
  expect(moved?.title).toBe('LW-1 · lavender waxbill');
  expect(moved?.said).toEqual({ whose: true, species: true, housing: false });
});

test('the room’s own work is nobody’s and comes last', () => {
  const groups = groupsBy('housing', [item({ pair: null, housing: null }), item({})]);
  expect(groups.map(({ title, said }) => [title, said.whose])).toEqual([
    ['flight 2', false],
    ['the room', true],
  ]);
});

test('a pair whose housing was never recorded is not the room', () => {
  const [group] = groupsBy('housing', [item({ housing: null })]);
  expect(group?.title).toBe('housing not recorded');
  expect(group?.said.whose).toBe(false);
});
