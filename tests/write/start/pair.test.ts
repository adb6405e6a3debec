import { expect, test } from 'vitest';
import { readFile } from '../../../src/journal/record.ts';
import { type NewPair, pairFile } from '../../../src/write/start/pair.ts';
import { day, room } from '../../rooms.ts';

const SAID: NewPair = {
  pair: 'LW-4',
  species: 'lavender waxbill',
  cock: ['LW-19-04'],
  hen: ['LW-20-11'],
  housing: 'flight 2',
};
const start = (said: Partial<NewPair> = {}) => pairFile({ ...SAID, ...said }, day('2026-03-01'));

test('the journal says what was said, without a finding', () => {
  const { path, text } = start();
  expect(path).toBe('pairs/LW-4.yaml');
  const { says, findings } = readFile(path, text);
  expect(findings).toEqual([]);
  const { pair, species, cock, hen, housing, entries } = says.journal ?? expect.unreachable();
  expect([pair.text, species?.text, cock[0]?.text, hen[0]?.text, housing?.text]).toEqual([
    ...['LW-4', 'lavender waxbill', 'LW-19-04', 'LW-20-11', 'flight 2'],
  ]);
  expect(entries).toEqual([]);
});

test('its first line tells an editor where the schema lies', () => {
  expect(start().text).toMatch(/^# yaml-language-server: \$schema=\.\.\/\.nestlog\/pair\.schema\.json\n/);
});

test('what nobody knows is unknown, several are one of these, an unsaid housing is left out', () => {
  const { text } = start({ cock: [], hen: ['A', 'B'], housing: null });
  expect(text).toContain('\ncock: unknown\nhen: [A, B]\nlog:\n');
});

test('names that YAML would take for something else are quoted', () => {
  const said = { pair: 'No: 4', species: '# waxbill', cock: ['a: b'], hen: ["it's"], housing: '- 2' };
  const { path, text } = start(said);
  const { says, findings } = readFile(path, text);
  expect(findings).toEqual([]);
  expect(says.journal).toMatchObject({
    pair: { text: 'No: 4' },
    species: { text: '# waxbill' },
    housing: { text: '- 2' },
  });
  expect(says.journal?.cock.map(({ text: name }) => name)).toEqual(['a: b']);
});

test('the entries that it teaches are a brood that nothing is wrong with', () => {
  const { text } = start();
  const taught = [...text.matchAll(/^#( {3}- \{.*?\})(?: {2,}.*)?$/gm)].map(([, entry]) => entry);
  expect(taught).toHaveLength(7);
  const { findings, pairs } = room({ 'LW-4': `${text}${taught.join('\n')}\n` }, '2026-12-01');
  expect(findings).toEqual([]);
  expect(pairs[0]?.clutches[0]?.chicks).toHaveLength(2);
});
