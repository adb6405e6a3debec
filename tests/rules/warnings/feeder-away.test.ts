import { describe, expect, it } from 'vitest';
import { line, spell, warned, waxbills } from './warned.ts';

const heads = 'cock: LW-20-01\nhen: LW-20-11\nhousing: flight 2';
const fledged = `
  date: 2026-03-01, laid: 3
  date: 2026-03-03, sitting: hen
  date: 2026-03-15, hatched: 3
  date: 2026-04-03, fledged: 3
`;
const files = (more: string) => ({ 'LW-1': waxbills(`${fledged}\n${more}`, heads) });

// do not take the cock before you saw who feeds; look at each chick's crop within hours; put the family together again
// if the parent that was left neglects or chases some of the young: common practice.
describe('young whose feeder was parted', () => {
  it('may starve: two days press, five are watched', () => {
    const room = files('date: 2026-04-06, feeding: {cock: all}\n date: 2026-04-08, parted: {cock: cage 6}');
    expect(spell(room, 'feeder-away', '2026-04-01', '2026-04-30')).toEqual([
      '04-08 … 04-10 act',
      '04-11 … 04-13 watch',
    ]);
    const { text, check } = line(room, 'feeder-away', '2026-04-08');
    expect(text).toBe(
      'The cock LW-20-01 was taken away on 8 Apr while the young still depend on being fed: the cock fed c1, c2 and c3 on 6 Apr. Young that nobody feeds starve within a day or two.',
    );
    expect(check).toMatch(/^each chick’s crop within hours.*put the family together again/);
  });

  it('press as well when nobody wrote who feeds', () => {
    const { level, text } = line(files('date: 2026-04-08, parted'), 'feeder-away', '2026-04-08');
    expect(level).toBe('act');
    expect(text).toContain('The pair was parted on 8 Apr');
    expect(text).toContain('nobody wrote who feeds c1, c2 and c3');
  });

  it('are none of months ago, though nobody wrote that they feed themselves', () => {
    for (const away of ['parted', 'died: cock', 'died: hen'])
      expect(warned(files(`date: 2026-08-08, ${away}`), 'feeder-away', '2026-08-08'), away).toEqual([]);
  });

  it('press at any age while they were seen fed, or left the nest, in the week before', () => {
    for (const seen of ['feeding: {cock: all}', 'crops: {full: all}']) {
      const room = files(`date: 2026-08-01, ${seen}\ndate: 2026-08-08, died: cock`);
      expect(line(room, 'feeder-away', '2026-08-08').level, seen).toBe('act');
      expect(
        warned(files(`date: 2026-07-31, ${seen}\ndate: 2026-08-08, died: cock`), 'feeder-away', '2026-08-08'),
        seen,
      ).toEqual([]);
    }
  });

  it('are watched for a day where the one that stayed was seen feeding all of them', () => {
    const room = files('date: 2026-04-08, feeding: {hen: all}, parted: {cock: cage 6}');
    expect(spell(room, 'feeder-away', '2026-04-01', '2026-04-30')).toEqual(['04-08 … 04-09 watch']);
  });

  it('press for those whom she was not seen feeding', () => {
    const room = files('date: 2026-04-08, feeding: {hen: [c1, c2]}, parted: {cock: cage 6}');
    expect(line(room, 'feeder-away', '2026-04-08')).toMatchObject({ level: 'act' });
    expect(line(room, 'feeder-away', '2026-04-08').text).toContain(
      'the hen fed c1 and c2 on 8 Apr; nobody wrote who feeds c3',
    );
  });

  it.each([
    ['each was seen fed', 'feeding: {hen: all}'],
    ['each crop was full', 'crops: {full: all}'],
    ['they are together again', 'reunited'],
    ['they feed themselves', 'independent: all'],
  ])('are out of danger when %s', (_what, then) => {
    const room = files(`date: 2026-04-08, parted: {cock: cage 6}\n date: 2026-04-09, ${then}`);
    expect(spell(room, 'feeder-away', '2026-04-01', '2026-04-30')).toEqual(['04-08 act']);
  });

  it('press less with full crops on the day itself, but are looked at again the next', () => {
    const room = files(
      'date: 2026-04-08, parted: {cock: cage 6}\n date: 2026-04-08, time: 18:00, crops: {full: all}',
    );
    expect(spell(room, 'feeder-away', '2026-04-08', '2026-04-09')).toEqual(['04-08 watch', '04-09 act']);
  });
});

it('young whose feeder died need another one', () => {
  const room = files('date: 2026-04-08, feeding: {cock: all}\n date: 2026-04-09, died: cock');
  const { level, text, check } = line(room, 'feeder-away', '2026-04-09');
  expect(level).toBe('act');
  expect(text).toContain('The cock LW-20-01 died on 9 Apr');
  expect(check).toContain('another pair or the hand');
});

it('a parting without young is nobody’s hunger', () => {
  const room = {
    'LW-1': waxbills('date: 2026-03-01, paired\n date: 2026-04-08, parted: {cock: cage 6}', heads),
  };
  expect(warned(room, 'feeder-away', '2026-04-08')).toEqual([]);
});

it('naked chicks of a cock that died need warmth first, and are said there; one taken away is missed for his food', () => {
  const naked = fledged.split('\n').slice(0, 4).join('\n');
  const on = (then: string) => ({ 'LW-1': waxbills(`${naked}\n date: 2026-03-18, ${then}`, heads) });
  expect(warned(on('died: cock'), 'feeder-away', '2026-03-18')).toEqual([]);
  expect(warned(on('died: cock'), 'parent-lost', '2026-03-18')).toHaveLength(1);
  expect(warned(on('parted: {cock: cage 6}'), 'feeder-away', '2026-03-18')).toHaveLength(1);
  expect(warned(on('parted: {cock: cage 6}'), 'parent-lost', '2026-03-18')).toEqual([]);
});

