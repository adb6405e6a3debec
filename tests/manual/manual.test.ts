import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { commands } from '../../src/commands/index.ts';
import { expectKept } from '../golden.ts';
import { grammarPage } from './grammar.ts';
import { hostilePage } from './hostile.ts';
import { onePairPage } from './one-pair.ts';
import { tablesPage } from './tables.ts';
import { tasksPage } from './tasks.ts';

const root = new URL('../../', import.meta.url);
const page = (path: string) => readFileSync(new URL(path, root), 'utf8');

test('the grammar page says what the reader reads', () => {
  expectKept(new URL('src/manual/grammar.md', root), grammarPage());
});

test('the page of tasks and warnings says what the rules say', () => {
  expectKept(new URL('src/manual/tasks.md', root), tasksPage());
});

test('the page of what was tried to break it has every trial', () => {
  expectKept(new URL('src/manual/hostile-input.md', root), hostilePage());
});

test('the page of tables names every column', () => {
  expectKept(new URL('src/manual/tables.md', root), tablesPage());
});

test('the walk through one brood shows what the program says', () => {
  expectKept(new URL('src/manual/one-pair.md', root), onePairPage());
});

test('the README lists every command with its summary', () => {
  const rows = commands.map(({ name, summary }) => `| \`nestlog ${name}\` | ${summary} |`);
  const table = ['', '| command | tells |', '|---|---|', ...rows, ''].join('\n');
  const list = /(<!-- commands: [^\n]*-->\n)[\s\S]*(<!-- end of commands -->)/;
  expectKept(new URL('README.md', root), page('README.md').replace(list, `$1${table}\n$2`));
});

describe('links', () => {
  const pages = [
    'README.md',
    'DEVELOPERS.md',
    ...readdirSync(new URL('src/manual/', root)).map((name) => `src/manual/${name}`),
    'journals-example/README.md',
  ];

  test.each(pages)('of %s lead somewhere', (path) => {
    const targets = [...page(path).matchAll(/\]\((?!https?:)([^)#\s]+)(?:#[^)]*)?\)/g)].map(
      (match) => match[1] ?? '',
    );
    for (const target of targets) {
      const file = new URL(target, new URL(path, root));
      expect(() => readdirSync(new URL('.', file))).not.toThrow();
      const name = file.pathname.split('/').filter(Boolean).at(-1) ?? '';
      const folder = readdirSync(new URL(target.endsWith('/') ? '..' : '.', file));
      expect(folder, `${path} → ${target}`).toContain(name);
    }
  });
});

test('every path that DEVELOPERS.md names exists', () => {
  const paths = [...page('DEVELOPERS.md').matchAll(/`((?:src|tests|bin)\/[\w./-]*)`/g)].map(
    (match) => match[1] ?? '',
  );
  expect(paths.length).toBeGreaterThan(15);
  for (const path of paths.filter((one) => !/[A-Z]{3,}/.test(one))) {
    const file = new URL(path, root);
    const name = path.split('/').filter(Boolean).at(-1) ?? '';
    expect(readdirSync(new URL(path.endsWith('/') ? '..' : '.', file)), path).toContain(name);
  }
});
