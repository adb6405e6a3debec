import { mkdirSync, mkdtempSync, readdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it, test } from 'vitest';
import { answerFile, keepAnswer, keptAnswer } from '../../src/commands/kept-answer.ts';
import { fingerprint, loadRoom } from '../../src/journal/load.ts';
import { day } from '../rooms.ts';

let home: string;
let room: string;
beforeEach(() => {
  home = mkdtempSync(join(tmpdir(), 'nestlog-answers-'));
  room = join(home, 'room');
  mkdirSync(join(room, 'pairs'), { recursive: true });
  writeFileSync(join(room, 'nestlog.yaml'), 'room: the finch room\n');
  writeFileSync(join(room, 'pairs/lw-1.yaml'), 'pair: LW-1\nlog:\n  - {date: 2026-03-01, laid: 1}\n');
});
afterEach(() => rmSync(home, { recursive: true }));

const today = day('2026-03-02');
const terminal = { isTerminal: false, columns: undefined };
const place = (words = ['due'], environment: Record<string, string> = {}, more = {}) =>
  answerFile({ words, here: room, environment: { HOME: home, ...environment }, ...terminal, ...more }) ?? '';
const answerNow = (when = today, environment: Record<string, string> = { HOME: home }, here = room) =>
  keptAnswer(place(), { environment, here, today: when });

function answered(text = 'a quiet morning\n') {
  const circumstances = { option: undefined, folder: room, today, fingerprint: fingerprint(loadRoom(room)) };
  keepAnswer(place(), { ...circumstances, text });
}

it('comes back as it was while nothing has changed', () => {
  expect(answerNow()).toBeNull();
  answered('two lines\n\nand é\n');
  expect(answerNow()).toBe('two lines\n\nand é\n');
});

describe('nothing is answered from before', () => {
  const changes: Record<string, () => void> = {
    'one letter of a journal': () =>
      writeFileSync(join(room, 'pairs/lw-1.yaml'), 'pair: LW-1\nlog:\n  - {date: 2026-03-01, laid: 2}\n'),
    'a comment': () => writeFileSync(join(room, 'nestlog.yaml'), 'room: the finch room\n#\n'),
    'another journal': () => writeFileSync(join(room, 'pairs/lw-2.yaml'), 'pair: LW-2\nlog:\n'),
    'a bird list': () => writeFileSync(join(room, 'birds.yaml'), 'birds:\n'),
    'an own species': () => {
      mkdirSync(join(room, 'species'));
      writeFileSync(join(room, 'species/a.yaml'), 'species: a\n');
    },
    'a journal that is gone': () => rmSync(join(room, 'pairs/lw-1.yaml')),
    'another name of a journal': () =>
      renameSync(join(room, 'pairs/lw-1.yaml'), join(room, 'pairs/lw-2.yaml')),
    'a journal that cannot be read': () => writeFileSync(join(room, 'pairs/lw-1.yaml'), Buffer.from([0, 1])),
    'a room that is gone': () => rmSync(room, { recursive: true }),
  };
  test.each(Object.keys(changes))('after a change: %s', (kind) => {
    answered();
    changes[kind]?.();
    expect(answerNow()).toBeNull();
  });

  it('on another day', () => {
    answered();
    expect(answerNow(today + 1)).toBeNull();
  });

  it('where the same words mean another room', () => {
    answered();
    const other = join(home, 'other');
    mkdirSync(other);
    writeFileSync(join(other, 'nestlog.yaml'), '');
    expect(answerNow(today, { HOME: home, NESTLOG_JOURNALS: other })).toBeNull();
    expect(answerNow(today, { HOME: home }, other)).toBeNull();
  });
});

describe('calls that may be answered differently', () => {
  const calls: Record<string, string> = {};
  beforeEach(() => {
    Object.assign(calls, {
      usual: place(),
      'other words': place(['due', '--json']),
      'words cut elsewhere': place(['due --json']),
      'other room': place(['due'], { NESTLOG_JOURNALS: '/room' }),
      colour: place(['due'], { FORCE_COLOR: '1' }),
      'no colour': place(['due'], { NO_COLOR: '1' }),
      'dumb terminal': place(['due'], { TERM: 'dumb' }),
      'other width': place(['due'], { COLUMNS: '120' }),
      terminal: place(['due'], {}, { isTerminal: true }),
      window: place(['due'], {}, { columns: 100 }),
      elsewhere: place(['due'], {}, { here: home }),
    });
  });

  it('have files of their own', () => {
    expect(new Set(Object.values(calls)).size).toBe(Object.keys(calls).length);
  });

  it('have none where there is no home', () => {
    expect(answerFile({ words: ['due'], here: room, environment: {}, ...terminal })).toBeUndefined();
  });

  it('do not pile up for ever', () => {
    for (let days = 0; days < 150; days++) {
      keepAnswer(place(['due', '--days', String(days)]), {
        option: undefined,
        folder: room,
        today,
        fingerprint: '',
        text: '',
      });
    }
    expect(readdirSync(dirname(place())).length).toBeLessThanOrEqual(64);
  });
});
