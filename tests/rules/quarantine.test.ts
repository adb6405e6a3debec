import { describe, expect, it } from 'vitest';
import { waxbills } from '../room/facts.ts';
import type { Files } from '../rooms.ts';
import { lines } from './agenda/hill-finch.ts';
import { birds, came, out, resident } from './quarantined.ts';
import { line, warned } from './warnings/warned.ts';

// Thirty days apart, begun anew when another bird joins: common practice.
describe('the days of quarantine', () => {
  it('run from the day on which the bird came', () => {
    expect(out(birds(came('A', '2026-03-01')), 'A')).toBe('31 Mar');
    expect(out(birds(came('A', '2026-03-01', 'date: 2026-03-20, released: flight 2')), 'A')).toBeNull();
    expect(out(birds(came('A', '2026-03-01', 'date: 2026-03-20, died')), 'A')).toBeNull();
  });

  it('begin anew for those in the cage when another bird joins, and run as usual for the one that joins', () => {
    const joined = birds(came('A', '2026-03-01'), came('B', '2026-03-01'), came('C', '2026-03-11'));
    expect(['A', 'B', 'C'].map((who) => out(joined, who))).toEqual([
      '10 Apr with C',
      '10 Apr with C',
      '10 Apr',
    ]);
  });

  it('begin anew too where the housing is spelt with other capitals, or with blanks around it', () => {
    const spelt = (housing: string) =>
      birds(came('A', '2026-03-01'), `{id: B, log: [{date: 2026-03-11, arrived: ${housing}}]}`);
    expect(['Cage 9', 'CAGE 9', '" cage 9 "', 'cage 8'].map((housing) => out(spelt(housing), 'A'))).toEqual([
      '10 Apr with B',
      '10 Apr with B',
      '10 Apr with B',
      '31 Mar',
    ]);
  });

  it('begin anew with the last of several that join', () => {
    const more = birds(
      came('A', '2026-03-01'),
      came('B', '2026-03-05'),
      came('C', '2026-03-11'),
      came('D', '2026-03-11'),
    );
    expect(out(more, 'A')).toBe('10 Apr with C and D');
    expect(out(more, 'B')).toBe('10 Apr with C and D');
  });

  it('do not begin anew because two that share a cage are moved on together', () => {
    const moved = birds(
      came('A', '2026-03-01', 'date: 2026-03-10, moved: cage 7'),
      '{id: H, log: [{date: 2025-03-01, arrived: flight 2}, {date: 2025-04-01, released}, {date: 2026-03-05, moved: cage 9}, {date: 2026-03-10, moved: cage 7}]}',
    );
    expect(out(moved, 'A')).toBe('4 Apr with H');
  });

  it('stay begun anew when the two were parted again', () => {
    const visit = birds(
      came('A', '2026-03-01'),
      '{id: H, log: [{date: 2025-03-01, arrived: flight 2}, {date: 2025-04-01, released}, {date: 2026-03-10, moved: cage 9}, {date: 2026-03-12, moved: flight 2}]}',
    );
    expect(out(visit, 'A')).toBe('9 Apr with H');
    expect(out(visit, 'H')).toBeNull();
  });

  it('are over when they are over: who comes later does not begin them anew', () => {
    expect(out(birds(came('A', '2026-03-01'), came('B', '2026-03-31')), 'A', '2026-04-05')).toBe('31 Mar');
  });

  it('are as long as the keeper made them', () => {
    const longer = birds(
      came('A', '2026-03-01', 'date: 2026-03-01, quarantine: 45'),
      came('B', '2026-03-11'),
    );
    expect(out(longer, 'A')).toBe('25 Apr with B');
  });

  it('begin anew when a bird that was lent comes home to them', () => {
    const home = birds(
      came('A', '2026-03-01'),
      came('B', '2026-03-01', 'date: 2026-03-05, gone: lent', 'date: 2026-03-11, back'),
    );
    expect(['A', 'B'].map((who) => out(home, who))).toEqual(['10 Apr with B', '10 Apr']);
  });

  it('do not begin anew because the two that share a cage are paired, or because their chicks hatch', () => {
    const files: Files = {
      ...birds(came('A', '2026-03-01'), came('B', '2026-03-01')),
      'LW-1': waxbills(
        'date: 2026-03-05, paired\ndate: 2026-03-06, laid: 2\ndate: 2026-03-19, hatched: 2',
        'cock: A\nhen: B\nhousing: cage 9',
      ),
    };
    expect(['A', 'B'].map((who) => out(files, who))).toEqual(['31 Mar', '31 Mar']);
  });

  it('begin anew with one that joins and dies on the same day', () => {
    const brief = (end: string) =>
      birds(came('A', '2026-03-01'), came('B', '2026-03-11', `date: 2026-03-11, ${end}`));
    expect(out(brief('died'), 'A')).toBe('10 Apr with B, B died');
    // Refused at the door, it was never in the cage.
    expect(out(brief('gone: given'), 'A')).toBe('31 Mar');
  });

  // Most broods lose nestlings: common practice.
  it('do not begin anew with a nestling that dies in the nest, unless it was seen unwell; with a fledgling they do', () => {
    const brood = (log: string): Files => ({
      ...birds(came('A', '2026-03-01'), came('B', '2026-03-01')),
      'LW-1': waxbills(
        `date: 2026-03-02, paired\ndate: 2026-03-03, laid: 3, sitting\ndate: 2026-03-15, hatched: 3\n${log}`,
        'cock: A\nhen: B\nhousing: cage 9',
      ),
    });
    expect(out(brood('date: 2026-03-20, died: {starved: c1}'), 'A')).toBe('31 Mar');
    expect(out(brood('date: 2026-03-19, unwell: {c1: gaping}\ndate: 2026-03-20, died: c1'), 'A')).toBe(
      '19 Apr, LW-1/1/c1 died',
    );
    expect(out(brood('date: 2026-03-29, fledged: all\ndate: 2026-03-30, died: c1'), 'A')).toBe(
      '29 Apr, LW-1/1/c1 died',
    );
  });

  it('are told alike by the task and by the warning', () => {
    const files: Files = {
      ...birds(
        came('A', '2026-03-01'),
        '{id: H, log: [{date: 2025-03-01, arrived: flight 2}, {date: 2025-04-01, released}]}',
      ),
      'LW-1': waxbills('date: 2026-03-10, paired', 'cock: A\nhen: H\nhousing: flight 2'),
    };
    expect(line(files, 'quarantine', '2026-03-12').text).toContain(
      'in quarantine until 9 Apr, and since 10 Mar',
    );
    expect(lines(files, 'quarantine-end', '2026-04-01')).toEqual([]);
    expect(lines(files, 'quarantine-end', '2026-04-09')).toMatchObject([
      { bird: 'A', why: 'with H since 10 Mar + 30 d' },
    ]);
  });
});

