import type { Room } from '../../room/fold.ts';
import { cheapestAssignment } from '../../statistics/assignment.ts';
import { kinOf } from '../stock/kin.ts';
import { bySpecies, type Stock, type StockBird } from '../stock/stock.ts';
import { type FitnessContext, whyNotFit } from './fitness.ts';
import { type JudgedMating, judge, type Mating, matingOf } from './mating.ts';
import { matesOf, type PairWishes, spokenFor } from './staying.ts';

/** Two birds that are proposed for each other. */
export interface Proposal extends JudgedMating {
  /** Why these two, in sentences. */
  reasons: string[];
  /** The next best mate for the hen, or for the cock where he is the only one. */
  runnerUp: JudgedMating | null;
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

/** More than all costs of an assignment together: whom the limit parts is put together last of all. */
const BEYOND = 1e6;

/** Whom to pair with whom in the coming season, species by species. */
export function matchStock(room: Room, stock: Stock, wishes: MatchWishes): SpeciesMatch[] {
  const here = bySpecies(stock.birds.filter(({ status }) => status === 'here'));
  const context = { room, stock, not: wishes.not, spokenFor: spokenFor(room, stock, wishes) };
  return Array.from(here, ([species, birds]) => matchSpecies(species, birds, context, wishes.maxInbreeding));
}

function matchSpecies(
  species: string | null,
  birds: readonly StockBird[],
  context: FitnessContext,
  limit: number | null,
): SpeciesMatch {
  const judged = birds.map((one) => ({ one, why: whyNotFit(one, context) }));
  const fit = judged.filter(({ why }) => why === null).map(({ one }) => one);
  const candidates = everyMating(
    fit.filter(({ bird }) => bird.sex === 'cock'),
    fit.filter(({ bird }) => bird.sex === 'hen'),
    context.stock,
  );
  const chosen = best(candidates, limit);
  const field: Field = { candidates, chosen, limit, stock: context.stock };
  const kept = keptPairs(birds, context);
  const settled = new Set([...chosen, ...kept].flatMap(({ cock, hen }) => [cock, hen]));
  return {
    species,
    proposals: chosen.map((mating) => proposal(mating, field)).sort((a, b) => a.cost - b.cost),
    kept,
    leftOut: judged
      .filter(({ one }) => !settled.has(one))
      .map(({ one, why }) => ({ one, why: why ?? whyAlone(one, field) })),
  };
}

/** A row a cock. */
function everyMating(cocks: StockBird[], hens: StockBird[], stock: Stock): Mating[][] {
  const numbers = hens.map(({ ancestor }) => ancestor.number);
  const rows = stock.lineage.autosomes.kinshipTable(
    cocks.map(({ ancestor }) => [ancestor.number]),
    numbers,
  );
  return cocks.map((cock, row) => hens.map((hen, column) => matingOf(cock, hen, stock, rows[row]?.[column])));
}

function isWithin({ inbreeding }: Mating, limit: number | null): boolean {
  return limit === null || inbreeding <= limit + 1e-12;
}

/** As many pairs as the limit allows, and of those the set with the least cost. */
function best(candidates: Mating[][], limit: number | null): Mating[] {
  const costs = candidates.map((row) =>
    row.map((mating) => mating.cost + (isWithin(mating, limit) ? 0 : BEYOND)),
  );
  return cheapestAssignment(costs)
    .map(([row, column]) => candidates[row]?.[column] as Mating)
    .filter((mating) => isWithin(mating, limit));
}

/** The pairs of these birds that stay together or come together again, each once. */
function keptPairs(
  birds: readonly StockBird[],
  { room, stock, spokenFor: pairs }: FitnessContext,
): KeptPair[] {
  const ids = new Set(birds.flatMap((one) => pairs.get(one) ?? []));
  return room.pairs.flatMap((pair) => {
    const mates = ids.has(pair.id) ? matesOf(pair, stock) : null;
    if (!mates?.every((one) => pairs.get(one) === pair.id) || !birds.includes(mates[0])) return [];
    return [{ pair: pair.id, ...judge(matingOf(...mates, stock), stock) }];
  });
}

interface Field {
  candidates: Mating[][];
  chosen: Mating[];
  stock: Stock;
  limit: number | null;
}

function proposal(mating: Mating, field: Field): Proposal {
  const runnerUp = nextBest(mating, field);
  return {
    ...judge(mating, field.stock),
    reasons: [...rarity(mating, field), ...rivals(mating, field)],
    runnerUp: runnerUp === null ? null : judge(runnerUp, field.stock),
  };
}

/** The cheapest other mate for the hen; where there is no other cock, for the cock. */
function nextBest(mating: Mating, { candidates }: Field): Mating | null {
  const all = candidates.flat();
  const others = [
    all.filter(({ cock, hen }) => hen === mating.hen && cock !== mating.cock),
    all.filter(({ cock, hen }) => cock === mating.cock && hen !== mating.hen),
  ].find((some) => some.length > 0);
  return others?.reduce((a, b) => (b.cost < a.cost ? b : a)) ?? null;
}

/** Which of the two has the fewest relatives of its sex. */
function rarity({ cock, hen }: Mating, { candidates }: Field): string[] {
  const cocks = candidates.flatMap((row) => row[0]?.cock ?? []);
  const hens = candidates[0]?.map((mating) => mating.hen) ?? [];
  const rarest = (one: StockBird, among: StockBird[]) =>
    among.length > 1 &&
    among.every((other) => other === one || (other.meanKinship ?? 0) > (one.meanKinship ?? 0));
  return [
    ...(rarest(cock, cocks) ? [`of the free cocks, ${cock.id} has the fewest relatives here`] : []),
    ...(rarest(hen, hens) ? [`of the free hens, ${hen.id} has the fewest relatives here`] : []),
  ];
}

/** Why the hen does not get the cock that has fewer relatives here. */
function rivals(mating: Mating, { candidates, chosen, limit }: Field): string[] {
  const hers = candidates.flat().filter(({ hen }) => hen === mating.hen);
  const rarer = hers.filter(({ cock }) => (cock.meanKinship ?? 0) < (mating.cock.meanKinship ?? 0) - 1e-12);
  const [rarest] = rarer.sort((a, b) => (a.cock.meanKinship ?? 0) - (b.cock.meanKinship ?? 0));
  if (rarest === undefined) return [];
  const { cock, hen, inbreeding } = rarest;
  const kin = kinOf(cock.ancestor, hen.ancestor, inbreeding);
  const goes = chosen.find((other) => other.cock === cock)?.hen.id ?? null;
  const instead = goes === null ? '' : ` and goes to ${goes}`;
  if (kin !== null && inbreeding > mating.inbreeding) {
    const beyond = isWithin(rarest, limit) ? '' : ', beyond the limit';
    return [
      `${cock.id} has fewer relatives here, but he and ${hen.id} are ${kin} (F ${rounded(inbreeding)}${beyond})${instead}`,
    ];
  }
  return goes === null ? [] : [`${cock.id} has fewer relatives here, but does more good with ${goes}`];
}

const rounded = (number: number) => String(Number(number.toFixed(4)));

/** Why a fit bird has no mate. */
function whyAlone(one: StockBird, { candidates, limit, stock }: Field): string {
  const [mates, others] = one.bird.sex === 'cock' ? ['hen', 'cocks'] : ['cock', 'hens'];
  const options = candidates.flat().filter(({ cock, hen }) => cock === one || hen === one);
  if (options.length === 0) return `no ${mates} of the species is free and fit`;
  if (options.every((option) => !isWithin(option, limit))) {
    const closest = options.reduce((a, b) => (b.inbreeding < a.inbreeding ? b : a));
    const { kin, inbreeding } = judge(closest, stock);
    const mate = closest.cock === one ? closest.hen : closest.cock;
    return `every free ${mates} is closer kin than ${limit}; the least so is ${mate.id} (${kin}, F ${rounded(inbreeding)})`;
  }
  const within = options.filter((option) => isWithin(option, limit));
  if (within.length < options.length) {
    const ids = within.map(({ cock, hen }) => (cock === one ? hen.id : cock.id)).join(', ');
    return `every ${mates} that is no closer kin than ${limit} goes to another: ${ids}`;
  }
  return `no ${mates} left; the other ${others} make the better pairs`;
}
