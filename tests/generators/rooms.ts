import fc from 'fast-check';
import type { Files } from '../rooms.ts';
import { anyLine, journalOf, type Line, PAIRS } from './lines.ts';

/** The logs of the room's pairs, in the order of {@link PAIRS}. */
export type Logs = Line[][];

/** The files of a room with these logs. */
export function filesOf(logs: Logs): Files {
  return Object.fromEntries(PAIRS.map((pair, i) => [pair.id, journalOf(pair, logs[i] ?? [])]));
}

const between = (min: number, max: number) => fc.integer({ min, max });

/** How one clutch went: the dates are gaps in days, the numbers are as many as there may be. */
const story = fc.record({
  opens: between(0, 25),
  eggs: between(1, 6),
  lookEvery: between(1, 4),
  sat: fc.boolean(),
  stored: fc.constantFrom('no', 'pulled', 'incubator'),
  lamp: fc.constantFrom('none', 'count', 'refs'),
  clear: between(0, 3),
  fostered: fc.constantFrom('no', 'eggs', 'chicks'),
  home: fc.boolean(),
  sitting: between(10, 15),
  hatchlings: between(0, 6),
  byRef: fc.boolean(),
  ringed: fc.boolean(),
  dead: between(0, 2),
  nest: between(17, 23),
  fed: between(12, 24),
  late: fc.boolean(),
});

type Story = typeof story extends fc.Arbitrary<infer S> ? S : never;

/** The lines that a careful keeper would write of such a clutch of LW-1, and those that its foster's journal gets. */
function told(tale: Story, number: number, from: number): { own: Line[]; foster: Line[]; until: number } {
  const own: Line[] = [];
  const foster: Line[] = [];
  const write = (on: number, saw: string, to = own) => to.push({ on, saw });
  let on = from + tale.opens;
  let pinned = `clutch: ${number}, `;
  for (let left = tale.eggs; left > 0; left -= tale.lookEvery) {
    const fresh = Math.min(left, tale.lookEvery);
    on += fresh;
    write(on, `${pinned}laid: ${fresh}`);
    pinned = '';
  }
  const refs = (ref: string, n: number) =>
    `[${Array.from({ length: n }, (_, i) => `${ref}${i + 1}`).join(', ')}]`;
  if (tale.stored === 'pulled') write(on, `clutch: ${number}, pulled: all`);
  if (tale.stored === 'pulled') write(on + 2, `clutch: ${number}, set: all`);
  if (tale.stored === 'incubator') write(on, `clutch: ${number}, pulled: all`);
  if (tale.stored === 'incubator') write(on + 1, `clutch: ${number}, set: {incubator: all}`);
  if (tale.sat) write(on, `clutch: ${number}, sitting`);
  const clear = Math.min(tale.clear, tale.eggs);
  const full = `LW-1/${number}/`;
  if (tale.lamp === 'count' && clear > 0) write(on + 7, `clutch: ${number}, candled: {clear: ${clear}}`);
  if (tale.lamp === 'refs') write(on + 7, `clutch: ${number}, candled: {unsure: ${refs('e', tale.eggs)}}`);
  const away = tale.fostered === 'eggs' && tale.stored !== 'incubator';
  if (away) write(on + 8, `clutch: ${number}, fostered: {BF-1: ${refs('e', tale.eggs)}}`);
  on += tale.sitting + 2;
  const out = Math.min(tale.hatchlings, tale.eggs);
  const named = tale.byRef || away;
  if (out > 0) {
    const which = named ? refs(away ? `${full}e` : `${number}/e`, out) : `${out}`;
    write(on, named ? `hatched: ${which}` : `clutch: ${number}, hatched: ${which}`, away ? foster : own);
  }
  const left = Array.from({ length: tale.eggs - out }, (_, i) => `${full}e${out + i + 1}`).join(', ');
  if (left !== '')
    write(on + 5, named ? `lost: {addled: [${left}]}` : `clutch: ${number}, lost: {addled: all}`);
  const chicks = refs(`${full}c`, out);
  if (out > 0 && tale.fostered === 'chicks') write(on + 2, `fostered: {BF-1: ${chicks}}`, own);
  const guests = out > 0 && (away || tale.fostered === 'chicks');
  if (guests && tale.home) write(on + 4, `fostered: {LW-1: ${chicks}}`, foster);
  const nest = guests && !tale.home ? foster : own;
  if (tale.ringed && out > 0) write(on + 7, `ringed: {${full}c1: LW 26 ${number}1}`, nest);
  const dead = Math.min(tale.dead, Math.max(0, out - 1));
  if (dead > 0) write(on + 9, `died: {chilled: ${refs(`${full}c`, dead)}}`, nest);
  const alive = Array.from({ length: out - dead }, (_, i) => `${full}c${dead + i + 1}`).join(', ');
  if (out > dead) write(on + tale.nest, `fledged: [${alive}]`, nest);
  if (out > dead) write(on + tale.nest + 1, 'roosting: out', nest);
  if (out > dead && !tale.late) write(on + tale.nest + tale.fed, `independent: [${alive}]`, nest);
  return { own, foster, until: on + tale.nest };
}

/** Rooms as a keeper would write them: one or two clutches of LW-1, with guests at BF-1, and daily small things. */
export const plausible: fc.Arbitrary<Logs> = fc
  .tuple(
    fc.array(story, { minLength: 1, maxLength: 2 }),
    fc.array(
      fc.record({
        on: between(0, 140),
        saw: fc.constantFrom(
          'food: [live food, egg food]',
          'chasing: {by: cock, at: hen, level: mild}',
          'weighed: {hen: 8.4}',
          'moved: flight 3',
          'parted: {cock: flight 7}',
          'reunited: flight 3',
          'nest: building',
        ),
      }),
      { maxLength: 5 },
    ),
    fc.boolean(),
  )
  .map(([stories, daily, fosterLays]) => {
    const own: Line[] = [{ on: 0, saw: 'paired' }, ...daily];
    const foster: Line[] = [{ on: 0, saw: 'paired' }];
    if (fosterLays) foster.push({ on: 8, saw: 'laid: 3' }, { on: 9, saw: 'laid: 1, sitting' });
    let from = 0;
    stories.forEach((tale, i) => {
      const lines = told(tale, i + 1, from);
      own.push(...lines.own);
      foster.push(...lines.foster);
      from = lines.until;
    });
    return [own, [{ on: 0, saw: 'paired' }], foster];
  });

/** Rooms in which anything may be written on any day. */
export const wild: fc.Arbitrary<Logs> = fc.tuple(...PAIRS.map(() => fc.array(anyLine, { maxLength: 25 })));

/** Rooms beside the same with the lines of every journal in another order. */
export function shuffled(rooms: fc.Arbitrary<Logs>): fc.Arbitrary<[Logs, Logs]> {
  return rooms.chain((logs) =>
    fc.tuple(
      fc.constant(logs),
      fc.tuple(...logs.map((lines) => fc.shuffledSubarray(lines, { minLength: lines.length }))),
    ),
  );
}
