import { describe, expect, it } from 'vitest';
import { line, pair, spell, warned, waxbills } from './warned.ts';

const heads = 'cock: LW-20-01\nhen: LW-20-11\nhousing: flight 2';
const fledged = `
  date: 2026-03-01, laid: 3
  date: 2026-03-15, hatched: 3
  date: 2026-04-03, fledged: 3
`;
const files = (more: string, log = fledged) => ({ 'LW-1': waxbills(`${log}\n${more}`, heads) });
const hard = 'chasing: {by: cock, at: c2, level: hard}';

describe('hard chasing', () => {
  it('with dependent young presses for three days, and says not to take the cock unseen', () => {
    const room = files(`date: 2026-04-10, ${hard}`);
    expect(spell(room, 'chasing', '2026-04-01', '2026-04-30')).toEqual(['04-10 … 04-13 act']);
    expect(line(room, 'chasing', '2026-04-10').text).toBe(
      'The cock chased c2 hard on 10 Apr. 3 young still depend on being fed: nobody wrote who feeds them. While nobody is hurt, do not take the cock before you saw who feeds.',
    );
  });

  it('months after young of whom nobody wrote that they feed themselves is watched as of a pair by itself', () => {
    const { level, text } = line(
      files('date: 2026-08-10, chasing: {by: cock, at: hen, level: hard}'),
      'chasing',
      '2026-08-10',
    );
    expect(level).toBe('watch');
    expect(text).toBe(
      'The cock chased the hen hard on 10 Aug. A hunted bird does not eat and does not rest.',
    );
  });

  it('of several young is “the young”, as their keeper calls them, and is over where they live elsewhere', () => {
    const at = (word: string) => files(`date: 2026-04-10, chasing: {by: cock, at: ${word}, level: hard}`);
    for (const word of ['young', 'the young', 'fledglings'])
      expect(line(at(word), 'chasing', '2026-04-10').text).toContain(
        `The cock chased the ${word.replace('the ', '')} hard on 10 Apr.`,
      );
    const moved = files(
      'date: 2026-04-10, chasing: {by: cock, at: young, level: hard}\n date: 2026-04-11, moved: {c1: flight 3, c2: flight 3, c3: flight 3}',
    );
    expect(spell(moved, 'chasing', '2026-04-01', '2026-04-30')).toEqual(['04-10 act']);
  });

  it('by a mate that came after they hatched is no feeder’s: nobody is told to leave it with them', () => {
    const young = (more: string) =>
      line(
        files(`${more}\n date: 2026-04-10, chasing: {by: hen, at: young, level: hard}`),
        'chasing',
        '2026-04-10',
      ).text;
    const mate = 'date: 2026-04-06, parted: {hen: cage 5}\n date: 2026-04-08, paired: {hen: LW-21-02}';
    const anew = young(mate);
    const foster = young(`${mate}\n date: 2026-04-09, feeding: {hen: all}`);
    expect(foster).toContain('the hen fed');
    expect(foster).toContain('do not take the hen before you saw who feeds.');
    expect(anew).toContain('The hen came after they had hatched and need not be one that feeds them.');
    expect(anew).not.toContain('do not take');
    expect(young('date: 2026-04-06, parted: {hen: cage 5}\n date: 2026-04-08, reunited')).toContain(
      'do not take the hen before you saw who feeds.',
    );
  });

  it('tells of one young bird as of one, and of young that were heard only as of an unknown number', () => {
    const log = 'date: 2026-03-01, laid: 1, sitting: hen\n date: 2026-03-14, ';
    const text = (found: string) =>
      line(
        files('date: 2026-03-20, chasing: {by: cock, at: hen, level: hard}', log + found),
        'chasing',
        '2026-03-20',
      ).text;
    expect(text('hatched: 1')).toContain(
      ' 1 young bird still depends on being fed: nobody wrote who feeds it.',
    );
    expect(text('heard')).toContain(' The young still depend on being fed: nobody wrote who feeds them.');
  });

  it('says who was seen feeding', () => {
    const other = files(`date: 2026-04-09, feeding: {hen: all}\n date: 2026-04-10, ${hard}`);
    expect(line(other, 'chasing', '2026-04-10').text).toContain(
      'the hen fed c1, c2 and c3 on 9 Apr. If you take the cock, see within hours that the hen goes on.',
    );
    const himself = files(`date: 2026-04-09, feeding: {cock: all}\n date: 2026-04-10, ${hard}`);
    expect(line(himself, 'chasing', '2026-04-10').text).toContain(
      'While nobody is hurt, do not take the cock before you saw who feeds.',
    );
  });

  it('parts a hurt bird at once, and has somebody feed the young that are left', () => {
    const check = (log?: string) =>
      line(files(`date: 2026-04-10, ${hard}`, log), 'chasing', '2026-04-10').check;
    expect(check()).toContain('part them now, whoever feeds, and see within hours that the young are fed;');
    expect(check('date: 2026-03-01, laid: 3')).toContain('part them now; an avian vet for an injury');
  });

  it('takes a feeder that was seen two days ago to feed still, and no longer', () => {
    const fed = (on: string) => files(`date: 2026-04-${on}, feeding: {hen: all}\n date: 2026-04-10, ${hard}`);
    expect(line(fed('08'), 'chasing', '2026-04-10').text).toContain('If you take the cock,');
    expect(line(fed('07'), 'chasing', '2026-04-10').text).toContain('do not take the cock');
  });

  it('says who feeds also where that is known of one only', () => {
    const room = files(`date: 2026-04-09, feeding: {hen: c1}\n date: 2026-04-10, ${hard}`);
    expect(line(room, 'chasing', '2026-04-10').text).toContain('the hen fed c1 on 9 Apr');
    expect(line(room, 'chasing', '2026-04-10').text).toContain('do not take the cock');
  });

  it('tells of one egg as of one', () => {
    const room = files(
      'date: 2026-03-02, chasing: {by: cock, at: hen, level: hard}',
      'date: 2026-03-01, laid: 1',
    );
    expect(line(room, 'chasing', '2026-03-02').text).toContain('There is 1 egg in the nest');
  });

  it('is told by its worst chase of the day', () => {
    const room = files(
      `date: 2026-04-10, chasing: {by: hen, at: c1}\n date: 2026-04-10, ${hard}\n date: 2026-04-10, chasing: {by: hen, at: c3, level: fierce}`,
    );
    expect(line(room, 'chasing', '2026-04-10').text).toMatch(/^The hen chased c3 fiercely/);
    const two = files(`date: 2026-04-10, chasing: {by: hen, at: c1}\n date: 2026-04-10, ${hard}`);
    expect(line(two, 'chasing', '2026-04-10').text).toMatch(/^The cock chased c2 hard/);
  });

  it('is over when they are parted, and begins anew with a chase after they were put back', () => {
    const room = files(`date: 2026-04-10, ${hard}
      date: 2026-04-11, parted: {cock: cage 6}
      date: 2026-04-15, reunited
      date: 2026-04-16, ${hard}`);
    expect(spell(room, 'chasing', '2026-04-01', '2026-04-30')).toEqual(['04-10 act', '04-16 … 04-19 act']);
  });

  it.each([
    ['the one that chased lives in another cage now', 'moved: {cock: cage 6}', '04-10 act'],
    ['the one that chased died', 'died: cock', '04-10 act'],
    ['nobody wrote which of them was taken away', 'parted', '04-10 act'],
    ['only the other one was taken away', 'moved: {hen: cage 6}', '04-10 … 04-13 act'],
  ])('of the young ends with the one that chases: %s', (_what, then, days) => {
    const room = files(`date: 2026-04-10, ${hard}\n date: 2026-04-11, ${then}`);
    expect(spell(room, 'chasing', '2026-04-01', '2026-04-30')).toEqual([days]);
  });

  // Who drives one of the young drives the next (common practice).
  it('of the young is over when none of them lives with the pair any more', () => {
    const moved = (who: string) =>
      files(
        `date: 2026-04-09, clutch: 2, laid: 3, sitting: hen
         date: 2026-04-10, time: 08:00, ${hard}
         date: 2026-04-10, time: 10:00, moved: {${who}: cage 3}
         date: 2026-04-12, independent: all`,
      );
    expect(spell(moved('"1/c1, 1/c2, 1/c3"'), 'chasing', '2026-04-10', '2026-04-30')).toEqual([]);
    expect(spell(moved('1/c2'), 'chasing', '2026-04-10', '2026-04-30')).toEqual([
      '04-10 … 04-11 act',
      '04-12 … 04-13 watch',
    ]);
    // A young bird that is hunted sits on no eggs.
    expect(line(moved('1/c2'), 'chasing', '2026-04-12').text).toBe(
      'The cock chased c2 hard on 10 Apr. A hunted bird does not eat and does not rest.',
    );
  });

  it('of a mate is over when the mate lives in another cage', () => {
    const log =
      'date: 2026-03-03, chasing: {by: cock, at: hen, level: hard}\n date: 2026-03-04, moved: {hen: cage 6}';
    expect(spell(files('', log), 'chasing', '2026-03-01', '2026-03-31')).toEqual(['03-03 watch']);
  });

  it('of a mate is watched, with eggs or without', () => {
    const chase = 'chasing: {by: cock, at: hen, level: hard}';
    const eggs = files(`date: 2026-03-03, ${chase}`, 'date: 2026-03-01, laid: 2');
    expect(line(eggs, 'chasing', '2026-03-03')).toMatchObject({ level: 'watch' });
    expect(line(eggs, 'chasing', '2026-03-03').text).toContain(
      'There are 2 eggs in the nest: a hunted bird does not sit.',
    );
    const empty = files(`date: 2026-03-03, ${chase}`, '');
    expect(line(empty, 'chasing', '2026-03-03').text).toBe(
      'The cock chased the hen hard on 3 Mar. A hunted bird does not eat and does not rest.',
    );
  });

  it('that is fierce presses without any young', () => {
    const room = files('date: 2026-03-03, chasing: {by: hen, at: cock, level: fierce}', '');
    expect(line(room, 'chasing', '2026-03-03')).toMatchObject({ level: 'act' });
    expect(line(room, 'chasing', '2026-03-03').text).toContain('The hen chased the cock fiercely on 3 Mar.');
  });

  it('of several days is one line', () => {
    const room = files(`date: 2026-04-08, ${hard}\n date: 2026-04-09, ${hard}\n date: 2026-04-10, ${hard}`);
    expect(line(room, 'chasing', '2026-04-10').text).toContain('on 10 Apr, on 3 days of the last week.');
  });
});

