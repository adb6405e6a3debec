import { basename, dirname, resolve } from 'node:path';
import type { Context, ExitCode } from './context.ts';
import { created, type ForceOption } from './create.ts';

/** What a command that can write a page adds to its options. */
export const pageOptions = [
  { flags: '--page <file>', description: 'write it as a page to look at, print or hand over' },
  { flags: '--force', description: 'replace a file of that name' },
];

export interface PageOptions extends ForceOption {
  page?: string;
}

/** Writes a file beside the record, whole or not at all, and says where it is. */
export function writePage(
  { stdout, stderr, options }: Pick<Context<PageOptions>, 'stdout' | 'stderr' | 'options'>,
  name: string,
  text: string,
): ExitCode {
  const file = resolve(name);
  const place = { folder: dirname(file), named: () => name, another: 'name' };
  if (!created({ stderr, options }, [{ path: basename(file), text }], place)) return 1;
  stdout.write(`written: ${name}\n`);
  return 0;
}
