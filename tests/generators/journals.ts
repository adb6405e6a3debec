import fc from 'fast-check';
import { formatDay } from '../../src/days.ts';
import { day, type Files } from '../rooms.ts';

/** One line of a journal's log: its day and what was seen. */
export interface Line {
  /** Which journal. */
  pair: string;
  /** ISO date. */
  date: string;
  text: string;
}

/** Two pairs whose nests may hold each other's eggs and young. */
const PAIRS = { 'LW-1': 'lavender waxbill', 'BF-1': 'Bengalese finch' } as const;

const FIRST = day('2026-03-01');

/** Files of the room with these lines, in the order in which they stand. */
export function filesOf(lines: readonly Line[]): Files {
  return Object.fromEntries(
    Object.entries(PAIRS).map(([pair, species]) => {
      const head = [
        `pair: ${pair}`,
        `species: ${species}`,
        `cock: ${pair}-cock`,
        `hen: ${pair}-hen`,
        'housing: flight 1',
      ];
      const log = lines
        .filter((line) => line.pair === pair)
        .map(({ date, text }) => `  - {date: ${date}, ${text}}`);
      return [pair, [...head, ...(log.length === 0 ? [] : ['log:', ...log])].join('\n')];
    }),
  );
}

const pairs = fc.constantFrom(...(Object.keys(PAIRS) as (keyof typeof PAIRS)[]));

/** A brood as most go: laid daily, sat on, candled, hatched, fledged, independent; it may break off anywhere. */
const broodLines = fc
  .record({
    pair: pairs,
    start: fc.nat(20),
    eggs: fc.integer({ min: 1, max: 6 }),
    sits: fc.integer({ min: 0, max: 4 }),
    candled: fc.option(fc.constantFrom('fertile: all', 'clear: 1', 'unsure: all', 'fertile: 2, clear: 1')),
    hatches: fc.integer({ min: 0, max: 5 }),
    incubation: fc.integer({ min: 10, max: 17 }),
    fledges: fc.integer({ min: 15, max: 25 }),
    steps: fc.integer({ min: 1, max: 12 }),
  })
  .map(({ pair, start, eggs, sits, candled, hatches, incubation, fledges, steps }) => {
    const sat = start + Math.min(sits, eggs - 1);
    const young = Math.min(hatches, eggs);
    const out = sat + incubation;
    const events: [number, string][] = [
      ...Array.from({ length: eggs }, (_, i): [number, string] => [start + i, 'laid: 1']),
      [sat, 'sitting'],
      ...(candled === null ? [] : [[sat + 6, `candled: {${candled}}`] as [number, string]]),
      ...(young === 0
        ? []
        : ([
            [out, `hatched: ${young}`],
            [out + fledges, 'fledged: all'],
            [out + fledges + 15, 'independent: all'],
          ] as [number, string][])),
    ];
    return events.slice(0, steps).map(([at, text]): Line => ({ pair, date: formatDay(FIRST + at), text }));
  });

const egg = fc.constantFrom('e1', 'e2', 'e3', 'e4', '1', '2', 'all');
const chick = fc.constantFrom('c1', 'c2', 'c3', '1', '2', 'all');
const fixed = fc.constantFrom(
  'checked',
  'heard',
  'sitting: off',
  'parted',
  'reunited',
  'nest: removed',
  'food: [live food]',
  'roosting: out',
  'roosting: nest',
  'done: worming',
  'skip: candle',
  'checked: {eggs: 2}',
  'checked: {chicks: 1}',
);
const ofEggs = fc
  .tuple(
    fc.constantFrom(
      'pulled: WHO',
      'set: WHO',
      'pipped: WHO',
      'lost: {broken: WHO}',
      'lost: {sold: WHO}',
      'candled: {dead: WHO}',
      'fostered: {BF-1: WHO}',
      'fostered: {LW-1: WHO}',
      'fostered: {incubator: WHO}',
      'set: {BF-1: WHO}',
      'hatched: WHO',
      'back: WHO',
    ),
    egg,
  )
  .map(([text, who]) => text.replace('WHO', who));
const ofYoung = fc
  .tuple(
    fc.constantFrom(
      'fledged: WHO',
      'died: {cold: WHO}',
      'fostered: {BF-1: WHO}',
      'fostered: {hand: WHO}',
      'gone: {sold: WHO}',
      'independent: WHO',
      'crops: {thin: WHO}',
      'back: WHO',
      'feeding: {hen: WHO}',
    ),
    chick,
  )
  .map(([text, who]) => text.replace('WHO', who));

const anything = fc
  .record({ pair: pairs, at: fc.nat(90), text: fc.oneof(ofEggs, ofYoung, fixed, fc.constant('laid: 1')) })
  .map(({ pair, at, text }): Line => ({ pair, date: formatDay(FIRST + at), text }));

/** The log of a season as a keeper may write it: broods as they go, and now and then something else. */
export const plausibleLines: fc.Arbitrary<Line[]> = fc
  .tuple(fc.array(broodLines, { minLength: 1, maxLength: 3 }), fc.array(anything, { maxLength: 6 }))
  .map(([broods, others]) => [...broods.flat(), ...others]);

/** Observations of every kind in no order that makes sense. */
export const wildLines: fc.Arbitrary<Line[]> = fc.array(anything, { maxLength: 25 });

/** A day of that season or of the months after it. */
export const someDay: fc.Arbitrary<string> = fc.nat(140).map((at) => formatDay(FIRST + at));

/** The same lines in another order. */
export function shuffled(lines: readonly Line[]): fc.Arbitrary<Line[]> {
  return fc.shuffledSubarray([...lines], { minLength: lines.length, maxLength: lines.length });
}
