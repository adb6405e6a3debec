import { basename, dirname, resolve } from 'node:path';
import { createFiles } from '../write/new-files.ts';
import type { Context, ExitCode } from './context.ts';

/** What a command that can write a page adds to its options. */
export const pageOptions = [
  { flags: '--page <file>', description: 'write it as a page to look at, print or hand over' },
  { flags: '--force', description: 'replace a file of that name' },
];

export interface PageOptions {
  page?: string;
  force?: boolean;
}

/** Writes a file beside the record, whole or not at all, and says where it is. */
export function writePage(
  { stdout, stderr, options }: Pick<Context<PageOptions>, 'stdout' | 'stderr' | 'options'>,
  name: string,
  text: string,
): ExitCode {
  const file = resolve(name);
  const failure = createFiles(
    dirname(file),
    [{ path: basename(file), text }],
    options.force ? 'replace' : 'refuse',
  );
  if (failure === null) {
    stdout.write(`written: ${name}\n`);
    return 0;
  }
  const more = failure.code === 'EEXIST' ? '; --force replaces it, another name keeps both' : '';
  stderr.write(`nestlog: nothing was written: ${name}: ${failure.reason}${more}\n`);
  return 1;
}
