import { describe, expect, it } from 'vitest';
import { line, mixedNest, pair, spell, warned, waxbills } from './warned.ts';

// Lavender waxbill: fledging at 17–21 d (Amniote database: 17; from memory: 17–21).
const brood = `
  date: 2026-03-01, laid: 4
  date: 2026-03-02, sitting: hen
  date: 2026-03-13, checked
  date: 2026-03-14, hatched: 3
`;
const files = (more: string) => ({ 'LW-1': waxbills(`${brood}\n${more}`) });

describe('a chick that left the nest too early', () => {
  it('may chill today and tomorrow, and is watched until the usual age', () => {
    const room = files('date: 2026-03-28, fledged: c2');
    expect(spell(room, 'fledged-early', '2026-03-20', '2026-04-10')).toEqual([
      '03-28 … 03-29 act',
      '03-30 watch',
    ]);
    expect(line(room, 'fledged-early', '2026-03-28').text).toBe(
      'c2 left the nest on 28 Mar, at 14 d; 17–21 d is usual. So young a bird chills on the floor in its first night, and nobody wrote who feeds it since.',
    );
    expect(line(room, 'fledged-early', '2026-03-28').check).toMatch(
      /^at dusk: warm, off the floor, .* Put it back if it will stay\./,
    );
    const younger = files('date: 2026-03-24, fledged: c2');
    expect(spell(younger, 'fledged-early', '2026-03-20', '2026-04-10')).toEqual([
      '03-24 … 03-25 act',
      '03-26 … 03-29 watch',
    ]);
  });

  it('is not the one that leaves a day before the usual age', () => {
    expect(warned(files('date: 2026-03-30, fledged: c2'), 'fledged-early', '2026-03-30')).toEqual([]);
    expect(warned(files('date: 2026-03-29, fledged: c2'), 'fledged-early', '2026-03-29')).toHaveLength(1);
  });

  it('is over when it is back in the nest, and presses less once it was seen fed', () => {
    const back = files('date: 2026-03-28, fledged: c2\n date: 2026-03-29, back: c2');
    expect(spell(back, 'fledged-early', '2026-03-20', '2026-04-10')).toEqual(['03-28 act']);
    const fed = files('date: 2026-03-28, fledged: c2, feeding: {cock: c2}');
    expect(warned(fed, 'fledged-early', '2026-03-28')).toMatchObject([{ level: 'watch' }]);
    expect(line(fed, 'fledged-early', '2026-03-28').text).toMatch(
      /chills on the floor in its first night\.$/,
    );
  });

  it('presses on where it was fed in the nest only, or another of those that left was', () => {
    const level = (log: string) => line(files(log), 'fledged-early', '2026-03-28').level;
    expect(level('date: 2026-03-27, feeding: {cock: c2}\n date: 2026-03-28, fledged: c2')).toBe('act');
    expect(level('date: 2026-03-28, fledged: [c1, c2], feeding: {cock: c1}')).toBe('act');
  });

  it('is told with the day on which each of them left', () => {
    const room = files('date: 2026-03-27, fledged: c1\n date: 2026-03-28, fledged: c2');
    expect(line(room, 'fledged-early', '2026-03-28').text).toMatch(
      /^c1 left the nest on 27 Mar, c2 on 28 Mar, at 13–14 d;/,
    );
    expect(spell(room, 'fledged-early', '2026-03-27', '2026-03-30')).toEqual([
      '03-27 … 03-29 act',
      '03-30 watch',
    ]);
  });

  // Young of the usual age that are chased back into the nest come to harm (common practice).
  it('is not the one that may be old enough, as nobody saw the hatching', () => {
    // Red-headed parrotfinch: fledging at 20–24 d. Begging heard on 2 April, counted on the 12th, out on the 24th: 22 d.
    const found = {
      'A-1': pair(
        'A-1',
        'red-headed parrotfinch',
        `date: 2026-03-16, clutch: 1, laid: 1
         date: 2026-03-20, laid: 3, sitting: both
         date: 2026-04-02, heard: begging
         date: 2026-04-12, checked: {chicks: 4}
         date: 2026-04-24, fledged: 4`,
      ),
    };
    expect(spell(found, 'fledged-early', '2026-04-20', '2026-05-05')).toEqual([]);
    // One was seen hatched that day, by itself: of the three counted later nobody wrote it.
    const one = { 'A-1': found['A-1'].replace('heard: begging', 'hatched: 1') };
    expect(spell(one, 'fledged-early', '2026-04-20', '2026-05-05')).toEqual([]);
    // Chicks of a clutch of five hatch within four days of the one that was heard.
    const far = { 'A-1': found['A-1'].replace('04-24, fledged', '04-17, fledged') };
    expect(line(far, 'fledged-early', '2026-04-17')).toMatchObject({
      level: 'act',
      text: expect.stringMatching(/at 11–18 d; 20–24 d is usual/),
    });
  });

  it('is watched, and never put back, where the hatching was written days after the last look', () => {
    const out = {
      'LW-1': waxbills(
        `date: 2026-02-28, laid: 1
         date: 2026-03-03, laid: 3, sitting: hen
         date: 2026-03-14, hatched: 3
         date: 2026-03-28, fledged: c2`,
      ),
    };
    expect(spell(out, 'fledged-early', '2026-03-20', '2026-04-10')).toEqual(['03-28 … 03-30 watch']);
    const { text, check } = line(out, 'fledged-early', '2026-03-28');
    expect(text).toMatch(/at 14–16 d; 17–21 d is usual\. A bird that leaves too early chills/);
    expect(check).not.toMatch(/put it back/i);
    expect(check).toContain('One that flies up by itself is old enough: leave it be');
  });

  it('beside one that is surely too young waits, where it can have been old enough', () => {
    const room = {
      'LW-1': waxbills(
        `date: 2026-02-28, laid: 1
         date: 2026-03-03, laid: 3, sitting: hen
         date: 2026-03-14, hatched: 3
         date: 2026-03-15, hatched: 1
         date: 2026-03-28, fledged: [c2, c4]`,
      ),
    };
    expect(line(room, 'fledged-early', '2026-03-28')).toMatchObject({
      level: 'act',
      text: expect.stringMatching(/^c4 left the nest on 28 Mar, at 13 d;/),
    });
  });

  it('is watched under foster parents too, in whose journal the hatching stands', () => {
    const room = {
      'LW-1': waxbills(
        'date: 2026-02-28, laid: 1\n date: 2026-03-03, laid: 3, sitting: hen\n date: 2026-03-04, fostered: {LW-2: all}',
      ),
      'LW-2': pair(
        'LW-2',
        'lavender waxbill',
        'date: 2026-03-05, checked: {eggs: 4}\n date: 2026-03-14, hatched: 3\n date: 2026-03-28, fledged: 3',
      ),
    };
    expect(spell(room, 'fledged-early', '2026-03-20', '2026-04-10')).toEqual(['03-28 … 03-30 watch']);
  });

  it('is watched, and never put back, where nobody had seen that nest before the hatching was written', () => {
    const first = (before: string) => ({
      'LW-1': waxbills(`${before}\n date: 2026-03-14, hatched: 3\n date: 2026-03-28, fledged: 3`),
    });
    for (const unseen of ['', 'date: 2026-03-02, sitting: hen']) {
      const { level, text, check } = line(first(unseen), 'fledged-early', '2026-03-28');
      expect(level).toBe('watch');
      expect(text).toContain('at 14 d; 17–21 d is usual. A bird that leaves too early chills');
      expect(check).toContain('One that flies up by itself is old enough: leave it be');
    }
    const built = (on: string) =>
      line(first(`date: ${on}, nest: building`), 'fledged-early', '2026-03-28').level;
    // Built on 1 March, no chick was out before the 12th: it is 16 d old at the most.
    expect([built('2026-03-01'), built('2026-02-28')]).toEqual(['watch', 'watch']);
    expect(built('2026-03-02')).toBe('act');
    const seen = first('date: 2026-03-02, sitting: hen\n date: 2026-03-13, checked');
    expect(line(seen, 'fledged-early', '2026-03-28').level).toBe('act');
  });

  it('is watched where eggs were given to a nest that nobody looked into before they had hatched', () => {
    const given = (looks: string) => ({
      'LW-1': waxbills(
        'date: 2026-02-28, laid: 1\n date: 2026-03-03, laid: 3, sitting: hen\n date: 2026-03-04, fostered: {LW-2: all}',
      ),
      'LW-2': pair(
        'LW-2',
        'lavender waxbill',
        `${looks} date: 2026-03-14, hatched: 3\n date: 2026-03-28, fledged: 3`,
      ),
    });
    const late = line(given(''), 'fledged-early', '2026-03-28');
    expect(late.level).toBe('watch');
    expect(late.text).toContain('at 14–16 d;');
    expect(line(given('date: 2026-03-13, checked: {eggs: 4}\n'), 'fledged-early', '2026-03-28').level).toBe(
      'act',
    );
  });

  it('is nothing where nobody knows when its kind leaves the nest', () => {
    const untold = {
      'species/ridge-finch.yaml': 'species: ridge finch\nclutch: 4-5\nincubation: 11-13\n',
      'RF-1': pair('RF-1', 'ridge finch', `${brood}\n date: 2026-03-20, fledged: c2`),
    };
    expect(warned(untold, 'fledged-early', '2026-03-20')).toEqual([]);
  });

  it('is one line for all that left that day', () => {
    const room = files('date: 2026-03-27, fledged: all');
    expect(line(room, 'fledged-early', '2026-03-27').text).toMatch(
      /^c1, c2 and c3 left the nest on 27 Mar, at 13 d;/,
    );
  });
});

it('guests of another species leave at their own age', () => {
  // Lavender waxbills leave at 17–21 d, Bengalese finches at 21–25 d, each from memory.
  const out = mixedNest('date: 2026-03-31, fledged: all');
  expect(warned(out, 'fledged-early', '2026-03-31')).toMatchObject([
    {
      pair: 'BF-1',
      text: expect.stringMatching(/^c1 and c2 left the nest on 31 Mar, at 17 d; 21–25 d is usual/),
    },
  ]);
});
