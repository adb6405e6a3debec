import { expect, test } from 'vitest';
import type { Room } from '../../src/room/fold.ts';
import { room } from '../rooms.ts';
import { birdIn, clutchIn, codes, days, eggIn, fates, journal, pairIn, until, waxbills } from './facts.ts';

// What is written in few words: counts, `all`, `back`, `heard`, and whom they mean.

const { start, eggs, chicks, fledglings, young } = until;

const pair = (known: Room) => pairIn(known, 'LW-1');
const clutch = (known: Room) => clutchIn(known, 'LW-1/1');
const egg = (known: Room, ref = 'e1') => eggIn(known, `LW-1/1/${ref}`);
const chick = (known: Room, ref = 'c1') => birdIn(known, `LW-1/1/${ref}`);

const heads = 'cock: LW-19-04\nhen: LW-20-11\nhousing: cage 3';
const told = (before: string, ...entries: string[]) =>
  room(
    {
      P: waxbills([before, ...entries.map((entry) => `date: ${entry}`)].join('\n'), heads),
      Q: journal('BF-1', 'bengalese finch', ''),
    },
    '2026-05-01',
  );
const whys = (known: Room) => known.findings.map(({ code, args }) => `${code}: ${args.why ?? ''}`);

test('eggs may go from the nest straight into the incubator; where some lie in store, those are meant', () => {
  const places = (known: Room) => clutch(known).eggs.map((one) => one.places.at(-1)?.place.kind);
  const all = told(eggs, '2026-03-06, set: {incubator: all}');
  expect(places(all)).toEqual(Array(4).fill('incubator'));
  expect(codes(all)).toEqual([]);
  const stored = told(eggs, '2026-03-06, pulled: [e1, e2]', '2026-03-08, set: {incubator: all}');
  expect(places(stored)).toEqual(['incubator', 'incubator', 'nest', 'nest']);
  expect(codes(told(eggs, '2026-03-06, set: all'))).toEqual(['nobody-possible']);
});

test('with the stored eggs goes what was laid this morning, which nobody chose to leave in the nest', () => {
  const places = (set: string) => {
    const known = told('date: 2026-03-05, laid: 1, pulled: e1\ndate: 2026-03-06, laid: 1, pulled: e2', set);
    expect(codes(known), set).toEqual([]);
    return clutch(known).eggs.map((one) => one.places.at(-1)?.place.kind);
  };
  for (const who of ['all', '3', '[e1, e2, e3]'])
    expect(places(`2026-03-07, laid: 1, set: {incubator: ${who}}`), who).toEqual(Array(3).fill('incubator'));
  // By count those in store come first.
  expect(places('2026-03-07, laid: 1, set: {incubator: 2}')).toEqual(['incubator', 'incubator', 'nest']);
});

test('by our hand all are the eggs that made room for the guests of that day', () => {
  const files = (foster: string) => ({
    P: waxbills(`${eggs}\ndate: 2026-03-08, fostered: {BF-1: all}`),
    Q: journal('BF-1', 'bengalese finch', `date: 2026-03-04, laid: 3, sitting\n${foster}`, 'housing: cage 4'),
  });
  const left = (foster: string) => [...pairIn(room(files(foster), '2026-03-20'), 'BF-1').here.eggs].length;
  expect(left('date: 2026-03-08, lost: {removed: all}')).toBe(4);
  expect(left('date: 2026-03-09, lost: {removed: all}')).toBe(0);
  expect(left('date: 2026-03-08, lost: {broken: all}')).toBe(0);
  // Once the own ones have gone, guests are all there is.
  expect(left('date: 2026-03-07, lost: {removed: all}\ndate: 2026-03-08, lost: {removed: all}')).toBe(0);
});

test('a count under the lamp means those of which it said so before, then those never seen', () => {
  const known = told(
    eggs,
    '2026-03-10, candled: {clear: e1, fertile: [e2, e3]}',
    '2026-03-12, candled: {fertile: 2}',
  );
  expect(clutch(known).eggs.map(({ lamp }) => lamp.length)).toEqual([1, 2, 2, 0]);
});

