import { describe, expect, it } from 'vitest';
import type { Files } from '../../rooms.ts';
import { line, spell, warned, waxbills } from './warned.ts';

const newcomer = (more = '') => `birds:
  - id: LW-26-01
    species: lavender waxbill
    sex: cock
    log:
      - {date: 2026-03-01, arrived: cage 9}
      ${more}
  - id: LW-20-11
    species: lavender waxbill
    sex: hen
    log:
      - {date: 2025-03-01, arrived: flight 2}
      - {date: 2025-04-01, released: flight 2}
`;
const paired = waxbills('date: 2026-03-10, paired', 'cock: LW-26-01\nhen: LW-20-11\nhousing: flight 2');

// 30 days apart for new or returned birds: common practice.
describe('a bird still in quarantine', () => {
  it('is told of each bird that joins it, for a week', () => {
    const resident = (id: string, on: string, then = '') =>
      `  - {id: ${id}, log: [{date: 2025-03-01, arrived: flight 2}, {date: 2025-04-01, released}, {date: ${on}, moved: cage 9}${then}]}\n`;
    const files: Files = {
      'birds.yaml': `birds:\n  - {id: N, log: [{date: 2026-05-01, arrived: cage 9}]}\n${resident('A', '2026-05-05')}${resident('B', '2026-05-20')}`,
    };
    expect(spell(files, 'quarantine', '2026-05-01', '2026-06-10')).toEqual([
      '05-05 … 05-12 watch',
      '05-20 … 05-27 watch',
    ]);
    expect(line(files, 'quarantine', '2026-05-20').text).toContain(
      'until 19 Jun, and since 20 May in cage 9 with B',
    );
  });

  it('is told on when the two are moved on together', () => {
    const files: Files = {
      'birds.yaml':
        'birds:\n  - {id: N, log: [{date: 2026-05-01, arrived: cage 9}]}\n  - {id: A, log: [{date: 2025-03-01, arrived: cage 9}, {date: 2025-04-01, released}]}\n',
      'LW-1': waxbills(
        'date: 2026-05-07, paired\ndate: 2026-05-09, moved: {cock: cage 7, hen: cage 7}',
        'cock: A\nhen: N\nhousing: cage 9',
      ),
    };
    expect(spell(files, 'quarantine', '2026-05-01', '2026-06-10')).toEqual(['05-01 … 05-08 watch']);
    expect(line(files, 'quarantine', '2026-05-08').text).toContain('until 31 May, and since 1 May');
  });

  it('that was paired is said for a week', () => {
    const files: Files = { 'birds.yaml': newcomer(), 'LW-1': paired };
    expect(spell(files, 'quarantine', '2026-03-01', '2026-04-15')).toEqual(['03-10 … 03-17 watch']);
    expect(line(files, 'quarantine', '2026-03-10').text).toBe(
      'LW-26-01: in quarantine until 9 Apr, and since 10 Mar in flight 2 with LW-20-11. What a new bird carries shows late.',
    );
    expect(warned(files, 'quarantine', '2026-03-10')).toMatchObject([{ pair: 'LW-1', bird: 'LW-26-01' }]);
  });

  it('that was moved in with others is said as well', () => {
    const files: Files = { 'birds.yaml': newcomer('- {date: 2026-03-12, moved: flight 2}') };
    expect(spell(files, 'quarantine', '2026-03-01', '2026-04-15')).toEqual(['03-12 … 03-19 watch']);
  });

  it('that met others on its last day is told as any other, the day after it is not', () => {
    const moved = (on: string): Files => ({ 'birds.yaml': newcomer(`- {date: ${on}, moved: flight 2}`) });
    expect(spell(moved('2026-03-30'), 'quarantine', '2026-03-01', '2026-04-15')).toEqual([
      '03-30 … 04-06 watch',
    ]);
    expect(spell(moved('2026-03-31'), 'quarantine', '2026-03-01', '2026-04-15')).toEqual([]);
  });

  it('that was paired, wherever the two live', () => {
    const files: Files = {
      'birds.yaml': newcomer().replace('arrived: cage 9', 'arrived'),
      'LW-1': waxbills('date: 2026-03-10, paired', 'cock: LW-26-01\nhen: LW-20-11'),
    };
    expect(line(files, 'quarantine', '2026-03-10').text).toBe(
      'LW-26-01: in quarantine until 9 Apr, and since 10 Mar together with LW-20-11. What a new bird carries shows late.',
    );
  });

  it('that is in a pair without a line of its being put there, since the pair’s first entry', () => {
    const files: Files = {
      'birds.yaml': newcomer().replace('arrived: cage 9', 'arrived'),
      'LW-1': waxbills('date: 2026-03-08, courting', 'cock: LW-26-01\nhen: LW-20-11'),
    };
    expect(spell(files, 'quarantine', '2026-03-01', '2026-04-15')).toEqual(['03-08 … 03-15 watch']);
  });

  it('that was moved into a full flight names four of those there', () => {
    const more = [12, 13, 14, 15, 16].map(
      (n) =>
        `  - {id: LW-20-${n}, log: [{date: 2025-03-01, arrived: flight 2}, {date: 2025-04-01, released: flight 2}]}`,
    );
    const files: Files = {
      'birds.yaml': `${newcomer('- {date: 2026-03-12, moved: flight 2}').trimEnd()}\n${more.join('\n')}\n`,
    };
    expect(line(files, 'quarantine', '2026-03-12').text).toContain(
      'with LW-20-11, LW-20-12, LW-20-13, LW-20-14 and 2 others.',
    );
  });

  it('that sits alone, or was released, is nothing', () => {
    expect(warned({ 'birds.yaml': newcomer() }, 'quarantine', '2026-03-05')).toEqual([]);
    const released: Files = {
      'birds.yaml': newcomer('- {date: 2026-03-08, released: flight 2}'),
      'LW-1': paired,
    };
    expect(warned(released, 'quarantine', '2026-03-10')).toEqual([]);
  });

  it('is over when it is apart again', () => {
    const files: Files = {
      'birds.yaml': newcomer(
        '- {date: 2026-03-12, moved: flight 2}\n      - {date: 2026-03-14, moved: cage 9}',
      ),
    };
    expect(spell(files, 'quarantine', '2026-03-01', '2026-04-15')).toEqual(['03-12 … 03-13 watch']);
  });
});

