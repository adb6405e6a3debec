import { describe, expect, it } from 'vitest';
import { room } from '../rooms.ts';
import { birdIn, clutchIn, codes, days, fates, journal, waxbills } from './facts.ts';
import { at, clutches, hatched, laid } from './waxbill-log.ts';

// What must have been there though nobody wrote it down, and what a look, a voice or a count tells of it.

describe('chicks that hatched from eggs nobody saw', () => {
  it('belong to a new clutch where the last was begun too long ago to be theirs', () => {
    // 13 d at the longest (species profile) and a fortnight: 27 days.
    const lost = 'date: 2026-03-05, laid: 1\ndate: 2026-03-06, lost: {broken: e1}';
    expect(clutches(`${lost}\ndate: 2026-04-01, hatched: 2`)).toEqual(['1: 1 eggs, 0 chicks']);
    expect(codes(at(`${lost}\ndate: 2026-04-01, hatched: 2`))).toEqual(['too-many']);
    expect(clutches(`${lost}\ndate: 2026-04-02, hatched: 2`)).toEqual([
      '1: 1 eggs, 0 chicks',
      '2: 2+ eggs, 2+ chicks',
    ]);
  });

  it('are no new clutch where an egg could still be theirs, where refs name them, or the clutch is named', () => {
    const open = 'date: 2026-03-05, laid: 1';
    expect(clutches(`${open}\ndate: 2026-03-18, hatched: 2`)).toHaveLength(1);
    expect(clutches('date: 2026-03-18, hatched: e1')).toEqual([]);
    expect(codes(at('date: 2026-03-18, hatched: all'))).toEqual(['nobody-possible']);
    const over = `${open}\ndate: 2026-03-06, lost: {broken: e1}\ndate: 2026-05-01, clutch: 1, hatched: 1`;
    expect(clutches(over)).toEqual(['1: 1 eggs, 0 chicks']);
  });

  it('by count come from no egg that has lain for months, by its ref from any', () => {
    // Twice 13 d and a fortnight: 40 days.
    const old = (day: string, who: string) =>
      fates(clutchIn(at(`date: 2026-03-05, laid: 1\ndate: 2026-${day}, hatched: ${who}`), 'LW-1/1'));
    expect(old('04-14', '1')).toEqual(['e1 hatched']);
    expect(old('04-15', '1')).toEqual(['e1 open']);
    expect(old('04-15', 'e1')).toEqual(['e1 hatched']);
  });

  it('that were counted leave no doubt, that were counted at least do', () => {
    const five = 'date: 2026-03-05, laid: 5, sitting';
    expect(clutches(`${five}\ndate: 2026-03-18, hatched: 2`)).toEqual(['1: 5 eggs, 2 chicks']);
    for (const who of ['2+', '~2', 'some'])
      expect(clutches(`${five}\ndate: 2026-03-18, hatched: ${who}`)[0]).toMatch(/5 eggs, [12]\+ chicks/);
    expect(clutches(`${five}\ndate: 2026-03-18, hatched: [e1, e2]`)).toEqual(['1: 5 eggs, 2 chicks']);
    expect(clutches(`${five}\ndate: 2026-03-18, hatched: all`)).toEqual(['1: 5 eggs, 5 chicks']);
  });

  it('hatched after the last look, and no sooner than after half the shortest sitting', () => {
    // Laid on the 5th and 6th; half of 11 d (species profile), in whole days: six.
    const five = 'date: 2026-03-05, laid: 1\ndate: 2026-03-06, laid: 1';
    expect(hatched(`${five}\ndate: 2026-03-18, hatched: e1`)).toBe('03-11…03-18');
    expect(hatched(`${five}\ndate: 2026-03-18, after: 2026-03-02, hatched: e2`, 'LW-1/1/c1')).toBe(
      '03-12…03-18',
    );
    expect(hatched(`${five}\ndate: 2026-03-15, checked\ndate: 2026-03-18, hatched: e1`)).toBe('03-16…03-18');
  });

  it('out of an egg that the lamp showed clear are asked about', () => {
    const candled = (day: string) =>
      codes(
        at(`date: 2026-03-05, laid: 1, sitting\ndate: 2026-03-${day}, candled: {clear: e1}
        date: 2026-03-18, hatched: e1`),
      );
    expect(candled('12')).toEqual(['hatched-though-clear']);
    // On the third day of sitting no lamp can tell (book: from the fifth).
    expect(candled('08')).toEqual([]);
  });
});