it('mild chasing belongs to courtship', () => {
  const room = files('date: 2026-04-10, chasing: {by: cock, at: hen, level: mild}');
  expect(warned(room, 'chasing', '2026-04-10')).toEqual([]);
});

it('chasing of which nobody said how hard is looked at where there is a brood', () => {
  expect(line(files('date: 2026-04-10, chasing'), 'chasing', '2026-04-10').text).toMatch(
    /^Somebody chased on 10 Apr\./,
  );
  expect(warned(files('date: 2026-04-10, chasing', ''), 'chasing', '2026-04-10')).toEqual([]);
});

it('two helpers of one day: the worse of the two counts', () => {
  const room = files(
    `date: 2026-04-10, chasing: {by: cock, at: hen, level: mild}\n date: 2026-04-10, ${hard}`,
  );
  expect(line(room, 'chasing', '2026-04-10')).toMatchObject({ level: 'act' });
});

it('chicks that walk off as they hatch need warmth, not a feeder: the one that chased stays apart', () => {
  const quails = pair(
    'Q-1',
    'king quail',
    'date: 2026-03-20, laid: 1\n date: 2026-03-26, laid: 6, sitting: hen\n date: 2026-04-12, hatched: 7\n date: 2026-04-14, chasing: {by: cock, at: young, level: hard}',
    heads,
  );
  const { text, check } = line({ 'Q-1': quails }, 'chasing', '2026-04-14');
  expect(text).toContain(
    '7 chicks need warmth, and one parent that broods is enough: the one that chased stays apart.',
  );
  expect(check).toContain('part them now; an avian vet');
});

