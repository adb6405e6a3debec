import { type Pedigree, pedigreeOf, UNKNOWN } from '../../../src/statistics/pedigree/pedigree.ts';

/** A pedigree whose birds have names. */
export interface Named {
  pedigree: Pedigree;
  names: string[];
  /** The number of a name. */
  of: (name: string) => number;
}

/** A pedigree from text, `young = sire × dam` each, `?` for a parent nobody knows; who is only a parent is a founder. */
export function lines(text: string): Named {
  const rows = text
    .split(/[;\n]/)
    .map((line) => line.trim())
    .filter((line) => line !== '')
    .map((line) => line.split(/\s*[=×]\s*/) as [string, string, string]);
  return namedPedigree(rows);
}

/** The same from rows of young, sire and dam. */
export function namedPedigree(rows: readonly (readonly [string, string, string])[]): Named {
  const known = new Map<string, number>();
  const number = (name: string) => {
    if (name === '?' || name === '') return UNKNOWN;
    const of = known.get(name) ?? known.size;
    known.set(name, of);
    return of;
  };
  const parents = new Map(
    rows.map(([young, sire, dam]) => [number(young), [number(sire), number(dam)] as const]),
  );
  const side = (which: 0 | 1) => Array.from(known.values(), (one) => parents.get(one)?.[which] ?? UNKNOWN);
  return {
    pedigree: pedigreeOf(side(0), side(1)),
    names: [...known.keys()],
    of: (name) => {
      const one = known.get(name);
      if (one === undefined) throw new Error(`nobody called ${name}`);
      return one;
    },
  };
}