test('an undeveloped egg was rather the clear one', () => {
  const known = told(
    eggs,
    '2026-03-12, candled: {fertile: e1, clear: e2}',
    '2026-03-19, lost: {undeveloped: 1}',
  );
  expect(fates(clutch(known))).toEqual(['e1 open', 'e2 lost (undeveloped)', 'e3 open', 'e4 open']);
});

test('of eggs that nobody counted so many may be lost as were found', () => {
  const known = told(start, '2026-03-05, laid: some', '2026-03-10, lost: {broken: 3}');
  expect(fates(clutch(known))).toEqual(['e1 lost (broken)', 'e2 lost (broken)', 'e3 lost (broken)']);
});

test('who comes back by count was in the room or missing; the dead and the sold are named', () => {
  const missing = told(fledglings, '2026-04-08, died: {found dead: c1, missing: c2}', '2026-04-10, back: 2');
  expect(clutch(missing).chicks.map(({ fate }) => fate?.kind ?? 'here')).toEqual(['died', 'here', 'here']);
  const ended = [young, '2026-04-26, died: {found dead: c1}, gone: {escaped: c2}'] as const;
  const away = told(...ended, '2026-04-28, back: 1');
  expect(clutch(away).chicks.map(({ fate }) => fate?.kind ?? 'here')).toEqual(['died', 'gone', 'here']);
  expect(codes(away)).toEqual(['too-many']);
  const named = told(...ended, '2026-04-28, back: [c1, c2]');
  expect(clutch(named).chicks.map(({ fate }) => fate?.kind ?? 'here')).toEqual(['here', 'here', 'here']);
});

test('who was written dead without a cause may have been missing only; a chick may be called by its egg', () => {
  const dead = told(fledglings, '2026-04-08, died: c2', '2026-04-10, back: 3');
  expect([codes(dead), chick(dead, 'c2').fate]).toEqual([[], null]);
  const both = told(fledglings, '2026-04-08, died: {missing: [c1, c2]}', '2026-04-10, back: [c1, e2]');
  expect(clutch(both).chicks.map(({ fate }) => fate)).toEqual([null, null, null]);
});

test('by number into the incubator go eggs in store, then those of the nest, and none that a brood left behind', () => {
  const places = (...entries: string[]) =>
    clutch(told(eggs, ...entries)).eggs.map(({ places }) => places.at(-1)?.place.kind ?? '');
  const pulled = '2026-03-06, pulled: [e3, e4]';
  expect(places(pulled, '2026-03-08, set: {incubator: 2}')).toEqual([
    'nest',
    'nest',
    'incubator',
    'incubator',
  ]);
  expect(places(pulled, '2026-03-08, set: {incubator: 3}')).toEqual([
    'incubator',
    'nest',
    'incubator',
    'incubator',
  ]);
  // Of those in store none is left: the others go straight from the nest.
  const lost = '2026-03-07, lost: {broken: [e3, e4]}';
  expect(places(pulled, lost, '2026-03-08, set: {incubator: all}').slice(0, 2)).toEqual([
    'incubator',
    'incubator',
  ]);
  const next = told(fledglings, '2026-04-16, laid: 3', '2026-04-20, set: {incubator: 1}');
  expect(codes(next)).toEqual([]);
  expect(egg(next, 'e4').places).toHaveLength(1);
});

test('a fledgling that was taken into the hand is fed by its parents again once it is back', () => {
  const known = told(fledglings, '2026-04-08, fostered: {hand: c1}', '2026-04-10, back: c1');
  expect([codes(known), chick(known).stays.at(-1)?.nest?.id]).toEqual([[], 'LW-1']);
});

