import { describe, expect, it } from 'vitest';
import { nearest } from '../../src/findings/nearest.ts';

const words = ['candled', 'checked', 'dead-in-shell', 'hen', 'cock', 'laid'];

describe('nearest', () => {
  it.each([
    ['candeled', 'candled'],
    ['Laid', 'laid'],
    ['laied', 'laid'],
    ['dead in shell', 'dead-in-shell'],
    ['dead_in_shell', 'dead-in-shell'],
    ['hne', null],
    ['hem', 'hen'],
    ['fledged', null],
    ['e3', null],
    ['', null],
    ['x'.repeat(1000), null],
  ])('%s was meant as %s', (said, meant) => {
    expect(nearest(said, words)).toBe(meant);
  });
});