describe('young that are heard', () => {
  it('come of eggs that were counted: no more can hatch, be lost or leave the nest than were laid', () => {
    const heard = 'date: 2026-03-05, laid: 4, sitting\ndate: 2026-03-18, heard';
    const found = (more: string) => codes(room({ P: waxbills(`${heard}\n${more}`) }, '2026-07-01'));
    expect(found('date: 2026-04-06, fledged: 9')).toEqual(['too-many']);
    expect(clutches(`${heard}\ndate: 2026-04-06, fledged: 9`)).toEqual(['1: 4 eggs, 4+ chicks']);
    expect(found('date: 2026-04-06, fledged: 4')).toEqual([]);
    expect(found('date: 2026-03-19, hatched: 5')).toEqual(['too-many']);
    expect(found('date: 2026-03-19, lost: {broken: 4}')).toEqual(['too-many']);
    expect(found('date: 2026-03-19, lost: {broken: 3}')).toEqual([]);
  });

  it('are one chick of unknown number, and the next count takes it in', () => {
    const heard = 'date: 2026-03-05, laid: 3, sitting\ndate: 2026-03-18, heard';
    expect(clutches(heard)).toEqual(['1: 3 eggs, 1+ chicks']);
    expect(birdIn(at(heard), 'LW-1/1/c1').placeholder).toBe(true);
    expect(clutches(`${heard}\ndate: 2026-03-19, hatched: 1`)).toEqual(['1: 3 eggs, 1+ chicks']);
    expect(clutches(`${heard}\ndate: 2026-03-19, hatched: 3`)).toEqual(['1: 3 eggs, 3+ chicks']);
    expect(birdIn(at(`${heard}\ndate: 2026-03-19, hatched: 1`), 'LW-1/1/c1').placeholder).toBe(false);
    expect(birdIn(at(`${heard}\ndate: 2026-03-19, checked: {chicks: 1}`), 'LW-1/1/c1').placeholder).toBe(
      false,
    );
    expect(birdIn(at(`${heard}\ndate: 2026-04-06, fledged: 1`), 'LW-1/1/c1').placeholder).toBe(false);
  });

  it('came from the egg that most likely hatched', () => {
    const heard = (lamp: string) =>
      fates(
        clutchIn(
          at(
            `date: 2026-03-05, laid: 3, sitting\ndate: 2026-03-12, candled: ${lamp}\ndate: 2026-03-18, heard`,
          ),
          'LW-1/1',
        ),
      ).findIndex((fate) => fate.endsWith('hatched'));
    expect(heard('{clear: e1, fertile: e3}')).toBe(2);
    expect(heard('{clear: e1, dead: e2}')).toBe(2);
    expect(heard('{clear: [e1, e2, e3]}')).toBe(0);
    expect(heard('{unsure: [e1, e2, e3]}')).toBe(0);
  });

  it('are those that are known while one is in the nest, or while none of the eggs is due', () => {
    const fed = `date: 2026-03-05, laid: 2, sitting
      date: 2026-03-18, hatched: 2
      date: 2026-04-06, fledged: 2
      date: 2026-04-10, laid: 1, sitting`;
    // 11 d at the shortest, less a day: due from the 20th.
    expect(clutches(`${fed}\ndate: 2026-04-19, heard`)).toEqual([
      '1: 2 eggs, 2 chicks',
      '2: 1 eggs, 0 chicks',
    ]);
    expect(clutches(`${fed}\ndate: 2026-04-20, heard`)).toEqual([
      '1: 2 eggs, 2 chicks',
      '2: 1 eggs, 1+ chicks',
    ]);
    const nestlings =
      'date: 2026-03-05, laid: 3, sitting\ndate: 2026-03-18, hatched: 1\ndate: 2026-03-20, heard';
    expect(clutches(nestlings)).toEqual(['1: 3 eggs, 1 chicks']);
  });

  it('in the clutch that the entry names', () => {
    const eggs = `date: 2026-03-05, site: left, laid: 1
      date: 2026-03-06, site: right, laid: 1`;
    expect(clutches(`${eggs}\ndate: 2026-03-18, clutch: 2, heard`)).toEqual([
      '1: 1 eggs, 0 chicks',
      '2: 1 eggs, 1+ chicks',
    ]);
    expect(clutches(`${eggs}\ndate: 2026-03-18, heard`)).toEqual([
      '1: 1 eggs, 1+ chicks',
      '2: 1 eggs, 0 chicks',
    ]);
  });

  it('where no egg was known hatched since the last look, or else as long ago as a nestling stays', () => {
    // Lavender waxbills leave the nest at 21 days at the latest (species profile).
    expect(hatched('date: 2026-04-22, heard')).toBe('04-01…04-22');
    expect(hatched('date: 2026-04-15, checked\ndate: 2026-04-22, heard')).toBe('04-16…04-22');
    expect(hatched('date: 2026-04-22, after: 2026-04-19, heard')).toBe('04-20…04-22');
    const right = 'date: 2026-04-15, site: right, checked\ndate: 2026-04-22, site: left, heard';
    expect(hatched(right)).toBe('04-01…04-22');
  });

  it('from an egg that is known in a nest nobody looked into hatched on no day that anybody knows', () => {
    // Seen sitting from outside on the 5th, their eggs laid since 20 February; as long ago as a nestling stays: 4 March.
    expect(hatched('date: 2026-03-05, sitting\ndate: 2026-03-25, heard')).toBe('03-04…03-25');
    const foster = {
      P: waxbills('date: 2026-03-05, laid: 1\ndate: 2026-03-06, fostered: {BF-1: e1}'),
      Q: journal('BF-1', 'bengalese finch', 'date: 2026-03-18, heard'),
    };
    // Laid on the 5th; under a foster of a longer sitting it is half of its own all the same: six days.
    expect(days(birdIn(room(foster, '2026-07-01'), 'LW-1/1/c1').hatched as never)).toBe('03-11…03-18');
  });

  it('hatched no sooner than after half the shortest sitting', () => {
    // Laid on the 5th; half of 11 d, in whole days: six.
    expect(hatched('date: 2026-03-05, laid: 1\ndate: 2026-03-18, heard')).toBe('03-11…03-18');
    expect(hatched('date: 2026-03-05, laid: 1\ndate: 2026-03-15, checked\ndate: 2026-03-18, heard')).toBe(
      '03-16…03-18',
    );
  });
});

