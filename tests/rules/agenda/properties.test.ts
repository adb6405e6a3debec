import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Room } from '../../../src/room/fold.ts';
import { fullRef } from '../../../src/room/model.ts';
import {
  filesOf,
  type Line,
  plausibleLines,
  shuffled,
  someDay,
  wildLines,
} from '../../generators/journals.ts';
import { agenda, room } from '../../rooms.ts';
import { broods } from './hill-finch.ts';

const RUNS = { numRuns: 120 };

/** What is known of every egg and chick, and where it is. */
function summary({ pairs, findings }: Room) {
  return {
    clutches: pairs.flatMap(({ id, clutches }) =>
      clutches.map(({ number, opened, eggs, chicks }) => ({
        clutch: `${id}/${number}`,
        opened,
        eggs: eggs.map(({ ref, laid, fate, places }) => [
          ref,
          laid,
          fate?.kind,
          fate?.day,
          places.at(-1)?.place.kind,
        ]),
        chicks: chicks.map(({ ref, hatched, fledged, independent, fate, stays }) => [
          ref,
          hatched,
          fledged?.day,
          independent?.day,
          fate?.kind,
          stays.at(-1)?.nest?.id,
        ]),
      })),
    ),
    here: pairs.map(({ id, here }) => [id, [...here.eggs, ...here.young].map(fullRef).sort()]),
    findings: findings.map(({ code }) => code).sort(),
  };
}

const eggsOf = ({ pairs }: Room) => pairs.flatMap(({ clutches }) => clutches.flatMap(({ eggs }) => eggs));

test('lines may stand in any order: the room and the agenda are the same', () => {
  const orders = plausibleLines.chain((lines) => fc.tuple(fc.constant(lines), shuffled(lines), someDay));
  fc.assert(
    fc.property(orders, ([lines, other, on]) => {
      expect(summary(room(filesOf(other), on))).toEqual(summary(room(filesOf(lines), on)));
      expect(agenda(filesOf(other), on)).toEqual(agenda(filesOf(lines), on));
    }),
    RUNS,
  );
});

test('what is written later never changes the agenda of an earlier day', () => {
  fc.assert(
    fc.property(plausibleLines, someDay, (lines, on) => {
      const then = lines.filter(({ date }) => date <= on);
      expect(agenda(filesOf(lines), on)).toEqual(agenda(filesOf(then), on));
    }),
    RUNS,
  );
});

test('no egg and no bird is in two nests, and none in two broods', () => {
  fc.assert(
    fc.property(plausibleLines, someDay, (lines, on) => {
      const known = room(filesOf(lines), on);
      const inNests = known.pairs.flatMap(({ here }) => [...here.eggs, ...here.young].map(fullRef));
      expect(inNests.sort()).toEqual([...new Set(inNests)].sort());
      const cared = broods(filesOf(lines), on).flatMap(({ eggs, stored, young }) =>
        [...eggs, ...stored, ...young].map(fullRef),
      );
      expect(cared.sort()).toEqual([...new Set(cared)].sort());
    }),
    RUNS,
  );
});

test('every open egg or fed chick of a clutch in mind is in a brood', () => {
  fc.assert(
    fc.property(plausibleLines, someDay, (lines, on) => {
      const known = room(filesOf(lines), on);
      const open = known.pairs.flatMap(({ here }) => [...here.eggs, ...here.young].map(fullRef));
      const cared = broods(filesOf(lines), on).flatMap(({ eggs, young }) => [...eggs, ...young].map(fullRef));
      expect(cared).toEqual(expect.arrayContaining(open));
    }),
    RUNS,
  );
});

/** Eggs that the lines tell of; a line that stands twice counts once. */
function laidIn(lines: readonly Line[]): number {
  const once = new Set(lines.map(({ pair, date, text }) => `${pair} ${date} ${text}`));
  return [...once].filter((line) => line.endsWith(' laid: 1')).length;
}

test('the eggs written as laid have hatched, were lost or taken, or are open somewhere', () => {
  fc.assert(
    fc.property(plausibleLines, (lines) => {
      const known = room(filesOf(lines), '2026-12-31');
      const eggs = eggsOf(known);
      expect(eggs.filter(({ assumed }) => !assumed)).toHaveLength(laidIn(lines));
      const inNests = new Set(known.pairs.flatMap(({ here }) => [...here.eggs]));
      const chicks = known.pairs.flatMap(({ clutches }) => clutches.flatMap((clutch) => clutch.chicks));
      const count = { hatched: 0, lost: 0, taken: 0, open: 0 };
      for (const egg of eggs) {
        count[egg.fate?.kind ?? 'open'] += 1;
        // In a nest if and only if it is open and was not put elsewhere.
        expect(inNests.has(egg)).toBe(egg.fate === null && egg.places.at(-1)?.place.kind === 'nest');
      }
      expect(count.hatched + count.lost + count.taken + count.open).toBe(eggs.length);
      expect(chicks.filter(({ egg }) => egg?.fate?.kind === 'hatched')).toHaveLength(count.hatched);
    }),
    RUNS,
  );
});

test('whatever was seen in whatever order, the day has an agenda with sound windows', () => {
  fc.assert(
    fc.property(wildLines, someDay, (lines, on) => {
      for (const { from, likely, to, why } of agenda(filesOf(lines), on)) {
        expect(to ?? from).toBeGreaterThanOrEqual(from);
        if (likely !== null)
          expect(
            [from, likely, to].every((one, i, all) => i === 0 || (one as number) >= (all[i - 1] as number)),
          ).toBe(true);
        expect(why).not.toMatch(/undefined|NaN|null|Infinity/);
      }
    }),
    RUNS,
  );
});
