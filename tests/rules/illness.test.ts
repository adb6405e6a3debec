import { describe, expect, it } from 'vitest';
import { shortDay } from '../../src/days.ts';
import { illnessesOf, illnessOf, signsIn } from '../../src/rules/illness.ts';
import { day } from '../rooms.ts';
import { view, waxbills } from './warnings/warned.ts';

describe('signs in a keeper’s own words', () => {
  it.each([
    ['fluffed and straining', ['straining', 'down']],
    ['looks egg-bound', ['straining']],
    ['Fluffed, Breathing hard', ['down', 'labouring']],
    ['cannot pass the egg', ['straining']],
    ['on the floor of the cage', ['down']],
    ['breathing hard, tail bobbing', ['labouring']],
    ['sneezing, a runny nostril', ['airways']],
    ['not breathing well', ['labouring']],
    ['bleeding from a claw', ['injured']],
    ['no longer straining, but fluffed', ['down']],
    ['not on the floor any more', []],
    ['stopped straining', []],
    ['quieter than usual', []],
    ['pale and limp', ['down']],
    // An egg that presses on the nerves makes a hen lame (common practice).
    ['limps on the left leg', ['down']],
    ['lame on one leg', ['down']],
    ['constrained by the netting', []],
  ])('%s', (text, signs) => {
    expect(signsIn(text)).toEqual(signs);
  });
});

describe('an illness', () => {
  const of = (log: string, on = '2026-03-12') => {
    const { find } = view({ 'LW-1': waxbills(log, 'cock: LW-20-01') }, on);
    const bird = find('LW-20-01');
    return bird === null ? null : illnessOf(bird, day(on));
  };

  it('lasts from its first line to its last', () => {
    const found = of('date: 2026-03-01, unwell: {cock: quiet}\n date: 2026-03-04, unwell: {cock: fluffed}');
    expect(found?.seen.map(({ text }) => text)).toEqual(['quiet', 'fluffed']);
    expect((found?.last ?? 0) - (found?.since ?? 0)).toBe(3);
    expect(found?.treated).toBeNull();
  });

  it('was last seen on the day of its last line, whatever it was treated with since', () => {
    const found = of(`date: 2026-03-01, unwell: {cock: quiet}
      date: 2026-03-04, unwell: {cock: fluffed}
      date: 2026-03-06, unwell: {cock: quiet}
      date: 2026-03-08, treated: {cock: as the vet ordered}`);
    expect(found).toMatchObject({ last: day('2026-03-06'), treated: day('2026-03-08') });
  });

  it.each(['well again', 'fine again', 'recovered', 'back to normal', 'well', 'no', 'fit again, flies'])(
    'ends with `%s`',
    (text) => {
      expect(
        of(`date: 2026-03-01, unwell: {cock: quiet}\n date: 2026-03-04, unwell: {cock: '${text}'}`),
      ).toBeNull();
    },
  );

  it.each([
    'not well',
    'no better',
    'not yet himself again',
    'fluffed again',
    'well again, but breathing hard',
    'not well again, eats a little',
  ])('does not end with `%s`', (text) => {
    expect(
      of(`date: 2026-03-01, unwell: {cock: quiet}\n date: 2026-03-04, unwell: {cock: '${text}'}`),
    ).not.toBeNull();
  });

  it('that comes back is a new one', () => {
    const found = of(`date: 2026-03-01, unwell: {cock: quiet}
      date: 2026-03-02, treated: {cock: as the vet ordered}
      date: 2026-03-04, unwell: {cock: well again}
      date: 2026-03-09, unwell: {cock: quiet}`);
    expect(found?.seen).toHaveLength(1);
    expect(found?.treated).toBeNull();
  });

  it('that is written of more than a fortnight later is another one', () => {
    const first =
      'date: 2026-03-01, unwell: {cock: bleeding}\n date: 2026-03-02, treated: {cock: wound seen to}\n';
    const later = (on: string) => of(`${first} date: ${on}, unwell: {cock: quiet}`, on);
    expect(later('2026-03-16')?.seen).toHaveLength(2);
    expect(later('2026-03-17')).toMatchObject({ since: day('2026-03-17'), treated: null });
    expect(later('2026-03-17')?.seen).toHaveLength(1);
  });

  it('lasts for a fortnight after the last word of it, a treatment also being one', () => {
    const ill = 'date: 2026-03-01, unwell: {cock: quiet}';
    const treated = `${ill}\n date: 2026-03-10, treated: {cock: as the vet ordered}`;
    expect(of(ill, '2026-03-15')).not.toBeNull();
    expect(of(ill, '2026-03-16')).toBeNull();
    expect(of(treated, '2026-03-24')).not.toBeNull();
    expect(of(treated, '2026-03-25')).toBeNull();
  });

  it('is not what a healthy bird is treated for', () => {
    expect(of('date: 2026-03-10, treated: {cock: against worms}')).toBeNull();
  });

  it('ends with the bird', () => {
    expect(of('date: 2026-03-01, unwell: {cock: quiet}\n date: 2026-03-02, died: cock')).toBeNull();
  });
});

describe('the times in which a bird was unwell', () => {
  const times = (log: string) => {
    const bird = view({ 'LW-1': waxbills(log, 'cock: LW-20-01') }, '2026-06-30').find('LW-20-01');
    return bird === null
      ? []
      : illnessesOf(bird).map(({ since, over }) => `${shortDay(since)} … ${shortDay(over)}`);
  };

  it('end with `well again`, or fifteen days after the last word', () => {
    expect(
      times(`date: 2026-03-01, unwell: {cock: quiet}
      date: 2026-03-04, unwell: {cock: well again}
      date: 2026-03-09, unwell: {cock: quiet}
      date: 2026-03-12, unwell: {cock: fluffed}`),
    ).toEqual(['1 Mar … 4 Mar', '9 Mar … 27 Mar']);
  });

  it('are none where it is only said to be well', () => {
    expect(times('date: 2026-03-01, unwell: {cock: well again}')).toEqual([]);
  });
});
