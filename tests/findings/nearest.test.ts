import { describe, expect, it } from 'vitest';
import { nearest } from '../../src/findings/nearest.ts';

const words = [
  'candled',
  'parted',
  'paired',
  'checked',
  'dead-in-shell',
  'clutch-size',
  'clutch-count',
  'hen',
  'cock',
  'laid',
];

describe('nearest', () => {
  it.each([
    ['candeled', 'candled'],
    ['Laid', 'laid'],
    ['laied', 'laid'],
    ['layed', 'laid'],
    ['paried', 'paired'],
    ['partde', 'parted'],
    ['dead in shell', 'dead-in-shell'],
    ['dead_in_shell', 'dead-in-shell'],
    ['dead', 'dead-in-shell'],
    ['dea', null],
    ['clutch', null],
    ['hne', 'hen'],
    ['hem', 'hen'],
    ['fledged', null],
    ['e3', null],
    ['', null],
    ['x'.repeat(1000), null],
    ['candling', 'candled'],
    ['part', 'parted'],
    ['checking', 'checked'],
  ])('%s was meant as %s', (said, meant) => {
    expect(nearest(said, words)).toBe(meant);
  });

  it.each([
    ['hatch', 'hatched'],
    ['hatching', 'hatched'],
    ['ring', 'ringed'],
    ['pip', 'pipped'],
    ['sit', 'sitting'],
    ['weigh', 'weighed'],
    ['feed', 'feeding'],
  ])('%s is another form of %s', (said, meant) => {
    expect(nearest(said, ['ringed', 'pipped', 'weighed', 'hatched', 'sitting', 'feeding', 'died'])).toBe(
      meant,
    );
  });

  it('takes a doubled number for no form of the same word', () => {
    expect(nearest('LW-11', ['LW-12', 'LW-1'])).toBe('LW-12');
    expect(nearest('pip', ['paired', 'pipped'])).toBe('pipped');
  });
});
