import { expect, it } from 'vitest';
import { hostileRoom, journal } from './room.ts';

const brood = ['{date: 2026-05-01, laid: 1}', '{date: 2026-05-02, laid: 3}', '{date: 2026-05-03, sitting}'];

it('parts of days in a keeper’s profile make whole days in the calendar', () => {
  const keys = [
    'laying-interval: 1.4-1.6',
    'incubation: 12.3-13.6',
    'candling: 5.3-5.7',
    'sitting-from: 2.5',
    'live-food-lead: 1.7',
  ];
  const young = [
    'brooding: 7.2-8.8',
    'ring-age: 6.2-7.7',
    'fledging: 18.4-20.3',
    'independence: 31.3-38.7',
    'restart: 4.3',
  ];
  const { nestlog } = hostileRoom({
    'species/star.yaml': `species: star finch\n${[...keys, ...young].join('\n')}\n`,
    'pairs/x.yaml': journal('X-1', ...brood),
    'pairs/y.yaml': journal('Y-1', ...brood, '{date: 2026-05-16, hatched: 3}'),
  });
  const morning = JSON.parse(nestlog('due', '--days', '60', '--json').stdout);
  const days = morning.items.flatMap(({ from, likely, to }: Record<string, string | null>) =>
    [from, likely, to].filter((day) => day !== null),
  );
  expect(days.length).toBeGreaterThan(10);
  for (const day of days) expect(day).toMatch(/^\d{4}-\d\d-\d\d$/);
});

it('a profile in which hens lay many times a day is refused', () => {
  const { nestlog } = hostileRoom({ 'species/star.yaml': 'species: star finch\nlaying-interval: 0.001\n' });
  expect(nestlog('check').stdout).toMatch(/`laying-interval: 0.001` \(days\) cannot be/);
});

it('one value of a profile is not at once used and left out', () => {
  const { nestlog } = hostileRoom({ 'species/star.yaml': 'species: star finch\nfledging: 1\n' });
  expect(nestlog('check').stdout).toMatch(/^1 error in 1 file\./m);
});

it('a slip in the year makes a long wait of no morning', () => {
  const { nestlog } = hostileRoom({
    'pairs/x.yaml': journal(
      'X-1',
      '{date: 1996-05-01, laid: 1}',
      '{date: 2026-05-02, sitting}',
      '{date: 2026-05-02, fostered: {OK-1: e1}}',
    ),
  });
  const begun = performance.now();
  expect(nestlog('due').status).toBe(0);
  expect(performance.now() - begun).toBeLessThan(2000);
});

it('a species’ name as long as a book is looked for no longer than others', () => {
  const { nestlog } = hostileRoom({ 'pairs/x.yaml': `pair: X-1\nspecies: ${'s'.repeat(90_000)}\nlog:\n` });
  const begun = performance.now();
  expect(nestlog('check').stdout).toContain('pairs/x.yaml:2:10: hint: no profile for the species');
  expect(performance.now() - begun).toBeLessThan(2000);
});

it('counts, dates and ages beyond all nests are findings, and bound the work', () => {
  const { nestlog } = hostileRoom({
    'pairs/x.yaml': journal(
      'X-1',
      '{date: 2026-05-01, laid: -1}',
      '{date: 2026-05-01, laid: 10000}',
      '{date: 2026-05-01, laid: 99999999999999999999}',
      '{date: 2026-05-01, clutch: 99999999999, laid: 1}',
      '{date: 2026-02-30, laid: 1}',
      '{date: 9999-12-31, laid: 1}',
      '{date: 0206-05-01, laid: 1}',
      '{date: 2026-05-03, weighed: {hen: 1e308}}',
      '{date: 2026-05-03, hatched: all}',
    ),
    'birds.yaml':
      'birds:\n  - {id: A, species: star finch, log: [{date: 2026-05-01, arrived, quarantine: -30}]}\n',
    'nestlog.yaml': 'room: r\nroutines:\n  - {name: a, every: 0}\n',
  });
  const { stdout, stderr } = nestlog('check');
  expect(stderr).toBe('');
  const lines = [...stdout.matchAll(/^pairs\/x\.yaml:(\d+):\d+: error/gm)].map(([, line]) => Number(line));
  expect([...new Set(lines)]).toEqual([6, 7, 8, 9, 10, 11, 12, 13, 14]);
  expect(stdout).toContain('`-30` is not a number of days');
  expect(stdout).toContain('`0` is no whole number of at least 1');
  // The right year is taken from the dates that can be right.
  expect(stdout).not.toMatch(/did you mean (?:0206|9999)/);
});

it('eggs and chicks sent round in circles stay what they are: each in one nest', () => {
  const { nestlog } = hostileRoom({
    'pairs/x.yaml': journal(
      'X-1',
      '{date: 2026-05-02, laid: 3, sitting}',
      '{date: 2026-05-05, fostered: {Y-1: e1}}',
      '{date: 2026-05-06, fostered: {Y-1: all}}',
    ),
    'pairs/y.yaml': journal(
      'Y-1',
      '{date: 2026-05-02, laid: 2, sitting}',
      '{date: 2026-05-05, fostered: {X-1: X-1/1/e1}}',
      '{date: 2026-05-06, fostered: {X-1: all}}',
    ),
  });
  expect(nestlog('due').status).toBe(0);
  const eggs = JSON.parse(nestlog('export', 'eggs', '--format', 'json').stdout).rows;
  expect(eggs).toHaveLength(4 + 3 + 2);
});
