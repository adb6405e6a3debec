import { describe, expect, it } from 'vitest';
import { read } from './reading.ts';

const LOG = 'log:\n  - {date: 2026-03-01, paired}\n';

describe('a pair’s journal', () => {
  it('says of the pair who, what and where', () => {
    const header =
      'pair: LW-1\nspecies: lavender waxbill\ncock: LW-19-04\nhen: [LW-20-11, LW-20-12]\nhousing: flight 2\nnest-looks: never\n';
    const { journal, found } = read(header + LOG);
    expect(found).toEqual([]);
    expect(journal).toMatchObject({
      file: 'pairs/LW-1.yaml',
      pair: { text: 'LW-1', at: { line: 1, column: 7, length: 4 } },
      species: { text: 'lavender waxbill' },
      cock: [{ text: 'LW-19-04' }],
      hen: [{ text: 'LW-20-11' }, { text: 'LW-20-12', at: { line: 4, column: 17 } }],
      housing: { text: 'flight 2' },
      nestLooks: 'never',
    });
  });

  it('may know little of it', () => {
    expect(read(`pair: LW-1\n${LOG}`)).toMatchObject({
      found: [],
      journal: { species: null, cock: [], hen: [], housing: null, nestLooks: null },
    });
  });

  it('without a pair is taken for the one of its file', () => {
    const { journal, found, fixes } = read(`species: canary\n${LOG}`, 'pairs/2026/LW-7.yaml');
    expect(found).toEqual(['1:1 no-pair']);
    expect(fixes).toEqual(['begin it with:\npair: LW-7']);
    expect(journal.pair.text).toBe('LW-7');
    expect(journal.entries).toHaveLength(1);
  });

  it('with an id that would be taken for something else still counts', () => {
    const { journal, found } = read(`pair: 3\n${LOG}`);
    expect(found).toEqual(['1:7 bad-name']);
    expect(journal).toMatchObject({ pair: { text: 'LW-1' }, entries: [{}] });
  });

  it('without a log is a hint that shows how one begins', () => {
    const { found, fixes } = read('pair: LW-1\n');
    expect(found).toEqual(['1:1 no-log']);
    expect(fixes[0]).toMatch(/^add:\nlog:\n- \{date/);
  });
});