it('eggs and young of other pairs are no reason, nor chases of more than a week before', () => {
  const courting = waxbills('date: 2026-04-10, chasing', heads);
  const neighbours = waxbills(fledged, 'cock: LW-20-02\nhen: LW-20-12').replace('pair: LW-1', 'pair: LW-2');
  expect(warned({ 'LW-1': courting, 'LW-2': neighbours }, 'chasing', '2026-04-10')).toEqual([]);
  const hunted = waxbills(`date: 2026-04-10, ${hard.replace('c2', 'hen')}`, heads);
  const { text } = line({ 'LW-1': hunted, 'LW-2': neighbours }, 'chasing', '2026-04-10');
  expect(text).toContain('A hunted bird does not eat');
  const again = files(`date: 2026-04-03, ${hard}\n date: 2026-04-04, ${hard}\n date: 2026-04-10, ${hard}`);
  expect(line(again, 'chasing', '2026-04-10').text).toContain('on 10 Apr, on 2 days of the last week.');
});

it('a mate that came while some had not hatched yet, or was seen feeding, may be one that feeds them', () => {
  const text = (log: string, more = '') =>
    line(
      files(`${more}\n date: 2026-04-10, chasing: {by: hen, at: young, level: hard}`, log),
      'chasing',
      '2026-04-10',
    ).text;
  const mate = (on: string) => `date: ${on}, parted: {hen: cage 5}\n date: ${on}, paired: {hen: LW-21-02}\n`;
  expect(text(fledged, `${mate('2026-03-20')}date: 2026-03-21, feeding: {cock: all}`)).toContain(
    'The hen came after they had hatched',
  );
  expect(text(fledged, mate('2026-03-14'))).not.toContain('came after');
  expect(text(fledged, `${mate('2026-03-20')}date: 2026-03-20, feeding: {hen: c1}`)).not.toContain(
    'came after',
  );
});

