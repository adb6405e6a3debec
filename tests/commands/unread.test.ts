import { expect, it } from 'vitest';
import { tellUnread } from '../../src/commands/unread.ts';
import { room } from '../rooms.ts';

function told(...lines: string[]): string {
  const said: string[] = [];
  const stderr = { write: (text: string) => void said.push(text), color: false, width: 80 };
  const log = lines.map((line) => `  - {date: 2026-03-01, ${line}}\n`).join('');
  const files = { 'LW-1': `pair: LW-1\nspecies: star finch\nlog:\n${log}` };
  tellUnread({ stderr }, room(files, '2026-03-02'));
  return said.join('');
}

it('what cannot be read is never passed over in silence', () => {
  expect(told('laid: -1')).toBe(
    'nestlog: 1 error in the journals: what that line says may be missing here; `nestlog check` shows more\n',
  );
  expect(told('laid: -1', 'lade: 2')).toMatch(/^nestlog: 2 errors in the journals: what those lines say /);
});

it('a hint is no error, and a sound journal needs no word', () => {
  expect(told('laid: 1', 'laid: 1')).toBe('');
  expect(told('paired')).toBe('');
});
