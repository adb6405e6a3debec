import type { Room } from '../../src/room/fold.ts';
import type { Bird } from '../../src/room/model.ts';

/**
 * Inbreeding of the young that two birds would have, by counting paths the slow way: the kinship of the parents is the
 * mean over the older generation (Wright 1922 in the recursive form of the tabular method). An unknown parent is an
 * unrelated founder. Meant for a handful of birds, as a check from outside on whatever is quicker.
 */
export function inbred(room: Room, cock: string, hen: string): number {
  const named = (name: string) => room.birds.find((bird) => bird.id === name || refOf(bird) === name);
  const kinship = (a: Bird | undefined, b: Bird | undefined): number => {
    if (a === undefined || b === undefined) return 0;
    if (a === b) return (1 + kinship(parent(a.sire), parent(a.dam))) / 2;
    const [younger, older] = (a.hatched?.to ?? 0) > (b.hatched?.to ?? 0) ? [a, b] : [b, a];
    return (kinship(parent(younger.sire), older) + kinship(parent(younger.dam), older)) / 2;
  };
  const parent = (names: readonly string[]) => (names.length === 1 ? named(names[0] as string) : undefined);
  return kinship(named(cock), named(hen));
}

function refOf({ clutch, ref }: Bird): string | null {
  return clutch === null || ref === null ? null : `${clutch.pair.id}/${clutch.number}/${ref}`;
}