test('a fledgling put back in the nest has not left it; one that was missing has', () => {
  const inNest = told(fledglings, '2026-04-08, back: c1');
  expect([chick(inNest).fledged, chick(inNest, 'c2').fledged === null]).toEqual([null, false]);
  const moved = ['2026-04-08, moved: {c1: cage 9}', '2026-04-10, back: c1'];
  const home = chick(told(fledglings, ...moved));
  // It flies, and came home to the cage of its parents.
  expect([home.fledged !== null, home.stays.at(-1)?.housing, home.stays.at(-1)?.nest?.id]).toEqual([
    true,
    'cage 3',
    'LW-1',
  ]);
  const found = told(fledglings, '2026-04-08, died: {missing: c1}', '2026-04-10, back: c1');
  expect(chick(found).fledged).not.toBeNull();
});

test('an egg that was missing lies in the nest again, and nobody comes back who is there', () => {
  const known = told(eggs, '2026-03-08, lost: {missing: e1}', '2026-03-09, back: e1');
  expect(egg(known).fate).toBeNull();
  expect(egg(known).places.at(-1)?.place).toMatchObject({
    kind: 'nest',
    pair: pair(known),
    clutch: clutch(known),
  });
  expect(whys(told(chicks, '2026-03-20, back: c1'))).toEqual([
    'impossible: it is here as far as the journal knows',
  ]);
});

test('only young that are fed can be fostered', () => {
  expect(whys(told(young, '2026-04-26, fostered: {BF-1: c1}'))).toEqual(['impossible: it feeds itself']);
  expect(whys(told(start, '2026-04-26, fostered: {BF-1: LW-19-04}'))).toEqual(['impossible: it is no chick']);
});

test('a count of hatched is a guess where the lamp was in doubt of one and never saw the other', () => {
  const known = told(eggs, '2026-03-12, candled: {unsure: e1}', '2026-03-18, hatched: 1');
  expect(codes(known)).toEqual(['guessed']);
  expect(codes(told(eggs, '2026-03-12, candled: {unsure: all}', '2026-03-18, hatched: 1'))).toEqual([]);
});

test('young that were heard are among those that are counted then', () => {
  const known = told(eggs, '2026-03-17, heard', '2026-03-18, hatched: 2');
  expect(clutch(known).chicks.map(({ placeholder }) => placeholder)).toEqual([false, false]);
});

test('begging is that of nestlings that are known, or a chick on a day nobody saw', () => {
  expect(clutch(told(chicks, '2026-03-19, heard')).chicks).toHaveLength(3);
  // Eleven days at the least (book); nobody calls it wrong from half of that on.
  const early = told(`${start}\ndate: 2026-03-05, laid: 1, sitting`, '2026-03-13, heard');
  expect(clutch(early).chicks).toHaveLength(1);
  const late = told(`${start}\ndate: 2026-03-05, laid: 1, sitting`, '2026-03-18, heard');
  const hatched = chick(late).hatched;
  expect(hatched && hatched.to - hatched.from).toBeGreaterThan(0);
});

test('roosting out is of all that have left the nest', () => {
  const known = told(`${chicks}\ndate: 2026-04-06, fledged: [c1, c2]`, '2026-04-07, roosting: out');
  expect(clutch(known).chicks.map(({ roosting }) => roosting.length)).toEqual([1, 1, 0]);
});

test('the moult of all is that of the young', () => {
  const known = told(young, '2026-04-28, moult: {started: 2}');
  expect(clutch(known).chicks.map(({ moult }) => moult.length)).toEqual([1, 1, 0]);
});

test('nobody sits who is dead', () => {
  const dead = `${eggs}\ndate: 2026-03-08, died: hen`;
  expect(codes(told(dead, '2026-03-09, sitting: hen'))).toEqual(['dead-bird']);
  expect(codes(told(dead, '2026-03-09, sitting: both'))).toEqual(['dead-bird']);
  expect(codes(told(dead, '2026-03-09, sitting: cock'))).toEqual([]);
  expect(codes(told(dead, '2026-03-09, sitting: off'))).toEqual([]);
});

