import { isYaml, nameOfFile } from '../file-names.ts';

/** A journal's file name, without its ending, for an id: letters and figures of any script, and what is harmless everywhere. */
export function fileName(pair: string): string {
  return pair.replace(/[^\p{L}\p{N}._-]+/gu, '-').replace(/^\.+/, '-');
}

/** Where the journal of a pair is written; `into` is a folder below `pairs/`, or empty. */
export function journalPath(pair: string, into: string): string {
  return ['pairs', into, `${fileName(pair)}.yaml`].filter((part) => part !== '').join('/');
}

/** A name inside of a comment. */
export function printable(name: string): string {
  return name.replace(/\p{C}/gu, ' ');
}

/** A name as one word of a command line. */
export function shellWord(name: string): string {
  return /^[\w.-]+$/.test(name) ? name : `"${name}"`;
}

/** The id of whose file was named instead; null where no file was. */
export function idOfFile(typed: string): string | null {
  return isYaml(typed) ? nameOfFile(typed) : null;
}
