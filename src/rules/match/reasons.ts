import { dayWithYear } from '../../days.ts';
import { isCloser } from '../../statistics/pedigree/relationship.ts';
import { kinOf } from '../stock/kin.ts';
import type { StockBird } from '../stock/stock.ts';
import { type Field, isWithin, matingsOf } from './field.ts';
import type { Mating } from './mating.ts';

const meanOf = (one: StockBird) => one.meanKinship ?? 0;
const rounded = (number: number) => String(Number(number.toFixed(4)));

/** Why these two, in phrases. */
export function reasonsFor(mating: Mating, field: Field): string[] {
  return [...rarity(mating, field), ...rivals(mating, field)];
}

/** Which of the two has the fewest relatives of its sex. */
function rarity({ cock, hen }: Mating, { cocks, hens }: Field): string[] {
  const isRarest = (one: StockBird, among: StockBird[]) =>
    among.length > 1 && among.every((other) => other === one || meanOf(other) > meanOf(one));
  return [
    ...(isRarest(cock, cocks) ? [`of the free cocks, ${cock.id} has the fewest relatives here`] : []),
    ...(isRarest(hen, hens) ? [`of the free hens, ${hen.id} has the fewest relatives here`] : []),
  ];
}

/** Why the hen does not get the cock that has the fewest relatives here. */
function rivals(mating: Mating, field: Field): string[] {
  const { hen } = mating;
  const hers = matingsOf(hen, field);
  const rarest = hers.reduce((a, b) => (meanOf(b.cock) < meanOf(a.cock) ? b : a), mating);
  if (!isCloser(meanOf(mating.cock), meanOf(rarest.cock))) return [];
  const { cock, inbreeding } = rarest;
  const kin = kinOf(cock.ancestor, hen.ancestor, inbreeding);
  const goes = field.chosen.find((other) => other.cock === cock)?.hen.id ?? null;
  const instead = goes === null ? '' : `; he goes to ${goes}`;
  const fewer = `${cock.id} has fewer relatives here, but`;
  if (rarest.chased !== null) {
    const day = dayWithYear(rarest.chased);
    return [`${fewer} there was fierce chasing between him and ${hen.id} on ${day}${instead}`];
  }
  if (kin !== null && inbreeding > mating.inbreeding) {
    const beyond = isWithin(rarest, field.limit) ? '' : ', beyond the limit';
    return [`${fewer} he and ${hen.id} are ${kin} (F ${rounded(inbreeding)}${beyond})${instead}`];
  }
  return goes === null ? [] : [`${fewer} does more good with ${goes}`];
}

/** The cheapest other mate for the hen; where there is no other cock, for the cock. */
export function nextBest(mating: Mating, field: Field): Mating | null {
  const others = [mating.hen, mating.cock]
    .map((one) => matingsOf(one, field).filter((other) => other !== mating && other.chased === null))
    .find((some) => some.length > 0);
  return others?.reduce((a, b) => (b.cost < a.cost ? b : a)) ?? null;
}

/** Why a fit bird has no mate. */
export function whyAlone(one: StockBird, field: Field): string {
  const { limit, crowdedOut } = field;
  const [mates, others] = one.bird.sex === 'cock' ? ['hen', 'cocks'] : ['cock', 'hens'];
  if (crowdedOut.has(one))
    return `so many ${others} are free that only those with the fewest relatives were weighed`;
  const all = matingsOf(one, field);
  const options = all.filter(({ chased }) => chased === null);
  const [parted] = all.filter(({ chased }) => chased !== null);
  if (options.length === 0 && parted !== undefined) {
    const mate = one.bird.sex === 'cock' ? parted.hen : parted.cock;
    return `fierce chasing with ${mate.id} on ${dayWithYear(parted.chased ?? 0)}: they are not proposed for each other again`;
  }
  if (options.length === 0) return `no ${mates} of the species is free and fit`;
  const within = options.filter((option) => isWithin(option, limit));
  const mateOf = ({ cock, hen }: Mating) => (cock === one ? hen : cock);
  if (within.length === 0) {
    const closest = options.reduce((a, b) => (b.inbreeding < a.inbreeding ? b : a));
    const { cock, hen, inbreeding } = closest;
    const kin = kinOf(cock.ancestor, hen.ancestor, inbreeding);
    return `every free ${mates} is closer kin than ${limit}; the least so is ${mateOf(closest).id} (${kin}, F ${rounded(inbreeding)})`;
  }
  if (within.length < options.length) {
    const ids = within.map((option) => mateOf(option).id);
    return `every ${mates} that is no closer kin than ${limit} goes to another: ${ids.join(', ')}`;
  }
  return `no ${mates} left; the other ${others} make the better pairs`;
}
