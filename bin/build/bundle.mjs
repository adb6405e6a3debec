/**
 * The build: `src/cli.ts` and all it needs as one CommonJS file, `dist/nestlog.cjs`, the small one that answers
 * what has not changed, and the licences of what they contain. In one file `import()` still evaluates a command's modules only when it is called.
 */
import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'esbuild';
import { inAscii } from './ascii.mjs';
import { writeCodeCache } from './code-cache.mjs';
import { root, settings } from './settings.mjs';
import { packageFolders, thirdPartyPage } from './third-party.mjs';

const define = { NESTLOG_BUILD: JSON.stringify(sourcesHash()) };
const { metafile } = await build({
  ...settings,
  define,
  entryPoints: ['src/cli.ts'],
  outfile: 'dist/nestlog.cjs',
  metafile: true,
});

await build({ ...settings, define, entryPoints: ['src/cli/early.ts'], outfile: 'dist/early.cjs' });

for (const name of ['nestlog.cjs', 'early.cjs']) {
  const program = join(root, 'dist', name);
  writeFileSync(program, inAscii(readFileSync(program, 'utf8')));
}

const page = thirdPartyPage(packageFolders(Object.keys(metafile.inputs)).map((folder) => join(root, folder)));
const file = join(root, 'THIRD-PARTY.md');
if (!existsSync(file) || readFileSync(file, 'utf8') !== page) writeFileSync(file, page);

writeCodeCache(join(root, 'dist/nestlog.cjs'));

/** A hash of all that the program is made of: what an earlier program has read is not taken for what this one would. */
function sourcesHash() {
  const hash = createHash('sha256').update(readFileSync(join(root, 'package-lock.json')));
  for (const path of readdirSync(join(root, 'src'), { recursive: true, encoding: 'utf8' }).sort()) {
    if (/\.(?:tsx?|yaml)$/.test(path)) hash.update(path).update(readFileSync(join(root, 'src', path)));
  }
  return hash.digest('hex').slice(0, 16);
}
