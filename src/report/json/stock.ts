import { formatDay } from '../../days.ts';
import type { GroupDiversity } from '../../rules/stock/groups.ts';
import type { StockGroup, StockPage } from '../stock.ts';
import { birdRow } from '../tables/birds.ts';
import { jsonText } from './text.ts';

/** The stock for programs: birds as `nestlog export birds` has them, and how varied each species is. */
export function stockJson({ day, room, groups, unaccounted }: StockPage): string {
  return jsonText({
    nestlog: 1,
    date: formatDay(day),
    room,
    birds: groups.flatMap(({ birds }) => birds.map(birdRow)),
    species: groups.map(groupData),
    unaccounted: unaccounted.map(({ id }) => id),
  });
}

function groupData({ species, birds, living, breeders }: StockGroup) {
  const number = (which: (one: StockGroup['birds'][number]) => boolean) => birds.filter(which).length;
  return {
    species,
    birds: birds.length,
    cocks: number(({ bird }) => bird.sex === 'cock'),
    hens: number(({ bird }) => bird.sex === 'hen'),
    notSexed: number(({ bird }) => bird.sex === null),
    ages: {
      chick: number(({ age }) => age === 'chick'),
      fledgling: number(({ age }) => age === 'fledgling'),
      young: number(({ age }) => age === 'young'),
      adult: number(({ age }) => age === 'adult'),
    },
    living: living === null ? null : diversityData(living),
    breeders: breeders === null ? null : diversityData(breeders),
  };
}

function diversityData(group: GroupDiversity) {
  const { birds, meanKinship, geneDiversity, founderGenomes, founderEquivalents, founders } = group;
  return {
    birds,
    meanKinship,
    geneDiversity,
    founderGenomeEquivalents: founderGenomes,
    founderEquivalents,
    founders,
  };
}
