import { type Day, dayWithYear } from '../../days.ts';
import { kinship } from '../../statistics/pedigree/relationship.ts';
import type { Contribution } from '../stock/groups.ts';
import { ancestorsInCommon, kinOf } from '../stock/kin.ts';
import { breedsFrom } from '../stock/life.ts';
import type { Mateship } from '../stock/mateships.ts';
import type { Stock, StockBird } from '../stock/stock.ts';

/** A cock and a hen, and what their young would be. */
export interface Mating {
  cock: StockBird;
  hen: StockBird;
  /** F of their young. */
  inbreeding: number;
  /** Mean kinship of their young with the living birds of the species: the mean of the parents’. */
  meanKinship: number;
  /**
   * What proposals make as small as they can: the young’s mean kinship (how common their genes are here) and their
   * inbreeding together, two probabilities of the same kind.
   */
  cost: number;
  /** The last day on which one of the two was seen chasing the other fiercely; null where nobody wrote so. */
  chased: Day | null;
}

/** A mating with all that a keeper wants to know of it. */
export interface JudgedMating extends Mating {
  /** F of their sons’ Z chromosomes; daughters have one Z only. */
  zInbreeding: number;
  /** `uncle and niece`; null where no ancestor in common is known. */
  kin: string | null;
  /** The ancestors that make them related, with each one’s part of F; the greatest first. */
  through: Contribution[];
  /** What the numbers cannot know. */
  cautions: string[];
}

/** What would come of two birds; `inbreeding` is their kinship, where that is known already. */
export function matingOf(
  cock: StockBird,
  hen: StockBird,
  { lineage }: Stock,
  inbreeding = kinship(lineage.autosomes, cock.ancestor.number, hen.ancestor.number),
): Mating {
  const meanKinship = ((cock.meanKinship ?? 0) + (hen.meanKinship ?? 0)) / 2;
  return { cock, hen, inbreeding, meanKinship, cost: meanKinship + inbreeding, chased: chasedOn(cock, hen) };
}

/** The last fierce chasing while they were together. */
function chasedOn({ mateships }: StockBird, hen: StockBird): Day | null {
  const days = mateships
    .filter((mateship) => hen.mateships.includes(mateship))
    .flatMap((mateship) =>
      mateship.pair.chasing
        .filter(({ level, by, at }) => level === 'fierce' && isOneOf(mateship, by) && isOneOf(mateship, at))
        .map(({ day }) => day)
        .filter((day) => day >= mateship.from && day <= (mateship.to ?? day)),
    );
  return days.length === 0 ? null : Math.max(...days);
}

/** One of the two, under whichever name, or nobody said who: young that are driven are no quarrel of their parents. */
function isOneOf({ cock, hen }: Mateship, who: string | null): boolean {
  return who === null || who === 'cock' || who === 'hen' || cock.includes(who) || hen.includes(who);
}

/** All that there is to say of two birds. */
export function judge(mating: Mating, stock: Stock): JudgedMating {
  const { cock, hen, inbreeding } = mating;
  const [his, hers] = [cock.ancestor, hen.ancestor];
  return {
    ...mating,
    zInbreeding: kinship(stock.lineage.z(), his.number, hers.number),
    kin: kinOf(his, hers, inbreeding),
    through: ancestorsInCommon(stock.lineage, his, hers),
    cautions: [
      ...(mating.chased === null
        ? []
        : [`there was fierce chasing between them on ${dayWithYear(mating.chased)}`]),
      ...twoSpecies(cock, hen),
      ...[cock, hen].flatMap(doubts),
      ...unknownAge([cock, hen], stock.day),
      ...sameOrigin(cock, hen),
    ],
  };
}

/** Proposals are of one species; a pair that there is may be of two. */
function twoSpecies({ bird: his }: StockBird, { bird: hers }: StockBird): string[] {
  if (his.species === null || hers.species === null || his.species === hers.species) return [];
  return [`two species, ${his.species} and ${hers.species}: mean kinship says nothing of their young`];
}

/** What is written of a bird’s parents that could not be used: it may be closer kin than is known. */
function doubts({ id, parents, inbreeding }: StockBird): string[] {
  const { sire, dam } = parents;
  return [
    ...(sire.doubt === null ? [] : [`the sire of ${id} is not certain: ${sire.doubt}`]),
    ...(dam.doubt === null || dam.doubt === sire.doubt
      ? []
      : [`the dam of ${id} is not certain: ${dam.doubt}`]),
    ...(inbreeding === null
      ? [`the pedigree of ${id} runs in a circle: it is closer kin than these numbers say`]
      : []),
  ];
}

/** Birds of which nobody knows that they are old enough: hatched who knows when, and not long enough here. */
function unknownAge(birds: readonly StockBird[], day: Day): string[] {
  const doubtful = birds.filter(({ bird: { hatched, firstSeen }, profile }) => {
    return hatched === null && (firstSeen === null || day < breedsFrom(firstSeen, profile));
  });
  if (doubtful.length === 0) return [];
  const names = doubtful.map(({ id }) => id).join(' and ');
  return [`nobody wrote when ${names} hatched: old enough?`];
}

/** Two birds of unknown parents from one place may well be brother and sister. */
function sameOrigin(cock: StockBird, hen: StockBird): string[] {
  const [one, other] = [cock, hen].map(({ bird, parents: { sire, dam } }) => {
    const origin = bird.listed?.origin?.text ?? null;
    return sire.id === null && dam.id === null ? origin : null;
  });
  if (one === null || one === undefined || one.toLowerCase() !== other?.toLowerCase()) return [];
  return [`both came from one place (${one}) with unknown parents: they may be brother and sister`];
}
