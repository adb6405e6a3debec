import { describe, expect, it } from 'vitest';
import { measureNames, measures, measureWords } from '../../../src/rules/season/measures/index.ts';
import { left } from '../../../src/rules/season/measures/measure.ts';
import { book, clutches, FOUR, rate, short, waxbills } from './rooms.ts';

const lamp = 'date: 2026-03-10, candled: {fertile: [e1, e2, e3], clear: e4}';
const hatched = `${lamp}\n date: 2026-03-16, hatched: [e1, e2]`;
const ended = `${hatched}\n date: 2026-03-22, lost: {dead-in-shell: e3, clear: e4}`;

describe('every measure', () => {
  it.each(measureNames)('%s has its name, its words and whom it credits', (name) => {
    const { title, of, explain, credit } = measures[name];
    expect(measures[name].name).toBe(name);
    expect(title).toMatch(/^[a-z ]+$/);
    expect(of.k.length * of.n.length).toBeGreaterThan(0);
    expect(explain).toMatch(/^Of .{60,}\.$/);
    expect(['layer', 'sitter', 'nestFeeder', 'lastFeeder']).toContain(credit);
  });

  it('shares its words with whoever shows them', () => {
    expect(measureWords.map(({ name }) => name)).toEqual(measureNames);
  });
});

describe('fertility', () => {
  it('is of the eggs judged, while they are still sat on', () => {
    expect(rate('fertility', lamp, '2026-03-12')).toBe('3/4');
  });

  it.each([
    ['while eggs wait for the lamp', '', 'open 4'],
    [
      'while one of them is unsure',
      'date: 2026-03-10, candled: {fertile: [e1, e2, e3], unsure: e4}',
      'open 4',
    ],
    [
      'while clear was said too early',
      'date: 2026-03-08, candled: {fertile: [e1, e2, e3], clear: e4}',
      'open 4',
    ],
  ])('is open %s', (_, more, expected) => {
    expect(rate('fertility', more, '2026-03-12')).toBe(`0/0 ${expected}`);
  });

  it('is not to be judged where an egg that lay there on its day ended unjudged', () => {
    const some = 'date: 2026-03-16, hatched: [e1, e2, e3]\n date: 2026-03-22, lost: {addled: e4}';
    expect(rate('fertility', some)).toBe('0/0 out 4');
  });

  it('leaves out an egg that was gone before its day', () => {
    const some =
      'date: 2026-03-06, lost: {broken: e4}\n date: 2026-03-10, candled: {fertile: [e1, e2], clear: e3}';
    expect(rate('fertility', some)).toBe('2/3');
  });

  it('leaves out an egg that we took, but not what it hides', () => {
    const judged = `${lamp}\n date: 2026-03-11, lost: {sold: e1}`;
    expect(rate('fertility', judged)).toBe('2/3');
    const unjudged = 'date: 2026-03-12, lost: {removed: e4}\n date: 2026-03-16, hatched: [e1, e2, e3]';
    expect(rate('fertility', unjudged)).toBe('0/0 out 3');
    const early = 'date: 2026-03-05, lost: {sold: e4}\n date: 2026-03-16, hatched: [e1, e2, e3]';
    expect(rate('fertility', early)).toBe('3/3');
  });
});

describe('hatching of fertile eggs', () => {
  it('waits until every egg has an end', () => {
    expect(rate('hatchOfFertile', hatched)).toBe('0/0 open 3');
    expect(rate('hatchOfFertile', ended)).toBe('2/3');
  });

  it('needs the fertility of all of them', () => {
    const some = 'date: 2026-03-16, hatched: [e1, e2, e3]\n date: 2026-03-22, lost: {addled: e4}';
    expect(rate('hatchOfFertile', some)).toBe('0/0 out 4');
  });
});

describe('hatching of all eggs', () => {
  it('needs no lamp', () => {
    const some = 'date: 2026-03-16, hatched: [e1, e2, e3]\n date: 2026-03-22, lost: {addled: e4}';
    expect(rate('hatchOfLaid', some)).toBe('3/4');
    expect(rate('hatchOfLaid', hatched)).toBe('0/0 open 4');
  });

  it('leaves out what we took', () => {
    expect(rate('hatchOfLaid', ended.replace('shell: e3, clear: e4', 'shell: e3, given: e4'))).toBe('2/3');
  });
});

