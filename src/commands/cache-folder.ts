import { homedir } from 'node:os';
import { isAbsolute, join } from 'node:path';

/** The keeper's cache folder by the XDG base directory specification; undefined where there is no home. */
export function cacheFolder({
  XDG_CACHE_HOME,
  HOME,
  USERPROFILE,
}: Record<string, string | undefined>): string | undefined {
  const home = HOME || USERPROFILE;
  // The specification: a relative path in the variable is to be ignored.
  if (XDG_CACHE_HOME && isAbsolute(XDG_CACHE_HOME)) return join(XDG_CACHE_HOME, 'nestlog');
  return home ? join(home, '.cache', 'nestlog') : undefined;
}

/** The user's folder for what programs remember (XDG Base Directory Specification 0.8): relative paths do not count. */
export function stateFolder({ XDG_STATE_HOME }: Record<string, string | undefined>): string {
  return XDG_STATE_HOME && isAbsolute(XDG_STATE_HOME) ? XDG_STATE_HOME : join(homedir(), '.local', 'state');
}
