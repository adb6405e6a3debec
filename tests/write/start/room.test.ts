import { expect, test } from 'vitest';
import { roomFiles } from '../../../src/write/start/room.ts';
import { record, room } from '../../rooms.ts';

const files = (name: string | null, git = false) =>
  Object.fromEntries(roomFiles({ name, git }).map(({ path, text }) => [path, text]));

test('a new room reads without a finding and has its name', () => {
  const { findings, settings } = record(files('the finch room: upstairs'), '2026-03-01');
  expect(findings).toEqual([]);
  expect(settings.room).toBe('the finch room: upstairs');
});

test('without a name it reads as well', () => {
  const { findings, settings } = record(files(null), '2026-03-01');
  expect(findings).toEqual([]);
  expect(settings.room).toBeNull();
});

test('all that its comments offer can be switched on by taking the # away', () => {
  const offered = Object.fromEntries(
    Object.entries(files('the finch room')).map(([path, text]) => [
      path,
      path === 'birds.yaml'
        ? `birds:\n${[...text.matchAll(/^#( {3}.*)$/gm)].map(([, line]) => line).join('\n')}\n`
        : text.replace(/^# (?=[a-z-]+:| {2}- )(?!yaml-language)/gm, ''),
    ]),
  );
  const { findings, settings, birds } = room(offered, '2026-03-01');
  expect(findings).toEqual([]);
  expect(settings.routines.map(({ name }) => name.text)).toEqual(['calcium', 'dust baths']);
  expect(settings.ringing).toBe(false);
  expect(birds.map(({ id }) => id)).toEqual(['LW-19-04']);
});

test('each file tells an editor where its schema lies', () => {
  const { 'nestlog.yaml': settings, 'birds.yaml': birds } = files('a');
  expect(settings).toMatch(/^# yaml-language-server: \$schema=\.nestlog\/room\.schema\.json\n/);
  expect(birds).toMatch(/^# yaml-language-server: \$schema=\.nestlog\/birds\.schema\.json\n/);
});

test('git is told of the journals on wish only', () => {
  expect(Object.keys(files('a'))).toEqual(['nestlog.yaml', 'birds.yaml']);
  expect(files('a', true)['.gitattributes']).toMatch(/^pairs\/\*\*\/\*\.yaml merge=union$/m);
});
