import { build } from 'esbuild';
import ICAL from 'ical.js';
import { describe, expect, it } from 'vitest';
import { settings } from '../../bin/build/settings.mjs';
import { run } from '../../src/commands/calendar.ts';
import { commands } from '../../src/commands/index.ts';
import type { Files } from '../rooms.ts';
import { runCommand } from './run.ts';

const room: Files = {
  'nestlog.yaml': `
    room: the finch room
    routines:
      - {name: calcium, after: paired, days: 3, say: calcium in the egg food}
      - {name: worm flights, every: 90, say: worm all flights}
  `,
  'LW-1': `
    pair: LW-1
    species: lavender waxbill
    housing: flight 2
    log:
      - {date: 2026-03-01, clutch: 1, laid: 1}
      - {date: 2026-03-02, laid: 1}
      - {date: 2026-03-03, laid: 1}
      - {date: 2026-03-04, laid: 1, sitting}
  `,
  'DD-1': `
    pair: DD-1
    species: diamond dove
    housing: aviary
    log:
      - {date: 2026-03-08, paired}
  `,
};

async function entries(files: Files, on: string, options = {}) {
  const { text, exit } = await runCommand({ run }, files, {
    on,
    today: '2026-12-31',
    options: { days: 60, ...options },
  });
  expect(exit).toBe(0);
  const events = new ICAL.Component(ICAL.parse(text) as never).getAllSubcomponents('vevent');
  return events.map((one) => {
    const { summary, uid, endDate, description } = new ICAL.Event(one);
    return { summary, uid, to: endDate.toString(), description };
  });
}

describe('nestlog calendar', () => {
  it('has what is late, what is due and what comes, with forecasts that say so', async () => {
    const agenda = await entries(room, '2026-03-09');
    const summaries = agenda.map(({ summary }) => summary);
    expect(summaries).toContain('LW-1: candle the eggs');
    expect(summaries.find((one) => one.includes('hatching'))).toMatch(
      /^LW-1: hatching expected, likely \w{3} \d+ Mar$/,
    );
    const hatch = agenda.find(({ uid }) => uid.startsWith('hatch/'));
    expect(hatch?.description).toMatch(/Why: sitting since 3–4 Mar.*\nRests on: 11–13 d, book\nDone by: /);
  });

  it('has the room’s own routines, of a pair and of the whole room', async () => {
    const summaries = (await entries(room, '2026-03-09')).map(({ summary }) => summary);
    expect(summaries).toContain('DD-1: calcium in the egg food');
    expect(summaries).toContain('the room: worm all flights');
  });

  it('is narrowed as a morning is', async () => {
    const only = await entries(room, '2026-03-09', { pair: 'DD-1' });
    expect(only.map(({ summary }) => summary)).toEqual(['DD-1: calcium in the egg food']);
    await expect(entries(room, '2026-03-09', { pair: 'LW1' })).rejects.toThrow('did you mean `LW-1`?');
    expect(await entries(room, '2026-03-09', { housing: 'flight 2', days: 0 })).toHaveLength(1);
  });

  it('given again after a look keeps the names of what it moves', async () => {
    const before = await entries(room, '2026-03-05', { pair: 'LW-1' });
    const late = {
      ...room,
      'LW-1': `${room['LW-1']?.trimEnd()}\n      - {date: 2026-03-06, laid: 2}\n`,
    };
    const after = await entries(late, '2026-03-06', { pair: 'LW-1' });
    const hatch = (all: typeof before) => all.find(({ uid }) => uid.startsWith('hatch/'));
    expect(hatch(after)?.uid).toBe('hatch/pair=LW-1/clutch=1@the%20finch%20room.nestlog');
    expect(hatch(before)?.uid).toBe(hatch(after)?.uid);
    expect(hatch(before)?.to).not.toBe(hatch(after)?.to);
  });

  it('names rings by the day of hatching, so that each day’s young have an entry of their own', async () => {
    const young = `
    pair: LW-1
    species: lavender waxbill
    log:
      - {date: 2026-02-27, clutch: 1, laid: 1}
      - {date: 2026-02-28, laid: 1}
      - {date: 2026-03-01, laid: 1}
      - {date: 2026-03-02, laid: 1, sitting}
      - {date: 2026-03-12, checked}
      - {date: 2026-03-13, hatched: 2}
      - {date: 2026-03-14, checked}
      - {date: 2026-03-15, hatched: 2}
    `;
    const names = (await entries({ 'LW-1': young }, '2026-03-16')).map(({ uid }) => uid);
    expect(names.filter((uid) => uid.startsWith('ring/'))).toEqual([
      'ring/pair=LW-1/clutch=1/2026-03-13@the%20finch%20room.nestlog',
      'ring/pair=LW-1/clutch=1/2026-03-15@the%20finch%20room.nestlog',
    ]);
  });

  it('of an empty room is a calendar without entries', async () => {
    expect(await entries({}, '2026-03-09')).toEqual([]);
  });

  it('says beside the calendar that a line could not be read', async () => {
    const said: string[] = [];
    const stderr = { write: (text: string) => void said.push(text), color: false, width: 80 };
    const broken = {
      ...room,
      'DD-2': 'pair: DD-2\nspecies: diamond dove\nlog:\n  - {date: 2026-03-08, laid: -1}\n',
    };
    const { text } = await runCommand({ run }, broken, { on: '2026-03-09', options: { days: 60 }, stderr });
    expect(text).toContain('LW-1: candle the eggs');
    expect(said.join('')).toMatch(/^nestlog: 1 error in the journals: /);
  });

  it('whatever is in names and notes, is read by a calendar program', async () => {
    const wild = `
    pair: "=A1,\\u202E;🐤"
    species: star finch
    housing: "flight\\r\\nEND:VCALENDAR"
    log:
      - {date: 2026-03-01, clutch: 1, laid: 1, sitting, note: "${'ü🐤 '.repeat(2_500)}"}
    `;
    const agenda = await entries({ w: wild }, '2026-03-02');
    expect(agenda.length).toBeGreaterThan(2);
    expect(agenda[0]?.summary).toMatch(/^=A1,<U\+202E>;🐤: /);
  });
});

it('no other command loads what writes calendars', async () => {
  const { metafile } = await build({
    ...settings,
    entryPoints: ['src/cli.ts'],
    legalComments: 'none',
    write: false,
    metafile: true,
  });
  /** All that is evaluated with a file; what it imports when called comes later, if at all. */
  const loadedWith = (file: string, seen = new Set<string>()): Set<string> => {
    if (seen.has(file)) return seen;
    seen.add(file);
    for (const { path, kind } of metafile.inputs[file]?.imports ?? []) {
      if (kind !== 'dynamic-import') loadedWith(path, seen);
    }
    return seen;
  };
  const loads = (name: string) =>
    [...loadedWith(`src/commands/${name}.ts`)].some((path) => /ical-gen/.test(path));
  expect([...loadedWith('src/cli.ts')].filter((path) => path.includes('ical-gen'))).toEqual([]);
  expect(commands.map(({ name }) => name).filter(loads)).toEqual(['calendar']);
});
