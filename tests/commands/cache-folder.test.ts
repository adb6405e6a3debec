import { expect, test } from 'vitest';
import { cacheFolder } from '../../src/commands/cache-folder.ts';

// XDG base directory specification: $XDG_CACHE_HOME, else $HOME/.cache; relative paths are to be ignored.
test.each([
  [{ XDG_CACHE_HOME: '/fast', HOME: '/home/me' }, '/fast/nestlog'],
  [{ XDG_CACHE_HOME: 'fast', HOME: '/home/me' }, '/home/me/.cache/nestlog'],
  [{ XDG_CACHE_HOME: '', HOME: '/home/me' }, '/home/me/.cache/nestlog'],
  [{ USERPROFILE: '/users/me' }, '/users/me/.cache/nestlog'],
  [{}, undefined],
])('%o keeps in %s', (environment, folder) => {
  expect(cacheFolder(environment)).toBe(folder);
});
