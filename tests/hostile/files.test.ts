import { execFileSync } from 'node:child_process';
import { mkdirSync, symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { hostileRoom, journal, UNSEEN } from './room.ts';

/** Of each finding the place and the words, without the excerpt and the fix. */
const places = (text: string) => text.match(/^\S+\.yaml:\d+:\d+(?=: (?:error|hint))/gm) ?? [];

const nested = (open: string, close: string, times: number) => `${open.repeat(times)}x${close.repeat(times)}`;

const unreadable: Record<string, string | Uint8Array> = {
  'never closed': `${journal('X-1')}  - {date: 2026-05-01, laid: [1\n`,
  'braces alone': '{{{{{{{\n]]]\n',
  'an anchor bomb': `a: &a [x, x]\nb: &b [*a, *a]\nc: [*b, *b]\n`,
  'far too deep': journal('X-1', `{date: 2026-05-01, laid: ${nested('[', ']', 5000)}}`),
  'one endless line': journal('X-1', `{date: 2026-05-01, note: "${'x'.repeat(200_000)}"}`),
  'no text': Uint8Array.from({ length: 4000 }, (_, at) => (at * 7919) % 256),
  empty: '',
  'UTF-16': Buffer.from(`\ufeff${journal('X-1')}`, 'utf16le'),
  'a list': '- a\n- b\n',
};

it.each(Object.entries(unreadable))(
  '%s: one file is named, and the sound pair keeps its morning',
  (_, text) => {
    const { nestlog } = hostileRoom({ 'pairs/x.yaml': text });
    const check = nestlog('check');
    expect([check.status, check.stderr]).toEqual([1, '']);
    expect(places(check.stdout).every((place) => place.startsWith('pairs/x.yaml:'))).toBe(true);
    expect(places(check.stdout)).not.toEqual([]);
    const due = nestlog('due');
    expect([due.status, due.stderr]).toEqual([0, '']);
    expect(due.stdout).toMatch(/hatching expected +OK-1/);
  },
);

it('what is no file at all is named: a folder, a pipe, links to nothing and to themselves', () => {
  const { folder, nestlog } = hostileRoom({});
  const at = (name: string) => join(folder, 'pairs', name);
  mkdirSync(join(folder, 'birds.yaml'));
  execFileSync('/usr/bin/env', ['mkfifo', at('pipe.yaml')]);
  symlinkSync('/nowhere/at-all', at('nothing.yaml'));
  symlinkSync(at('self.yaml'), at('self.yaml'));
  symlinkSync('.', at('loop'));
  const { status, stdout, stderr } = nestlog('check');
  expect([status, stderr]).toEqual([1, '']);
  for (const name of ['birds.yaml', 'pairs/pipe.yaml', 'pairs/nothing.yaml', 'pairs/self.yaml', 'pairs/loop'])
    expect(stdout).toContain(`${name}:1:1: error: this`);
  expect(nestlog('due').stdout).toMatch(/hatching expected +OK-1/);
});

it('nothing a journal holds reaches the terminal as a control', () => {
  const raw = '\x1b[2J\x1b]0;own\x07\u202e\u200b\x9b31m';
  const quoted = JSON.stringify(raw).replace(
    /[^ -~]/g,
    (sign) => `\\u${`000${sign.charCodeAt(0).toString(16)}`.slice(-4)}`,
  );
  const { nestlog } = hostileRoom({
    'nestlog.yaml': `room: ${quoted}\nroutines:\n  - {name: ${quoted}, every: 1, say: ${quoted}}\n`,
    'birds.yaml': `birds:\n  - {id: ${quoted}, ring: ${quoted}, species: ${quoted}, origin: ${quoted}}\n`,
    'species/a.yaml': `species: ${quoted}\nincubation: {range: 12-14, source: ${quoted}}\n`,
    'pairs/x.yaml': `pair: ${raw}\nspecies: ${raw}\ncock: ${raw}\nhousing: ${raw}\n${raw}: x\nlog:\n  - {date: 2026-05-01, laid: 3, sitting, note: ${quoted}}\n`,
    'pairs/y.yaml': journal(
      'Y-1',
      '{date: 2026-05-02, laid: 2}',
      `{date: 2026-05-16, unwell: {hen: ${quoted}}}`,
    ),
  });
  for (const words of [
    ['check'],
    ['due'],
    ['stock'],
    ['match'],
    ['season'],
    ['species', '--kept'],
    ['pair', 'Y-1'],
  ]) {
    const { stdout, stderr } = nestlog(...words);
    expect(stderr).toBe('');
    expect(UNSEEN.exec(stdout)).toBeNull();
  }
});
