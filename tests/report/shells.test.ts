import { spawnSync } from 'node:child_process';
import { chmodSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { shellScript } from '../../src/report/shells.ts';

const folder = mkdtempSync(join(tmpdir(), 'nestlog-shells-'));
afterAll(() => rmSync(folder, { recursive: true }));

/** A program in the place of nestlog: says with which words it was asked, and offers some. */
beforeAll(() => {
  const answers: Record<string, string> = {
    'due --pair L': 'LW-1\nLW-2',
    'due --pair=L': '--pair=LW-1\n--pair=LW-2',
    'species lav': 'lavender waxbill\tkept here',
    'record LW-1 nest=l': 'nest=lined\tstate of the nest',
    'record LW-1 la': 'laid=\teggs new in the nest',
    'import ': ':files',
  };
  const cases = Object.entries(answers).map(([words, said]) => `'${words}') printf '%s\\n' '${said}' ;;`);
  const script = `#!/bin/bash\nshift 3\ncase "$*" in\n${cases.join('\n')}\nesac\n`;
  writeFileSync(join(folder, 'nestlog'), script);
  chmodSync(join(folder, 'nestlog'), 0o755);
  for (const shell of ['bash', 'zsh', 'fish'] as const)
    writeFileSync(join(folder, shell), shellScript(shell));
});

function ask(shell: string, script: string) {
  const { stdout, stderr, error } = spawnSync(shell, [...(shell === 'zsh' ? ['-f'] : []), '-c', script], {
    cwd: folder,
    encoding: 'utf8',
    env: { PATH: `${folder}:${process.env.PATH}`, HOME: folder },
  });
  return error === undefined ? `${stdout}${stderr}`.trim() : null;
}

const installed = (shell: string) => spawnSync(shell, ['--version']).error === undefined;

describe.skipIf(!installed('bash'))('bash', () => {
  const offered = (...words: string[]) =>
    ask(
      'bash',
      `source ./bash
       compopt() { echo "compopt $*"; }
       COMP_WORDS=(nestlog ${words.map((word) => `'${word}'`).join(' ')}); COMP_CWORD=${words.length}
       _nestlog; printf '%s\\n' "\${COMPREPLY[@]}"`,
    );

  test('offers what nestlog says', () => expect(offered('due', '--pair', 'L')).toBe('LW-1\nLW-2'));

  test('puts words behind = alone, as bash takes a word apart there', () => {
    expect(offered('due', '--pair', '=', 'L')).toBe('LW-1\nLW-2');
    expect(offered('record', 'LW-1', 'nest', '=', 'l')).toBe('lined');
  });

  test('quotes a blank', () => expect(offered('species', 'lav')).toBe('lavender\\ waxbill'));

  test('goes on behind = without a blank', () => {
    expect(offered('record', 'LW-1', 'la')).toBe('compopt -o nospace\nlaid=');
  });

  test('leaves files to bash', () => expect(offered('import', '')).toBe('compopt -o default'));
});

describe.skipIf(!installed('zsh'))('zsh', () => {
  const offered = (...words: string[]) =>
    ask(
      'zsh',
      `compdef() { :; }
       source ./zsh
       compadd() { local list=\${@[-1]}; print -r -- "\${@[1,-2]}"; print -rl -- "\${(@P)list}"; }
       _files() { print files; }
       words=(nestlog ${words.map((word) => `'${word}'`).join(' ')}); CURRENT=${words.length + 1}
       _nestlog`,
    );

  test('offers what nestlog says, with what it means', () => {
    expect(offered('due', '--pair', 'L')).toBe('-l -d shown -a\nLW-1\nLW-2');
    expect(offered('species', 'lav')).toBe('-l -d shown -a\nlavender waxbill');
  });

  test('goes on behind = without a blank', () => {
    expect(offered('record', 'LW-1', 'la')).toBe('-S  -l -d openshown -a\nlaid=');
  });

  test('leaves files to zsh', () => expect(offered('import', '')).toBe('files'));
});

describe.skipIf(!installed('fish'))('fish', () => {
  const offered = (line: string) => ask('fish', `source ./fish; complete -C '${line}'`);

  test('offers what nestlog says, with what it means', () => {
    expect(offered('nestlog due --pair L')).toBe('LW-1\nLW-2');
    expect(offered('nestlog species lav')).toBe('lavender waxbill\tkept here');
  });

  test('leaves files to fish', () => expect(offered('nestlog import ')).toContain('bash'));
});
