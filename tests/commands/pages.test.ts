import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { run as bird } from '../../src/commands/bird.ts';
import type { CommandModule } from '../../src/commands/context.ts';
import { run as due } from '../../src/commands/due.ts';
import { run as pair } from '../../src/commands/pair.ts';
import { run as season } from '../../src/commands/season.ts';
import { png } from '../report/pictures/samples.ts';
import { day } from '../rooms.ts';
import { roomFolder } from './run.ts';

const folder = mkdtempSync(join(tmpdir(), 'nestlog-pages-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const journals = roomFolder({
  'birds.yaml': `
    birds:
      - {id: LW-19-04, species: lavender waxbill, sex: cock, owner: Ada Loveday, log: [{date: 2025-01-01, arrived: flight 2, photo: hen.png, note: "private: a bargain"}, {date: 2026-01-01, unwell: fluffed up}]}
  `,
  'LW-1': `
    pair: LW-1
    species: lavender waxbill
    cock: LW-19-04
    housing: flight 2
    log:
      - {date: 2026-05-01, clutch: 1, laid: 4, sitting, photo: [nest.png, ../../outside.png], note: "in the broom of flight 2"}
      - {date: 2026-05-07, note: "private: she will be sold"}
  `,
});
writeFileSync(join(journals, 'pairs/nest.png'), png());
writeFileSync(join(journals, 'hen.png'), png());

let pages = 0;
async function page(
  command: Pick<CommandModule, 'run'>,
  words: string[],
  options: Record<string, unknown> = {},
  room = journals,
) {
  const name = join(folder, `${pages++}.html`);
  const said: string[] = [];
  const stdout = { write: (text: string) => void said.push(text), color: false, width: 80 };
  const on = day('2026-05-10');
  const exit = await command.run({
    day: on,
    today: on,
    journals: room,
    state: '/nowhere',
    json: false,
    arguments: words,
    options: { days: 7, page: name, ...options },
    stdout,
    stderr: stdout,
  });
  expect([exit, said.join('')]).toEqual([0, `written: ${name}\n`]);
  return readFileSync(name, 'utf8');
}

describe('a page in a file', () => {
  it('of the morning walks from housing to housing', async () => {
    const text = await page({ run: due }, []);
    expect(text).toContain('<h2>flight 2</h2>');
    expect(text).toContain('type="checkbox"');
  });

  it('of the morning in another order, where that is asked for', async () => {
    expect(await page({ run: due }, [], { by: 'urgency' })).not.toContain('<h2>flight 2</h2>');
  });

  it('of a pair shows its photos and says which it cannot show, without what is private', async () => {
    const text = await page({ run: pair }, ['LW-1']);
    expect(text.match(/<img src="data:image\/png;base64,/g)).toHaveLength(1);
    expect(text).toContain('../../outside.png: not in the room’s folder');
    expect(text).toContain('in the broom of flight 2');
    expect(text).not.toContain('she will be sold');
  });

  it('tells nothing that is marked private, wherever it was written', async () => {
    const text = (words: string) => `"private: SECRET ${words}"`;
    const room = roomFolder({
      'nestlog.yaml': `
        room: the long shed
        log:
          - {date: 2026-03-01, food: [${text('mix')}]}
      `,
      'birds.yaml': `
        birds:
          - {id: A, species: zebra finch, sex: cock, log: [{date: 2026-03-02, unwell: ${text('cough')}}]}
      `,
      'ZF-1': `
        pair: ZF-1
        species: zebra finch
        cock: A
        hen: B
        housing: cage 1
        log:
          - {date: 2026-03-01, paired, food: [${text('egg food')}], nest: {state: lined, site: ${text('place')}, material: ${text('gold')}}}
          - {date: 2026-03-05, laid: 4, sitting, site: ${text('place')}, note: ${text('note')}}
          - {date: 2026-03-18, hatched: [e1, e2, e3], lost: {${text('fault')}: e4}}
          - {date: 2026-03-20, died: {${text('fall')}: c1}, unwell: {c2: ${text('limp')}}, treated: {hen: ${text('cure')}}}
          - {date: 2026-03-21, chasing: {by: cock, at: hen, level: hard}, courting: ${text('dance')}}
      `,
    });
    for (const [command, words, options] of [
      [season, [], { by: 'site' }],
      [season, [], { by: 'food' }],
      [pair, ['ZF-1'], {}],
      [bird, ['A'], {}],
      [due, [], {}],
    ] as const) {
      const shown = await page({ run: command as CommandModule['run'] }, [...words], options, room);
      expect(shown).not.toContain('SECRET');
      expect(shown).toContain('ZF-1');
    }
    expect(await page({ run: pair }, ['ZF-1'], {}, room)).toContain('not told');
  });

  it('of an account shows them too, and tells neither where they lie nor where the pair does', async () => {
    const text = await page({ run: pair }, ['LW-1'], { account: true, with: ['notes'] });
    expect(text).toContain('<img src="data:image/png;base64,');
    expect(text).toContain('in the broom of [flight]');
    expect(text).not.toMatch(/LW-1|nest\.png|outside|flight 2|sold/);
  });

  it('of a bird tells its health, and not whose it is or where it lived', async () => {
    const text = await page({ run: bird }, ['LW-19-04']);
    expect(text).toContain('unwell: fluffed up');
    expect(text).toContain('<img src="data:image/png;base64,');
    expect(text).not.toMatch(/Loveday|flight 2|bargain|hen\.png/);
  });

  it('of a room without anything is a page all the same', async () => {
    expect(await page({ run: due }, [], {}, roomFolder({}))).toContain('A quiet morning');
    expect(readdirSync(folder).length).toBe(pages);
    mkdirSync(folder, { recursive: true });
  });
});
