import { expect, test } from 'vitest';
import { completeClutch, layingBasis } from '../../../src/rules/forecast/laying.ts';
import { day, room } from '../../rooms.ts';

const journal = (...log: string[]) => ({
  'LW-1': `
    pair: LW-1
    species: lavender waxbill
    cock: C-1
    hen: H-1
    log:
${log.map((line) => `      - {${line}}`).join('\n')}
  `,
});

const forecast = (on: string, ...log: string[]) => {
  const stood = room(journal(...log), on);
  const clutch = stood.pairs[0]?.clutches.at(-1);
  return clutch === undefined ? null : completeClutch(clutch, stood);
};

test('four to five eggs, one a day, are complete on the fourth or fifth day', () => {
  // Common practice: one egg a day. First egg on 1 March: the fourth comes on the 4th, the fifth on the 5th.
  const complete = forecast('2026-03-01', 'date: 2026-03-01, clutch: 1, laid: 1');
  expect(complete).toMatchObject({ eggs: { low: 4, high: 5 }, n: 0 });
  expect(complete?.from).toBeGreaterThanOrEqual(day('2026-03-03'));
  expect(complete?.to).toBeLessThanOrEqual(day('2026-03-06'));
  expect(complete && layingBasis(complete)).toBe('4–5 eggs, book');
});

test('a hen that has laid six before is expected to lay longer', () => {
  const six = (month: string, clutch: number) =>
    [1, 2, 3, 4, 5, 6].map(
      (date) => `date: 2026-${month}-0${date}, clutch: ${clutch}, laid: 1${date === 6 ? ', sitting' : ''}`,
    );
  const first = 'date: 2026-05-01, clutch: 3, laid: 1';
  const learned = forecast('2026-05-01', ...six('01', 1), ...six('03', 2), first);
  const book = forecast('2026-05-01', first);
  expect(learned?.n).toBe(2);
  expect(learned?.to).toBeGreaterThan(book?.to ?? Number.POSITIVE_INFINITY);
  // Six eggs, one a day: never later than the day after the sixth.
  expect(learned?.to).toBeLessThanOrEqual(day('2026-05-07'));
  expect(learned && layingBasis(learned)).toBe('4–5 eggs, book; 2 clutches of this hen');
});

test('the last egg is never expected before one that is there', () => {
  const log = Array.from({ length: 7 }, (_, i) => `date: 2026-03-0${i + 1}, clutch: 1, laid: 1`);
  expect(forecast('2026-03-07', ...log)?.from).toBe(day('2026-03-07'));
});

test('nothing is foretold of a clutch that nobody counted', () => {
  expect(forecast('2026-03-01', 'date: 2026-03-01, clutch: 1, laid: some')).toBeNull();
});

const sixEggs = (month: string, clutch: number, ...more: string[]) => [
  ...Array.from({ length: 6 }, (_, i) => `date: 2026-${month}-0${i + 1}, clutch: ${clutch}, laid: 1`),
  ...more,
];
const next = 'date: 2026-05-01, clutch: 3, laid: 1';

test('a clutch that was never sat on does not tell how many she lays', () => {
  // Deserted after the second egg.
  const given = ['date: 2026-01-01, clutch: 1, laid: 1', 'date: 2026-01-02, laid: 1'];
  expect(forecast('2026-05-01', ...given, 'date: 2026-01-08, lost: {deserted: 2}', next)?.n).toBe(0);
  expect(forecast('2026-05-01', ...sixEggs('01', 1, 'date: 2026-01-07, sitting'), next)?.n).toBe(1);
});

test('her clutches with another cock count, those of another hen do not', () => {
  const other = (hen: string) => ({
    'LW-2': `
      pair: LW-2
      species: lavender waxbill
      cock: C-2
      hen: ${hen}
      log:
${sixEggs('01', 1, 'date: 2026-01-07, sitting', 'date: 2026-01-30, parted')
  .map((line) => `        - {${line}}`)
  .join('\n')}
    `,
  });
  const learnedFrom = (hen: string) => {
    const stood = room({ ...journal(next), ...other(hen) }, '2026-05-01');
    const clutch = stood.pairs.find(({ id }) => id === 'LW-1')?.clutches.at(-1);
    return clutch === undefined ? null : completeClutch(clutch, stood)?.n;
  };
  expect(learnedFrom('H-1')).toBe(1);
  expect(learnedFrom('H-2')).toBe(0);
});

