import type { Bird } from '../../room/model.ts';
import { pedigreeOf, UNKNOWN } from '../../statistics/pedigree/pedigree.ts';
import { inbreeding, type Relationship, relate } from '../../statistics/pedigree/relationship.ts';
import type { Parents } from './parents.ts';

/** A place in the pedigree: a bird of the room, or one that is only named as somebody's parent. */
export interface Ancestor {
  id: string;
  bird: Bird | null;
  sire: Ancestor | null;
  dam: Ancestor | null;
  /** Its number in the mathematics. */
  number: number;
}

/** The room's pedigree. */
export interface Lineage {
  ancestors: Ancestor[];
  of(bird: Bird): Ancestor;
  autosomes: Relationship;
  /** On the Z chromosome: worked out when it is first asked for. */
  z(): Relationship;
  /** F of a bird; null where it is among its own ancestors or descends from such a bird. */
  inbreeding(one: Ancestor): number | null;
}

/** Puts everyone and everyone's parents into one pedigree. Parents that are only named join it as founders. */
export function lineageOf(birds: readonly Bird[], parents: ReadonlyMap<Bird, Parents>): Lineage {
  const { ancestors, byBird, isHen } = familyTree(birds, parents);
  const numberOf = (one: Ancestor | null) => one?.number ?? UNKNOWN;
  const pedigree = pedigreeOf(
    ancestors.map(({ sire }) => numberOf(sire)),
    ancestors.map(({ dam }) => numberOf(dam)),
  );
  // A loop was cut where it would have made the mathematics wrong; the tree must not run in circles either.
  for (const one of ancestors) {
    if (pedigree.sires[one.number] === UNKNOWN) one.sire = null;
    if (pedigree.dams[one.number] === UNKNOWN) one.dam = null;
  }
  const autosomes = relate(pedigree);
  let onZ: Relationship | null = null;
  return {
    ancestors,
    of: (bird) => byBird.get(bird) as Ancestor,
    autosomes,
    z() {
      onZ ??= relate(
        pedigree,
        Uint8Array.from(ancestors, (one) => Number(isHen(one))),
      );
      return onZ;
    },
    inbreeding: ({ number }) => (pedigree.unsound[number] === 1 ? null : inbreeding(autosomes, number)),
  };
}

interface FamilyTree {
  ancestors: Ancestor[];
  byBird: ReadonlyMap<Bird, Ancestor>;
  /** By its sex where that is known, else by having been a dam and never a sire. */
  isHen(one: Ancestor): boolean;
}

/** Everyone with their parents as they are written, also where that runs in circles. */
function familyTree(birds: readonly Bird[], parents: ReadonlyMap<Bird, Parents>): FamilyTree {
  const ancestors: Ancestor[] = [];
  const byName = new Map<string, Ancestor>();
  const byBird = new Map<Bird, Ancestor>();
  const add = (id: string, bird: Bird | null): Ancestor => {
    const one: Ancestor = { id, bird, sire: null, dam: null, number: ancestors.length };
    ancestors.push(one);
    if (bird === null) byName.set(id, one);
    else byBird.set(bird, one);
    return one;
  };
  for (const bird of birds) add(bird.id, bird);
  const ancestorOf = ({ bird, id }: Parents['sire']): Ancestor | null => {
    if (bird !== null) return byBird.get(bird) ?? add(bird.id, bird);
    return id === null ? null : (byName.get(id) ?? add(id, null));
  };
  const cocks = new Set<Ancestor>();
  const hens = new Set<Ancestor>();
  for (const [bird, { sire, dam }] of parents) {
    const one = byBird.get(bird) as Ancestor;
    one.sire = ancestorOf(sire);
    one.dam = ancestorOf(dam);
    if (one.sire !== null) cocks.add(one.sire);
    if (one.dam !== null) hens.add(one.dam);
  }
  const isHen = (one: Ancestor) => (hens.has(one) && !cocks.has(one)) || one.bird?.sex === 'hen';
  return { ancestors, byBird, isHen };
}
