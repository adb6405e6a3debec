import type { Ancestor } from '../../../rules/stock/lineage.ts';
import type { Parents } from '../../../rules/stock/parents.ts';

/** Doubts about somebody's parents, where there are any. */
export type ParentsOf = (one: Ancestor) => Parents | null;

/** One place of a pedigree: a bird, or one of whom nothing is known. */
export interface Place {
  /** `sire`, `dam’s sire`: what it is to the bird whose pedigree it is; empty for that bird. */
  kin: string;
  /** 0 for the bird itself, 1 for its parents. */
  generation: number;
  role: 'sire' | 'dam' | null;
  ancestor: Ancestor | null;
  /** Why it is not known though something is written. */
  doubt: string | null;
  /** A bird of which neither parent is known, or that is the last generation shown. */
  founder: boolean;
  /** How often the bird stands in this pedigree. */
  times: number;
  /** Its middle, in rows from the top. */
  row: number;
  /** The child's middle, which a line leads to; null for the bird itself. */
  childRow: number | null;
}

export const GENERATIONS = 4;

/**
 * A bird's ancestors, sire above dam, four generations back. Nothing is drawn behind somebody of whom nothing is known,
 * so that a short pedigree is a small drawing.
 *
 * @returns the places, nearest generations first, and the number of rows
 */
export function pedigreeLayout(one: Ancestor, parentsOf: ParentsOf): { places: Place[]; rows: number } {
  const places: Place[] = [];
  let rows = 0;
  const visit = (ancestor: Ancestor | null, kin: string[], doubt: string | null): Place => {
    const generation = kin.length;
    const founder = ancestor !== null && ancestor.sire === null && ancestor.dam === null;
    const doubts = ancestor === null ? null : parentsOf(ancestor);
    const place: Place = {
      kin: kin.join('’s '),
      generation,
      role: (kin.at(-1) ?? null) as Place['role'],
      ancestor,
      doubt,
      founder,
      times: 1,
      row: 0,
      childRow: null,
    };
    places.push(place);
    const bare = founder && !doubts?.sire.doubt && !doubts?.dam.doubt && generation > 0;
    if (ancestor === null || bare || generation === GENERATIONS) {
      place.row = rows;
      rows += 1;
      return place;
    }
    const sire = visit(ancestor.sire, [...kin, 'sire'], doubts?.sire.doubt ?? null);
    const dam = visit(ancestor.dam, [...kin, 'dam'], doubts?.dam.doubt ?? null);
    place.row = (sire.row + dam.row) / 2;
    sire.childRow = place.row;
    dam.childRow = place.row;
    return place;
  };
  visit(one, [], null);
  for (const place of places) {
    if (place.ancestor !== null)
      place.times = places.filter(({ ancestor }) => ancestor === place.ancestor).length;
  }
  return { places: places.sort((a, b) => a.generation - b.generation || a.row - b.row), rows };
}
