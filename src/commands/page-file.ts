import { basename, dirname, resolve } from 'node:path';
import { shellWord } from '../write/names.ts';
import type { Context, ExitCode } from './context.ts';
import { created, type ForceOption } from './create.ts';
import { UsageError } from './usage-error.ts';

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
  { stdout, stderr, options, json }: Pick<Context<PageOptions>, 'stdout' | 'stderr' | 'options' | 'json'>,
  name: string,
  text: string,
): ExitCode {
  if (json) throw new UsageError('--json prints data and --page writes a page: leave one of them out');
  const [, ending] = /\.([a-z]{3,5})$/i.exec(name) ?? [];
  if (ending !== undefined && !/^x?html?$/i.test(ending)) {
    const meant = `${name.slice(0, -ending.length)}html`;
    throw new UsageError(
      `a page is HTML, to be opened and printed by any browser: --page ${shellWord(meant)}`,
    );
  }
  const file = resolve(name);
  const place = { folder: dirname(file), named: () => name, another: 'name' };
  if (!created({ stderr, options }, [{ path: basename(file), text }], place)) return 1;
  stdout.write(`written: ${name}\n`);
  return 0;
}
