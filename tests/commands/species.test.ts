import { expect, test } from 'vitest';
import * as species from '../../src/commands/species.ts';
import type { Files } from '../rooms.ts';
import { runCommand } from './run.ts';

const room = {
  'LW-1': `
    pair: LW-1
    species: lavender waxbill
    log:
      - {date: 2026-03-04, after: 2026-03-03, clutch: 1, laid: 1, sitting}
      - {date: 2026-03-16, after: 2026-03-15, hatched: 1}
  `,
};
const ask = (name?: string, options = {}, json = false, files: Files = room) =>
  runCommand(species, files, { arguments: name === undefined ? [] : name.split(' '), options, json });

test('a species is found under any of its names, and by a pair of the room', async () => {
  for (const name of ['lavender waxbill', 'Estrilda caerulescens', 'LW-1']) {
    expect((await ask(name)).text).toMatch(/^lavender waxbill\n/);
  }
});

test('a pair is known however its letters are typed', async () => {
  const pairs = { 'LW-1': 'pair: LW-1\nspecies: lavender waxbill\nlog:\n  - {date: 2026-03-01, paired}\n' };
  const asked = (name: string) => runCommand(species, pairs, { arguments: [name] });
  expect((await asked('lw-1')).text).toMatch(/^lavender waxbill\n/);
  await expect(async () => asked('LW1')).rejects.toThrow('did you mean `LW-1`?');
});

test('every value stands with its source, beside it what this room saw and what forecasts use', async () => {
  const { text } = await ask('lavender waxbill');
  expect(text).toMatch(/incubation +11–13 d +from memory/);
  expect(text).toContain('seen here    1 clutch, 12.0 d');
  expect(text.replace(/\s+/g, ' ')).toContain('11–13 d, book; 1 own clutch');
});

test('a misspelt name is answered with the one that was probably meant', async () => {
  await expect(ask('lavendar waxbil')).rejects.toThrow('did you mean "lavender waxbill"?');
});

test('the list can be narrowed to the species kept, to a need of live food, to a part of a name', async () => {
  expect((await ask(undefined, { kept: true })).text).toContain('1 species;');
  const required = JSON.parse((await ask(undefined, { liveFood: 'required' }, true)).text).species;
  expect(required.length).toBeGreaterThan(5);
  expect(required.every(({ liveFood }: { liveFood: string }) => liveFood === 'required')).toBe(true);
  expect((await ask(undefined, { named: 'twinspot' })).text).toContain('twinspot');
  expect((await ask(undefined, { named: 'dragon' })).text).toContain('No species fits');
});

test('past forecasts stand beside what happened', async () => {
  const { text } = await ask('LW-1', { record: true });
  expect(text).toMatch(/LW-1\/1 +\d+–\d+ Mar +16 Mar +16 Mar/);
});

test('the data carry the same figures', async () => {
  const data = JSON.parse((await ask('LW-1', {}, true)).text);
  expect(data.own.incubation).toMatchObject({ n: 1, observed: { mean: 12, low: 12, high: 12 } });
  expect(data.values.incubation).toMatchObject({ value: { low: 11, high: 13 }, grade: 'from memory' });
  expect(data.own.incubation.past[0]).toMatchObject({ clutch: 'LW-1/1', happened: '2026-03-16' });
});

test('part of a name will do where it fits one species; where it fits several they are named', async () => {
  expect((await ask('chestnut-breasted')).text).toMatch(/^chestnut-breasted mannikin\n/);
  await expect(ask('grenadier')).rejects.toThrow(/did you mean purple grenadier, violet-eared waxbill\?/);
  await expect(ask('waxbill')).rejects.toThrow(/ and \d+ more\?/);
  await expect(ask('dragon')).rejects.toThrow('`nestlog species` lists all there are');
  await expect(ask('- -')).rejects.toThrow('`nestlog species` lists all there are');
});

test('a pair whose species nobody knows is answered with that species', async () => {
  const files = { 'XX-1': 'pair: XX-1\nspecies: star fynch\nlog: []\n' };
  await expect(ask('XX-1', {}, false, files)).rejects.toThrow(
    'no profile of "star fynch"; did you mean "star finch"?',
  );
});

test('kept species stand with the days that forecasts use now', async () => {
  expect((await ask(undefined, { kept: true })).text).toMatch(/^lavender waxbill +11–13 d +\S+–\S+ +1 /m);
});

test('without a name the record is that of the whole room', async () => {
  expect((await ask(undefined, { record: true })).text).toMatch(/^ +lavender waxbill +1 +0 d +100 %/m);
  const { records } = JSON.parse((await ask(undefined, { record: true }, true)).text);
  expect(records.incubation.species[0]).toMatchObject({ species: 'lavender waxbill', record: { n: 1 } });
  expect(records.fledging).toEqual({ species: [], all: null });
});

test('a need of live food that there is not is refused with those that there are', () => {
  const [, , need] = species.definition.options ?? [];
  expect(need?.parse?.('required')).toBe('required');
  expect(() => need?.parse?.('sometimes')).toThrow('--live-food takes required, advised, helpful, no');
});
