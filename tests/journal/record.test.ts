import { describe, expect, it } from 'vitest';
import { parseDay } from '../../src/days.ts';
import { readFile, readRoom, type SourceFile } from '../../src/journal/record.ts';

const day = parseDay('2026-05-17') as number;

function room(files: Record<string, string>, ...more: SourceFile[]) {
  const record = readRoom([...Object.entries(files).map(([path, text]) => ({ path, text })), ...more], {
    day,
    today: day,
  });
  return { ...record, found: record.findings.map(({ code, at }) => `${at.file}:${at.line} ${code}`) };
}

const LOG = 'log:\n  - {date: 2026-03-01, paired}\n';

describe('a room', () => {
  it('is all of its files', () => {
    const { settings, birds, ownSpecies, pairs, sources, found } = room({
      'nestlog.yaml': 'room: mine\n',
      'birds.yaml': 'birds: [{id: A}]\n',
      'species/blue-finch.yaml': 'incubation: 13\n',
      'pairs/a.yaml': `pair: A-1\n${LOG}`,
      'pairs/old/b.yml': `pair: B-1\n${LOG}`,
    });
    expect(found).toEqual([]);
    expect([settings.room, birds.length, ownSpecies.length]).toEqual(['mine', 1, 1]);
    expect(pairs.map(({ pair }) => pair.text)).toEqual(['A-1', 'B-1']);
    expect(sources.get('pairs/a.yaml')).toBe(`pair: A-1\n${LOG}`);
  });

  it('keeps of each file the text in which the lines of its findings are counted', () => {
    const text = `pair: A-1\nx: 1\n${LOG}`;
    const { sources, findings } = room({
      'pairs/a.yaml': `\ufeff${text.replaceAll('\n', '\r')}`,
      'pairs/b.yaml': text.replaceAll('\n', '\r\n'),
    });
    expect(findings.map(({ at }) => [at.file, at.line, at.column])).toEqual([
      ['pairs/a.yaml', 2, 1],
      ['pairs/b.yaml', 2, 1],
    ]);
    expect(sources.get('pairs/a.yaml')).toBe(text);
    expect(sources.get('pairs/b.yaml')?.split('\r\n')[1]).toBe('x: 1');
    expect(sources.get('pairs/c.yaml')).toBeUndefined();
  });

  it('may have nothing in it', () => {
    expect(room({})).toMatchObject({ found: [], pairs: [], settings: { ringing: true } });
    expect(room({ 'nestlog.yaml': '' }).found).toEqual([]);
  });

  it('misses the birds of a file that was emptied', () => {
    expect(room({ 'birds.yaml': '' }).found).toEqual(['birds.yaml:1 empty-file']);
    expect(room({ 'birds.yaml': '# none yet\nbirds:\n' }).found).toEqual([]);
  });

  it('reads every other journal when one is broken', () => {
    const { pairs, found } = room(
      { 'pairs/a.yaml': '', 'pairs/b.yaml': '[[[', 'pairs/c.yaml': `pair: C-1\n${LOG}` },
      { path: 'pairs/d.yaml', problem: 'unreadable', detail: 'permission denied' },
      { path: 'pairs/e.yaml', problem: 'binary', detail: '' },
      { path: 'pairs/f.yaml', problem: 'too-large', detail: '50 MB' },
      { path: 'pairs/g', problem: 'loop', detail: '' },
    );
    expect(pairs.map(({ pair }) => pair.text)).toEqual(['C-1']);
    expect(found).toEqual([
      'pairs/a.yaml:1 empty-file',
      'pairs/b.yaml:1 unreadable-lines',
      'pairs/d.yaml:1 file-unreadable',
      'pairs/e.yaml:1 file-binary',
      'pairs/f.yaml:1 file-too-large',
      'pairs/g:1 file-loop',
    ]);
  });

  it('has its findings in the order of files, lines and columns', () => {
    const { found } = room({
      'pairs/b.yaml': `pair: B-1\nx: 1\n${LOG}`,
      'pairs/a.yaml':
        'pair: A-1\nlog:\n  - {date: 2027-01-01, paired}\n  - {date: 2026-03-01, laid: 0, x: 1}\n',
    });
    expect(found).toEqual([
      'pairs/a.yaml:3 future-date',
      'pairs/a.yaml:4 zero-count',
      'pairs/a.yaml:4 unknown-key',
      'pairs/b.yaml:2 unknown-key',
    ]);
  });

  it('knows days that have not come, in every log', () => {
    const log = 'log: [{date: 2026-05-18, note: "x"}]';
    const { found } = room({
      'nestlog.yaml': log,
      'birds.yaml': `birds: [{id: A, ${log}}]`,
      'pairs/a.yaml': `pair: A-1\n${log}`,
    });
    expect(found).toEqual([
      'birds.yaml:1 future-date',
      'nestlog.yaml:1 future-date',
      'pairs/a.yaml:2 future-date',
    ]);
  });

  it('points at a journal that lies where nobody reads it', () => {
    expect(room({ 'LW-1.yaml': `pair: LW-1\n${LOG}`, 'shopping.yaml': 'seed: 2 kg\n' }).found).toEqual([
      'LW-1.yaml:1 stray-journal',
    ]);
  });

  it('points at what an editor saved under another name, and says where it belongs', () => {
    const { findings, pairs } = room({
      'pairs/old/LW-2.yaml.txt': `pair: LW-2\n${LOG}`,
      'bird.yaml': 'birds:\n  - {id: A}\n',
      'Species/star-finch.yaml': 'species: star finch\nincubation: 13\n',
    });
    expect(findings.map(({ code, args }) => [code, args.to])).toEqual([
      ['stray-journal', 'birds.yaml'],
      ['stray-journal', 'pairs/old/LW-2.yaml'],
      ['stray-journal', 'species/star-finch.yaml'],
    ]);
    expect(pairs).toEqual([]);
  });

  it('has one file of settings', () => {
    const { settings, found } = room({ 'nestlog.yaml': 'room: a\n', 'nestlog.yml': 'room: b\n' });
    expect(settings.room).toBe('a');
    expect(found).toEqual(['nestlog.yml:1 second-settings']);
  });
});

describe('what a file says', () => {
  it('depends on its path and text alone', () => {
    const text = 'pair: A-1\nlog:\n  - {date: 2999-01-01, paired}\n';
    expect(readFile('pairs/a.yaml', text)).toEqual(readFile('pairs/a.yaml', text));
    expect(readFile('pairs/a.yaml', text).findings).toEqual([]);
  });
});
