import { describe, expect, it } from 'vitest';
import { day } from '../../rooms.ts';
import { line, pair, spell, warned, waxbills } from './warned.ts';

// Lavender waxbill: 11–13 d of sitting, from memory. Overdue: 4 d past the longest usual incubation of the last egg
// (common practice: 3–4 d of grace), and fewer than 1 in 100 such eggs still to come.
const sat = `
  date: 2026-03-01, laid: 1
  date: 2026-03-02, laid: 1
  date: 2026-03-03, laid: 1
  date: 2026-03-04, laid: 1, sitting: hen
`;

/** The keeper looked, and they still lie there. */
const seen = `${sat}\n date: 2026-03-17, checked: {eggs: 4}`;

describe('overdue eggs', () => {
  it('are said four days past the longest usual sitting, with the odds, for a week', () => {
    const files = { 'LW-1': waxbills(seen) };
    expect(spell(files, 'overdue', '2026-03-10', '2026-04-10')).toEqual(['03-21 … 03-28 watch']);
    expect(line(files, 'overdue', '2026-03-21').text).toBe(
      'e1, e2, e3 and e4 are overdue: day 17–18 of sitting (11–13 d, book); fewer than 1 in 1,000 such eggs hatch later than today. Sitting that began late or was broken off delays the hatch.',
    );
  });

  it('under foster parents are those of their own species', () => {
    // Bengalese finches sit 13–16 d (from memory), four days longer than the waxbills that they were given to.
    const files = {
      'BF-1': pair('BF-1', 'Bengalese finch', `${sat}\n date: 2026-03-05, fostered: {LW-1: all}`),
      'LW-1': waxbills(
        'date: 2026-03-01, laid: 1\n date: 2026-03-04, sitting: hen\n date: 2026-03-05, lost: {broken: e1}',
      ),
    };
    // Nobody looked: until a fortnight past the longest sitting.
    expect(spell(files, 'overdue', '2026-03-15', '2026-04-10')).toEqual(['03-24 … 04-03 watch']);
    expect(line(files, 'overdue', '2026-03-24').text).toMatch(/of sitting \(13–16 d, book\),/);
  });

  it('of two species in one nest are each said in their time', () => {
    const files = {
      'BF-1': pair('BF-1', 'Bengalese finch', `${sat}\n date: 2026-03-05, fostered: {LW-1: all}`),
      'LW-1': waxbills(sat),
    };
    const looked = { ...files, 'LW-1': waxbills(`${sat}\n date: 2026-03-20, checked: {eggs: 8}`) };
    expect(spell(looked, 'overdue', '2026-03-15', '2026-04-10')).toEqual(['03-21 … 03-31 watch']);
    expect(warned(looked, 'overdue', '2026-03-24')).toMatchObject([{ date: day('2026-03-21') }]);
    expect(spell(files, 'overdue', '2026-03-15', '2026-04-10')).toEqual(['03-21 … 04-03 watch']);
    expect(line(files, 'overdue', '2026-03-21').text).toMatch(/past: e1, e2, e3 and e4, day/);
    expect(line(files, 'overdue', '2026-03-24').text).toMatch(/past: e1, e2, e3, e4, BF-1\/1\/e1, /);
  });

  it('are not waited for longer because eggs of another species were put to them later', () => {
    const late = sat.replaceAll('2026-03-0', '2026-03-1');
    const files = {
      'BF-1': pair('BF-1', 'Bengalese finch', `${late}\n date: 2026-03-15, fostered: {LW-1: all}`),
      'LW-1': waxbills(`${sat}\n date: 2026-03-17, checked: {eggs: 8}`),
    };
    expect(line(files, 'overdue', '2026-03-21').text).toMatch(/^e1, e2, e3 and e4 are overdue: day 17–18/);
  });

  it('wait for the last of their clutch, and are told with the days of all', () => {
    const fifth = `${sat}\n date: 2026-03-07, laid: 1\n date: 2026-03-19, checked: {eggs: 5}`;
    const files = { 'LW-1': waxbills(fifth) };
    expect(spell(files, 'overdue', '2026-03-10', '2026-04-10')).toEqual(['03-24 … 03-31 watch']);
    const stored = sat.replace('03-01, laid: 1', '03-01, laid: 1, pulled: e1');
    const setLater = `${stored}\n date: 2026-03-07, set: e1\n date: 2026-03-19, checked: {eggs: 4}`;
    expect(spell({ 'LW-1': waxbills(setLater) }, 'overdue', '2026-03-10', '2026-04-10')).toEqual([
      '03-24 … 03-31 watch',
    ]);
    expect(line(files, 'overdue', '2026-03-24').text).toMatch(
      /^e1, e2, e3, e4 and e5 are overdue: day 17–21 of sitting/,
    );
  });

  it('are not kept back for weeks by another clutch that was found warm: nobody knows how long that one took', () => {
    const found = 'date: 2026-01-10, laid: 4, sitting\n date: 2026-01-20, hatched: 4';
    const files = { 'LW-1': waxbills(seen), 'LW-2': waxbills(found).replace('pair: LW-1', 'pair: LW-2') };
    expect(spell(files, 'overdue', '2026-03-10', '2026-04-10')).toEqual(['03-21 … 03-28 watch']);
  });

  it('end when the eggs have a fate', () => {
    const files = {
      'LW-1': waxbills(`${sat}\n date: 2026-03-23, lost: {addled: [e1, e2], clear: [e3, e4]}`),
    };
    expect(spell(files, 'overdue', '2026-03-15', '2026-04-10')).toEqual(['03-21 … 03-22 watch']);
  });

  it('are nothing while chicks share the nest, and never an egg that the lamp showed clear', () => {
    const chicks = `${sat}\n date: 2026-03-16, hatched: [e1, e2]`;
    expect(spell({ 'LW-1': waxbills(chicks) }, 'overdue', '2026-03-15', '2026-03-30')).toEqual([]);
    const looked = `${chicks}\n date: 2026-03-19, checked: {eggs: 2, chicks: 2}`;
    expect(spell({ 'LW-1': waxbills(looked) }, 'overdue', '2026-03-15', '2026-03-30')).toEqual([]);
    const clear = `${sat}\n date: 2026-03-11, candled: {clear: [e1, e2, e3], fertile: e4}\n date: 2026-03-18, checked`;
    expect(line({ 'LW-1': waxbills(clear) }, 'overdue', '2026-03-22').text).toMatch(/^e4 is overdue/);
  });

  it('are not the one that has pipped', () => {
    const pipped = { 'LW-1': waxbills(`${sat}\n date: 2026-03-20, pipped: e3`) };
    expect(line(pipped, 'overdue', '2026-03-21').text).toMatch(/^e1, e2 and e4 are overdue/);
  });

  it('wait as much longer as the room’s own eggs took', () => {
    const slow = (id: string, year: number) =>
      pair(
        id,
        'lavender waxbill',
        `date: ${year}-05-01, laid: 1
         date: ${year}-05-02, laid: 1
         date: ${year}-05-03, laid: 1
         date: ${year}-05-04, laid: 1, sitting: hen
         date: ${year}-05-21, hatched: 4`,
      );
    const files = { 'LW-1': waxbills(sat), 'LW-2': slow('LW-2', 2024), 'LW-3': slow('LW-3', 2025) };
    expect(warned(files, 'overdue', '2026-03-21')).toEqual([]);
    const [first] = spell(files, 'overdue', '2026-03-15', '2026-04-10');
    expect(Number(first?.slice(3, 5))).toBeGreaterThan(21);
  });

  it('tell the odds of the one that may best hatch yet, where such eggs differ much', () => {
    const wide = (log: string) => ({
      'species/ridge-finch.yaml': 'species: ridge finch\nclutch: 4-5\nincubation: 10-20\nsitting-from: 1\n',
      'RF-1': pair('RF-1', 'ridge finch', `${log}\n date: 2026-03-20, checked`),
    });
    const odds = (log: string) => {
      const { text } = line(wide(log), 'overdue', '2026-04-01');
      return Number(/; (\d) in 1,000 such eggs hatch later than today/.exec(text)?.[1]);
    };
    const late = `${sat}\n date: 2026-03-07, laid: 1`;
    expect(odds(sat)).toBeGreaterThanOrEqual(1);
    expect(odds(late)).toBeGreaterThan(odds(sat));
  });

  // Lockwood & Massey, Bird Scene: do not discard fertile eggs just because they did not hatch on the day of a book.
  it('never ask for an egg to be thrown away', () => {
    const { text, check } = line({ 'LW-1': waxbills(seen) }, 'overdue', '2026-03-21');
    expect(`${text} ${check}`).not.toMatch(/discard|throw|destroy|remove/i);
    expect(check).toContain('a doubtful egg stays where it is');
  });
});

