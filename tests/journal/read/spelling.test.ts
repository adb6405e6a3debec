import { describe, expect, it } from 'vitest';
import { read, readLog, seen } from '../reading.ts';

describe('a key that can mean one thing only', () => {
  it('is read as that, whatever its capitals', () => {
    const { entries, found, fixes, said } = readLog('- {Date: 2026-03-02, Laid: 1, NOTE: "first"}');
    expect([found, fixes]).toEqual([['3:6 read-as'], ['write `date`, `laid`, `note`']]);
    expect(said).toEqual(['`Date`, `Laid`, `NOTE` are read as `date`, `laid`, `note`']);
    expect(seen(entries)).toEqual(seen(readLog('- {date: 2026-03-02, laid: 1}').entries));
    expect(entries[0]?.note?.text).toBe('first');
  });

  it('is said once a file', () => {
    const log = [
      '- {Date: 2026-03-02, laid: 1}',
      '- {Date: 2026-03-03, laid: 1}',
      '- {DATE: 2026-03-04, laid: 1}',
    ];
    const { entries, found } = readLog(...log);
    expect(found).toEqual(['3:6 read-as', '5:6 read-as']);
    expect(entries).toHaveLength(3);
  });

  it('but misspelt is an error; where a list stands under it, its entries count all the same', () => {
    const { entries, found, fixes } = read(
      'pair: LW-1\nhousng: flight 2\nlogg:\n  - {date: 2026-03-02, laid: 1}\n',
    );
    expect(found).toEqual(['2:1 unknown-key', '3:1 unknown-key']);
    expect(fixes).toEqual(['did you mean `housing`?', 'did you mean `log`?']);
    expect(entries).toHaveLength(1);
  });

  it.each(['lock', 'cocks', 'LW-1', 'visits'])(
    'over entries is the log, though it is called %s',
    (called) => {
      const { entries, found, fixes } = read(`pair: LW-1\n${called}:\n  - {date: 2026-03-02, laid: 1}\n`);
      expect([found, fixes]).toEqual([['2:1 unknown-key'], ['did you mean `log`?']]);
      expect(entries).toHaveLength(1);
    },
  );

  it('misspelt over a list may be that of the cock or of what was seen, beside others', () => {
    const { journal, found } = read('pair: LW-1\ncok: [LW-20-01]\nlog:\n  - {date: 2026-03-02, laid: 1}\n');
    expect(found).toEqual(['2:1 unknown-key']);
    expect(journal.cock).toMatchObject([{ text: 'LW-20-01' }]);
    const log = readLog('- {Date: 2026-03-02, Laid: 1, fledgd: [c1, c2]}');
    expect([log.found, log.fixes]).toEqual([
      ['3:6 read-as', '3:33 unknown-key'],
      ['write `date`, `laid`', 'did you mean `fledged`?'],
    ]);
    expect(log.entries[0]?.saw.map(({ key }) => key)).toEqual(['laid', 'fledged']);
  });

  it('gives way to ours where both stand', () => {
    const { entries, found } = readLog('- {date: 2026-03-02, Date: 2026-03-05, laid: 1}');
    expect(found).toEqual(['3:24 unknown-key']);
    expect(entries[0]?.date).toBe(readLog('- {date: 2026-03-02, laid: 1}').entries[0]?.date);
  });

  // What keepers call these: common practice.
  it('may be another word for a parent, a housing or the log', () => {
    const { journal, found, entries } = read(
      'Pair: LW-1\nmale: LW-20-01\nFemale: LW-20-11\nnest looks: never\ncage: flight 2\nDiary:\n  - {date: 2026-03-02, laid: 1}\n',
    );
    expect(found.map((one) => one.split(' ')[1])).toEqual(Array(6).fill('read-as'));
    expect(journal).toMatchObject({
      pair: { text: 'LW-1' },
      cock: [{ text: 'LW-20-01' }],
      hen: [{ text: 'LW-20-11' }],
      housing: { text: 'flight 2' },
      nestLooks: 'never',
    });
    expect(entries).toHaveLength(1);
  });

  it('in an entry is no other word, which may mean more than one thing', () => {
    expect(readLog('- {date: 2026-03-02, eggs: 1, checked}').found).toEqual(['3:24 unknown-key']);
  });

  it('may be one of another file, which is told as such', () => {
    expect(readLog('- {date: 2026-03-02, Quarantine: 30, checked}').fixes).toEqual([
      'write `quarantine`',
      '`quarantine` belongs in the log of the bird in birds.yaml',
    ]);
  });
});
