import { build } from 'esbuild';
import { expect, test } from 'vitest';
import { settings } from '../../bin/build/settings.mjs';

test('the program that gives a kept answer again has no library and no grammar to load', async () => {
  const { metafile } = await build({
    ...settings,
    define: { NESTLOG_BUILD: '""' },
    entryPoints: ['src/cli/early.ts'],
    outfile: 'dist/early.cjs',
    write: false,
    metafile: true,
  });
  const bundle = Object.values(metafile.outputs).find(({ entryPoint }) => entryPoint !== undefined);
  const used = Object.entries(bundle?.inputs ?? {}).filter(([, { bytesInOutput }]) => bytesInOutput > 0);
  const loaded = used.map(([path]) => path);
  expect(loaded).toContain('src/journal/load.ts');
  expect(loaded.filter((path) => /node_modules|grammar|observations/.test(path))).toEqual([]);
});
