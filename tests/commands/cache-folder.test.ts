import { homedir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { cacheFolder, stateFolder } from '../../src/commands/cache-folder.ts';

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

test('what is remembered lies in the user’s folder for state; a relative one does not count', () => {
  expect(stateFolder({ XDG_STATE_HOME: '/elsewhere' })).toBe('/elsewhere');
  for (const XDG_STATE_HOME of ['', 'relative', undefined]) {
    expect(stateFolder({ XDG_STATE_HOME })).toBe(join(homedir(), '.local', 'state'));
  }
});