// A bird that hunted its mate or its young is not put back to them (common practice).
it('feathered young beside eggs that grow cold must be fed, too: who feeds them is asked with whether anybody sits', () => {
  // Lavender waxbills brood for seven to nine days (species profile); a foster’s own eggs lie beside the guest.
  const room = {
    a: waxbills(
      'date: 2026-03-01, laid: 3, sitting\n date: 2026-03-15, hatched: 3\n date: 2026-03-26, fostered: {LW-2: c3}',
    ),
    b: waxbills(
      'date: 2026-03-21, laid: 4, sitting\n date: 2026-03-27, died: hen',
      heads.replace('20-01', '21-01').replace('20-11', '21-11'),
    ).replace('pair: LW-1', 'pair: LW-2'),
  };
  expect(line(room, 'parent-lost', '2026-03-27').text).toContain('with 4 eggs in the nest');
  const fed = line(room, 'feeder-away', '2026-03-27');
  expect(fed.level).toBe('act');
  expect(fed.text).toContain('nobody wrote who feeds LW-1/1/c3');
});

it('a cock that chased hard is not put back to the family that he was taken from', () => {
  const room = files(
    'date: 2026-04-07, chasing: {by: cock, at: hen, level: fierce}\n date: 2026-04-08, parted: {cock: cage 6}',
  );
  const { level, check } = line(room, 'feeder-away', '2026-04-08');
  expect(level).toBe('act');
  expect(check).not.toContain('together again');
  expect(check).toContain('the hand for those that nobody feeds; the one that chased stays apart');
});

it.each([
  ['hard', 'date: 2026-04-07, chasing: {by: cock, level: hard}', false],
  ['and nobody wrote who', 'date: 2026-04-07, chasing: {at: c1, level: fierce}', false],
  ['on the day of the parting', 'date: 2026-04-08, chasing: {by: cock, level: hard}', false],
  ['mildly', 'date: 2026-04-07, chasing: {by: cock, level: mild}', true],
  ['six days before', 'date: 2026-04-02, chasing: {by: cock, level: hard}', false],
  ['a week before', 'date: 2026-04-01, chasing: {by: cock, level: hard}', true],
  ['and was not the one that was taken', 'date: 2026-04-07, chasing: {by: hen, level: hard}', true],
])('a parent that chased %s may be put back: %#', (_how, chase, back) => {
  const room = files(`${chase}\n date: 2026-04-08, parted: {cock: cage 6}`);
  expect(line(room, 'feeder-away', '2026-04-08').check.includes('together again')).toBe(back);
});

it('young of which only some had a full crop on the day itself press', () => {
  const crops = (said: string) =>
    files(`date: 2026-04-08, parted: {cock: cage 6}\n date: 2026-04-08, time: 18:00, crops: ${said}`);
  expect(line(crops('{full: [c1, c2]}'), 'feeder-away', '2026-04-08').level).toBe('act');
  expect(line(crops('{full: [c1, c2], thin: c3}'), 'feeder-away', '2026-04-08').level).toBe('act');
});

// A cock takes the last young with him into another cage while the hen sits again (common practice).
it('young that were taken out together with a parent are with who feeds them', () => {
  const along = files('date: 2026-04-08, parted: {cock: cage 6}, moved: {"c1, c2": cage 6}');
  expect(line(along, 'feeder-away', '2026-04-08').text).toContain('nobody wrote who feeds c3.');
  const all = files('date: 2026-04-08, moved: {cock: cage 6, all: cage 6}');
  expect(warned(all, 'feeder-away', '2026-04-09')).toEqual([]);
  expect(warned(all, 'young-away', '2026-04-09')).toEqual([]);
});

describe('who fed before and who chased after', () => {
  it('are watched where both parents were seen feeding, and press where nobody wrote which of them went', () => {
    const both = files(
      'date: 2026-04-07, feeding: {cock: all, hen: all}\n date: 2026-04-08, parted: {cock: cage 6}',
    );
    expect(line(both, 'feeder-away', '2026-04-08').level).toBe('watch');
    const either = files('date: 2026-04-07, feeding: {hen: all}\n date: 2026-04-08, parted');
    expect(line(either, 'feeder-away', '2026-04-08').level).toBe('act');
  });

  it('press though crops were full on the day before', () => {
    const room = files('date: 2026-04-07, crops: {full: all}\n date: 2026-04-08, parted: {cock: cage 6}');
    expect(line(room, 'feeder-away', '2026-04-08').level).toBe('act');
  });

  it('press where nobody wrote where any of them lives', () => {
    const room = {
      'LW-1': waxbills(`${fledged}\ndate: 2026-04-08, parted`, 'cock: LW-20-01\nhen: LW-20-11'),
    };
    expect(line(room, 'feeder-away', '2026-04-08').level).toBe('act');
    const died = {
      'LW-1': waxbills(`${fledged}\ndate: 2026-04-08, died: cock`, 'cock: LW-20-01\nhen: LW-20-11'),
    };
    expect(line(died, 'feeder-away', '2026-04-08').level).toBe('act');
  });

  it('who chases after the parting is not the one that is away', () => {
    const room = files(
      'date: 2026-04-08, parted: {cock: cage 6}\n date: 2026-04-09, chasing: {at: c2, level: hard}',
    );
    expect(line(room, 'feeder-away', '2026-04-09').check).toContain('put the family together again');
  });
});
