import { describe, expect, it } from 'vitest';
import { noCommand } from '../../src/commands/command-line.ts';
import { typed } from './run.ts';

const first = ({ err }: { err: string }) => err.split('\n')[0];

describe('an option that there is not', () => {
  it.each([
    ['due --dyas 3', '`--dyas`; did you mean `--days`?'],
    ['due -days 3', '`-days`; did you mean `--days`?'],
    ['due --Days=3', '`--Days`; did you mean `--days`?'],
    ['stock --jsn', '`--jsn`; did you mean `--json`?'],
    ['due -d 3', '`-d`; did you mean `--days` or `--date`?'],
    ['-d', '`-d`; did you mean `--date`?'],
    ['check --pair LW-1', '`--pair`'],
  ])('nestlog %s', async (line, answer) => {
    const said = await typed(line.split(' '));
    expect(said.code).toBe(2);
    expect(first(said)).toBe(`nestlog: there is no option ${answer}`);
  });

  it('is followed by where the options are listed', async () => {
    expect((await typed(['due', '-d'])).err).toContain('\nRun `nestlog help due` to see what it takes.\n');
  });
});

describe('a command that there is not', () => {
  it.each([
    ['DUE', '`DUE`; did you mean `due`?'],
    ['help DUE', '`DUE`; did you mean `due`?'],
    ['LW-1 laid=1', '`LW-1`; did you mean `nestlog record LW-1 …`?'],
    ['add LW-1 laid=1', '`add`; did you mean `nestlog record LW-1 …`?'],
    ['LW-1', '`LW-1`; of a pair tells `nestlog pair LW-1`, of a bird `nestlog bird LW-1`'],
    ['laid=1', '`laid=1`; what was seen is recorded of a pair: `nestlog record LW-1 laid=1`'],
    ['budgerigars', '`budgerigars`'],
  ])('nestlog %s', async (line, answer) => {
    const said = await typed(line.split(' '));
    expect(said.code).toBe(2);
    expect(said.err).toBe(
      `nestlog: there is no command ${answer}\nRun \`nestlog --help\` to see what there is.\n`,
    );
  });

  it('names a pair of two words in quotes', () => {
    expect(noCommand(['LW 1', 'laid=1'], ['due'])).toContain('`nestlog record "LW 1" …`');
  });
});

describe('a long dash, made of two hyphens by autocorrection,', () => {
  it.each(['—days', '–days', '–-days', '−−days'])('%s', async (flag) => {
    const said = await typed(['due', flag, '3']);
    expect(said).toEqual({
      out: '',
      err: `nestlog: \`${flag}\` begins with a long dash; did you mean \`--days\`, with two hyphens?\n`,
      code: 2,
    });
  });

  it('begins no word of a name', async () => {
    expect((await typed(['species', '—record'])).err).toContain('did you mean `--record`');
  });

  it('stands for nothing behind `--`, as a shell asks what fits there', async () => {
    expect((await typed(['completion', 'words', '--', 'record', '—x', ''])).code).toBe(0);
  });

  it('may begin a note', async () => {
    const files = { 'LW-1': 'pair: LW-1\nspecies: lavender waxbill\nlog:\n  - {date: 2026-05-01, paired}\n' };
    const { code } = await typed(['record', 'LW-1', 'courting', '--note', '— he sang', '--dry-run'], files);
    expect(code).toBe(0);
  });
});