test('eggs by name come in their order, once', () => {
  const named = (who: string) => {
    const known = told(start, '2026-03-05, laid: [e1, e2]', `2026-03-07, laid: ${who}`);
    return [...clutch(known).eggs.map(({ ref }) => ref), ...codes(known)];
  };
  expect(named('e3')).toEqual(['e1', 'e2', 'e3']);
  expect(named('[e3, e4]')).toEqual(['e1', 'e2', 'e3', 'e4']);
  expect(named('e2')).toEqual(['e1', 'e2', 'laid-twice']);
  expect(named('e4')).toEqual(['e1', 'e2', 'e3', 'egg-skipped']);
  expect(named('c1')).toEqual(['e1', 'e2', 'not-an-egg']);
});

test('an egg that a look did not see was laid after it', () => {
  const looked = told(start, '2026-03-05, laid: 1', '2026-03-07, checked: {eggs: 1}', '2026-03-09, laid: 1');
  expect(days(egg(looked, 'e2').laid)).toBe('03-08…03-09');
});

test('eggs of a species without a profile are counted like all others', () => {
  const log = 'date: 2026-03-01, checked\ndate: 2026-03-06, laid: 3';
  const known = room({ X: journal('X-1', 'ridge finch', log) }, '2026-05-01');
  expect(clutchIn(known, 'X-1/1').eggs).toHaveLength(3);
});

test('young go in the order in which they hatched: the eldest leave the nest, feed themselves and are sold first', () => {
  // Found on the 18th, and then read as a day older than the two others: c3.
  const eldest = '2026-03-25, aged: {8: c3}';
  const out = told(chicks, eldest, '2026-04-06, fledged: 1');
  expect(clutch(out).chicks.map(({ fledged }) => fledged !== null)).toEqual([false, false, true]);
  expect(codes(out)).toEqual([]);
  const alone = told(chicks, eldest, '2026-04-06, fledged: 3', '2026-04-24, independent: 2');
  expect(clutch(alone).chicks.map(({ independent }) => independent !== null)).toEqual([true, false, true]);
  const sold = told(`${fledglings}\ndate: 2026-04-25, independent: c2`, '2026-04-28, gone: {sold: 1}');
  expect(clutch(sold).chicks.map(({ fate }) => fate?.kind ?? 'here')).toEqual(['here', 'gone', 'here']);
});

test('sexes by count are of those not sexed yet, and may be corrected', () => {
  const sexes = (...more: string[]) => clutch(told(young, ...more)).chicks.map(({ sex }) => sex);
  expect(sexes('2026-04-26, sexed: {hen: c1}', '2026-04-27, sexed: {cock: 1}')).toEqual([
    'hen',
    'cock',
    null,
  ]);
  expect(sexes('2026-04-26, sexed: {hen: c1}', '2026-04-27, sexed: {cock: c1}')).toEqual([
    'cock',
    null,
    null,
  ]);
});

test('ages by count are of those eggs whose age nobody has read yet', () => {
  const known = told(eggs, '2026-03-10, aged: {5: e1}', '2026-03-11, aged: {4: 2}');
  expect(clutch(known).eggs.map(({ aged }) => aged?.days ?? null)).toEqual([5, 4, 4, null]);
});

test('an age without refs is that of the eggs while there are eggs, and of the chicks where there are none', () => {
  const all = told(`${eggs}\ndate: 2026-03-18, hatched: all`, '2026-03-23, aged: {5: all}');
  expect(clutch(all).chicks.map(({ aged, hatched }) => [aged?.days, days(hatched as never)])).toEqual(
    Array(4).fill([5, '03-18']),
  );
  const mixed = told(chicks, '2026-03-20, aged: {12: all}');
  expect(clutch(mixed).eggs.map(({ aged }) => aged?.days ?? null)).toEqual([null, null, null, 12]);
  expect(clutch(mixed).chicks.map(({ aged }) => aged)).toEqual([null, null, null]);
  // Half a day more or less is the same day: five and a half days old on the 25th hatched on the 19th.
  const half = told(`${eggs}\ndate: 2026-03-19, hatched: e1`, '2026-03-25, aged: {5.5: c1}');
  expect(days(chick(half).hatched as never)).toBe('03-19');
});