describe('whoever shares a cage with a bird in quarantine', () => {
  it('and joined it once its days had begun anew, lets them begin anew once more', () => {
    const chain = birds(came('A', '2026-03-01'), came('B', '2026-03-20'), came('C', '2026-04-10'));
    expect(out(chain, 'A', '2026-04-12')).toBe('10 May with C');
  });

  it('and was let out meanwhile, comes to it as a stranger, though the two came together', () => {
    const visitor = came(
      'B',
      '2026-03-01',
      'date: 2026-03-05, released: flight 2',
      'date: 2026-03-12, moved: cage 9',
    );
    expect(out(birds(came('A', '2026-03-01'), visitor), 'A')).toBe('11 Apr with B');
  });

  it('only before it came there, be it until that day, was never with it', () => {
    const before = (left: string) =>
      birds(
        came('A', '2026-03-01', 'date: 2026-03-10, moved: cage 7'),
        resident('H', 'date: 2026-03-02, moved: cage 7', `date: ${left}, moved: flight 2`),
      );
    expect(['2026-03-05', '2026-03-10', '2026-03-11'].map((left) => out(before(left), 'A'))).toEqual([
      '31 Mar',
      '31 Mar',
      '9 Apr with H',
    ]);
  });

  it('and courts it, is with it wherever the bird list has them, until one of them is moved', () => {
    const mates = (then: string): Files => ({
      ...birds(came('A', '2026-03-01'), resident('H')),
      'LW-1': waxbills(`date: 2026-03-10, courting${then}`, 'cock: A\nhen: H'),
    });
    expect(line(mates(''), 'quarantine', '2026-03-12').text).toContain('until 9 Apr, and since 10 Mar');
    const away = '\ndate: 2026-03-12, moved: {hen: cage 7}';
    expect(warned(mates(away), 'quarantine', '2026-03-12')).toEqual([]);
    expect(out(mates(away), 'A')).toBe('9 Apr with H');
    expect(out(mates(`${away}\ndate: 2026-03-20, moved: {hen: cage 9}`), 'A')).toBe('19 Apr with H');
    const joined = mates('\ndate: 2026-03-12, moved: {hen: cage 9}');
    expect(line(joined, 'quarantine', '2026-03-15').text).toContain('until 9 Apr, and since 10 Mar');
  });

  it('and becomes its mate, has joined it once; from another cage it joins anew, parted or only moved', () => {
    const mates = (parted: string, ...then: string[]): Files => ({
      ...birds(came('A', '2026-03-01'), resident('H', 'date: 2026-03-05, moved: cage 9', ...then)),
      'LW-1': waxbills(
        `date: 2026-03-06, paired\ndate: ${parted}, parted`,
        'cock: A\nhen: H\nhousing: cage 9',
      ),
    });
    const beside = ['date: 2026-03-12, moved: cage 7', 'date: 2026-03-18, moved: cage 9'];
    expect(out(mates('2026-03-20'), 'A')).toBe('4 Apr with H');
    expect(out(mates('2026-03-20', ...beside), 'A')).toBe('17 Apr with H');
    expect(out(mates('2026-03-12', ...beside), 'A')).toBe('17 Apr with H');
    expect(out(mates('2026-03-17', ...beside), 'A')).toBe('17 Apr with H');
  });

  it('and was parted from it within the cage for some days, was with it all the time', () => {
    const files: Files = {
      ...birds(
        came('A', '2026-03-01'),
        resident('H', 'date: 2026-03-05, moved: cage 9', 'date: 2026-03-20, moved: flight 2'),
      ),
      'LW-1': waxbills(
        'date: 2026-03-06, paired\ndate: 2026-03-12, parted\ndate: 2026-03-15, reunited',
        'cock: A\nhen: H\nhousing: cage 9',
      ),
    };
    expect(out(files, 'A', '2026-03-18')).toBe('4 Apr with H');
    expect(out(files, 'A')).toBe('4 Apr with H');
  });

  it('is named where it is somebody: of a family that joins it, not the young that were only heard', () => {
    const files: Files = {
      ...birds(came('A', '2026-03-01'), resident('C'), resident('D')),
      'LW-1': waxbills(
        'date: 2026-02-10, sitting\ndate: 2026-03-05, heard: begging\ndate: 2026-03-10, moved: cage 9',
        'cock: C\nhen: D\nhousing: flight 2',
      ),
    };
    expect(out(files, 'A')).toBe('9 Apr with C and D');
  });

  it('whose mate is bought back into a quarantine cage has nobody with it there', () => {
    const home = {
      'birds.yaml': `birds:
        - id: A
          log:
            - {date: 2025-03-01, arrived: cage 9}
            - {date: 2025-04-01, released: cage 9}
            - {date: 2026-02-01, gone: sold}
            - {date: 2026-03-01, time: 09:00, back}
            - {date: 2026-03-01, time: 10:00, moved: cage 7}
        - {id: H, log: [{date: 2025-03-01, arrived: cage 9}, {date: 2025-04-01, released: cage 9}]}
      `,
      'LW-1': waxbills('date: 2025-05-06, paired', 'cock: A\nhen: H\nhousing: cage 9'),
    };
    expect(warned(home, 'quarantine', '2026-03-02')).toEqual([]);
    expect(out(home, 'A')).toBe('31 Mar');
  });

  it('and was its mate, is with it still while the two live on in one cage', () => {
    const parted: Files = {
      ...birds(came('A', '2026-03-01'), resident('H', 'date: 2026-03-05, moved: cage 9')),
      'LW-1': waxbills(
        'date: 2026-03-06, paired\ndate: 2026-03-08, parted',
        'cock: A\nhen: H\nhousing: cage 9',
      ),
    };
    expect(line(parted, 'quarantine', '2026-03-09').text).toContain('since 5 Mar in cage 9 with H');
    const away = ', {date: 2026-03-08, moved: flight 2}]}';
    const apart = { ...parted, 'birds.yaml': parted['birds.yaml']?.replace(/\]\}\n$/, `${away}\n`) ?? '' };
    expect(warned(apart, 'quarantine', '2026-03-09')).toEqual([]);
  });

  it('and hatched there joins nobody, a young bird that is brought there does', () => {
    const hosts = [
      resident('C', 'date: 2026-02-01, moved: cage 9'),
      resident('D', 'date: 2026-02-01, moved: cage 9'),
    ];
    const bred = (young: string): Files => ({
      ...birds(came('A', '2026-03-01'), ...hosts),
      'LW-1': waxbills(
        `date: 2026-02-01, paired\ndate: 2026-02-20, laid: 2\ndate: 2026-03-06, hatched: 1${young}`,
        'cock: C\nhen: D\nhousing: cage 9',
      ),
    });
    expect(out(bred(''), 'A')).toBe('31 Mar');
    expect(out(bred('\ndate: 2026-03-26, fledged: 1\ndate: 2026-03-29, independent: 1'), 'A')).toBe('31 Mar');
    const reared = '\ndate: 2026-03-10, moved: {c1: cage 7}\ndate: 2026-03-15, moved: {c1: cage 9}';
    expect(out(bred(reared), 'A')).toBe('14 Apr with LW-1/1/c1');
  });

  it('and is its own chick joins it no more when it comes back from the hand', () => {
    const files: Files = {
      ...birds(came('A', '2026-03-01'), came('B', '2026-03-01')),
      'LW-1': waxbills(
        'date: 2026-03-01, paired\ndate: 2026-03-02, laid: 2\ndate: 2026-03-15, hatched: 2\ndate: 2026-03-18, fostered: {hand: c1}\ndate: 2026-03-24, moved: {c1: cage 9}',
        'cock: A\nhen: B\nhousing: cage 9',
      ),
    };
    expect(['A', 'B'].map((who) => out(files, who))).toEqual(['31 Mar', '31 Mar']);
  });

  it('came with it, though it spent the first days in another cage and was let out before it', () => {
    const away = ['date: 2026-03-02, moved: cage 8', 'date: 2026-03-10, moved: cage 9'];
    const b = came('B', '2026-03-01', ...away, 'date: 2026-03-31, released: flight 2');
    expect(out(birds(came('A', '2026-03-01'), b), 'A', '2026-04-02')).toBe('31 Mar');
  });

  it('came with it, though the keeper wrote of longer days for one of the two later', () => {
    const two = birds(came('A', '2026-03-01'), came('B', '2026-03-01', 'date: 2026-03-10, quarantine: 45'));
    expect(out(two, 'A')).toBe('31 Mar');
    expect(warned(two, 'quarantine', '2026-03-11')).toEqual([]);
  });

  it('and went into quarantine with it, as after a show, is no stranger; who joins them from the room is one', () => {
    const shown = (id: string, since: string) =>
      `{id: ${id}, log: [{date: ${since}, moved: flight 2}, {date: 2026-03-01, moved: cage 9}, {date: 2026-03-01, quarantine: 30}]}`;
    const bred = '{id: H, log: [{date: 2025-05-01, moved: flight 2}, {date: 2026-03-10, moved: cage 9}]}';
    expect(out(birds(shown('A', '2024-05-01'), resident('C')), 'A')).toBe('31 Mar');
    const old = shown('B', '2025-03-01').replace('moved: flight 2', 'arrived: flight 2');
    expect(warned(birds(shown('A', '2024-05-01'), old), 'quarantine', '2026-03-02')).toEqual([]);
    expect(out(birds(shown('A', '2024-05-01'), old, bred), 'A')).toBe('9 Apr with H');
  });
});
