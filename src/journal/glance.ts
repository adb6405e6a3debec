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
    const { path, text } = file;
    const add = (set: Set<string>, pattern: RegExp) => {
      for (const [, name = ''] of text.matchAll(pattern)) set.add(unquoted(name));
    };
    if (path.startsWith('pairs/')) {
      add(names.pairs, /^pair:[ \t]+(.+)$/gm);
      add(housings, /^housing:[ \t]+(.+)$/gm);
      add(species, /^species:[ \t]+(.+)$/gm);
    } else if (/^birds\.ya?ml$/i.test(path)) {
      add(names.birds, /^[ \t]*(?:- *)?(?:\{ *)?id:[ \t]+("[^"\n]*"|'[^'\n]*'|[^,}\n]+)/gm);
    }
  }
  return { pairs: [...names.pairs], birds: [...names.birds], housings: [...housings], species: [...species] };
}

/** A scalar without its quotes or the comment behind it. */
function unquoted(text: string): string {
  const bare = text.trim();
  const quoted = /^(["'])(.*?)\1/.exec(bare);
  return quoted === null ? (bare.split(/\s#/, 1)[0] as string).trimEnd() : (quoted[2] as string);
}
