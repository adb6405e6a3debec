import { describe, expect, it } from 'vitest';
import { alikeName } from '../../src/findings/alike.ts';

const known = ['flight 2', 'east flight', 'cage AB', 'gorse bundle', 'volière', '★'];

describe('a name that a keeper made up', () => {
  it.each([
    ['fligth 2', 'flight 2'],
    ['flight2', 'flight 2'],
    ['Flight-2', 'flight 2'],
    ['gorsebundle', 'gorse bundle'],
    ['gosre bundle', 'gorse bundle'],
    ['east fligt', 'east flight'],
    ['voliere', 'volière'],
  ])('%s was meant as %s', (said, meant) => {
    expect(alikeName(said, known)).toBe(meant);
  });

  it.each([
    'flight 1',
    'flight 22',
    'flight',
    'west flight',
    'cage AC',
    'gorse',
    '',
    '☆',
    '2',
    'flight 1 2',
    '2 flight',
    'fligth 20',
  ])('%s is another', (said) => {
    expect(alikeName(said, known)).toBeNull();
  });
});
