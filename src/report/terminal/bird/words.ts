import type { Day } from '../../../days.ts';
import { hatchedOn } from '../../../room/clock.ts';
import type { Portrait } from '../../../rules/stock/portrait.ts';
import type { StockBird } from '../../../rules/stock/stock.ts';
import { speciesName } from '../../../words.ts';
import { ageText, ancestorsText, coefficient } from '../birds.ts';
import { periodText } from '../dates.ts';

/** Who the bird is, and what has become of it. */
export function titleOf(one: StockBird, day: Day): string {
  return `${one.id} · ${leadOf(one, day)}`;
}

/** The same without its name. */
export function leadOf({ bird, age, status }: StockBird, day: Day): string {
  const years = ageText({ bird }, bird.fate?.day ?? day);
  const how = age === null ? [] : [[age, years].filter((part) => part !== '').join(', ')];
  return [speciesName(bird.species), bird.sex ?? 'not sexed', ...how, ...(age === null ? [status] : [])].join(
    ' · ',
  );
}

/** Its ring, hatching, home and whence it came. */
export function factsOf({ one, origin }: Portrait, day: Day): string[] {
  const { bird, housing } = one;
  const { listed } = bird;
  const hatched = hatchedOn(bird);
  const nest =
    origin === null ? '' : ` in clutch ${origin.clutch}${origin.egg === null ? '' : ` from ${origin.egg}`}`;
  const reared =
    origin === null || origin.rearedBy.length === 0 ? [] : [`fed by ${origin.rearedBy.join(', ')}`];
  const born = hatched === null ? 'hatching day not recorded' : `hatched ${periodText(hatched, day)}`;
  return [
    bird.ring === null ? 'no ring recorded' : `ring ${bird.ring}`,
    `${born}${nest}`,
    ...reared,
    ...(housing === null ? [] : [`lives in ${housing}`]),
    ...(listed?.origin ? [`from ${listed.origin.text}`] : []),
    ...(listed?.owner ? [`owner: ${listed.owner.text}`] : []),
  ];
}

const GENERATIONS = ['parents', 'grandparents', 'great-grandparents', 'of the generation before'];

/** Its F and through whom, how much of its pedigree is known, and how related it is to the others. */
export function inbreedingOf({ one, through, kin, known, speciesMean }: Portrait): string[] {
  const generations = known.flatMap(({ known: number, of }, index) =>
    number === 0 && index > 0 ? [] : [`${number} of ${of} ${GENERATIONS[index]}`],
  );
  const kinship =
    one.meanKinship === null
      ? []
      : [
          `mean kinship ${coefficient(one.meanKinship)}; the mean of its species here is ${coefficient(speciesMean)}`,
        ];
  return [inbreedingText(one.inbreeding, through, kin), `known: ${generations.join(', ')}`, ...kinship];
}

function inbreedingText(inbreeding: number | null, through: Portrait['through'], kin: string | null): string {
  if (inbreeding === null) return 'F cannot be told: the pedigree runs in a circle, see nestlog check';
  if (inbreeding === 0) return 'F 0: its parents have no ancestor in common that is known';
  return `F ${coefficient(inbreeding)}, through ${ancestorsText(through, 6)}; its parents are ${kin}`;
}
