import { describe, expect, it } from 'vitest';
import { shortDay } from '../../src/days.ts';
import { fewNames, quarantineOf } from '../../src/rules/quarantine.ts';
import { birdIn, waxbills } from '../room/facts.ts';
import { type Files, room } from '../rooms.ts';
import { lines } from './agenda/hill-finch.ts';
import { line, warned } from './warnings/warned.ts';

const birds = (...items: string[]): Files => ({
  'birds.yaml': `birds:\n${items.map((item) => `  - ${item}`).join('\n')}\n`,
});
const came = (id: string, on: string, ...more: string[]) =>
  `{id: ${id}, log: [${[`date: ${on}, arrived: cage 9`, ...more].map((entry) => `{${entry}}`).join(', ')}]}`;

/** When a bird's days are over, and who made them begin anew: `31 Mar`, `9 Apr with B`, `9 Apr, B died`. */
function out(files: Files, who: string, on = '2026-03-30'): string | null {
  const known = room(files, on);
  const quarantine = quarantineOf(known, birdIn(known, who));
  if (quarantine === null) return null;
  const { until, joined, died } = quarantine;
  const why = [
    ...(joined.length === 0 ? [] : [` with ${fewNames(joined)}`]),
    ...(died.length === 0 ? [] : [`, ${fewNames(died)} died`]),
  ];
  return `${shortDay(until)}${why.join('')}`;
}

/** A bird that has long been in flight 2. */
const resident = (id: string, ...more: string[]) =>
  `{id: ${id}, log: [${['date: 2025-03-01, arrived: flight 2', 'date: 2025-04-01, released', ...more].map((entry) => `{${entry}}`).join(', ')}]}`;

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

// What it died of nobody knows until a vet has looked: the days of all who were with it begin anew (common practice).
describe('a death beside a bird in quarantine', () => {
  const beside = (...log: string[]) => birds(came('A', '2026-03-01'), came('B', '2026-03-01', ...log));

  it('lets the days begin anew', () => {
    expect(out(beside('date: 2026-03-10, died'), 'A')).toBe('9 Apr, B died');
  });

  it('in another cage does not, unless the bird was taken there ill', () => {
    const AWAY = 'date: 2026-03-09, moved: cage 8';
    const DEAD = 'date: 2026-03-14, died';
    expect(out(beside(AWAY, DEAD), 'A')).toBe('31 Mar');
    expect(out(beside('date: 2026-03-08, unwell: fluffed', AWAY, DEAD), 'A')).toBe('13 Apr, B died');
    const twice = ['date: 2026-03-03, unwell: fluffed', 'date: 2026-03-05, unwell: well again'];
    expect(out(beside(...twice, 'date: 2026-03-08, unwell: fluffed', AWAY, DEAD), 'A')).toBe(
      '13 Apr, B died',
    );
    expect(out(beside(...twice, AWAY, DEAD), 'A')).toBe('31 Mar');
    expect(out(beside(AWAY, 'date: 2026-03-09, died'), 'A')).toBe('8 Apr, B died');
  });

  it('in the flight that it was moved to once its days were over, does not', () => {
    const over = birds(
      came('A', '2026-03-01', 'date: 2026-03-31, moved: flight 2'),
      resident('H', 'date: 2026-04-20, died'),
    );
    expect(out(over, 'A', '2026-04-21')).toBe('31 Mar');
  });

  it('before another bird joins counts as long as that one did not', () => {
    const both = birds(
      came('A', '2026-03-01'),
      came('B', '2026-03-01', 'date: 2026-03-05, died'),
      came('C', '2026-03-12'),
    );
    expect(out(both, 'A', '2026-03-10')).toBe('4 Apr, B died');
    expect(out(both, 'A', '2026-03-12')).toBe('11 Apr with C');
  });

  it('counts too where the days are over and nobody let it out, for two months', () => {
    const late = (on: string) => out(beside(`date: ${on}, died`), 'A', '2026-06-15');
    expect(late('2026-05-30')).toBe('29 Jun, B died');
    expect(late('2026-05-31')).toBe('31 Mar');
  });
});

it('a bird that was thought dead and is found again never left, and joins nobody anew', () => {
  const found = resident(
    'H',
    'date: 2026-03-05, moved: cage 9',
    'date: 2026-03-08, died',
    'date: 2026-03-12, back',
  );
  expect(out(birds(came('A', '2026-03-01'), found), 'A')).toBe('4 Apr with H');
});

it('four are named, of five the fifth is counted', () => {
  const crowd = (...ids: string[]) =>
    birds(...ids.map((id) => came(id, '2026-03-11')), came('A', '2026-03-01'));
  expect(out(crowd('B', 'C', 'D', 'E'), 'A')).toBe('10 Apr with B, C, D and E');
  expect(out(crowd('B', 'C', 'D', 'E', 'F', 'G'), 'A')).toBe('10 Apr with B, C, D, E and 2 others');
});

describe('an illness beside a bird in quarantine', () => {
  /** The first day on which A may come out. */
  const free = (...log: string[]) => {
    const known = room(birds(came('A', '2026-03-01'), came('B', '2026-03-01', ...log)), '2026-06-30');
    return shortDay(quarantineOf(known, birdIn(known, 'A'))?.out ?? 0);
  };
  const ILL = 'date: 2026-03-28, unwell: fluffed';

  it('keeps it in until the ill one is well, though its days are over, and though the two were parted', () => {
    expect(free()).toBe('31 Mar');
    expect(free(ILL, 'date: 2026-04-03, unwell: well again')).toBe('3 Apr');
    const left = (on: string) =>
      free(ILL, `date: ${on}, moved: cage 8`, 'date: 2026-04-03, unwell: well again');
    expect(['2026-03-28', '2026-03-29'].map(left)).toEqual(['3 Apr', '3 Apr']);
    expect(free('date: 2026-03-27, moved: cage 8', ILL)).toBe('31 Mar');
  });

  it('that begins two months after its days are over is another matter', () => {
    expect(free('date: 2026-05-30, unwell: fluffed')).toBe('14 Jun');
    expect(free('date: 2026-05-31, unwell: fluffed')).toBe('31 Mar');
  });

  it('that the other died of counts as the death that it was', () => {
    const short = birds(
      came('A', '2026-03-01', 'date: 2026-03-01, quarantine: 10'),
      came('B', '2026-03-01', 'date: 2026-03-04, unwell: fluffed', 'date: 2026-03-05, died'),
    );
    const known = room(short, '2026-03-06');
    expect(shortDay(quarantineOf(known, birdIn(known, 'A'))?.out ?? 0)).toBe('15 Mar');
  });
});
