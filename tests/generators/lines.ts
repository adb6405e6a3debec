import fc from 'fast-check';
import { formatDay } from '../../src/days.ts';
import { day } from '../rooms.ts';

/** One line of a log: so many days after New Year, and what was seen, as a journal has it between the braces. */
export interface Line {
  on: number;
  saw: string;
}

/** Who keeps house in the generated rooms; every pair may foster for every other. */
export const PAIRS = [
  { id: 'LW-1', species: 'lavender waxbill', cock: 'LW-19-04', hen: 'LW-20-11', housing: 'flight 1' },
  { id: 'LW-2', species: 'lavender waxbill', cock: 'LW-19-04', hen: 'LW-20-12', housing: 'flight 2' },
  { id: 'BF-1', species: 'bengalese finch', cock: 'BF-20-01', hen: 'BF-20-02', housing: 'cage 1' },
] as const;

const NEW_YEAR = day('2026-01-01');

/** The day of a line, as journals write it. */
export function dateOf(on: number): string {
  return formatDay(NEW_YEAR + on);
}

/** The journal of a pair with these lines, in this order. */
export function journalOf(pair: (typeof PAIRS)[number], lines: readonly Line[]): string {
  const log = lines.map(({ on, saw }) => `  - {date: ${dateOf(on)}, ${saw}}\n`);
  const { id, species, cock, hen, housing } = pair;
  return `pair: ${id}\nspecies: ${species}\ncock: ${cock}\nhen: ${hen}\nhousing: ${housing}\nlog:\n${log.join('')}`;
}

const number = (ref: string) => fc.integer({ min: 1, max: 6 }).map((n) => `${ref}${n}`);
const pair = fc.constantFrom(...PAIRS.map(({ id }) => id));
const egg = fc.oneof(number('e'), number('2/e'), number('LW-1/1/e'), number('BF-1/1/e'));
const chick = fc.oneof(number('c'), number('2/c'), number('LW-1/1/c'), number('BF-1/1/c'));
const bird = fc.oneof(chick, fc.constantFrom('cock', 'hen', 'both', 'LW-20-11', 'BF-20-01', 'LW 26 01'));
const count = fc.constantFrom('1', '2', '3', '4', 'some', '2+', '~3', 'all');
const some = (ref: fc.Arbitrary<string>) => fc.uniqueArray(ref, { minLength: 1, maxLength: 3 });
const list = (ref: fc.Arbitrary<string>) => some(ref).map((refs) => `[${refs.join(', ')}]`);
const eggs = fc.oneof(count, egg, list(egg));
const young = fc.oneof(count, chick, list(chick));
const birds = fc.oneof(count, bird, list(bird));
const flight = fc.constantFrom('flight 1', 'flight 7', 'cage 9');

/** `key: {what: who}` */
const map = (key: string, whats: fc.Arbitrary<string>, who: fc.Arbitrary<string>) =>
  fc.tuple(whats, who).map(([what, whom]) => `${key}: {${what}: ${whom}}`);
const plain = (key: string, who: fc.Arbitrary<string>) => who.map((whom) => `${key}: ${whom}`);

/** Any observation, whether or not it can be true on its day. */
const observation = fc.oneof(
  fc.constantFrom('paired', 'paired: flight 7', 'paired: {hen: LW-21-01}', 'reunited', 'reunited: cage 9'),
  fc.constantFrom('parted', 'parted: {cock: flight 7}', 'parted: {hen: cage 9}', 'courting', 'heard'),
  fc.constantFrom('nest: offered', 'nest: removed', 'nest: {state: lined, site: gorse}', 'chasing'),
  fc.constantFrom('sitting', 'sitting: hen', 'sitting: both', 'sitting: off', 'skip: candle', 'done: greens'),
  fc.constantFrom(
    'food: [live food]',
    'food: {sprouted seed: 12}',
    'checked',
    'roosting: out',
    'photo: a.jpg',
  ),
  fc.constantFrom('checked: {eggs: 3}', 'checked: {chicks: 2}', 'checked: {eggs: 1, chicks: 3+}'),
  plain('laid', eggs),
  plain('pulled', eggs),
  plain('set', eggs),
  map('set', fc.oneof(pair, fc.constant('incubator')), eggs),
  map('candled', fc.constantFrom('fertile', 'clear', 'dead', 'unsure'), eggs),
  map('aged', fc.integer({ min: 0, max: 14 }).map(String), fc.oneof(eggs, young)),
  plain('pipped', eggs),
  plain('hatched', eggs),
  map('lost', fc.constantFrom('clear', 'broken', 'addled', 'missing', 'dead-in-shell', 'removed'), eggs),
  map('ringed', chick, fc.constantFrom('LW 26 01', 'LW 26 02', 'LW 26 03')),
  map('weighed', fc.oneof(egg, bird), fc.constantFrom('0.9', '8.4')),
  map('measured', egg, fc.constant('14.2 x 10.8')),
  map('crops', fc.constantFrom('full', 'thin', 'empty'), young),
  map('feeding', fc.constantFrom('cock', 'hen', 'hand'), young),
  map('roosting', fc.constantFrom('nest', 'out'), young),
  plain('fledged', young),
  plain('independent', young),
  map('died', fc.constantFrom('chilled', 'unknown'), birds),
  plain('back', fc.oneof(birds, eggs)),
  map('fostered', fc.oneof(pair, fc.constant('hand')), fc.oneof(eggs, young)),
  plain('moved', flight),
  map('moved', bird, flight),
  map('gone', fc.constantFrom('sold', 'lent', 'escaped'), birds),
  map('unwell', bird, fc.constant('fluffed')),
  map('sexed', fc.constantFrom('cock', 'hen'), young),
  map('moult', fc.constantFrom('started', 'done'), birds),
  map('treated', bird, fc.constant('as the vet ordered')),
);

const maybe = (text: fc.Arbitrary<string>) => fc.option(text, { nil: '', freq: 8 });

/** Anything on any day: most of it cannot be true. */
export const anyLine: fc.Arbitrary<Line> = fc
  .tuple(
    fc.integer({ min: 0, max: 120 }),
    maybe(
      fc.constantFrom('time: 07:30, ', 'time: 18:00, ', 'time: 18:00, after: 07:00, ', 'after: 2026-01-20, '),
    ),
    maybe(fc.constantFrom('clutch: 1, ', 'clutch: 2, ', 'clutch: 3, ')),
    maybe(fc.constantFrom('site: gorse, ', 'site: basket, ')),
    observation,
  )
  .map(([on, time, clutch, site, said]) => ({ on, saw: `${time}${clutch}${site}${said}` }));