describe('fledging', () => {
  const young = `${ended}\n date: 2026-04-03, fledged: c1`;

  it('waits for the last of the nest', () => {
    expect(rate('fledge', young, '2026-04-05')).toBe('0/0 open 2');
    expect(rate('fledge', `${young}\n date: 2026-04-05, fledged: c2`)).toBe('2/2');
    expect(rate('fledge', `${young}\n date: 2026-04-05, died: c2`)).toBe('1/2');
  });

  it('waits for eggs that may yet hatch, but not for ever', () => {
    const early = `${hatched}\n date: 2026-03-17, died: all`;
    expect(rate('fledge', early, '2026-03-18')).toBe('0/0 open 2');
    expect(rate('fledge', early, '2026-05-01')).toBe('0/2');
  });

  it('leaves out who was sold from the nest', () => {
    expect(rate('fledge', `${young}\n date: 2026-04-04, gone: {sold: c2}`)).toBe('1/1');
  });

  it('counts who was sold once it had left the nest', () => {
    const flew = `${ended}\n date: 2026-04-03, fledged: all\n date: 2026-04-10, gone: {sold: c1}`;
    expect(rate('fledge', flew)).toBe('2/2');
  });

  it('is not to be judged where the young were first seen when they flew', () => {
    expect(rate('fledge', 'date: 2026-04-03, fledged: 2')).toBe('0/0 out 2');
  });
});

describe('independence', () => {
  const flew = `${ended}\n date: 2026-04-03, fledged: all`;

  it('waits for the last that is fed', () => {
    expect(rate('independence', flew)).toBe('0/0 open 2');
    expect(rate('independence', `${flew}\n date: 2026-04-20, independent: c1`)).toBe('0/0 open 2');
    expect(rate('independence', `${flew}\n date: 2026-04-20, independent: all`)).toBe('2/2');
    expect(rate('independence', `${flew}\n date: 2026-04-20, independent: c1, died: {hawk: c2}`)).toBe('1/2');
  });

  it('leaves out who was sold before', () => {
    expect(rate('independence', `${flew}\n date: 2026-04-20, independent: c1, gone: {sold: c2}`)).toBe('1/1');
  });

  it('is of those that left the nest, not of those that died in it', () => {
    const one = `${ended}\n date: 2026-03-25, died: c2\n date: 2026-04-03, fledged: c1`;
    expect(rate('independence', `${one}\n date: 2026-04-20, independent: c1`)).toBe('1/1');
  });

  it('waits for eggs that may yet hatch, but not for ever', () => {
    const early = `${lamp}\n date: 2026-03-16, hatched: e1, lost: {clear: e4}\n date: 2026-03-28, fledged: c1\n date: 2026-03-29, died: c1`;
    expect(rate('independence', early, '2026-03-30')).toBe('0/0 open 1');
    expect(rate('independence', early, '2026-05-01')).toBe('0/1');
  });

  it('does not care what happens later', () => {
    const grown = `${flew}\n date: 2026-04-20, independent: all\n date: 2026-05-01, gone: {sold: c1}\n date: 2026-05-03, died: c2`;
    expect(rate('independence', grown)).toBe('2/2');
  });
});

describe('independent of all eggs', () => {
  it('waits for everything', () => {
    const flew = `${ended}\n date: 2026-04-03, fledged: all`;
    expect(rate('overall', flew)).toBe('0/0 open 4');
    expect(rate('overall', `${flew}\n date: 2026-04-20, independent: c1`)).toBe('0/0 open 4');
    const egg = `${hatched}\n date: 2026-03-22, lost: {clear: e4}\n date: 2026-04-03, fledged: all`;
    expect(rate('overall', `${egg}\n date: 2026-04-20, independent: all`)).toBe('0/0 open 4');
    expect(rate('overall', `${flew}\n date: 2026-04-20, independent: all`)).toBe('2/4');
    expect(rate('overall', `${flew}\n date: 2026-04-20, independent: c1, gone: {sold: c2}`)).toBe('1/3');
  });
});

it('a nest of unknown size has no egg rates; what it reared counts', () => {
  const log =
    'date: 2026-04-01, hatched: 3\n date: 2026-04-18, fledged: all\n date: 2026-05-09, independent: all';
  const { totals } = book({ 'LW-1': waxbills(log) }, '2026-06-01');
  expect(measureNames.map((name) => `${name} ${short(totals, name)}`)).toEqual([
    'fertility 0/0 out 3',
    'hatchOfFertile 0/0 out 3',
    'hatchOfLaid 0/0 out 3',
    'fledge 3/3',
    'independence 3/3',
    'overall 0/0 out 3',
  ]);
});

it('of a nest of unknown size no egg is waited for: it will have no egg rates', () => {
  const { totals } = book({ 'LW-1': waxbills('date: 2026-03-01, laid: 3+, sitting') }, '2026-03-05');
  for (const name of ['fertility', 'hatchOfFertile', 'hatchOfLaid', 'overall'] as const)
    expect(short(totals, name), name).toBe('0/0 out 3');
});

it('what is left leaves out the taken', () => {
  const [clutch] = clutches(
    { 'LW-1': waxbills(`${FOUR}\n date: 2026-03-06, lost: {removed: e1, broken: e2}`) },
    '2026-03-07',
  );
  expect(left(clutch?.eggs ?? []).map(({ ref }) => ref)).toEqual(['e2', 'e3', 'e4']);
});
