/** A journal's file name, without its ending, for an id: letters and figures of any script, and what is harmless everywhere. */
export function fileName(pair: string): string {
  return pair.replace(/[^\p{L}\p{N}._-]+/gu, '-').replace(/^\.+/, '-');
}

/** A name inside of a comment. */
export function printable(name: string): string {
  return name.replace(/\p{C}/gu, ' ');
}
