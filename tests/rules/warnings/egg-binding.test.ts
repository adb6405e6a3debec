import { describe, expect, it } from 'vitest';
import { line, pair, spell, warned, waxbills } from './warned.ts';

const laying = `
  date: 2026-03-01, paired
  date: 2026-03-05, laid: 1
  date: 2026-03-06, laid: 1
`;
const hen = 'hen: LW-20-11\ncock: LW-20-01';
const files = (more: string, log = laying) => ({ 'LW-1': waxbills(`${log}\n${more}`, hen) });

// Small hens die of egg binding quickly; one clinic gives about 48 h (veterinary and keepers' pages).
describe('a hen that cannot pass her egg', () => {
  it('is an emergency for an avian vet, on the day and the three that follow; then she is an unwell bird', () => {
    const room = files('date: 2026-03-07, unwell: {hen: fluffed and straining}');
    expect(spell(room, 'egg-binding', '2026-03-01', '2026-03-20')).toEqual(['03-07 … 03-10 act']);
    expect(spell(room, 'unwell', '2026-03-01', '2026-03-20')).toEqual(['03-11 … 03-14 watch']);
    const { text, check } = line(room, 'egg-binding', '2026-03-07');
    expect(text).toContain('The hen LW-20-11: “fluffed and straining” on 7 Mar.');
    expect(text).toContain('an emergency for an avian vet');
    expect(check).toContain('do not press, and do not break the egg');
  });

  it('is feared of a hen on the floor about the time of laying, and of no hen at another time', () => {
    expect(
      warned(files('date: 2026-03-07, unwell: {hen: on the floor}'), 'egg-binding', '2026-03-07'),
    ).toHaveLength(1);
    const beforeFirst = 'date: 2026-03-04, nest: lined, unwell: {hen: sits puffed up all day}';
    expect(warned(files(beforeFirst, ''), 'egg-binding', '2026-03-04')).toHaveLength(1);
    for (const words of ['quiet', 'bleeding from a claw', 'off her food'])
      expect(
        warned(files(`date: 2026-03-07, unwell: {hen: ${words}}`), 'egg-binding', '2026-03-07'),
        words,
      ).toEqual([]);
    const winter = 'date: 2026-11-20, unwell: {hen: fluffed}';
    expect(warned(files(winter), 'egg-binding', '2026-11-20')).toEqual([]);
    expect(warned(files(winter), 'unwell', '2026-11-20')).toHaveLength(1);
  });

  // An egg takes about a day; four more for one that is held back.
  it('is feared for five days after the last egg of a small bird, also while she is only courted', () => {
    const fluffed = (on: string) => `date: ${on}, unwell: {hen: fluffed}`;
    expect(warned(files(fluffed('2026-03-11')), 'egg-binding', '2026-03-11')).toHaveLength(1);
    expect(warned(files(fluffed('2026-03-12')), 'egg-binding', '2026-03-12')).toEqual([]);
    const third = `date: 2026-03-07, laid: 1\n ${fluffed('2026-03-12')}`;
    expect(warned(files(third), 'egg-binding', '2026-03-12')).toHaveLength(1);
    const courted = files('date: 2026-03-04, courting, unwell: {hen: fluffed}', '');
    expect(warned(courted, 'egg-binding', '2026-03-04')).toHaveLength(1);
  });

  // From memory, of veterinary pages: an egg that presses makes a hen breathe hard, and her tail bob.
  it('is feared of a hen that breathes hard about then, with the caution for people besides; of one that sneezes it is not', () => {
    for (const words of ['tail bobbing', '"fluffed, tail bobbing"', 'breathing hard'])
      expect(
        line(files(`date: 2026-03-07, unwell: {hen: ${words}}`), 'egg-binding', '2026-03-07').check,
      ).toMatch(/do not break the egg; for people: mask.*psittacosis/);
    const fluffed = files('date: 2026-03-07, unwell: {hen: fluffed}');
    expect(line(fluffed, 'egg-binding', '2026-03-07').check).not.toContain('psittacosis');
    for (const [words, day] of [
      ['sneezing', '2026-03-07'],
      ['tail bobbing', '2026-03-12'],
    ] as const) {
      const other = files(`date: ${day}, unwell: {hen: ${words}}`);
      expect(warned(other, 'egg-binding', day), words).toEqual([]);
      expect(line(other, 'unwell', day).check).toContain('psittacosis');
    }
  });

  it('is feared for three weeks after the nest was lined, and not for a nest begun after she was ill', () => {
    const lined = (on: string) =>
      files(`date: 2026-03-01, nest: lined\n date: ${on}, unwell: {hen: fluffed}`, '');
    expect(warned(lined('2026-03-22'), 'egg-binding', '2026-03-22')).toHaveLength(1);
    expect(warned(lined('2026-03-23'), 'egg-binding', '2026-03-23')).toEqual([]);
    const begun = files('date: 2026-03-01, unwell: {hen: fluffed}\n date: 2026-03-03, nest: building', '');
    expect(warned(begun, 'egg-binding', '2026-03-03')).toEqual([]);
  });

  it('is not feared of a hen that sits on her eggs, or whose eggs have hatched', () => {
    const sits = files('date: 2026-03-14, nest: lined\n date: 2026-03-15, unwell: {hen: fluffed}');
    expect(warned(sits, 'egg-binding', '2026-03-15')).toEqual([]);
    const found =
      'date: 2026-03-10, laid: 4\n date: 2026-03-11, hatched: 4\n date: 2026-03-12, unwell: {hen: fluffed}';
    expect(warned(files(found, ''), 'egg-binding', '2026-03-12')).toEqual([]);
  });

  it('is not feared for the nest that was built for eggs already laid', () => {
    const built = `date: 2026-02-25, nest: lined\n${laying}\n date: 2026-03-08, lost: {eaten: all}`;
    const room = files('date: 2026-03-14, unwell: {hen: fluffed}', built);
    expect(warned(room, 'egg-binding', '2026-03-14')).toEqual([]);
    const whileLaying = built.replace('03-06, laid: 1', '03-06, laid: 1, nest: lined');
    expect(
      warned(files('date: 2026-03-14, unwell: {hen: fluffed}', whileLaying), 'egg-binding', '2026-03-14'),
    ).toEqual([]);
    const anew = files('date: 2026-03-14, nest: building, unwell: {hen: fluffed}', built);
    expect(warned(anew, 'egg-binding', '2026-03-14')).toHaveLength(1);
  });

  it('says of a straining hen what it is, and of a fluffed one what it can be', () => {
    const strains = files('date: 2026-03-07, unwell: {hen: straining}');
    expect(line(strains, 'egg-binding', '2026-03-07').text).toContain('She may not be able to pass an egg:');
    expect(warned(strains, 'egg-binding', '2026-03-07')).toMatchObject([{ pair: 'LW-1', bird: 'LW-20-11' }]);
    const fluffed = files('date: 2026-03-07, unwell: {hen: fluffed}');
    expect(line(fluffed, 'egg-binding', '2026-03-07').text).toContain(
      'About the time of laying that can be an egg that she cannot pass:',
    );
  });

  it('may be a hen without a mate', () => {
    const alone = {
      'birds.yaml': `
        birds:
          - {id: LW-20-15, species: lavender waxbill, sex: hen, log: [{date: 2026-03-07, unwell: straining}]}
      `,
    };
    expect(warned(alone, 'egg-binding', '2026-03-07')).toMatchObject([{ pair: null, bird: 'LW-20-15' }]);
  });

  it('is not feared where the nest was just taken out, nor of one of two hens that nobody told apart', () => {
    const removed = files('date: 2026-03-04, nest: removed, unwell: {hen: fluffed}', '');
    expect(warned(removed, 'egg-binding', '2026-03-04')).toEqual([]);
    const two = {
      'LW-1': waxbills(
        `${laying}\n date: 2026-03-07, unwell: {LW-20-11: fluffed}`,
        'hen: [LW-20-11, LW-20-12]',
      ),
    };
    expect(warned(two, 'egg-binding', '2026-03-07')).toEqual([]);
  });

  it('is feared where she lays now, though an earlier mate’s nest is long empty', () => {
    const before = pair(
      'LW-2',
      'lavender waxbill',
      'date: 2025-05-01, laid: 1\n date: 2025-06-01, parted',
      hen,
    );
    const room = { ...files('date: 2026-03-07, unwell: {hen: fluffed}'), 'LW-2': before };
    expect(warned(room, 'egg-binding', '2026-03-07')).toHaveLength(1);
  });

  it('is not over with what the vet ordered for something before', () => {
    const log = (after: string) =>
      files(`date: 2026-03-02, treated: {hen: worms}\n date: 2026-03-07, unwell: {hen: straining}\n${after}`);
    expect(warned(log(''), 'egg-binding', '2026-03-08')).toHaveLength(1);
    expect(
      warned(log('date: 2026-03-08, treated: {hen: seen by the vet}'), 'egg-binding', '2026-03-08'),
    ).toEqual([]);
  });

  it('is not over with the egg of that very day: nobody knows which came first', () => {
    const room = files('date: 2026-03-07, laid: 1, unwell: {hen: straining}');
    expect(warned(room, 'egg-binding', '2026-03-07')).toHaveLength(1);
  });

  it('is also one that came as a new mate and stands in no bird list', () => {
    const room = files(
      'date: 2026-03-10, paired: {hen: LW-21-07}\n date: 2026-03-12, unwell: {hen: straining}',
    );
    expect(warned(room, 'egg-binding', '2026-03-12')).toMatchObject([{ pair: 'LW-1', bird: 'LW-21-07' }]);
  });

  it('is feared of the one in the hen’s place, also where the bird list calls it a cock', () => {
    const room = {
      ...files('date: 2026-03-07, unwell: {hen: straining}'),
      'birds.yaml': 'birds: [{id: LW-20-11, species: lavender waxbill, sex: cock}]\n',
    };
    expect(warned(room, 'egg-binding', '2026-03-07')).toMatchObject([{ pair: 'LW-1', bird: 'LW-20-11' }]);
  });

  it('is no cock', () => {
    const room = files('date: 2026-03-07, unwell: {cock: straining}');
    expect(warned(room, 'egg-binding', '2026-03-07')).toEqual([]);
    expect(warned(room, 'unwell', '2026-03-07')[0]?.level).toBe('act');
  });

  it.each([
    ['she laid', 'date: 2026-03-08, laid: 1', '03-07 act'],
    ['the vet saw her', 'date: 2026-03-08, treated: {hen: as the vet ordered}', '03-07 act'],
    ['the vet saw her on that very day', 'date: 2026-03-07, treated: {hen: as the vet ordered}', ''],
    ['she is well again', 'date: 2026-03-09, unwell: {hen: well again}', '03-07 … 03-08 act'],
    ['she died', 'date: 2026-03-08, died: {egg bound: hen}', '03-07 act'],
  ])('is no more to be feared when %s', (_what, then, days) => {
    const room = files(`date: 2026-03-07, unwell: {hen: straining}\n${then}`);
    expect(spell(room, 'egg-binding', '2026-03-01', '2026-03-20')).toEqual(days === '' ? [] : [days]);
  });

  it('is one cause: no line about the missing egg beside it, and none about an unwell bird', () => {
    const room = files('date: 2026-03-07, checked: {eggs: 2}, unwell: {hen: straining}');
    expect(warned(room, 'egg-gap', '2026-03-07')).toEqual([]);
    expect(warned(room, 'unwell', '2026-03-07')).toEqual([]);
  });
});
