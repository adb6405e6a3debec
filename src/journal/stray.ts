/** What a file that nobody reads seems to be, and where in the room it would be read. */
export interface Stray {
  looks: string;
  to: string;
}

/** Folders of a room, and how they are misspelt. A list, as the kept morning is answered without what tells likeness. */
const FOLDERS = ['pairs', 'species'];
const ALMOST = /^(?:pairs?|paris|journals?|species?|birds?)$/i;

/** An editor that knows no YAML adds its own ending, or leaves out any. */
const OTHER_ENDING = /^[^.]+$|\.te?xt$|\.ya?ml\.[^.]+$/i;
/** What editors and git leave beside a file, of one that is read under its own name. */
const BACKUP = /\.(?:ba?k|backup|copy|old|orig|rej|save?|te?mp|\d+)$/i;

/** A phone begins lines with a capital. Such a word alone also heads a paragraph; what follows it must be ours. */
const ENTRIES = /^log:(?:[^\S\n]*(?:#.*)?\n)+[^\S\n]*- \{? ?date:/im;
const JOURNAL = /^pair:/m;
const BIRDS = /^birds:[^\S\n]*(?:#.*)?\n|^[Bb]irds:\s+(?:- |\[)\{? ?[Ii]d:/m;
const PROFILE = /^(?:incubation|fledging|independence|laying-interval|adult-mass):/m;

const LOOKS = { journal: 'a pair’s journal', birds: 'a list of birds', profile: 'a species profile' };

/** Whether a file of this name may be one of the room's that was saved under a wrong ending. */
export function mayBeMisnamed(name: string): boolean {
  return OTHER_ENDING.test(name) && !BACKUP.test(name);
}

/** Whether a folder's name seems to be a slip for one of the room's. */
export function isAlmostOurs(folder: string): boolean {
  return !FOLDERS.includes(folder) && ALMOST.test(folder);
}

/** Of a file whose name or folder is none of a room's: what its text seems to be; null where it seems to be none of ours. */
export function strayOf(path: string, written: string): Stray | null {
  const text = written.replace(/^\ufeff/, '').replace(/\r\n?/g, '\n');
  const name = path.replace(/^.*\//, '').replace(/(?:\.ya?ml)?\.[^.]*$/i, '');
  if (JOURNAL.test(text) || ENTRIES.test(text)) {
    const below = path.startsWith('pairs/') ? path.slice(0, path.lastIndexOf('/') + 1) : 'pairs/';
    return { looks: LOOKS.journal, to: `${below}${name}.yaml` };
  }
  if (BIRDS.test(text)) return { looks: LOOKS.birds, to: 'birds.yaml' };
  if (/^species:/m.test(text) && PROFILE.test(text))
    return { looks: LOOKS.profile, to: `species/${name}.yaml` };
  return null;
}

/** Of a file in one of the room's folders that holds what belongs elsewhere: what it seems to be; else null. */
export function misplacedOf(path: string, text: string): Stray | null {
  const here = path.startsWith('species/') ? LOOKS.profile : LOOKS.journal;
  const stray = strayOf(path, text);
  return stray === null || stray.looks === here ? null : stray;
}