describe('a chase and who is there', () => {
  it('of no level counts with one chick and one egg in the nest', () => {
    const log = 'date: 2026-03-01, laid: 2\n date: 2026-03-03, sitting: hen\n date: 2026-03-15, hatched: e1';
    const room = files('date: 2026-03-16, chasing: {by: cock, at: hen}', log);
    expect(warned(room, 'chasing', '2026-03-16')).toHaveLength(1);
  });

  it('is told by the hard one, whichever was written first', () => {
    const mild = 'date: 2026-04-10, chasing: {by: hen, at: c1}';
    const both = [`${mild}\n date: 2026-04-10, ${hard}`, `date: 2026-04-10, ${hard}\n ${mild}`];
    for (const log of both)
      expect(line(files(log), 'chasing', '2026-04-10').text).toMatch(/^The cock chased c2 hard/);
  });

  it('is over on the day itself where the one that chased was taken away', () => {
    const room = files(`date: 2026-04-10, ${hard}\n date: 2026-04-10, parted: {cock: cage 6}`);
    expect(warned(room, 'chasing', '2026-04-10')).toEqual([]);
  });

  it('is over where the young that were chased died', () => {
    const room = files(
      'date: 2026-04-10, chasing: {by: cock, at: young, level: hard}\n date: 2026-04-11, died: all',
    );
    expect(spell(room, 'chasing', '2026-04-09', '2026-04-20')).toEqual(['04-10 act']);
  });

  it('of young in the hand is no matter of who feeds: they are not there', () => {
    const room = files(
      'date: 2026-03-20, fostered: {hand: all}\n date: 2026-03-22, chasing: {by: cock, at: hen, level: hard}',
      fledged.slice(0, fledged.indexOf('date: 2026-04-03')),
    );
    expect(line(room, 'chasing', '2026-03-22')).toMatchObject({
      level: 'watch',
      text: 'The cock chased the hen hard on 22 Mar. A hunted bird does not eat and does not rest.',
    });
  });

  it('by a mate that came after they hatched is no feeder’s, though the mate before it fed them', () => {
    const mate = (on: string) =>
      line(
        files(
          `date: 2026-03-14, parted: {hen: cage 5}\n date: ${on}, paired: {hen: LW-21-02}\n date: 2026-04-10, chasing: {by: hen, at: young, level: hard}`,
          fledged.replace('2026-03-15, hatched: 3', '2026-03-13, hatched: 3, feeding: {hen: all}'),
        ),
        'chasing',
        '2026-04-10',
      ).text;
    expect(mate('2026-03-16')).toContain('The hen came after they had hatched');
  });

  it('by a mate that came on the day on which they were found may be a feeder’s', () => {
    const room = files(
      'date: 2026-03-15, paired: {hen: LW-21-02}\n date: 2026-04-10, chasing: {by: hen, at: young, level: hard}',
    );
    expect(line(room, 'chasing', '2026-04-10').text).toContain('do not take the hen');
  });
});
