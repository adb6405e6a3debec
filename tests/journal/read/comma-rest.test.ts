import { describe, expect, it } from 'vitest';
import { kindOf } from '../../../src/findings/codes.ts';
import { readFile } from '../../../src/journal/record.ts';
import { readLog } from '../reading.ts';

/** What is said of a file and the fix, each in one line. */
function fixesIn(path: string, text: string): string[] {
  return readFile(path, text).findings.map((finding) => {
    const fix = kindOf(finding).hint(finding.args) ?? '';
    return `${finding.at.column} ${finding.code}: ${fix.replace(/\n/g, ' ')}`;
  });
}

const inLog = (entry: string) => fixesIn('pairs/LW-1.yaml', `pair: LW-1\nlog:\n  - ${entry}\n`);
const inRoom = (text: string) => fixesIn('nestlog.yaml', text);

describe('what stands alone behind a comma is answered with the whole line that was meant', () => {
  it.each([
    ['two tasks', 'done: calcium, worms', 'done: [calcium, worms]'],
    ['three eggs', 'lost: {clear: e1, e3, e5}', 'lost: {clear: [e1, e3, e5]}'],
    ['an egg behind a list', 'lost: {clear: [e1, e2], e3}', 'lost: {clear: [e1, e2, e3]}'],
    ['a decimal comma', 'weighed: {cock: 8,4}', 'weighed: {cock: 8.4}'],
    ['two figures behind a decimal comma', 'weighed: {cock: 8,45}', 'weighed: {cock: 8.45}'],
    ['two decimal commas', 'weighed: {c1: 4,5, c2: 4,1}', 'weighed: {c1: 4.5, c2: 4.1}'],
    ['words', 'paired: flight 2, the big one', 'paired: "flight 2, the big one"'],
    ['words of a sick bird', 'unwell: {hen: fluffed, straining}', 'unwell: {hen: "fluffed, straining"}'],
  ])('%s', (_, said, meant) => {
    const fixes = inLog(`{date: 2026-03-01, ${said}, note: "so far"}`);
    expect(new Set(fixes.map((fix) => fix.replace(/^\d+ /, '')))).toEqual(
      new Set([`comma-in-map: write: - {date: 2026-03-01, ${meant}, note: "so far"}`]),
    );
    expect(inLog(`{date: 2026-03-01, ${meant}, note: "so far"}`)).toEqual([]);
  });

  it('also in a routine, whose words may hold the name of a key', () => {
    expect(inRoom('routines:\n  - {name: water, every: 1, say: fresh, every morning}\n')).toEqual([
      '41 comma-in-map: write: - {name: water, every: 1, say: "fresh, every morning"}',
    ]);
  });

  it('also in the settings, where their colons are missing', () => {
    const meant = 'write: feeding: {from: 06:00, to: 20:00}';
    expect(inRoom('feeding: {from 06:00, to 20:00}\n')).toEqual([`11 comma-in-map: ${meant}`]);
    expect(inRoom('feeding: {from=06:00, to = 20:00}\nroom: x\n')).toEqual([`11 comma-in-map: ${meant}`]);
  });

  it('and all else that is wrong is still told', () => {
    const { found, fixes } = readLog(
      '- {date: 2026-03-01, time: 7.30, done: calcium, worms}',
      '- {date: 2026-03-02, done: calcium, worms, time: 7.30}',
      '- {date: 2026-03-03, clutch: 0, site: a, b, checked}',
    );
    expect(found).toEqual([
      '3:30 not-a-time',
      '3:51 comma-in-map',
      '4:39 comma-in-map',
      '4:52 not-a-time',
      '5:32 not-whole',
      '5:44 comma-in-map',
    ]);
    expect(fixes[1]).toBe('write:\n- {date: 2026-03-01, time: 7.30, done: [calcium, worms]}');
  });

  it('on another line, too', () => {
    expect(inRoom('feeding: {from 06:00, to 20:00}\nringing: perhaps\nring-lead: x\n')).toEqual([
      '11 comma-in-map: write: feeding: {from: 06:00, to: 20:00}',
      expect.stringMatching(/^10 unknown-word/),
      expect.stringMatching(/^12 not-whole/),
    ]);
  });

  it('where the figure before the comma cannot be, the comma is at fault', () => {
    expect(inRoom('limits: {max-inbreeding: 12,5 %}\n')).toEqual([
      '29 comma-in-map: write: limits: {max-inbreeding: "12.5 %"}',
    ]);
  });

  it('is not guessed where the grammar takes none of it', () => {
    expect(inLog('{date: 2026-03-01, nest: {state: lined, gorse}}')).toEqual([
      expect.stringMatching(/^45 comma-in-map: lists need \[ \]/),
    ]);
    expect(inLog('{date: 2026-03-01, laid: 1, 2}')).toEqual([
      expect.stringMatching(/^33 comma-in-map: lists need/),
    ]);
    expect(inLog('{date: 2026-03-01, unwell: {straining, hen: fluffed}}')).toEqual([
      expect.stringMatching(/^33 comma-in-map: lists need/),
    ]);
  });

  it('is no word of a text where it is a bird', () => {
    expect(inLog('{date: 2026-03-01, treated: as ordered, hen}')).toEqual([
      expect.stringMatching(/^45 comma-in-map: lists need/),
    ]);
    expect(inLog('{date: 2026-03-01, treated: {hen: as ordered, warmth, cock}}')[0]).toContain(
      'treated: {hen: "as ordered, warmth", cock}',
    );
  });

  it('puts nothing into the date, whatever else is not known', () => {
    expect(inLog('{date: 2026-03-01, e3, colour: blue}')).toEqual([
      expect.stringMatching(/^24 comma-in-map: lists need/),
      expect.stringMatching(/^28 unknown-key: there are date, time,/),
    ]);
  });

  it('is not guessed in a line of which a part was refused, as that cannot be written again', () => {
    const { found, fixes } = readLog('- {date: 2026-03-01, done: calcium, worms, laid: *x}');
    expect(found).toEqual(['3:39 comma-in-map', '3:52 yaml-feature']);
    expect(fixes[0]).toMatch(/^lists need/);
  });

  it('a colon alone that is missing is told as before', () => {
    expect(inLog('{date: 2026-03-01, laid 1, sitting hen}')).toEqual([
      '24 unknown-key: did you mean `laid: 1`?',
      '32 unknown-key: did you mean `sitting: hen`?',
    ]);
    expect(inLog('{date: 2026-03-01, hatched; 2, checked; sitting}')).toEqual([
      '24 unknown-key: did you mean `hatched: 2`?',
      '36 unknown-key: did you mean `checked, sitting`?',
    ]);
  });

  it('nor is it missing between what may stand alone: there the comma is', () => {
    expect(inLog('{date: 2026-03-01, paired checked sitting, nest moved, moult done}')).toEqual([
      '24 unknown-key: did you mean `paired, checked, sitting`?',
      '48 unknown-key: did you mean `nest: moved`?',
      '60 unknown-key: did you mean `moult: done`?',
    ]);
  });
});