test('a hen’s first clutch is foretold by the book, whatever she laid later', () => {
  const stood = room(
    journal(...sixEggs('01', 1, 'date: 2026-01-07, sitting'), next.replace('3', '2')),
    '2026-05-01',
  );
  const clutch = stood.pairs[0]?.clutches[0];
  expect(clutch && completeClutch(clutch, stood)?.n).toBe(0);
});

test('a clutch that hatched was laid to its end, also when nobody saw her sit', () => {
  const hatched = (sat: string) => sixEggs('01', 1, ...(sat === '' ? [] : [`date: 2026-01-07, ${sat}`]));
  expect(forecast('2026-05-01', ...hatched(''), 'date: 2026-01-20, hatched: 4', next)?.n).toBe(1);
  expect(forecast('2026-05-01', ...hatched('sitting: off'), next)?.n).toBe(0);
});

test('of two hens in a nest nobody knows who laid', () => {
  const stood = (earlier: string, now: string, birds = '') => {
    const logs = [
      ['LW-1', earlier, [...sixEggs('01', 1, 'date: 2026-01-07, sitting', 'date: 2026-01-30, parted')]],
      ['LW-2', now, [next]],
    ] as const;
    const files = Object.fromEntries(
      logs.map(([id, hen, log]) => [
        id,
        `pair: ${id}\nspecies: lavender waxbill\n${hen}\nlog:\n${log.map((line) => `  - {${line}}\n`).join('')}`,
      ]),
    );
    const known = room({ ...files, ...(birds === '' ? {} : { 'birds.yaml': birds }) }, '2026-05-01');
    const clutch = known.pairs.find(({ id }) => id === 'LW-2')?.clutches[0];
    return clutch && completeClutch(clutch, known)?.n;
  };
  expect(stood('hen: H-1', 'hen: H-1')).toBe(1);
  expect(stood('hen: [H-1, H-2]', 'hen: H-1')).toBe(0);
  expect(stood('hen: H-1', 'hen: [H-1, H-2]')).toBe(0);
  expect(stood('cock: C-1', 'cock: C-1')).toBe(0);
  // The same hen under the ring that the bird list gives her.
  expect(stood('hen: H-1', 'hen: 23-077', 'birds:\n  - {id: H-1, sex: hen, ring: 23-077}\n')).toBe(1);
});

test('nothing is foretold where nobody knows how many eggs are usual, or how fast they come', () => {
  const foretold = (profile: string, log = next) => {
    const files = {
      'species/ridge-finch.yaml': `species: ridge finch\nscientific: Exemplum jugi\n${profile}`,
      'RF-1': `pair: RF-1\nspecies: ridge finch\nlog:\n  - {${log}}\n`,
    };
    const stood = room(files, '2026-05-01');
    const clutch = stood.pairs[0]?.clutches[0];
    return clutch && completeClutch(clutch, stood);
  };
  expect(foretold('clutch: 4\nlaying-interval: 1\n')).not.toBeNull();
  expect(foretold('clutch: 4\n')).toBeNull();
  expect(foretold('laying-interval: 1\n')).toBeNull();
  // Nor of a nest in which nobody saw an egg, nor of a species without any profile.
  expect(foretold('clutch: 4\nlaying-interval: 1\n', 'date: 2026-05-01, sitting')).toBeNull();
  const unknown = room({ 'X-1': `pair: X-1\nspecies: nobody’s finch\nlog:\n  - {${next}}\n` }, '2026-05-01');
  const clutch = unknown.pairs[0]?.clutches[0];
  expect(clutch && completeClutch(clutch, unknown)).toBeNull();
});

test('what it rests on is said of one clutch and one number of eggs, too', () => {
  const window = { from: 0, likely: 0, to: 0 };
  expect(layingBasis({ ...window, eggs: { low: 4, high: 4 }, n: 0 })).toBe('4 eggs, book');
  expect(layingBasis({ ...window, eggs: { low: 4, high: 5 }, n: 1 })).toBe(
    '4–5 eggs, book; 1 clutch of this hen',
  );
});

test('every other day makes a clutch take twice as long', () => {
  // Budgerigars lay every other day (common practice): four to six eggs take six to ten days.
  const files = {
    'B-1': `pair: B-1\nspecies: budgerigar\nhen: H-1\nlog:\n  - {${next.replace('3', '1')}}\n`,
  };
  const stood = room(files, '2026-05-01');
  const clutch = stood.pairs[0]?.clutches[0];
  const complete = clutch === undefined ? null : completeClutch(clutch, stood);
  expect(complete?.likely).toBeGreaterThanOrEqual(day('2026-05-07'));
  expect(complete?.from).toBeGreaterThanOrEqual(day('2026-05-06'));
});
