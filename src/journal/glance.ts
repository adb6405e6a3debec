import { isBirdList } from '../file-names.ts';
import type { SourceFile } from './record.ts';

/** Names that stand in a room's files, each once, in the order of the files. */
export interface Glance {
  pairs: string[];
  birds: string[];
  housings: string[];
  species: string[];
}

/**
 * The names of a room at a glance: lines that begin a journal or a bird, without reading the grammar. For a shell that
 * waits for the Tab key, not for anything that counts.
 */
export function glance(files: readonly SourceFile[]): Glance {
  const names = { pairs: new Set<string>(), birds: new Set<string>() };
  const housings = new Set<string>();
  const species = new Set<string>();
  for (const file of files) {
    if ('problem' in file) continue;
    const { path } = file;
    const text = file.text.replace(/^\ufeff/, '');
    const add = (set: Set<string>, line: RegExp, end?: RegExp) => {
      for (const [, name = ''] of text.matchAll(line)) set.add(scalar(name, end));
    };
    if (path.startsWith('pairs/')) {
      add(names.pairs, /^pair:[ \t](.+)/gim);
      add(housings, /^housing:[ \t](.+)/gim);
      add(species, /^species:[ \t](.+)/gim);
    } else if (isBirdList(path)) {
      add(names.birds, /^[ \t{-]*id:[ \t](.+)/gim, /\s#|[,}]/);
    }
  }
  return { pairs: [...names.pairs], birds: [...names.birds], housings: [...housings], species: [...species] };
}

/** A scalar without its quotes or what ends it: a comment, in brackets also the next key. */
function scalar(text: string, end = /\s#/): string {
  const bare = text.trim();
  const quoted = /^(["'])(.*?)\1/.exec(bare);
  return quoted === null ? (bare.split(end, 1)[0] as string).trimEnd() : (quoted[2] as string);
}