describe('eggs that a look counts beside chicks, more than were told', () => {
  const eggs = 'date: 2026-03-05, laid: 1\ndate: 2026-03-06, laid: 1';
  const found = 'date: 2026-03-20, checked: {eggs: 2, chicks: 1}';

  it('came while nobody looked, where the hen of a nest that is left alone still laid', () => {
    expect(clutches(`${eggs}\n${found}`)).toEqual(['1: 3+ eggs, 1 chicks']);
    // A day after the last egg the next may still come, two days after it does not.
    expect(clutches(`${eggs}\ndate: 2026-03-07, checked: {eggs: 2}\n${found}`)).toEqual([
      '1: 3+ eggs, 1 chicks',
    ]);
    expect(codes(at(`${eggs}\ndate: 2026-03-08, checked: {eggs: 2}\n${found}`))).toEqual([
      'counts-differ',
      'counted-as-hatched',
    ]);
  });

  it('though one of those before was taken out; the new one was laid after the last look', () => {
    const pulled = `${eggs}\ndate: 2026-03-06, pulled: e1\n${found}`;
    expect(clutches(pulled)).toEqual(['1: 4+ eggs, 1 chicks']);
    const [third] = clutchIn(at(`${eggs}\n${found}`), 'LW-1/1').eggs.slice(2);
    expect([days(third?.laid as never), third?.assumed]).toEqual(['03-07…03-12', true]);
    const looked = `${eggs}\ndate: 2026-03-07, checked: {eggs: 2}\n${found}`;
    expect(laid(looked, 'LW-1/1/e3')).toBe('03-08…03-12');
  });

  it('are no more than the hen can have laid by the day on which the last of them had to be there', () => {
    // Half of eleven days, six, before the 13th: by the 7th there were three.
    expect(clutches('date: 2026-03-05, laid: 1\ndate: 2026-03-13, checked: {chicks: 5}')).toEqual([
      '1: 3+ eggs, 3 chicks',
    ]);
  });

  it('of a brood of which nobody saw one are as old as any can be', () => {
    const heard = 'date: 2026-03-20, heard\ndate: 2026-03-27, checked: {eggs: 1, chicks: 1}';
    expect(laid(heard, 'LW-1/1/e2')).toBe('03-14…03-27');
  });
});

