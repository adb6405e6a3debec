import { createHash, randomBytes } from 'node:crypto';
import { readFileSync, renameSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { makeFolders } from './folders.ts';

/** Of text or bytes: what is equal here is equal. */
export function hashOf(content: string | Uint8Array): string {
  return createHash('sha256').update(content).digest('base64');
}

/**
 * What an earlier run kept in a file, or null: a file that is missing, damaged, of another build or not ours at all is
 * simply not used. The file begins with a line that names the program's build and the hash of all that follows.
 *
 * @param file absolute
 * @param build changes whenever the program does
 */
export function kept(file: string, build: string): string | null {
  try {
    const bytes = readFileSync(file);
    const end = bytes.indexOf(0x0a);
    const body = bytes.subarray(end + 1);
    return bytes.toString('latin1', 0, end) === headOf(build, body) ? body.toString('utf8') : null;
  } catch {
    return null;
  }
}

/** Keeps a text for later runs. A folder that cannot be written is no error. */
export function keep(file: string, build: string, text: string): void {
  // Written beside and renamed, so that two runs at once or a crash leave a whole file.
  const beside = `${file}.${randomBytes(6).toString('hex')}`;
  try {
    makeFolders(dirname(file));
    writeFileSync(beside, `${headOf(build, text)}\n${text}`, { mode: 0o600 });
    renameSync(beside, file);
  } catch {
    // Nobody needs to know: the next run does its work once more.
  }
}

function headOf(build: string, body: string | Uint8Array): string {
  return `nestlog ${build} ${hashOf(body)}`;
}