describe('a nest into which nobody has looked since its eggs could hatch', () => {
  it('may hold chicks as well: that is asked, and no odds are given of eggs that nobody saw', () => {
    const files = { 'LW-1': waxbills(sat) };
    const { text, check } = line(files, 'overdue', '2026-03-21');
    expect(text).toBe(
      'The usual days of hatching are past: e1, e2, e3 and e4, day 17–18 of sitting (11–13 d, book), and nobody has looked since 4 Mar. Chicks, or eggs?',
    );
    expect(check).toMatch(
      /^listen for begging, and see whether food is carried in .*, before anybody looks in;/,
    );
    // As long as live food is asked for: a fortnight past the longest sitting, 13 d (species profile).
    expect(spell(files, 'overdue', '2026-03-10', '2026-04-10')).toEqual(['03-21 … 03-30 watch']);
    // A look that found them eggs: a week, as of any.
    const looked = { 'LW-1': waxbills(`${sat}\n date: 2026-03-21, checked: {eggs: 4}`) };
    expect(spell(looked, 'overdue', '2026-03-10', '2026-04-10')).toEqual(['03-21 … 03-28 watch']);
    // On the first day on which they could hatch, 14 March, it saw what lay there; a day before, it did not.
    const first = (on: string) => ({ 'LW-1': waxbills(`${sat}\n date: ${on}, checked: {eggs: 4}`) });
    expect(line(first('2026-03-14'), 'overdue', '2026-03-21').text).toMatch(/are overdue/);
    expect(line(first('2026-03-13'), 'overdue', '2026-03-21').text).toMatch(/nobody has looked since 13 Mar/);
    const named = { 'LW-1': waxbills(`${sat}\n date: 2026-03-21, clutch: 1, checked: {eggs: 4}`) };
    expect(line(named, 'overdue', '2026-03-21').text).toMatch(/^e1, e2, e3 and e4 are overdue/);
  });

  it('was seen when eggs were brought to it', () => {
    const brought = {
      'LW-1': waxbills(
        'date: 2026-03-04, laid: 2, pulled: all\n date: 2026-03-08, set: {LW-1: all}, sitting: hen',
      ),
    };
    expect(line(brought, 'overdue', '2026-03-26').text).toMatch(/nobody has looked since 8 Mar/);
  });

  it('is not looked into by who writes of the clutch before', () => {
    const before = 'date: 2026-02-01, laid: 2\n date: 2026-02-03, sitting: hen';
    const late = 'date: 2026-03-20, clutch: 1, lost: {missing: all}';
    const files = { 'LW-1': waxbills(`${before}\n ${sat.replace('laid', 'clutch: 2, laid')}\n ${late}`) };
    expect(line(files, 'overdue', '2026-03-21').text).toMatch(/^The usual days of hatching are past/);
  });

  it('is not asked about where chicks were heard or seen, though one of them died', () => {
    const heard = `${sat}\n date: 2026-03-16, heard: begging`;
    expect(spell({ 'LW-1': waxbills(heard) }, 'overdue', '2026-03-15', '2026-04-10')).toEqual([]);
    const died = `${heard}\n date: 2026-03-20, died: 1`;
    // A look before anybody heard them tells nothing of what came since.
    const before = died.replace(
      'date: 2026-03-16',
      'date: 2026-03-15, checked: {eggs: 4}\n date: 2026-03-16',
    );
    expect(spell({ 'LW-1': waxbills(before) }, 'overdue', '2026-03-15', '2026-04-10')).toEqual([]);
    expect(spell({ 'LW-1': waxbills(died) }, 'overdue', '2026-03-15', '2026-04-10')).toEqual([]);
    // A look that found eggs alone settles it.
    const looked = `${died}\n date: 2026-03-22, checked: {eggs: 3, chicks: 0}`;
    expect(line({ 'LW-1': waxbills(looked) }, 'overdue', '2026-03-22').text).toMatch(
      /^e2, e3 and e4 are overdue/,
    );
  });

  it('that is never looked into needs no lamp, and eggs that were never counted have no number', () => {
    const files = { 'LW-1': waxbills('date: 2026-03-04, sitting: hen', 'nest-looks: never') };
    const { text, check } = line(files, 'overdue', '2026-03-21');
    expect(text).toMatch(
      /^The usual days of hatching are past: the eggs, day 17–30 of sitting .* nobody has looked yet\./,
    );
    expect(check).not.toMatch(/lamp|candle/);
    expect(check).toContain('does somebody still sit at dusk?');
  });
});

// An incubator that is too cool delays the hatch (common practice).
it('eggs in an incubator are not sat on, and its thermometer is looked at', () => {
  const files = { 'LW-1': waxbills(`${sat}\n date: 2026-03-05, set: {incubator: all}`) };
  const { text, check } = line(files, 'overdue', '2026-03-22');
  expect(text).toMatch(/are overdue: day 18.* of incubation \(11–13 d, book\)/);
  expect(`${text} ${check}`).not.toMatch(/sitting|nest/);
  expect(check).toContain('second thermometer');
});
