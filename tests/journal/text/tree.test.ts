import { expect, it } from 'vitest';
import { readTree } from '../../../src/journal/text/tree.ts';

const codes = (text: string) => readTree('a.yaml', text, {}).findings.map(({ code }) => code);

it('gives the keys of a file', () => {
  const { root, findings } = readTree('a.yaml', 'species: finch\nclutch: 4-5\n', {});
  expect(root?.pairs.map(([key]) => key.text)).toEqual(['species', 'clutch']);
  expect(findings).toEqual([]);
});

it('has no root for a file with nothing in it', () => {
  for (const text of ['', '\n\n', '# later\n', '---\n', '\ufeff']) {
    expect(readTree('a.yaml', text, {})).toMatchObject({ root: null, findings: [] });
  }
});

it('wants keys with values', () => {
  expect(codes('just words\n')).toEqual(['not-a-mapping']);
  expect(codes('- a\n- b\n')).toEqual(['not-a-mapping']);
  expect(codes('""')).toEqual(['not-a-mapping']);
});

it('takes a list without a key above it for the chief list of such files, and still wants the key', () => {
  const { root, findings } = readTree('a.yaml', '- {date: 2026-03-01}\n', { log: 'entries' });
  expect(root?.pairs.map(([key]) => key.text)).toEqual(['log']);
  expect(findings.map(({ code }) => code)).toEqual(['not-a-mapping']);
  const some = readTree('a.yaml', '- {date: 2026-03-01}\n- quiet\n', { log: 'entries' });
  expect(some.root?.pairs.map(([key]) => key.text)).toEqual(['log']);
});

it('keeps the keys that can be read', () => {
  const { root, findings } = readTree('a.yaml', 'a: 1\nb: [\nc: 3\n', {});
  expect(root?.pairs.map(([key]) => key.text)).toEqual(['a', 'c']);
  expect(findings).toHaveLength(1);
});

it('says one thing, not many, of a file without one key that could be read', () => {
  for (const text of ['"x\n'.repeat(100), '\n"x\n"y\n"z\n"u\n']) {
    const { root, findings } = readTree('pairs/a.yaml', text, {});
    expect(root).toBeNull();
    expect(findings).toEqual([
      {
        code: 'not-a-mapping',
        at: expect.objectContaining({ line: text.startsWith('\n') ? 2 : 1, length: 2 }),
        args: { file: 'pairs/a.yaml' },
      },
    ]);
  }
  // A few lines that cannot be read are named, each at its place.
  expect(
    readTree('pairs/a.yaml', '"x\n"y\n"z\n', {}).findings.map(({ code, at }) => `${at.line} ${code}`),
  ).toEqual(['1 unreadable-lines', '2 unreadable-lines', '3 unreadable-lines']);
});

it('names the file that holds something else than keys', () => {
  expect(readTree('pairs/a.yaml', '- a\n- b\n', {}).findings).toMatchObject([
    { code: 'not-a-mapping', at: { line: 1 }, args: { file: 'pairs/a.yaml' } },
  ]);
});
