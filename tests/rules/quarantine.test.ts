import { describe, expect, it } from 'vitest';
import { shortDay } from '../../src/days.ts';
import { fewNames, quarantineOf } from '../../src/rules/quarantine.ts';
import { birdIn, waxbills } from '../room/facts.ts';
import { type Files, room } from '../rooms.ts';
import { lines } from './agenda/hill-finch.ts';
import { line } from './warnings/warned.ts';

const birds = (...items: string[]): Files => ({
  'birds.yaml': `birds:\n${items.map((item) => `  - ${item}`).join('\n')}\n`,
});
const came = (id: string, on: string, ...more: string[]) =>
  `{id: ${id}, log: [${[`date: ${on}, arrived: cage 9`, ...more].map((entry) => `{${entry}}`).join(', ')}]}`;

/** When a bird may come out, and who made its days begin anew: `31 Mar`, `9 Apr with B`. */
function out(files: Files, who: string, on = '2026-03-30'): string | null {
  const known = room(files, on);
  const quarantine = quarantineOf(known, birdIn(known, who));
  if (quarantine === null) return null;
  const { until, joined } = quarantine;
  return `${shortDay(until)}${joined.length === 0 ? '' : ` with ${fewNames(joined)}`}`;
}

// Thirty days apart, begun anew when another bird joins: common practice.
describe('the days of quarantine', () => {
  it('run from the day on which the bird came', () => {
    expect(out(birds(came('A', '2026-03-01')), 'A')).toBe('31 Mar');
    expect(out(birds(came('A', '2026-03-01', 'date: 2026-03-20, released: flight 2')), 'A')).toBeNull();
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
    expect(out(brief('died'), 'A')).toBe('10 Apr with B');
    const known = room(brief('died'), '2026-03-30');
    expect(quarantineOf(known, birdIn(known, 'A'))?.died.map(({ id }) => id)).toEqual(['B']);
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
      '19 Apr',
    );
    expect(out(brood('date: 2026-03-29, fledged: all\ndate: 2026-03-30, died: c1'), 'A')).toBe('29 Apr');
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
