/** What the files of a room are called. Paths are relative to the room's folder, with `/` on every machine. */

const ENDING = /\.ya?ml$/i;

/** Whether it ends as files of YAML do. */
export function isYaml(path: string): boolean {
  return ENDING.test(path);
}

/** Without its folders and the ending of YAML: the pair or the species, of a file that is named after it. */
export function nameOfFile(path: string): string {
  return path.replace(/^.*[\\/]/, '').replace(ENDING, '');
}

/** The room's settings. */
export function isSettings(path: string): boolean {
  return /^nestlog\.ya?ml$/i.test(path);
}

/** The list of birds. */
export function isBirdList(path: string): boolean {
  return /^birds\.ya?ml$/i.test(path);
}

/** A journal of a pair, in whatever folder below `pairs`. */
export function isJournal(path: string): boolean {
  return path.startsWith('pairs/') && isYaml(path);
}

/** A species profile of the keeper's own. */
export function isProfile(path: string): boolean {
  return path.startsWith('species/') && isYaml(path);
}