describe('birds in one quarantine cage', () => {
  const two = (second: string) => `birds:
  - {id: A, log: [{date: 2026-03-01, arrived: cage 9}]}
  - {id: B, log: [{date: ${second}, arrived: cage 9}]}
`;

  it('that came together are together', () => {
    expect(warned({ 'birds.yaml': two('2026-03-01') }, 'quarantine', '2026-03-05')).toEqual([]);
  });

  // The days begin anew when another bird joins: common practice.
  it('of which one came later are not', () => {
    const lines = warned({ 'birds.yaml': two('2026-03-11') }, 'quarantine', '2026-03-11');
    expect(lines.map(({ bird }) => bird)).toEqual(['A', 'B']);
    expect(lines[0]?.check).toContain('the days begin anew for all');
  });

  it('of which one was lent meanwhile are not', () => {
    const away = two('2026-03-01').replace(
      'arrived: cage 9}]',
      'arrived: cage 9}, {date: 2026-03-05, gone: lent}, {date: 2026-03-11, back}]',
    );
    expect(warned({ 'birds.yaml': away }, 'quarantine', '2026-03-11').map(({ bird }) => bird)).toEqual([
      'A',
      'B',
    ]);
  });

  it('and a chick of theirs came with nobody', () => {
    const files: Files = {
      'birds.yaml': two('2026-03-01'),
      'LW-1': waxbills(
        'date: 2026-03-01, paired\n date: 2026-03-02, laid: 2\n date: 2026-03-15, hatched: 2',
        'cock: A\nhen: B\nhousing: cage 9',
      ),
    };
    expect(warned(files, 'quarantine', '2026-03-16')).toEqual([]);
  });
});

it('a pair whose journal begins later is no pair yet', () => {
  expect(warned({ 'birds.yaml': newcomer(), 'LW-1': paired }, 'quarantine', '2026-03-05')).toEqual([]);
});

describe('birds in quarantine that others were put to', () => {
  const resident = (id: string, on: string) =>
    `  - {id: ${id}, log: [{date: 2025-03-01, arrived: flight 2}, {date: 2025-04-01, released}, {date: ${on}, moved: cage 9}]}\n`;
  const came = (id: string) => `  - {id: ${id}, log: [{date: 2026-05-01, arrived: cage 9}]}\n`;
  const file = (...birds: string[]): Files => ({ 'birds.yaml': `birds:\n${birds.join('')}` });

  it('are one line where they came together, with all their company since the first of it', () => {
    const files = file(came('N'), came('M'), resident('A', '2026-05-05'), resident('B', '2026-05-07'));
    expect(warned(files, 'quarantine', '2026-05-07')).toHaveLength(1);
    expect(line(files, 'quarantine', '2026-05-07').text).toContain(
      'N and M: in quarantine until 6 Jun, and since 5 May in cage 9 with A and B.',
    );
  });

  it('are no longer told of once a short quarantine is over', () => {
    const files = {
      ...file(came('N'), resident('A', '2026-05-03')),
      'nestlog.yaml': 'limits: {quarantine: 5}\n',
    };
    expect(spell(files, 'quarantine', '2026-05-01', '2026-06-10')).toEqual(['05-03 … 05-07 watch']);
  });
});
