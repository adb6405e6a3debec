import type { Day } from '../../days.ts';
import type { Ancestor } from '../../rules/stock/lineage.ts';
import type { Mate, Portrait } from '../../rules/stock/portrait.ts';
import type { Stock, StockBird } from '../../rules/stock/stock.ts';
import { pedigreeLines } from './bird/pedigree.ts';
import { ageText, ancestorsText, coefficient } from './birds.ts';
import { shortDate } from './dates.ts';
import { type Styles, styles } from './style.ts';
import { visible } from './visible.ts';
import { pad, truncate, wrap } from './width.ts';
import { count } from './words.ts';

interface Options {
  width: number;
  color: boolean;
}

const DATE = 13;

/** One bird’s life on a page. */
export function birdText(portrait: Portrait, stock: Stock, { width, color }: Options): string {
  const look = styles(color);
  const { one, life, mates } = portrait;
  const { day } = stock;
  const section = (title: string, lines: string[]) =>
    lines.length === 0 ? [] : [look.heading(title), ...lines];
  const blocks = [
    [...wrap(visible(titleOf(one, day)), width).map(look.heading), ...facts(portrait, day, width)],
    section('INBREEDING', inbreedingLines(portrait, width)),
    section('PEDIGREE', pedigree(one, stock, width, look)),
    section(
      'MATES AND YOUNG',
      mates.flatMap((mate) => mateLines(mate, day, width)),
    ),
    section(
      'LIFE',
      life.flatMap((event) => dated(shortDate(event.day, day), event.what, width)),
    ),
  ];
  return blocks
    .filter((lines) => lines.length > 0)
    .map((lines) => `${lines.join('\n')}\n`)
    .join('\n');
}

function titleOf({ id, bird, age, status }: StockBird, day: Day): string {
  const years = ageText({ bird }, bird.fate?.day ?? day);
  const how = age === null ? [] : [[age, years].filter((part) => part !== '').join(', ')];
  return [
    id,
    bird.species ?? 'species not recorded',
    bird.sex ?? 'not sexed',
    ...how,
    ...(age === null ? [status] : []),
  ].join(' · ');
}

function facts({ one, origin }: Portrait, day: Day, width: number): string[] {
  const { bird, housing } = one;
  const { hatched, listed } = bird;
  const nest =
    origin === null ? '' : ` in clutch ${origin.clutch}${origin.egg === null ? '' : ` from ${origin.egg}`}`;
  const reared =
    origin === null || origin.rearedBy.length === 0 ? [] : [`fed by ${origin.rearedBy.join(', ')}`];
  const born =
    hatched === null ? 'hatching day not recorded' : `hatched ${spanText(hatched.from, hatched.to, day)}`;
  const parts = [
    bird.ring === null ? 'no ring recorded' : `ring ${bird.ring}`,
    `${born}${nest}`,
    ...reared,
    ...(housing === null ? [] : [`lives in ${housing}`]),
    ...(listed?.origin ? [`from ${listed.origin.text}`] : []),
    ...(listed?.owner ? [`owner: ${listed.owner.text}`] : []),
  ];
  return wrap(visible(parts.join(' · ')), width);
}

function spanText(from: Day, to: Day, day: Day): string {
  return from === to ? shortDate(to, day) : `between ${shortDate(from, day)} and ${shortDate(to, day)}`;
}

const GENERATIONS = ['parents', 'grandparents', 'great-grandparents', 'of the generation before'];

function inbreedingLines({ one, through, kin, known, speciesMean }: Portrait, width: number): string[] {
  const generations = known.flatMap(({ known: number, of }, index) =>
    number === 0 && index > 0 ? [] : [`${number} of ${of} ${GENERATIONS[index]}`],
  );
  const kinship =
    one.meanKinship === null
      ? []
      : [
          `mean kinship ${coefficient(one.meanKinship)}; the mean of its species here is ${coefficient(speciesMean)}`,
        ];
  return [
    inbreedingText(one.inbreeding, through, kin),
    `known: ${generations.join(', ')}`,
    ...kinship,
  ].flatMap((text) => wrap(visible(text), width - 2, { hanging: 2 }).map((line) => `  ${line}`));
}

function inbreedingText(inbreeding: number | null, through: Portrait['through'], kin: string | null): string {
  if (inbreeding === null) return 'F cannot be told: the pedigree runs in a circle, see nestlog check';
  if (inbreeding === 0) return 'F 0: its parents have no ancestor in common that is known';
  return `F ${coefficient(inbreeding)}, through ${ancestorsText(through, 6)}; its parents are ${kin}`;
}

function pedigree({ ancestor }: StockBird, { of }: Stock, width: number, look: Styles): string[] {
  const lines = pedigreeLines(ancestor, ({ bird }: Ancestor) =>
    bird === null ? null : (of(bird)?.parents ?? null),
  );
  if (lines.length === 1) return ['  nothing is known of its parents'];
  const starred = lines.some((line) => line.endsWith(' *'));
  return [
    ...lines.map((line) => `  ${truncate(visible(line), width - 2)}`),
    ...(starred ? [look.muted('  * stands here more than once')] : []),
  ];
}

function mateLines({ id, times, young }: Mate, day: Day, width: number): string[] {
  const together = times.map(({ pair, from, to }) => {
    const until = to === null ? '' : `–${shortDate(to, day)}`;
    return `${pair} ${to === null ? 'since ' : ''}${shortDate(from, day)}${until}`;
  });
  const here = young.filter(({ status }) => status === 'here').length;
  const bred =
    young.length === 0
      ? 'no young'
      : `${count(young.length, 'young', 'young')}, ${here} here: ${young.map((one) => one.id).join(', ')}`;
  const mate = id ?? 'mate not certain';
  return wrap(visible([[mate, ...together].join(', '), bred].join(' · ')), width - 2, { hanging: 2 }).map(
    (line) => `  ${line}`,
  );
}

function dated(date: string, what: string, width: number): string[] {
  return wrap(visible(what), width - 2 - DATE).map(
    (line, index) => `  ${pad(index === 0 ? date : '', DATE)}${line}`,
  );
}
