import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Pair } from '../../src/room/model.ts';
import { foodInRoom, foodOn } from '../../src/rules/food-on-offer.ts';
import { day, room } from '../rooms.ts';

const stand = () =>
  room(
    {
      'nestlog.yaml':
        'log:\n  - {date: 2026-03-01, food: [egg food]}\n  - {date: 2026-03-10, food: {greens: 5}}\n  - {date: 2026-03-12, note: "cleaned"}\n',
      'LW-1': `
      pair: LW-1
      species: lavender waxbill
      log:
        - {date: 2026-03-05, food: [live food]}
        - {date: 2026-03-10, food: [seed]}
    `,
      'LW-2': 'pair: LW-2\nspecies: lavender waxbill\nlog:\n  - {date: 2026-03-01, paired}\n',
    },
    '2026-03-20',
  );

function kinds(pair: 'LW-1' | 'LW-2', on: string) {
  const { pairs, settings } = stand();
  const food = foodOn(pairs.find(({ id }) => id === pair) as Pair, settings, day(on));
  return food?.kinds.map(({ kind }) => kind) ?? null;
}

it('is what was written last, for the pair or for the room; what was written on one day counts together', () => {
  expect(kinds('LW-1', '2026-02-28')).toBeNull();
  expect(kinds('LW-1', '2026-03-04')).toEqual(['egg food']);
  expect(kinds('LW-1', '2026-03-09')).toEqual(['live food']);
  expect(kinds('LW-1', '2026-03-10')).toEqual(['seed', 'greens']);
  expect(kinds('LW-2', '2026-03-09')).toEqual(['egg food']);
  expect(kinds('LW-2', '2026-03-20')).toEqual(['greens']);
});

it('of the room is known up to the day, with its grams', () => {
  const known = stand();
  expect(foodInRoom(known.settings, day('2026-03-09'))).toHaveLength(1);
  expect(foodInRoom(known.settings, day('2026-03-20')).at(-1)).toEqual({
    day: day('2026-03-10'),
    kinds: [{ kind: 'greens', grams: 5 }],
  });
});

it('is the same as when every line is gone through, however many there are and in whatever order', () => {
  const anyDay = fc.integer({ min: 0, max: 9 });
  const days = fc.array(anyDay, { maxLength: 12 });
  fc.assert(
    fc.property(days, days, anyDay, (inJournal, inRoom, on) => {
      const { pairs, settings } = stand();
      const food = inJournal
        .sort((a, b) => a - b)
        .map((at, i) => ({ day: at, kinds: [{ kind: `pair ${i}`, grams: null }] }));
      const [entry] = settings.log;
      if (entry === undefined) throw new Error('no entry');
      const at = entry.at;
      const log = inRoom.map((date, i) => ({
        ...entry,
        date,
        food: [{ kind: { text: `room ${i}`, at }, grams: null }],
      }));
      const all = [...food, ...foodInRoom({ log }, on)].filter((one) => one.day <= on);
      const last = Math.max(...all.map((one) => one.day));
      const slow = all.filter((one) => one.day === last).flatMap((one) => one.kinds);
      const found = foodOn({ ...(pairs[0] as Pair), food }, { log }, on);
      expect(found).toEqual(all.length === 0 ? null : { day: last, kinds: slow });
    }),
  );
});