test('an age without refs is that of chicks found late, though an egg is left beside them', () => {
  const found = told(eggs, '2026-03-24, hatched: 3, aged: {6: all}');
  expect(clutch(found).chicks.map(({ hatched }) => days(hatched as never))).toEqual(Array(3).fill('03-18'));
  expect(clutch(found).eggs.map(({ aged }) => aged)).toEqual([null, null, null, null]);
});

test('a chick that is found old came of an egg laid as long before as eggs are sat on', () => {
  // Two weeks old at the first look; lavender waxbills sit for 13 days at most (the profile).
  const found = told('date: 2026-03-24, checked: {chicks: 2}', '2026-03-24, aged: {14: 1}');
  expect(days(chick(found).hatched as never)).toBe('03-10');
  // Nobody told the age of the other: it may be as old as one that is about to leave the nest, at 21 days.
  expect(clutch(found).eggs.map(({ laid }) => days(laid))).toEqual(['02-25…03-10', '02-18…03-24']);
});

test('whom a look of that day counted, its age is told of; a chick that is named may have died since', () => {
  const counted = ['2026-03-24, checked: {chicks: 3}', '2026-03-24, aged: {6: all}'];
  for (const entries of [
    counted,
    counted.toReversed(),
    ['2026-03-24, checked: {chicks: 3}, aged: {6: all}'],
  ]) {
    const heard = told('date: 2026-03-22, heard', ...entries);
    expect(clutch(heard).chicks.map(({ hatched }) => days(hatched as never))).toEqual(Array(3).fill('03-18'));
  }
  const dead = told(chicks, '2026-03-22, aged: {4: c1}, died: c1, checked: {chicks: 2}');
  expect(chick(dead)).toMatchObject({ aged: { days: 4 }, fate: { kind: 'died' } });
});

test('eggs that pip were fertile; where the lamp says nothing, the lowest number', () => {
  const pips = (lamp: string, who: string) =>
    clutch(told(eggs, `2026-03-12, candled: ${lamp}`, `2026-03-17, pipped: ${who}`)).eggs.flatMap(
      ({ ref, pipped }) => (pipped === null ? [] : [ref]),
    );
  expect(pips('{clear: e1, fertile: [e2, e3]}', '1')).toEqual(['e2']);
  expect(pips('{clear: e1, unsure: e2, fertile: e3}', '2')).toEqual(['e2', 'e3']);
  expect(pips('{clear: e1, dead: e2, unsure: [e3, e4]}', '3')).toEqual(['e2', 'e3', 'e4']);
  expect(pips('{unsure: all}', '1')).toEqual(['e1']);
});

test('an egg was seen pipped on the first day on which it was', () => {
  const known = told(eggs, '2026-03-16, pipped: e1', '2026-03-17, pipped: e1');
  expect(egg(known).pipped).toBe(told(eggs, '2026-03-16, pipped: e1').day - 46);
});

test('an egg that pipped hatches before one that was only fertile', () => {
  const known = told(
    eggs,
    '2026-03-12, candled: {fertile: [e1, e2]}',
    '2026-03-16, pipped: e3',
    '2026-03-17, hatched: 1',
  );
  expect(fates(clutch(known))).toEqual(['e1 open', 'e2 open', 'e3 hatched', 'e4 open']);
});

