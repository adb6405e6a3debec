import { describe, expect, it } from 'vitest';
import { typed } from './run.ts';

const room = {
  'LW-1': 'pair: LW-1\nspecies: lavender waxbill\nhousing: flight 2\nlog:\n  - {date: 2026-05-01, paired}\n',
  'SF-1': 'pair: SF-1\nspecies: star finch\nhousing: cage 1\nlog:\n  - {date: 2026-05-01, paired}\n',
  'birds.yaml': 'birds:\n  - {id: LW-21-04, species: lavender waxbill}\n',
};

/** The answer to a line in which a word is too much; without the words that say so. */
async function answerTo(...words: string[]) {
  const { out, err, code } = await typed(words, room);
  expect([out, code]).toEqual(['', 2]);
  const [, command = '', said = ''] =
    /^nestlog: `nestlog (\w+)` takes \w+ \w+ behind it, and (.+)/.exec(err) ?? [];
  expect(command).toBe(words[0]);
  return said;
}

describe('a word that a command does not take', () => {
  it.each([
    ['due LW-1', '`LW-1` is too much; did you mean `nestlog due --pair LW-1`?'],
    ['due lw-1', '`lw-1` is too much; did you mean `nestlog due --pair LW-1`?'],
    ['due LW1', '`LW1` is too much; did you mean `nestlog due --pair LW-1`?'],
    ['calendar SF-1', '`SF-1` is too much; did you mean `nestlog calendar --pair SF-1`?'],
    ['due flight 2', '`flight` `2` is too much; did you mean `nestlog due --housing "flight 2"`?'],
    ['due star finch', '`star` `finch` is too much; did you mean `nestlog due --species "star finch"`?'],
    ['due housing', '`housing` is too much; did you mean `nestlog due --by housing`?'],
    ['due candle', '`candle` is too much; did you mean `nestlog due --explain candle`?'],
    ['stock hens', '`hens` is too much; did you mean `nestlog stock --sex hen`?'],
    ['due 14', '`14` is too much; did you mean `nestlog due --days 14`?'],
    ['ahead 4', '`4` is too much; did you mean `nestlog ahead --weeks 4`?'],
    ['due yesterday', '`yesterday` is too much; did you mean `nestlog due --date 2026-05-31`?'],
    ['due 17.5.', '`17.5.` is too much; did you mean `nestlog due --date 2026-05-17`?'],
    [
      'season 2026 2026-05-17',
      '`2026-05-17` is too much; did you mean `nestlog season 2026 --date 2026-05-17`?',
    ],
    ['season 2026 housing', '`housing` is too much; did you mean `nestlog season 2026 --by housing`?'],
  ])('belongs to an option: %s', async (line, answer) => {
    expect(await answerTo(...line.split(' '))).toBe(answer);
  });

  it('belongs to another command', async () => {
    expect(await answerTo('check', 'LW-1')).toBe(
      '`LW-1` is too much; of that pair tells `nestlog pair LW-1`',
    );
    expect(await answerTo('check', 'pairs/LW-1.yaml')).toContain('of that pair tells `nestlog pair LW-1`');
    expect(await answerTo('undo', 'LW-21-04')).toBe(
      '`LW-21-04` is too much; of that bird tells `nestlog bird LW-21-04`',
    );
  });

  it('belongs nowhere: then it is told only that it is too much, and where help is', async () => {
    expect(await answerTo('check', 'everything')).toBe('`everything` is too much');
    expect((await typed(['check', 'everything'], room)).err).toContain(
      '\nRun `nestlog help check` to see what it takes.\n',
    );
  });
});

describe('a name that was parted at its blanks', () => {
  it('is one that there is', async () => {
    expect(await answerTo('pair', 'LW', '1')).toContain('did you mean `nestlog pair LW-1`?');
    expect(await answerTo('bird', 'LW', '21', '04')).toContain('did you mean `nestlog bird LW-21-04`?');
  });

  it('is to be one', async () => {
    expect(await answerTo('start', 'pair', 'LW', '4')).toContain('did you mean `nestlog start pair LW-4`?');
    expect(await answerTo('start', 'room', 'the', 'long', 'shed')).toContain(
      'a name with blanks stands in quotes: `nestlog start room "the long shed"`',
    );
    expect(await answerTo('import', 'old', 'notes.csv')).toContain('`nestlog import "old notes.csv"`');
  });

  it('is no id where there is no name', async () => {
    expect(await answerTo('season', 'spring', '2026')).toBe('`2026` is too much');
  });

  it('is two names', async () => {
    expect(await answerTo('pair', 'LW-1', 'SF-1')).toContain('give one after the other');
  });
});
