import { expect, it } from 'vitest';
import { untold } from '../../src/journal/untold.ts';
import { record } from '../rooms.ts';

const log = (...entries: string[]) =>
  record(
    { 'LW-1': `pair: LW-1\nlog:\n${entries.map((entry) => `  - {${entry}}\n`).join('')}` },
    '2026-03-31',
  );
const told = (known: ReturnType<typeof log>) => [...(untold(known).pairs[0]?.entries ?? [])];
const texts = (known: ReturnType<typeof log>) => JSON.stringify(told(known));

it('what is private is not told, and a note is none', () => {
  const known = log(
    'date: 2026-03-01, laid: 1, site: "private: behind the safe", note: "private: hush"',
    'date: 2026-03-02, note: "fed greens"',
  );
  expect(texts(known)).not.toMatch(/behind the safe|hush/);
  expect(texts(known)).toContain('fed greens');
  const [first] = told(known);
  expect([first?.site?.text, first?.note]).toEqual(['not told', null]);
});

it('whom a bird chases is text of the keeper, and private where it says so', () => {
  const known = log('date: 2026-03-01, chasing: {by: cock, at: "private: the hen next door"}');
  expect(texts(known)).not.toMatch(/next door/);
});

it('two nests in two private places are still two', () => {
  const sites = ['oak', 'safe', 'oak'].map(
    (place, i) => `date: 2026-03-0${i + 1}, site: "private: ${place}", laid: 1`,
  );
  expect(told(log(...sites)).map(({ site }) => site?.text)).toEqual(['not told', 'not told 2', 'not told']);
});

it('all else is as it was written, and the record itself is not changed', () => {
  const known = log(
    'date: 2026-03-01, laid: 2',
    'date: 2026-03-09, candled: {fertile: e1}, note: "a private joke"',
  );
  expect(told(known)).toEqual([...(known.pairs[0]?.entries ?? [])]);
  expect({ ...untold(known), pairs: [] }).toEqual({ ...known, pairs: [] });
  const secret = log('date: 2026-03-01, laid: 1, note: "private: hush"');
  untold(secret);
  expect([...(secret.pairs[0]?.entries ?? [])][0]?.note?.text).toBe('private: hush');
});
