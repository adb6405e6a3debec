import type { Room } from '../../room/fold.ts';
import { kinOf } from '../stock/kin.ts';
import { bySpecies, type Stock, type StockBird } from '../stock/stock.ts';
import { type Field, fieldOf } from './field.ts';
import { type FitnessContext, whyNotFit } from './fitness.ts';
import { type JudgedMating, judge, type Mating, matingOf } from './mating.ts';
import { nextBest, reasonsFor, whyAlone } from './reasons.ts';
import { matesOf, type PairWishes, perhapsIn, spokenFor } from './staying.ts';

/** Two birds that are proposed for each other. */
export interface Proposal extends JudgedMating {
  /** Why these two, in phrases. */
  reasons: string[];
  /** The next best mate for the hen, or for the cock where he is the only one. */
  runnerUp: (Mating & Pick<JudgedMating, 'kin'>) | null;
}

/** A pair that stays, judged in the same way. */
export interface KeptPair extends JudgedMating {
  pair: string;
}

/** A bird without a proposal. */
export interface LeftOut {
  one: StockBird;
  why: string;
}

/** What is proposed for one species. */
export interface SpeciesMatch {
  species: string | null;
  /** The best first. */
  proposals: Proposal[];
  kept: KeptPair[];
  leftOut: LeftOut[];
}

/** What the keeper has said of the coming season. */
export interface MatchWishes extends PairWishes {
  /** Birds to leave out. */
  not: ReadonlySet<StockBird>;
  /** The highest F of young that is proposed, or null for any. */
  maxInbreeding: number | null;
}

/** Whom to pair with whom in the coming season, species by species. */
export function matchStock(room: Room, stock: Stock, wishes: MatchWishes): SpeciesMatch[] {
  const here = bySpecies(stock.birds.filter(({ status }) => status === 'here'));
  const context = { room, stock, not: wishes.not, spokenFor: spokenFor(room, stock, wishes) };
  const perhaps = wishes.anew ? () => [] : perhapsIn(room, stock);
  return Array.from(here, ([species, birds]) => {
    const match = matchSpecies(species, birds, context, wishes.maxInbreeding);
    return { ...match, proposals: match.proposals.map((one) => warned(one, perhaps)) };
  });
}

function matchSpecies(
  species: string | null,
  birds: readonly StockBird[],
  context: FitnessContext,
  limit: number | null,
): SpeciesMatch {
  const judged = birds.map((one) => ({ one, why: whyNotFit(one, context) }));
  const fit = judged.filter(({ why }) => why === null).map(({ one }) => one);
  const field = fieldOf(fit, context.stock, limit);
  const kept = keptPairs(birds, context);
  const settled = new Set([...field.chosen, ...kept].flatMap(({ cock, hen }) => [cock, hen]));
  return {
    species,
    proposals: field.chosen.map((mating) => proposal(mating, field)).sort((a, b) => a.cost - b.cost),
    kept,
    leftOut: judged
      .filter(({ one }) => !settled.has(one))
      .map(({ one, why }) => ({ one, why: why ?? whyAlone(one, field) })),
  };
}

function proposal(mating: Mating, field: Field): Proposal {
  const next = nextBest(mating, field);
  const kin = next === null ? null : kinOf(next.cock.ancestor, next.hen.ancestor, next.inbreeding);
  return {
    ...judge(mating, field.stock),
    reasons: reasonsFor(mating, field),
    runnerUp: next === null ? null : { ...next, kin },
  };
}

/** Who is one of several in a pair that was not parted is free only if it is not the one. */
function warned(proposal: Proposal, perhaps: (one: StockBird) => string[]): Proposal {
  const mates = [proposal.cock, proposal.hen];
  const pairs = [...new Set(mates.flatMap(perhaps))];
  const doubts = pairs.map((pair) => {
    const there = mates.filter((one) => perhaps(one).includes(pair)).map(({ id }) => id);
    return `${there.join(' and ')} may be in ${pair}, which was not parted: is there anybody to rear?`;
  });
  return { ...proposal, cautions: [...proposal.cautions, ...doubts] };
}

/** The pairs of these birds that stay together or come together again, each once. */
function keptPairs(
  birds: readonly StockBird[],
  { room, stock, spokenFor: pairs }: FitnessContext,
): KeptPair[] {
  const among = new Set(birds);
  return room.pairs.flatMap((pair) => {
    const mates = matesOf(pair, stock);
    if (mates === null || !among.has(mates[0])) return [];
    if (!mates.every((one) => pairs.get(one) === pair.id)) return [];
    return [{ pair: pair.id, ...judge(matingOf(...mates, stock), stock) }];
  });
}
