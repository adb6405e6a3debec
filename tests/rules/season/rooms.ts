import fc from 'fast-check';
import { formatDay } from '../../../src/days.ts';
import type { Clutch } from '../../../src/room/model.ts';
import type { Block } from '../../../src/rules/season/block.ts';
import type { GroupingName } from '../../../src/rules/season/groupings.ts';
import type { MeasureName } from '../../../src/rules/season/measures/index.ts';
import { type SeasonBook, seasonBook } from '../../../src/rules/season/season.ts';
import { parseSeasons } from '../../../src/rules/season/seasons.ts';
import { day, type Files, room } from '../../rooms.ts';
import { pair, waxbills } from '../warnings/warned.ts';

export { pair, waxbills };

/** The season's book of a room that stands in the test as text. */
export function book(files: Files, on: string, seasons = 'all', by: GroupingName | null = null): SeasonBook {
  return seasonBook(room(files, on), { seasons: parseSeasons(seasons), by });
}

/** The clutches of such a room, of all pairs in order. */
export function clutches(files: Files, on: string): Clutch[] {
  return room(files, on).pairs.flatMap((one) => one.clutches);
}

/** `2/3 open 1 out 4`: a rate in short. */
export function short({ rates }: Pick<Block, 'rates'>, name: MeasureName): string {
  const { k, n, open, outside } = rates[name];
  return [`${k}/${n}`, open > 0 ? `open ${open}` : '', outside > 0 ? `out ${outside}` : '']
    .filter((part) => part !== '')
    .join(' ');
}

/** A rate of one clutch of a lavender waxbill pair with this log: four eggs laid 1–4 March, sat on from the fourth. */
export function rate(name: MeasureName, more: string, on = '2026-07-01'): string {
  return short(book({ 'LW-1': waxbills(`${FOUR}\n${more}`) }, on).totals, name);
}

export const FOUR = `date: 2026-03-01, laid: 1
  date: 2026-03-02, laid: 1
  date: 2026-03-03, laid: 1
  date: 2026-03-04, laid: 1, sitting`;

const eggFates = [
  'open',
  'clear',
  'broken',
  'dead-in-shell',
  'sold',
  'independent',
  'died in the nest',
  'died fledged',
  'gone',
  'fed',
] as const;
type EggFate = (typeof eggFates)[number];

/** Any clutch: what becomes of each of its eggs, and whether a lamp told. */
export interface AnyClutch {
  fates: EggFate[];
  candled: boolean;
}

const anyClutch: fc.Arbitrary<AnyClutch> = fc.record({
  fates: fc.array(fc.constantFrom(...eggFates), { minLength: 1, maxLength: 6 }),
  candled: fc.boolean(),
});

/** Any room: pairs with any clutches, each told day by day in its journal. */
export const anyRoom: fc.Arbitrary<Files> = fc
  .array(fc.array(anyClutch, { minLength: 0, maxLength: 3 }), { minLength: 1, maxLength: 4 })
  .map((pairs) => Object.fromEntries(pairs.map((some, i) => [`LW-${i + 1}`, journal(`LW-${i + 1}`, some)])));

/** The day on which all such rooms are looked at: later than anything in them. */
export const LATER = '2026-12-31';

function journal(id: string, some: readonly AnyClutch[]): string {
  const lines = some.flatMap((clutch, i) => clutchLines(clutch, day('2026-01-10') + i * 90, i + 1));
  return pair(id, 'lavender waxbill', ['date: 2026-01-01, paired', ...lines].join('\n'));
}

function clutchLines({ fates, candled }: AnyClutch, first: number, number: number): string[] {
  const on = (days: number) => `date: ${formatDay(first + days)}, clutch: ${number}`;
  const refs = (wanted: (fate: EggFate) => boolean, mark: string, all: readonly EggFate[]) =>
    all.flatMap((fate, i) => (wanted(fate) ? [`${mark}${i + 1}`] : []));
  const list = (key: string, some: string[]) => (some.length === 0 ? [] : [`${key}: [${some.join(', ')}]`]);
  const map = (key: string, parts: string[]) => (parts.length === 0 ? [] : [`${key}: {${parts.join(', ')}}`]);
  const entry = (days: number, parts: string[]) =>
    parts.length === 0 ? [] : [[on(days), ...parts].join(', ')];
  const sat = fates.length - 1;
  const hatches = (fate: EggFate) =>
    ['independent', 'died in the nest', 'died fledged', 'gone', 'fed'].includes(fate);
  const chicks = fates.filter(hatches);
  const flew = (fate: EggFate) => hatches(fate) && fate !== 'died in the nest';
  return [
    ...fates.map((_, i) => `${on(i)}, laid: 1${i === sat ? ', sitting' : ''}`),
    ...entry(
      sat + 2,
      map(
        'lost',
        list(
          'broken',
          refs((fate) => fate === 'broken', 'e', fates),
        ),
      ),
    ),
    ...(candled
      ? entry(
          sat + 6,
          map('candled', [
            ...list(
              'fertile',
              refs((fate) => hatches(fate) || fate === 'dead-in-shell', 'e', fates),
            ),
            ...list(
              'clear',
              refs((fate) => fate === 'clear', 'e', fates),
            ),
          ]),
        )
      : []),
    ...entry(
      sat + 7,
      map(
        'lost',
        list(
          'sold',
          refs((fate) => fate === 'sold', 'e', fates),
        ),
      ),
    ),
    ...entry(sat + 12, list('hatched', refs(hatches, 'e', fates))),
    ...entry(
      sat + 17,
      map(
        'died',
        list(
          'cold',
          refs((fate) => fate === 'died in the nest', 'c', chicks),
        ),
      ),
    ),
    ...entry(
      sat + 18,
      map('lost', [
        ...list(
          'clear',
          refs((fate) => fate === 'clear', 'e', fates),
        ),
        ...list(
          'dead-in-shell',
          refs((fate) => fate === 'dead-in-shell', 'e', fates),
        ),
      ]),
    ),
    ...entry(sat + 31, list('fledged', refs(flew, 'c', chicks))),
    ...entry(
      sat + 37,
      map(
        'died',
        list(
          'window',
          refs((fate) => fate === 'died fledged', 'c', chicks),
        ),
      ),
    ),
    ...entry(
      sat + 40,
      map(
        'gone',
        list(
          'sold',
          refs((fate) => fate === 'gone', 'c', chicks),
        ),
      ),
    ),
    ...entry(
      sat + 47,
      list(
        'independent',
        refs((fate) => fate === 'independent', 'c', chicks),
      ),
    ),
  ];
}
