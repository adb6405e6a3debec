import { describe, expect, it } from 'vitest';
import { parseDay } from '../../../src/days.ts';
import { read, readLog, seen } from '../reading.ts';

describe('an entry', () => {
  it('says when, where and which clutch', () => {
    const line =
      '- {date: 2026-03-02, time: 07:30, after: 2026-03-01 18:00, clutch: 2, site: gorse, laid: 1, note: "third"}';
    const { entries, found } = readLog(line);
    expect(found).toEqual([]);
    expect(entries[0]).toMatchObject({
      at: { line: 3, column: 5, length: line.length - 2 },
      date: parseDay('2026-03-02'),
      dateAt: { column: 12, length: 10 },
      time: 450,
      after: { day: parseDay('2026-03-01'), time: 1080 },
      clutch: { number: 2, at: { column: 70, length: 1 } },
      site: { text: 'gorse' },
      note: { text: 'third' },
    });
  });

  it('may hold any number of observations, in the order they stand', () => {
    const { entries } = readLog('- {date: 2026-03-02, sitting: hen, laid: 1, nest: lined}');
    expect(entries[0]?.saw.map(({ key }) => key)).toEqual(['sitting', 'laid', 'nest']);
  });

  it.each([
    ['2026-02-28', { day: parseDay('2026-02-28'), time: null }],
    ['2026-02-28 7:05', { day: parseDay('2026-02-28'), time: 425 }],
    ['06:00', { day: parseDay('2026-03-02'), time: 360 }],
  ])('happened after %s', (after, expected) => {
    expect(readLog(`- {date: 2026-03-02, after: ${after}, laid: 1}`).entries[0]?.after).toEqual(expected);
  });

  it('cannot have happened after a later day, but counts', () => {
    const { entries, found } = readLog('- {date: 2026-03-02, after: 2026-03-03, laid: 1}');
    expect(found).toEqual(['3:31 after-later']);
    expect(entries[0]).toMatchObject({ after: null, saw: [{ key: 'laid' }] });
  });

  it('cannot have happened after a later time of its own day', () => {
    expect(readLog('- {date: 2026-03-02, time: 07:30, after: 08:00, laid: 1}').found).toEqual([
      '3:44 after-later',
    ]);
    expect(readLog('- {date: 2026-03-02, after: 08:00, time: 07:30, laid: 1}').found).toEqual([
      '3:31 after-later',
    ]);
    expect(readLog('- {date: 2026-03-02, time: 07:30, after: 2026-03-01 08:00, laid: 1}').found).toEqual([]);
  });

  it('may have happened after a time of its own day where nobody wrote the time of either', () => {
    for (const said of [
      'after: 2026-03-02',
      'time: 07:30, after: 07:30',
      'after: 08:00',
      'time: 07:30, after: 2026-03-02',
    ]) {
      const { entries, found } = readLog(`- {date: 2026-03-02, ${said}, laid: 1}`);
      expect(found, said).toEqual([]);
      expect(entries[0]?.after?.day, said).toBe(parseDay('2026-03-02'));
    }
    expect(readLog('- {date: 2026-03-02, time: 07:30, after: 07:31, laid: 1}').entries[0]?.after).toBeNull();
  });

  it('may leave the word of a circumstance empty', () => {
    const { entries, found } = readLog('- {date: 2026-03-02, time: , site: , laid: 1}');
    expect(found).toEqual([]);
    expect(entries[0]).toMatchObject({ time: null, site: null, saw: [{ key: 'laid' }] });
  });

  it('with a list for its date is told what a date is', () => {
    const { findings, fixes } = readLog('- {date: [2026], laid: 1}');
    expect(findings[0]?.args).toEqual({ key: 'date', takes: 'a date', example: 'date: 2026-03-01' });
    expect(fixes).toEqual(['such as `date: 2026-03-01`']);
  });

  it.each([
    ['- {laid: 1}', '3:5 no-date'],
    ['- {date: , laid: 1}', '3:6 no-date'],
    ['- {date: [2026], laid: 1}', '3:12 wrong-value'],
    ['- {date: 2026-02-30, laid: -1}', '3:12 impossible-date'],
    ['- {date: 1.3.2026, laid: 1}', '3:12 date-shape'],
    ['- 2026-03-01 laid 1', '3:5 date-as-key'],
    ['- [2026-03-01, laid]', '3:5 not-an-entry'],
    ['-', '3:4 not-an-entry'],
  ])('%s is one finding, and does not count', (line, finding) => {
    const { entries, found } = readLog('- {date: 2026-02-01, paired}', line, '- {date: 2026-03-03, laid: 1}');
    expect(found).toEqual([finding.replace('3:', '4:')]);
    expect(entries).toHaveLength(2);
  });

  it.each([
    ['time: 7.30', 'not-a-time', 'write `07:30`'],
    ['clutch: second', 'not-whole', 'such as `clutch: 2`'],
    ['clutch: 0', 'not-whole', 'such as `clutch: 2`'],
    ['candeled: {clear: e1}', 'unknown-key', 'did you mean `candled`?'],
    ['tme: 07:30', 'unknown-key', 'did you mean `time`?'],
    ['e3', 'comma-in-map', 'write:\n- {date: 2026-03-01, laid: [e1, e3]}'],
  ])('with %s counts without it', (said, code, fix) => {
    const { entries, findings, fixes } = readLog(`- {date: 2026-03-01, laid: e1, ${said}}`);
    expect(findings.map((finding) => finding.code)).toEqual([code]);
    expect(fixes).toEqual([fix]);
    expect(seen(entries)).toHaveLength(1);
    expect(entries[0]).toMatchObject({ time: null, clutch: null });
  });

  it.each([
    ['- {date: 2026-03-01, colour: blue, checked}', 'pairs/LW-1.yaml', /^there are date, time, .*, laid, /],
    ['- {date: 2026-03-01, colour: blue}', 'nestlog.yaml', /^there are date, time, note, done, food$/],
  ])('with a word that nobody knows, `%s`, in %s is told all that there are', (line, path, words) => {
    const { found, fixes } = read(`log:\n  ${line}\n`, path);
    expect(found.filter((one) => one.startsWith('2:'))).toEqual(['2:24 unknown-key']);
    expect(fixes.find((fix) => words.test(fix ?? ''))).toBeDefined();
  });

  it('with an egg that stands alone is told that it would be lost', () => {
    expect(readLog('- {date: 2026-03-01, e3}').said).toEqual([
      '`e3` stands alone behind a comma and would be lost',
    ]);
  });

  it('with a bird that stands alone among sick ones counts for the others, and is told so', () => {
    const { entries, said, fixes } = readLog('- {date: 2026-03-01, unwell: {hen: fluffed, cock}}');
    expect(said).toEqual(['`cock` stands alone behind a comma and would be lost']);
    expect(fixes[0]).not.toContain('"fluffed, cock"');
    expect(seen(entries)).toEqual(seen(readLog('- {date: 2026-03-01, unwell: {hen: fluffed}}').entries));
  });

  it('that says nothing is a hint; one with a note is not', () => {
    expect(readLog('- {date: 2026-03-01}').found).toEqual(['3:5 empty-entry']);
    expect(readLog('- {date: 2026-03-01, time: 07:30, clutch: 1}').found).toEqual(['3:5 empty-entry']);
    expect(readLog('- {date: 2026-03-01, note: "all quiet"}').found).toEqual([]);
  });
});

describe('a box that was ticked', () => {
  it.each(['paired', 'sitting', 'heard', 'checked', 'courting', 'parted', 'reunited', 'chasing'])(
    'with yes says no more than `%s`',
    (key) => {
      const yes = readLog(`- {date: 2026-03-02, ${key}: yes}`);
      expect(yes.found).toEqual([`3:${25 + key.length + 1} said-yes`]);
      expect(seen(yes.entries)).toEqual(seen(readLog(`- {date: 2026-03-02, ${key}}`).entries));
    },
  );

  it.each(['heard', 'courting', 'sitting', 'laid', 'unwell', 'paired', 'moved', 'died'])(
    'with no was not seen, and `%s` does not count',
    (key) => {
      const { entries, found } = readLog(`- {date: 2026-03-02, ${key}: no, checked}`);
      expect(found).toEqual(['3:24 said-no']);
      expect(seen(entries)).toEqual(seen(readLog('- {date: 2026-03-02, checked}').entries));
    },
  );

  it('names no housing', () => {
    expect(readLog('- {date: 2026-03-02, moved: yes}').found).toEqual(['3:31 wrong-value']);
    expect(readLog('- {date: 2026-03-02, moved: {hen: true}}').found).toEqual(['3:37 wrong-value']);
  });
});
