import { describe, expect, test } from 'vitest';
import { typed } from '../commands/run.ts';

const room = { 'LW-1': 'pair: LW-1\nspecies: lavender waxbill\nlog:\n  - {date: 2026-05-01, laid: 3}\n' };

/** What is answered where the words behind `record LW-1` make no entry. */
async function answerTo(...words: string[]) {
  const { out, err, code } = await typed(['record', 'LW-1', ...words], room);
  expect([out, code]).toEqual(['', 2]);
  return err.split('\n', 1)[0];
}

describe('a line of a journal, pasted behind a pair, is answered with what is typed instead', () => {
  test.each([
    [['- {date: 2026-05-04, laid: 1}'], 'laid=1 --date 2026-05-04'],
    [['- date: 2026-05-04, laid: 1'], 'laid=1 --date 2026-05-04'],
    [['{date: 2026-05-04, laid: 1}'], 'laid=1 --date 2026-05-04'],
    [['-', '{date:', '2026-05-04,', 'laid:', '1}'], 'laid=1 --date 2026-05-04'],
    [['date:', '2026-05-04,', 'sitting'], 'sitting --date 2026-05-04'],
    [['laid:', '1'], 'laid=1'],
    [['laid: 1, sitting'], 'laid=1 sitting'],
    [['candled={fertile: e1}'], 'candled.fertile=e1'],
    [['candled={fertile:', '[e1,', 'e2]}'], 'candled.fertile=e1,e2'],
    [['candled:', '{fertile: e1}'], 'candled.fertile=e1'],
    [['laid=1', 'checked={eggs: 4}'], 'checked.eggs=4'],
  ])('%j', async (words, meant) => {
    expect(await answerTo(...words)).toBe(`nestlog: at the terminal it is \`${meant}\``);
  });

  test('one that cannot be read is answered with an example', async () => {
    expect(await answerTo('- {date: 2026-05-04, eggs: 4}')).toContain(
      'written otherwise at the terminal: laid=1 candled.fertile=e1,e3 --date 2026-06-01',
    );
  });
});

describe('words that were parted or put together wrongly', () => {
  test.each([
    [['laid', '=', '1'], '`=` has no blanks around it: `laid=1`'],
    [['laid', '=1'], '`=` has no blanks around it: `laid=1`'],
    [['laid=', '1'], '`=` has no blanks around it: `laid=1`'],
    [['laid=1, sitting'], 'a word of its own: `laid=1 sitting`'],
    [['laid=1;sitting'], 'a word of its own: `laid=1 sitting`'],
    [['laid=1 and sitting'], 'a word of its own: `laid=1 sitting`'],
    [['lost.clear=e2 lost.broken=e3'], 'a word of its own: `lost.clear=e2 lost.broken=e3`'],
    [['checked.eggs=4,chicks=0'], 'a word of its own: `checked.eggs=4 checked.chicks=0`'],
    [['laid', 'one', 'egg'], 'are one word: `laid=1`'],
    [['lost', 'broken'], 'it is one word with its key and what is said of it: `lost.broken=…`'],
    [['candled', 'fertile'], '`candled.fertile=…`'],
    [['Lost', 'broken'], '`lost.broken=…`'],
    [['Laid', 'one'], 'are one word: `laid=1`'],
    [['Sitting', 'hen'], 'are one word: `sitting=hen`'],
    [['weighed', 'c1'], '`weighed.c1=…`'],
    [['laid=1', 'yesterday'], 'the day is given by --date 2026-05-31'],
    [['laid=1', '07:30'], 'the time of day is given by time=07:30'],
    [['lost.clear e2'], '`lost.clear=e2`'],
    [['note=“two', 'at', 'noon”'], 'a value with blanks stands in quotes: "note=two at noon"'],
    [['note=two', 'at', 'noon', 'laid=1'], '"note=two at noon"'],
    [
      ['--note', 'two', 'at', 'noon'],
      '`at` is no observation; a note of several words stands in quotes: --note "two at noon"',
    ],
    [['SF-1', 'laid=1'], '`SF-1` is no observation; write it as laid=1'],
    [['--laid', '1'], 'what was seen is written without hyphens: `laid=…`'],
    [['--laid=1'], 'what was seen is written without hyphens: `laid=1`'],
  ])('%j', async (words, meant) => {
    expect(await answerTo(...words)).toContain(meant);
  });

  test('a comma or quotes of a phone around one value are not of it', async () => {
    for (const words of [
      ['laid=1,', 'sitting'],
      ['laid=“1”', 'sitting'],
    ]) {
      const { out } = await typed(['record', 'LW-1', ...words, '--date', '2026-05-04', '--dry-run'], room);
      expect(out).toContain('- {date: 2026-05-04, laid: 1, sitting}');
    }
  });

  test('quotes inside of a note stay', async () => {
    const note = 'note="so" he sang "so"';
    const { out } = await typed(['record', 'LW-1', 'courting', note, '--dry-run'], room);
    expect(out).toContain('note: "\\"so\\" he sang \\"so\\""');
  });

  test('a text may name what is a key elsewhere', async () => {
    const said = ['record', 'LW-1', 'courting=he sang, sitting beside her', '--dry-run'];
    expect((await typed(said, room)).code).toBe(0);
  });
});
