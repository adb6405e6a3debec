import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { root } from '../../../bin/build/settings.mjs';
import { isLeaf, leaf, leaves } from '../../../src/report/schema/leaves.ts';

/** Shapes that are made of others, or take a number or words of their own. */
const COMPOSED = [
  'empty',
  'word',
  'number',
  'whole-number',
  'who',
  'who-key',
  'one-or-more',
  'map',
  'fields',
];

test('every shape that the grammar names is known', () => {
  const folder = `${root}/src/journal/grammar`;
  const source = readdirSync(folder).map((file) => readFileSync(`${folder}/${file}`, 'utf8'));
  const named = source.flatMap((text) =>
    [...text.matchAll(/shape: '([\w-]+)'/g)].map((match) => match[1] as string),
  );
  expect(named.length).toBeGreaterThan(15);
  expect(named.filter((shape) => !isLeaf(shape) && !COMPOSED.includes(shape))).toEqual([]);
});

test('a leaf is referred to by its name', () => {
  expect(leaf('date')).toEqual({ $ref: '#/$defs/date' });
  expect(Object.keys(leaves)).toContain('date');
});