describe('young that come out of a nest nobody looked into', () => {
  it('are of a new clutch where all earlier ones were counted, else of the one that was not', () => {
    const counted = 'date: 2026-01-05, laid: 1\ndate: 2026-01-20, lost: {clear: e1}';
    expect(clutches(`${counted}\ndate: 2026-04-22, fledged: 2`)).toEqual([
      '1: 1 eggs, 0 chicks',
      '2: 2+ eggs, 2+ chicks',
    ]);
    expect(clutches('date: 2026-03-25, sitting\ndate: 2026-04-22, fledged: 2')).toEqual([
      '1: 2+ eggs, 2+ chicks',
    ]);
    expect(clutches('date: 2026-04-22, fledged: c1')).toEqual([]);
    expect(clutches(`${counted}\ndate: 2026-04-22, clutch: 1, fledged: 2`)).toEqual(['1: 1 eggs, 0 chicks']);
    const some = 'date: 2026-03-05, laid: 3, sitting\ndate: 2026-03-18, hatched: some';
    expect(clutches(`${some}\ndate: 2026-04-06, fledged: 2`)).toEqual(['1: 3 eggs, 2+ chicks']);
  });

  it('came from eggs that can have hatched by then, fertile ones first', () => {
    const log = (more: string) =>
      `date: 2026-03-20, laid: 4+, sitting\n${more}\ndate: 2026-04-22, fledged: 2`;
    expect(fates(clutchIn(at(log('')), 'LW-1/1'))).toEqual([
      'e1 hatched',
      'e2 hatched',
      'e3 open',
      'e4 open',
    ]);
    expect(
      fates(clutchIn(at(log('date: 2026-03-27, candled: {clear: e1, fertile: [e3, e4]}')), 'LW-1/1')),
    ).toEqual(['e1 open', 'e2 open', 'e3 hatched', 'e4 hatched']);
    const ended = fates(clutchIn(at(log('date: 2026-03-27, lost: {broken: [e1, e2, e3]}')), 'LW-1/1'));
    expect(ended).toEqual([
      'e1 lost (broken)',
      'e2 lost (broken)',
      'e3 lost (broken)',
      'e4 hatched',
      'e5 hatched',
    ]);
    // Laid on the 10th of April, none of them can have young that leave the nest on the 22nd.
    const fresh = 'date: 2026-04-10, laid: 1\ndate: 2026-04-11, laid: 2+\ndate: 2026-04-22, fledged: 1';
    expect(fates(clutchIn(at(fresh), 'LW-1/1'))).toEqual(['e1 open', 'e2 open', 'e3 open', 'e4 hatched']);
  });

  it('hatched seventeen to twenty-one days before, from an egg no older than a sitting can last', () => {
    const log = 'date: 2026-04-22, fledged: 1';
    expect(hatched(log)).toBe('04-01…04-05');
    // 13 days before the 5th of April at the most.
    expect(laid(log)).toBe('03-23…04-05');
    expect(laid('date: 2026-04-22, sitting')).toBe('04-09…04-22');
    expect(laid('date: 2026-04-22, hatched: 1')).toBe('04-09…04-22');
    // Heard, it may be as old as 21 days, and its egg as old as 13 more.
    expect(laid('date: 2026-04-22, heard')).toBe('03-19…04-22');
  });

  it('left it on the day, or since the keeper says', () => {
    const fledged = (entry: string) => {
      const log = `date: 2026-03-05, laid: 1, sitting\ndate: 2026-03-18, hatched: e1\n${entry}, fledged: c1`;
      return days(birdIn(at(log), 'LW-1/1/c1').fledged?.span as never);
    };
    expect(fledged('date: 2026-04-06')).toBe('04-06');
    expect(fledged('date: 2026-04-06, after: 2026-04-03')).toBe('04-04…04-06');
    // Not before it hatched.
    expect(fledged('date: 2026-04-06, after: 2026-03-01')).toBe('03-11…04-06');
  });
});

describe('young that feed themselves', () => {
  it('do so since the last look, but not before they left the nest', () => {
    const since = (look: string) => {
      const log = `date: 2026-03-05, laid: 1, sitting\ndate: 2026-03-18, hatched: e1
        date: 2026-04-06, fledged: c1\n${look}\ndate: 2026-04-25, independent: c1`;
      return days(birdIn(at(log), 'LW-1/1/c1').independent?.span as never);
    };
    expect(since('')).toBe('04-06…04-25');
    expect(since('date: 2026-04-15, checked')).toBe('04-16…04-25');
  });
});
