import { execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
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
  const folder = mkdtempSync(join(tmpdir(), 'nestlog-package-'));
  afterAll(() => rmSync(folder, { recursive: true }));
  const npm = ['pack', '--json', '--ignore-scripts', '--pack-destination', folder];
  const [packed] = JSON.parse(execFileSync('npm', npm, { cwd: root, encoding: 'utf8', stdio: 'pipe' }));
  const paths: string[] = packed.files.map(({ path }: { path: string }) => path);
  execFileSync('tar', ['-xzf', join(folder, packed.filename), '-C', folder]);

  it('is the program, its example, what is to be read and its licences, and nothing else', () => {
    const others = paths.filter(
      (path) =>
        !/^(?:LICENSE|README\.md|THIRD-PARTY\.md|package\.json)$/.test(path) &&
        !/^(?:bin\/(?:nestlog\.js|load\.js|package\.json)|dist\/(?:early\.cjs|nestlog[\w.-]*))$/.test(path) &&
        !/^(?:journals-example\/|src\/manual\/[\w-]+\.md$)/.test(path),
    );
    expect(others).toEqual([]);
  });

  it('shows the morning of the example room, wherever it was unpacked', () => {
    const due = ['due', '--date', '2026-05-17', '--no-cache', '--journals', 'journals-example'];
    const run = (cwd: string) =>
      execFileSync(process.execPath, [join(cwd, 'bin/nestlog.js'), ...due], { cwd, encoding: 'utf8' });
    expect(run(join(folder, 'package'))).toBe(run(root));
  });

  it('has every page that its readme and its manual send a keeper to', () => {
    const pages = paths.filter((path) => path.endsWith('.md') && path !== 'THIRD-PARTY.md');
    const links = pages.flatMap((page) => {
      const text = readFileSync(join(root, page), 'utf8');
      return [...text.matchAll(/\]\(([^)#:]+)(?:#[^)]*)?\)/g)].map(([, to]) =>
        join(dirname(page), String(to)),
      );
    });
    expect(links.length).toBeGreaterThan(20);
    const there = (link: string) => existsSync(join(folder, 'package', link));
    // Who works on the program has all of it, not what is installed.
    expect([...new Set(links)].filter((link) => !there(link))).toEqual(['DEVELOPERS.md']);
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
