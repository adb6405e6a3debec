import { describe, expect, it } from 'vitest';
import { day, type Files } from '../../rooms.ts';
import { line, spell, warned, waxbills } from './warned.ts';

/** Two that came on 1 March, what became of the second, and of the first. */
const two = (second: string, first = ''): Files => ({
  'birds.yaml': `birds:
  - {id: Q-1, log: [{date: 2026-03-01, arrived: q cage}${first}]}
  - {id: Q-2, log: [{date: 2026-03-01, arrived: q cage}, ${second}]}
`,
});
const kind = 'quarantine-held';
const ILL = '{date: 2026-03-28, unwell: fluffed on the floor}';
const DEAD = '{date: 2026-03-29, died: "fluffed, then dead"}';

// A death in quarantine is looked into by a vet before anybody is let out: common practice.
describe('birds that stay in quarantine for the sake of one that was with them', () => {
  it('are told of from the end of their days while it is unwell, or nobody said that it is well', () => {
    expect(spell(two(ILL), kind, '2026-03-20', '2026-05-01')).toEqual(['03-31 … 04-11 watch']);
    expect(line(two(ILL), kind, '2026-03-31')).toEqual({
      level: 'watch',
      text: 'Q-1 and Q-2 (q cage): not out of quarantine before 12 Apr, as Q-2 fell ill on 28 Mar. What one has, the others may carry.',
      check: 'ask an avian vet before anybody is let out; then see to these birds last, and wash hands',
    });
    const well = two(`${ILL}, {date: 2026-04-03, unwell: well again}`);
    expect(spell(well, kind, '2026-03-20', '2026-05-01')).toEqual(['03-31 … 04-02 watch']);
  });

  it('are told of for a week after it died', () => {
    expect(spell(two(DEAD), kind, '2026-03-20', '2026-05-30')).toEqual(['03-29 … 04-05 watch']);
    const { text, check } = line(two(DEAD), kind, '2026-03-29');
    expect(text).toMatch(/^Q-1 \(q cage\): not out of quarantine before 28 Apr, as Q-2 died on 29 Mar\. /);
    expect(check).toMatch(/^ask an avian vet before anybody is let out, and at once how the dead bird/);
  });

  it('are one line, whoever of them is unwell', () => {
    expect(warned(two(ILL, ', {date: 2026-03-28, unwell: fluffed}'), kind, '2026-03-31')).toHaveLength(1);
  });

  it('are no matter once they were let out, nor where one alone is unwell', () => {
    expect(warned(two(DEAD, ', {date: 2026-03-30, released}'), kind, '2026-03-31')).toEqual([]);
    const alone: Files = {
      'birds.yaml': `birds: [{id: Q, log: [{date: 2026-03-01, arrived: q cage}, ${ILL}]}]\n`,
    };
    expect(warned(alone, kind, '2026-03-31')).toEqual([]);
  });

  it('are a line for each cage in which one is unwell', () => {
    const cages: Files = {
      'birds.yaml': `birds:
  - {id: Q-1, log: [{date: 2026-03-01, arrived: q cage}]}
  - {id: Q-2, log: [{date: 2026-03-01, arrived: q cage}, ${ILL}]}
  - {id: R-1, log: [{date: 2026-03-01, arrived: r cage}]}
  - {id: R-2, log: [{date: 2026-03-01, arrived: r cage}, ${ILL}]}
`,
    };
    expect(warned(cages, kind, '2026-03-31').map(({ text }) => text.slice(0, 22))).toEqual([
      'Q-1 and Q-2 (q cage): ',
      'R-1 and R-2 (r cage): ',
    ]);
  });

  it('are told of all who are unwell now, and since when, not of illnesses that are over', () => {
    const several = two(
      '{date: 2026-03-03, unwell: fluffed}, {date: 2026-03-06, unwell: well again}, {date: 2026-03-26, unwell: fluffed}',
      ', {date: 2026-03-28, unwell: sneezing}',
    );
    expect(line(several, kind, '2026-03-31').text).toContain('as Q-1 and Q-2 fell ill on 26–28 Mar.');
    expect(warned(several, kind, '2026-03-31')).toMatchObject([{ date: day('2026-03-28') }]);
    expect(line(several, kind, '2026-04-10').text).toContain('as Q-1 fell ill on 28 Mar.');
    expect(warned(two(DEAD), kind, '2026-03-31')).toMatchObject([{ date: day('2026-03-29') }]);
  });

  it('are told of though they are unwell themselves, where the other ill one was let out', () => {
    const out = two(`${ILL}, {date: 2026-03-30, released}`, ', {date: 2026-03-28, unwell: fluffed}');
    expect(line(out, kind, '2026-03-31').text).toMatch(
      /^Q-1 \(q cage\): .* Q-1 and Q-2 fell ill on 28 Mar\./,
    );
  });

  it('are told of where one died and another is ill when their days are over', () => {
    const both = two(ILL, ', {date: 2026-03-25, quarantine: 5}');
    const files = {
      'birds.yaml': `${both['birds.yaml']}  - {id: Q-3, log: [{date: 2026-03-01, arrived: q cage}, ${DEAD}]}\n`,
    };
    expect(warned(files, kind, '2026-04-03').map(({ text }) => text)).toContainEqual(
      expect.stringMatching(/^Q-1 \(q cage\): .* as Q-3 died on 29 Mar and Q-2 fell ill on 28 Mar\./),
    );
  });

  it('are told of wherever they live, where they are a pair', () => {
    const pair: Files = {
      'birds.yaml': two(ILL)['birds.yaml']?.replaceAll('arrived: q cage', 'arrived') ?? '',
      'LW-1': waxbills('date: 2026-03-02, paired', 'cock: Q-1\nhen: Q-2'),
    };
    expect(line(pair, kind, '2026-03-31').text).toMatch(/^Q-1 and Q-2: not out of quarantine/);
  });

  it('are told of no longer than their days last', () => {
    const short = two(DEAD, ', {date: 2026-03-25, quarantine: 5}');
    expect(spell(short, kind, '2026-03-20', '2026-05-30')).toEqual(['03-29 … 04-02 watch']);
  });
});
