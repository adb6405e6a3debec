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

it('keeps the keys that can be read', () => {
  const { root, findings } = readTree('a.yaml', 'a: 1\nb: [\nc: 3\n', {});
  expect(root?.pairs.map(([key]) => key.text)).toEqual(['a', 'c']);
  expect(findings).toHaveLength(1);
});
