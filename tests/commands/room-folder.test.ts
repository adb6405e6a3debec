import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { anyFolder, roomFolder } from '../../src/commands/room-folder.ts';
import { UsageError } from '../../src/commands/usage-error.ts';

let base: string;
const at = (...parts: string[]) => join(base, ...parts);
const find = (here: string, option?: string, environment?: string) =>
  roomFolder({ here, option, environment });

beforeEach(() => {
  base = mkdtempSync(join(tmpdir(), 'nestlog-room-'));
  mkdirSync(at('room', 'pairs', 'old'), { recursive: true });
  writeFileSync(at('room', 'nestlog.yaml'), 'room: the back room\n');
  mkdirSync(at('young', 'pairs'), { recursive: true });
  mkdirSync(at('empty'));
});

afterEach(() => rmSync(base, { recursive: true }));

describe('the room', () => {
  it('is what --journals names, from where the keeper stands', () => {
    expect(find(base, 'room', at('young'))).toBe(at('room'));
    expect(find(at('empty'), '../room')).toBe(at('room'));
  });

  it('is what NESTLOG_JOURNALS names, without the option', () => {
    expect(find(at('room'), undefined, at('young'))).toBe(at('young'));
  });

  it('is the nearest folder upwards with nestlog.yaml, when nothing names one', () => {
    expect(find(at('room', 'pairs', 'old'))).toBe(at('room'));
    expect(find(at('room'), undefined, '')).toBe(at('room'));
  });

  it('needs no nestlog.yaml when it is named: each of its files may be missing', () => {
    expect(find(base, 'young')).toBe(at('young'));
  });
});

describe('no room', () => {
  it('is said with what to do about it', () => {
    expect(() => find(at('empty'))).toThrow(UsageError);
    expect(() => find(at('empty'))).toThrow(/--journals or NESTLOG_JOURNALS, or begin one/);
  });

  it('is named where a file or a folder inside of it was given', () => {
    for (const inside of ['room/nestlog.yaml', 'room/pairs', 'room/pairs/LW-1.yaml'])
      expect(() => find(base, inside)).toThrow(`The room's folder is ${at('room')}.`);
  });

  it('is said of a folder without any of a room’s files, and of what is no folder', () => {
    expect(() => find(base, 'empty')).toThrow('empty, named by --journals, has none of nestlog.yaml');
    expect(() => find(base, 'nowhere')).toThrow('--journals names nowhere, which is no folder');
    expect(() => find(base, undefined, 'room/nestlog.yaml')).toThrow(
      'NESTLOG_JOURNALS names room/nestlog.yaml',
    );
  });

  it('is no matter for a command that begins one', () => {
    expect(anyFolder({ here: base, option: 'new', environment: undefined })).toBe(at('new'));
    expect(anyFolder({ here: at('empty'), option: undefined, environment: undefined })).toBe(at('empty'));
    expect(anyFolder({ here: at('room', 'pairs'), option: undefined, environment: undefined })).toBe(
      at('room'),
    );
  });
});
