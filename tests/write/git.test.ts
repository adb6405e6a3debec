/** What `.gitattributes` says of journals, held against git itself. */
import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { readFile } from '../../src/journal/record.ts';
import { roomFiles } from '../../src/write/start/room.ts';
import { workshop } from './workshop.ts';

const { scratch } = workshop();

const PATH = 'pairs/LW-1.yaml';
const HEAD = 'pair: LW-1\nhousing: cage 1\nlog:\n';
const BASE = ['{date: 2026-03-01, clutch: 1, laid: 1}', '{date: 2026-03-02, laid: 1}'];
const written = (entries: string[], head = HEAD) =>
  `${head}${entries.map((entry) => `  - ${entry}\n`).join('')}`;

/** Two branches change the journal of a room that was begun with git in mind, and are merged. */
function merged(base: string, ours: string, theirs: string): string {
  const folder = scratch();
  const git = (...words: string[]) => {
    const who = [
      '-c',
      'user.name=keeper',
      '-c',
      'user.email=keeper@example.org',
      '-c',
      'commit.gpgsign=false',
    ];
    const { status, stdout, stderr } = spawnSync('git', [...who, ...words], {
      cwd: folder,
      encoding: 'utf8',
    });
    expect(status, `git ${words.join(' ')}: ${stdout}${stderr}`).toBe(0);
  };
  const commit = (text: string) => {
    writeFileSync(join(folder, PATH), text);
    git('add', '--all');
    git('commit', '--quiet', '--message', 'entries');
  };
  mkdirSync(join(folder, 'pairs'));
  for (const { path, text } of roomFiles({ name: null, git: true })) writeFileSync(join(folder, path), text);
  git('init', '--quiet', '--initial-branch', 'ours');
  commit(base);
  git('checkout', '--quiet', '-b', 'theirs');
  commit(theirs);
  git('checkout', '--quiet', 'ours');
  commit(ours);
  git('merge', '--quiet', '--no-edit', 'theirs');
  return readFileSync(join(folder, PATH), 'utf8');
}

function read(text: string): { dates: string[]; codes: string[] } {
  const { says, findings } = readFile(PATH, text);
  const dates = [...(says.journal?.entries ?? [])].map(
    ({ dateAt: { line } }) => text.split('\n')[line - 1]?.slice(4) ?? '',
  );
  return { dates, codes: findings.map(({ code }) => code) };
}

describe('two who append to one journal', () => {
  const ours = '{date: 2026-03-04, laid: 1, note: "ours"}';
  const theirs = '{date: 2026-03-03, laid: 1, note: "theirs"}';

  test('keep the lines of both, in whatever order', () => {
    const text = merged(written(BASE), written([...BASE, ours]), written([...BASE, theirs]));
    const { dates, codes } = read(text);
    expect(dates.sort()).toEqual([...BASE, theirs, ours].sort());
    expect(codes).toEqual([]);
  });

  test('so they do where the file has no last line end', () => {
    const cut = (text: string) => text.slice(0, -1);
    const text = merged(cut(written(BASE)), cut(written([...BASE, ours])), cut(written([...BASE, theirs])));
    expect(read(text).dates.sort()).toEqual([...BASE, theirs, ours].sort());
  });

  test('a line that both have counts once', () => {
    const text = merged(
      written(BASE),
      written([...BASE, ours, '{date: 2026-03-05, checked}']),
      written([...BASE, theirs, '{date: 2026-03-05, checked}']),
    );
    expect(read(text).dates.filter((entry) => entry.includes('checked'))).toHaveLength(1);
  });
});

describe('where the comment warns', () => {
  test('a corrected line comes back as it was beside what the other wrote next to it', () => {
    const corrected = '{date: 2026-03-02, laid: 2}';
    const text = merged(
      written(BASE),
      written([BASE[0] as string, corrected]),
      written([...BASE, '{date: 2026-03-03, laid: 1}']),
    );
    expect(text).toContain(corrected);
    expect(text).toContain(`- ${BASE[1]}`);
  });

  test('a line at the top that both change is there twice, and check says so', () => {
    const head = (housing: string) => written(BASE, HEAD.replace('cage 1', housing));
    expect(read(merged(written(BASE), head('cage 2'), head('cage 3'))).codes).toEqual(['duplicate-key']);
  });
});
