import type { CommandOption } from './context.ts';
import { UsageError } from './usage-error.ts';

/**
 * The option of commands that begin journals: in which folder below `pairs/`.
 *
 * @param what is begun there, where the command begins other things as well
 */
export function intoOption(what = ''): CommandOption {
  const description = `${what === '' ? '' : `${what}: `}folder below pairs/ of the room`;
  return { flags: '--into <folder>', description, parse: inside };
}

/** No path that leads out of the room, nor into a folder that is passed over when it is read. */
function inside(text: string): string {
  const parts = text.split(/[\\/]+/).filter((part) => part !== '' && part !== '.');
  // Both are typed, the folder as it is seen from the room and as it is seen from `pairs/`.
  if (parts[0] === 'pairs' && parts.length > 1) parts.shift();
  if (parts.length > 0 && parts.every((part) => !part.startsWith('.')) && !/^([\\/]|[a-z]:)/i.test(text)) {
    return parts.join('/');
  }
  throw new UsageError(`--into takes a folder below pairs/ such as old, not \`${text}\``);
}
