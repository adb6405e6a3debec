import { type Diversity, diversityOf } from '../../statistics/pedigree/diversity.ts';
import { founderEquivalents, founders } from '../../statistics/pedigree/founders.ts';
import { meanKinships } from '../../statistics/pedigree/relationship.ts';
import type { Lineage } from './lineage.ts';
import { bySpecies, type Stock, type StockBird } from './stock.ts';

/** Which part of a group's genes comes from one founder, 0 to 1. */
export interface Contribution {
  /** A bird's id, or `unknown sire of LW-21-03`. */
  founder: string;
  share: number;
}

/** How varied a group of birds is. */
export interface GroupDiversity extends Diversity {
  birds: number;
  founderEquivalents: number;
  /** The greatest first. */
  founders: Contribution[];
}

/** The birds of one species that are here. */
export interface SpeciesGroup {
  /** Null for birds whose species nobody wrote. */
  species: string | null;
  birds: StockBird[];
  /** Of all that are here. */
  living: GroupDiversity;
  /** Of those that are old enough to breed; null where there are none. */
  breeders: GroupDiversity | null;
}

/** Everyone who is here, species by species. */
export function speciesGroups({ birds, lineage }: Stock): SpeciesGroup[] {
  const here = bySpecies(birds.filter(({ status }) => status === 'here'));
  return Array.from(here, ([species, group]) => ({
    species,
    birds: group,
    living: diversityIn(group, lineage) as GroupDiversity,
    breeders: diversityIn(
      group.filter(({ age }) => age === 'adult'),
      lineage,
    ),
  }));
}

/** Null for nobody. */
function diversityIn(group: readonly StockBird[], { ancestors, autosomes }: Lineage): GroupDiversity | null {
  const numbers = group.map(({ ancestor }) => ancestor.number);
  if (numbers.length === 0) return null;
  const diversity = diversityOf(meanKinships(autosomes, numbers)) as Diversity;
  const contributions = founders(autosomes.pedigree, numbers);
  return {
    birds: group.length,
    ...diversity,
    founderEquivalents: founderEquivalents(contributions),
    founders: contributions.map(({ of, which, share }) => {
      const { id } = ancestors[of] as { id: string };
      return { founder: which === 'itself' ? id : `unknown ${which.replace('its ', '')} of ${id}`, share };
    }),
  };
}
