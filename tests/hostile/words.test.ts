import { expect, it } from 'vitest';
import { hostileRoom, journal } from './room.ts';

it.each(['__proto__', 'constructor', 'toString'])('%s is a name like any other', (name) => {
  const { nestlog } = hostileRoom({
    'nestlog.yaml': `room: ${name}\nroutines:\n  - {name: ${name}, every: 1, say: look}\n`,
    'birds.yaml': `birds:\n  - {id: ${name}, species: ${name}, ring: ${name}}\n`,
    'species/a.yaml': `species: ${name}\nincubation: 12-14\n`,
    'pairs/x.yaml': `pair: ${name}\nspecies: ${name}\ncock: ${name}\nhousing: ${name}\nlog:\n  - {date: 2026-05-02, laid: 3, sitting}\n`,
    'pairs/y.yaml': journal(
      'Y-1',
      '{date: 2026-05-02, laid: 3, sitting}',
      `{date: 2026-05-03, fostered: {${name}: e1}, done: ${name}}`,
      `{date: 2026-05-04, ${name}: 3}`,
      `{date: 2026-05-04, lost: {${name}: e2}}`,
      `{date: ${name}, laid: 1}`,
    ),
  });
  const check = nestlog('check');
  expect(check.stdout).toContain(`pairs/y.yaml:8:24: error: there is no key \`${name}\` here`);
  expect(check.stdout).toContain(`pairs/y.yaml:9:31: error: \`${name}\` is not a word known here`);
  expect(check.stdout).toContain(`pairs/y.yaml:10:12: error: \`${name}\` is not how dates are written here`);
  expect(check.stdout).toMatch(/^3 errors in 1 file\./m);
  const { status, stdout, stderr } = nestlog('due');
  expect([status, stderr]).toEqual([0, '']);
  expect(stdout).toContain(`Sunday 17 May 2026 · ${name}`);
  expect(stdout).toContain(`${name} (e1–e3, Y-1/1/e1)`);
});

it('a bird that is its own sire and dam is told once', () => {
  const { nestlog } = hostileRoom({
    'birds.yaml': 'birds:\n  - {id: A, species: star finch, sire: A, dam: A}\n',
  });
  expect(nestlog('check').stdout.match(/among its own ancestors/g)).toHaveLength(1);
});

it.each([
  ['nestlog.yaml', '`room: the birdroom`'],
  ['birds.yaml', '`birds:`'],
  ['species/a.yaml', '`species: lavender waxbill`'],
  ['pairs/a.yaml', '`pair: LW-1`'],
])('%s without keys is told how such a file begins', (file, beginning) => {
  const { nestlog } = hostileRoom({ [file]: '- a\n' });
  expect(nestlog('check').stdout).toContain(beginning);
});
