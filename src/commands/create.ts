import { createFiles, type LongFile, type NewFile } from '../write/new-files.ts';
import type { Context } from './context.ts';

/** Whether files of those names are replaced. */
export interface ForceOption {
  force?: boolean;
}

interface Place {
  /** Absolute. */
  folder: string;
  /** What the keeper calls a file of it. */
  named: (path: string) => string;
  /** What to choose anew where a file is there by now: `name`. */
  another: string;
}

/** Creates files beside the record, all or none; where that fails, says why and what to do. */
export function created(
  { stderr, options }: Pick<Context<ForceOption>, 'stderr' | 'options'>,
  files: readonly (NewFile | LongFile)[],
  { folder, named, another }: Place,
): boolean {
  const failure = createFiles(folder, files, options.force ? 'replace' : 'refuse');
  if (failure === null) return true;
  const { path, reason, code } = failure;
  const more = code === 'EEXIST' ? `; --force replaces it, another ${another} keeps both` : '';
  stderr.write(`nestlog: nothing was written: ${named(path)}: ${reason}${more}\n`);
  return false;
}
