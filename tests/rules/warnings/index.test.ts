import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { formatDay } from '../../../src/days.ts';
import { broodsOf } from '../../../src/rules/brood.ts';
import { learnedDurations } from '../../../src/rules/durations.ts';
import { warnings, warningsOf } from '../../../src/rules/warnings/index.ts';
import { exampleRoom, TODAY } from '../../example/room.ts';
import { morning, pair, waxbills } from './warned.ts';

const HELPERS = ['feeders', 'illness', 'index', 'parents', 'takers', 'warning', 'words'];

describe('every kind of warning', () => {
  it('has a file of its name, and every file is a kind or helps them', () => {
    const files = readdirSync('src/rules/warnings').map((file) => file.replace('.ts', ''));
    expect(files.filter((file) => !HELPERS.includes(file)).sort()).toEqual(
      warnings.map(({ kind }) => kind).sort(),
    );
  });

  it.each(warnings.map((warning) => [warning.kind, warning] as const))(
    '%s has its words',
    (_kind, warning) => {
      const { levels, when, over, explain, health } = warning;
      expect(levels.length).toBeGreaterThan(0);
      for (const text of [when, over]) expect(text).toMatch(/^\S.*[^.]$/);
      expect(explain).toMatch(/^[A-Z].{120,}\.$/);
      // Each has an end, and most an end by itself.
      expect(over).toMatch(/\d+ d|\d+ days|days after/);
      if (health) expect(explain).toContain('avian vet');
      expect(explain).not.toMatch(/antibiotic|\bmg\b|\bml\b|\bdose\b|throw (it|them) away/i);
    },
  );
});

describe('the warnings of a morning', () => {
  const files = {
    'LW-1': waxbills(
      'date: 2026-03-01, laid: 1, pulled: e1\n date: 2026-03-10, unwell: {hen: fluffed}',
      'hen: LW-20-11',
    ),
    'LW-2': pair('LW-2', 'lavender waxbill', 'date: 2026-03-05, paired'),
    'LW-10': pair(
      'LW-10',
      'lavender waxbill',
      'date: 2026-03-10, chasing: {by: cock, at: hen, level: fierce}',
    ),
  };

  it('begin with what presses, then by pair', () => {
    expect(morning(files, '2026-03-10').map(({ level, kind, pair }) => [level, kind, pair])).toEqual([
      ['act', 'unwell', 'LW-1'],
      ['act', 'chasing', 'LW-10'],
      ['watch', 'stored', 'LW-1'],
      ['note', 'live-food-ahead', 'LW-2'],
      ['note', 'live-food-ahead', 'LW-10'],
    ]);
  });

  it('do not change with the order of lines', () => {
    const turned = Object.fromEntries(
      Object.entries(files)
        .reverse()
        .map(([name, text]) => {
          const [head, log] = text.split('log:\n') as [string, string];
          return [name, `${head}log:\n${log.split('\n').reverse().join('\n')}`];
        }),
    );
    expect(morning(turned, '2026-03-10')).toEqual(morning(files, '2026-03-10'));
  });

  it('on a past day know nothing of what came later', () => {
    const later = {
      ...files,
      'LW-1': `${files['LW-1']}\n  - {date: 2026-03-12, died: hen}\n  - {date: 2026-03-12, lost: {broken: e1}}`,
    };
    expect(morning(later, '2026-03-10')).toEqual(morning(files, '2026-03-10'));
  });
});

describe('the example room', () => {
  it('is warned of what went wrong in its past, and never with three weeks of one line', () => {
    const runs = new Map<string, number>();
    const kinds = new Set<string>();
    for (let day = TODAY - 120; day <= TODAY; day++) {
      const room = exampleRoom(day);
      for (const { kind, pair, bird, clutch, date } of warningsOf(
        room,
        broodsOf(room, learnedDurations(room)),
      )) {
        const key = `${kind} ${pair} ${bird} ${clutch} ${formatDay(date)}`;
        kinds.add(kind);
        runs.set(key, (runs.get(key) ?? 0) + 1);
      }
    }
    expect(kinds.size).toBeGreaterThan(1);
    expect([...runs].filter(([, days]) => days > 30)).toEqual([]);
    expect([...runs].filter(([key, days]) => days > 16 && !/^(close-kin|unaccounted) /.test(key))).toEqual(
      [],
    );
  });
});