test('an addled egg was rather seen dead, then never seen; never rather fertile', () => {
  const lost = (lamp: string) =>
    fates(clutch(told(eggs, `2026-03-12, candled: ${lamp}`, '2026-03-20, lost: {addled: 1}'))).findIndex(
      (fate) => !fate.endsWith('open'),
    );
  expect(lost('{fertile: e1, clear: e2, dead: e4}')).toBe(3);
  expect(lost('{fertile: e1, clear: e2, unsure: e4}')).toBe(2);
  expect(lost('{fertile: e1, clear: e2, unsure: [e3, e4]}')).toBe(2);
  expect(lost('{clear: e1, fertile: [e2, e3, e4]}')).toBe(1);
});

test('an egg dead in shell was rather fertile than doubtful, and clear last of all', () => {
  const lost = (cause: string, lamp: string, count = 1) =>
    clutch(told(eggs, `2026-03-12, candled: ${lamp}`, `2026-03-20, lost: {${cause}: ${count}}`)).eggs.flatMap(
      ({ ref, fate }) => (fate === null ? [] : [ref]),
    );
  expect(lost('dead-in-shell', '{clear: e1, unsure: e2, fertile: e4}')).toEqual(['e4']);
  expect(lost('dead-in-shell', '{clear: e1, unsure: e2, fertile: e4}', 2)).toEqual(['e3', 'e4']);
  expect(lost('dead-in-shell', '{clear: e1, unsure: e2, fertile: [e3, e4]}', 3)).toEqual(['e2', 'e3', 'e4']);
  expect(lost('clear', '{fertile: e1, dead: e2, unsure: e4}')).toEqual(['e4']);
  expect(lost('clear', '{fertile: e1, dead: e2, unsure: e4}', 2)).toEqual(['e3', 'e4']);
  expect(lost('clear', '{fertile: e1, dead: e2, unsure: e4}', 3)).toEqual(['e2', 'e3', 'e4']);
  expect(lost('undeveloped', '{fertile: e1, dead: e2, unsure: e4}', 3)).toEqual(['e2', 'e3', 'e4']);
  expect(lost('broken', '{fertile: e1, clear: e2, unsure: [e3, e4]}')).toEqual(['e1']);
});

test('eggs seen fertile that are lost as clear are believed, and asked about once', () => {
  const lost = (what: string) =>
    told(eggs, '2026-03-12, candled: {fertile: [e1, e3], clear: e2}', `2026-03-20, lost: ${what}`);
  const asked = (what: string) => lost(what).findings.map(({ code, args }) => `${code} ${args.who}`);
  expect(asked('{clear: all}')).toEqual(['clear-though-fertile e1, e3']);
  expect(fates(clutch(lost('{clear: e1}')))[0]).toBe('e1 lost (clear)');
  expect(asked('{clear: [e2, e4]}')).toEqual([]);
  expect(asked('{undeveloped: all}')).toEqual([]);
  expect(asked('{clear: e2, dead-in-shell: [e1, e3]}')).toEqual([]);
});

test('eggs in store and in an incubator are lost too, those given up by their own pair are not', () => {
  const known = told(
    eggs,
    '2026-03-06, pulled: [e1, e2]',
    '2026-03-08, set: {incubator: e2}',
    '2026-03-09, fostered: {BF-1: e3}',
    '2026-03-20, lost: {chilled: all}',
  );
  expect(fates(clutch(known))).toEqual([
    'e1 lost (chilled)',
    'e2 lost (chilled)',
    'e3 open',
    'e4 lost (chilled)',
  ]);
});

test('eggs from the store are set by count; the lost and those already set are none of them', () => {
  const stored = told(
    eggs,
    '2026-03-06, pulled: [e1, e2, e3]',
    '2026-03-07, lost: {broken: e1}',
    '2026-03-08, set: {incubator: e2}',
    '2026-03-09, set: 1',
  );
  expect(clutch(stored).eggs.map(({ places }) => places.at(-1)?.place.kind)).toEqual([
    'store',
    'incubator',
    'nest',
    'nest',
  ]);
  expect([...pair(stored).here.eggs].map(({ ref }) => ref)).toEqual(['e4', 'e3']);
});
