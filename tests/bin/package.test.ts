import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { root } from '../../bin/build/settings.mjs';
import manifest from '../../package.json';

interface Locked {
  packages: Record<
    string,
    { resolved?: string; integrity?: string; hasInstallScript?: boolean; dev?: boolean }
  >;
}

const lock: Locked = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8'));
const installed = Object.entries(lock.packages).filter(([path]) => path !== '');

describe('what a keeper installs', () => {
  const npm = ['pack', '--dry-run', '--json', '--ignore-scripts'];
  const [packed] = JSON.parse(execFileSync('npm', npm, { cwd: root, encoding: 'utf8', stdio: 'pipe' }));
  const paths: string[] = packed.files.map(({ path }: { path: string }) => path);

  it('is the program, its example, its readme and its licences, and nothing else', () => {
    const others = paths.filter(
      (path) =>
        !/^(?:LICENSE|README\.md|THIRD-PARTY\.md|package\.json)$/.test(path) &&
        !/^(?:bin\/(?:nestlog\.js|package\.json)|dist\/(?:early\.cjs|nestlog[\w.-]*))$/.test(path) &&
        !path.startsWith('journals-example/'),
    );
    expect(others).toEqual([]);
    expect(paths).toEqual(expect.arrayContaining(['bin/nestlog.js', 'dist/nestlog.cjs', 'THIRD-PARTY.md']));
  });

  it('brings no further package and runs no script of its own', () => {
    expect(manifest).not.toHaveProperty('dependencies');
    expect(manifest).not.toHaveProperty('optionalDependencies');
    expect(manifest).not.toHaveProperty('peerDependencies');
    expect(Object.keys(manifest.scripts).filter((name) => /^(?:pre|post)?install$/.test(name))).toEqual([]);
    expect(installed.filter(([, { dev }]) => !dev).map(([path]) => path)).toEqual([]);
  });

  it('lists every package that is bundled, with its licence', () => {
    const page = readFileSync(join(root, 'THIRD-PARTY.md'), 'utf8');
    const names = [...page.matchAll(/^## (\S+) \S+\n\n(.+)$/gm)].map(([, name, licence]) => ({
      name,
      licence,
    }));
    expect(names.length).toBeGreaterThan(5);
    for (const { name, licence } of names) {
      expect(installed.map(([path]) => path)).toContainEqual(expect.stringMatching(`node_modules/${name}$`));
      expect(licence).toMatch(/^(?:MIT|ISC|BSD-[23]-Clause|Apache-2\.0)$/);
    }
  });
});

describe('what a contributor installs', () => {
  it('is pinned to exact versions, each with the hash of its content', () => {
    const loose = Object.entries(manifest.devDependencies).filter(
      ([, version]) => !/^\d+\.\d+\.\d+(?:-[\w.]+)?$/.test(version),
    );
    expect(loose).toEqual([]);
    expect(installed.filter(([, { integrity }]) => integrity === undefined)).toEqual([]);
  });

  it('names no host that it comes from', () => {
    expect(installed.filter(([, { resolved }]) => resolved !== undefined)).toEqual([]);
  });

  it('runs a script at its installation in one package only: the compiler’s own', () => {
    const scripted = installed.filter(([, { hasInstallScript }]) => hasInstallScript).map(([path]) => path);
    expect(scripted).toEqual(['node_modules/esbuild']);
  });
});
