import type { Day } from '../days.ts';
import type { Finding, Place } from '../findings/finding.ts';
import type { PairJournal } from '../journal/entry.ts';
import type { Located } from '../journal/grammar/values.ts';
import { parentsNamed } from '../journal/parents-named.ts';
import type { RoomRecord } from '../journal/record.ts';
import { findSpecies } from '../species/find.ts';
import type { Profile } from '../species/profile.ts';
import type { Bird } from './model.ts';
import { birdNamed } from './names.ts';
import type { Fold } from './scene.ts';

/** Who stands as a parent in the bird list or in a journal, as known on the day, and is of the wrong sex or of another species. */
export function unfitParents(fold: Fold, record: RoomRecord, day: Day): Finding[] {
  const all = namedParents(fold, record, day);
  return [...wrongSex(all), ...otherSpecies(all, fold.own)];
}

/** Whom the record names as parents of one bird, or of all young of a pair. */
interface ParentsOf {
  /** The bird or the pair, and its species as the profiles call it. */
  of: string;
  species: string | null;
  parents: { at: Place; text: string; bird: Bird; role: string; sex: 'cock' | 'hen' }[];
}

function namedParents(fold: Fold, record: RoomRecord, day: Day): ParentsOf[] {
  const named = (names: readonly Located[], role: string, sex: 'cock' | 'hen') =>
    names.flatMap(({ text, at }) => {
      const bird = birdNamed(fold, text);
      return bird === null ? [] : [{ at, text, bird, role, sex }];
    });
  const inPair = (journal: PairJournal, sex: 'cock' | 'hen') =>
    named(
      parentsNamed(journal, sex).filter(({ since }) => since === null || since <= day),
      sex,
      sex,
    );
  return [
    ...record.birds.map(({ id: { text: of }, sire, dam }) => ({
      of,
      species: fold.birds.get(of)?.species ?? null,
      parents: [...named(sire, 'sire', 'cock'), ...named(dam, 'dam', 'hen')],
    })),
    ...record.pairs.map((journal) => ({
      of: journal.pair.text,
      species: fold.pairs.get(journal.pair.text)?.species ?? null,
      parents: [...inPair(journal, 'cock'), ...inPair(journal, 'hen')],
    })),
  ];
}

function wrongSex(all: readonly ParentsOf[]): Finding[] {
  return all.flatMap(({ of, parents }) =>
    parents.flatMap(({ at, text, bird, role, sex: place }): Finding[] => {
      const sex = bird.listed?.sex ?? bird.sex;
      if (sex === null || sex === place) return [];
      return [{ code: 'parent-sex', at, args: { bird: text, parent: `${role} of ${of}`, sex } }];
    }),
  );
}

/**
 * A parent of another species than the young; a cross that has a name of its own is meant. Of a species without a profile
 * another finding tells, which may be a misspelt one.
 */
function otherSpecies(all: readonly ParentsOf[], own: readonly Profile[]): Finding[] {
  const hasProfile = (species: string | null) => species !== null && findSpecies(species, own) !== null;
  return all.flatMap(({ of, species, parents }) => {
    const known = parents.flatMap((one) => {
      const is = one.bird.listed?.species || one.bird.clutch ? one.bird.species : null;
      return is === null || species === null ? [] : [{ ...one, is }];
    });
    const kinds = new Set(known.map(({ is }) => is));
    if (kinds.size > 1 && !kinds.has(species as string)) return [];
    return known
      .filter(({ is }) => is !== species && hasProfile(is) && hasProfile(species))
      .map(({ at, text, is, role }): Finding => {
        const args = { bird: text, parent: `${role} of ${of}`, species: is, other: species as string };
        return { code: 'other-species', at, args };
      });
  });
}
