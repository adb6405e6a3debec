import type { Day } from '../../days.ts';
import type { Bird, Pair } from '../../room/model.ts';
import { type FindBird, onlyOf } from './names.ts';

/** One cock and one hen that were together for a time; several names = one of these. */
export interface Mateship {
  pair: Pair;
  cock: readonly string[];
  hen: readonly string[];
  from: Day;
  /** The day on which they were separated, or one of them died or left; null while they are together. */
  to: Day | null;
}

/** Who was with whom in a pair, in order. A pair without a line of its own by that day was not yet put together. */
export function mateshipsOf(pair: Pair, find: FindBird): Mateship[] {
  const [begun] = pair.events;
  if (begun === undefined) return [];
  const all: Mateship[] = [];
  let current: Mateship | null = null;
  const begin = (from: Day, { cock, hen }: Pick<Mateship, 'cock' | 'hen'>) => {
    current = { pair, cock, hen, from, to: null };
    all.push(current);
  };
  const [parting] = pair.partings;
  if (parting === undefined || parting.day > begun.day) begin(begun.day, pair.first);
  for (const parting of pair.partings) {
    const same: boolean = current !== null && alike(current, parting);
    if (current !== null && (parting.what === 'parted' || !same)) {
      (current as Mateship).to = parting.day;
      current = null;
    }
    if (parting.what !== 'parted' && current === null) begin(parting.day, parting);
  }
  return all.map((mateship) => ({ ...mateship, to: earliest([mateship.to, ...losses(mateship, find)]) }));
}

function alike(a: Pick<Mateship, 'cock' | 'hen'>, b: Pick<Mateship, 'cock' | 'hen'>): boolean {
  return a.cock.join('\n') === b.cock.join('\n') && a.hen.join('\n') === b.hen.join('\n');
}

/** The days since they were together on which one of the two died or left. */
function losses({ cock, hen, from }: Mateship, find: FindBird): (Day | null)[] {
  return [cock, hen].map((names) => {
    const fate = onlyOf(names, find)?.fate ?? null;
    return fate === null || fate.day < from ? null : fate.day;
  });
}

function earliest(days: readonly (Day | null)[]): Day | null {
  const known = days.filter((day) => day !== null);
  return known.length === 0 ? null : Math.min(...known);
}

/**
 * The mateships of single birds, each bird's in order of their beginning. A hen that is put to another cock has left
 * the one before, whether or not that was written down; a cock may have several hens.
 */
export function mateshipsByBird(pairs: readonly Pair[], find: FindBird): Map<Bird, Mateship[]> {
  const byBird = new Map<Bird, Mateship[]>();
  for (const mateship of pairs.flatMap((pair) => mateshipsOf(pair, find)).sort((a, b) => a.from - b.from)) {
    for (const parent of ['cock', 'hen'] as const) {
      const bird = onlyOf(mateship[parent], find);
      if (bird === null) continue;
      const before = byBird.get(bird);
      if (before === undefined) byBird.set(bird, [mateship]);
      else {
        const last = before.at(-1) as Mateship;
        if (parent === 'hen') last.to = Math.min(last.to ?? mateship.from, mateship.from);
        before.push(mateship);
      }
    }
  }
  return byBird;
}
