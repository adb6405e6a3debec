import type { Day } from '../../days.ts';
import { naturally, naturallyNamed } from '../../findings/naturally.ts';
import { grouped } from '../../grouped.ts';
import type { Room } from '../../room/fold.ts';
import { housingOf } from '../../room/lives.ts';
import type { Bird } from '../../room/model.ts';
import type { Profile } from '../../species/profile.ts';
import { meanKinships } from '../../statistics/pedigree/relationship.ts';
import { profileOf } from '../profile-of.ts';
import { type AgeClass, ageClassOf, type Status, statusOf } from './life.ts';
import { type Ancestor, type Lineage, lineageOf } from './lineage.ts';
import { type Mateship, mateshipsByBird } from './mateships.ts';
import { birdsByName, type FindBird } from './names.ts';
import { type Parents, parentsOf } from './parents.ts';

/** One bird of the room's record as the stock knows it. */
export interface StockBird {
  bird: Bird;
  id: string;
  profile: Profile | null;
  parents: Parents;
  ancestor: Ancestor;
  status: Status;
  /** Null for birds that are not here. */
  age: AgeClass | null;
  /** Where it lives; null where nobody wrote it, and for birds that are not here. */
  housing: string | null;
  /** With whom it was ever put together, in order. */
  mateships: Mateship[];
  /** The last of them that has not ended; null for who is with nobody. */
  current: Mateship | null;
  /** F; null where it cannot be told, because the pedigree runs in a circle. */
  inbreeding: number | null;
  /** Mean kinship with the living birds of its species, itself included; null for birds that are not here. */
  meanKinship: number | null;
}

/** The room's birds, related to one another, as known on a day. */
export interface Stock {
  day: Day;
  birds: StockBird[];
  lineage: Lineage;
  find: FindBird;
  of(bird: Bird): StockBird | null;
}

/** Who was with whom, who descends from whom, and how all are related: what needs no species profile. */
export function descentOf({ birds, pairs }: Pick<Room, 'birds' | 'pairs'>) {
  const find = birdsByName(birds);
  const mateships = mateshipsByBird(pairs, find);
  const parents = new Map(birds.map((bird) => [bird, parentsOf(bird, { find, mateships })]));
  return { find, mateships, parents, lineage: lineageOf(birds, parents) };
}

/**
 * Folds the stock: everyone of the bird list and every chick of every journal, each once. Young that were only heard
 * are nobody in particular and not among them.
 */
export function stockOf(room: Room): Stock {
  const { find, mateships, parents, lineage } = descentOf(room);
  const birds = room.birds
    .filter(({ placeholder }) => !placeholder)
    .map((bird): StockBird => {
      const profile = profileOf(room, bird);
      const his = mateships.get(bird) ?? [];
      const status = statusOf(bird, room.day, { profile, paired: his.length > 0 });
      const here = status === 'here';
      const ancestor = lineage.of(bird);
      return {
        bird,
        id: bird.id,
        profile,
        parents: parents.get(bird) as Parents,
        ancestor,
        status,
        age: here ? ageClassOf(bird, room.day, profile) : null,
        housing: here ? housingOf(bird) : null,
        mateships: his,
        current: his.findLast(({ to }) => to === null) ?? null,
        inbreeding: lineage.inbreeding(ancestor),
        meanKinship: null,
      };
    })
    .sort((a, b) => naturally(a.id, b.id));
  for (const living of bySpecies(birds.filter(({ status }) => status === 'here')).values()) {
    const numbers = living.map(({ ancestor }) => ancestor.number);
    const means = meanKinships(lineage.autosomes, numbers);
    living.forEach((one, index) => {
      one.meanKinship = means[index] as number;
    });
  }
  const byBird = new Map(birds.map((one) => [one.bird, one]));
  return { day: room.day, birds, lineage, find, of: (bird) => byBird.get(bird) ?? null };
}

/** Birds by the name of their species, null for those whose species nobody wrote; species in the order of the alphabet. */
export function bySpecies(birds: readonly StockBird[]): Map<string | null, StockBird[]> {
  const groups = grouped(birds, ({ bird }) => bird.species);
  return new Map([...groups].sort(([a], [b]) => naturallyNamed(a, b)));
}
