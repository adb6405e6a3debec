import { formatDay } from '../../days.ts';
import type { Ancestor } from '../../rules/stock/lineage.ts';
import type { Portrait } from '../../rules/stock/portrait.ts';
import type { Stock } from '../../rules/stock/stock.ts';
import { birdRow } from '../tables/birds.ts';
import { dayData } from './course.ts';
import { jsonText } from './text.ts';

/** Generations of ancestors in the pedigree. */
const GENERATIONS = 4;

/** One bird’s life for programs. */
export function birdJson(portrait: Portrait, { day, of }: Pick<Stock, 'day' | 'of'>): string {
  const { one, origin, through, kin, known, speciesMean, mates, life } = portrait;
  const { bird, parents } = one;
  return jsonText({
    nestlog: 1,
    date: formatDay(day),
    bird: birdRow(one),
    origin,
    doubts: { sire: parents.sire.doubt, dam: parents.dam.doubt },
    pedigree: pedigreeData(one.ancestor, GENERATIONS, of),
    known,
    through: through.map(({ founder, share }) => ({ ancestor: founder, share })),
    kin,
    speciesMeanKinship: speciesMean,
    mates: mates.map(({ id, times, young }) => ({
      mate: id,
      times: times.map(({ pair, from, to }) => ({ pair, from: formatDay(from), to: dayData(to) })),
      young: young.map((chick) => ({ id: chick.id, status: chick.status })),
    })),
    weights: bird.weights.map(({ day: on, grams }) => ({ date: formatDay(on), grams })),
    moults: bird.moult.map(({ day: on, state }) => ({ date: formatDay(on), state })),
    treated: bird.treated.map(({ day: on, text }) => ({ date: formatDay(on), text })),
    unwell: bird.unwell.map(({ day: on, text }) => ({ date: formatDay(on), text })),
    life: life.map(({ day: on, what }) => ({ date: formatDay(on), what })),
  });
}

interface PedigreeData {
  id: string;
  ring: string | null;
  inbreeding: number | null;
  sire: PedigreeData | null;
  dam: PedigreeData | null;
}

function pedigreeData(one: Ancestor, left: number, of: Stock['of']): PedigreeData {
  const { id, bird, sire, dam } = one;
  const parent = (which: Ancestor | null) =>
    which === null || left === 0 ? null : pedigreeData(which, left - 1, of);
  const inbreeding = bird === null ? null : (of(bird)?.inbreeding ?? null);
  return { id, ring: bird?.ring ?? null, inbreeding, sire: parent(sire), dam: parent(dam) };
}
