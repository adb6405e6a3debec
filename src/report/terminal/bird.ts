import type { Day } from '../../days.ts';
import type { Ancestor } from '../../rules/stock/lineage.ts';
import type { Mate, Portrait } from '../../rules/stock/portrait.ts';
import type { Stock, StockBird } from '../../rules/stock/stock.ts';
import { count } from '../../words.ts';
import { pedigreeLines } from './bird/pedigree.ts';
import { factsOf, inbreedingOf, titleOf } from './bird/words.ts';
import { periodText, shortDate } from './dates.ts';
import { indented, type Page, type Screen, section, textOf } from './page.ts';
import { styles } from './style.ts';
import { visible } from './visible.ts';
import { pad, truncate, widthOf, wrap } from './width.ts';

const DATE = 11;

/** One bird’s life on a page. */
export function birdText(portrait: Portrait, stock: Stock, { width, color }: Screen): string {
  const look = styles(color);
  const { one, life, mates } = portrait;
  const { day } = stock;
  const page = { width, look };
  const blocks = [
    [
      ...wrap(visible(titleOf(one, day)), width).map(look.heading),
      ...wrap(visible(factsOf(portrait, day).join(' · ')), width),
    ],
    section(
      'INBREEDING',
      inbreedingOf(portrait).flatMap((text) => indented(visible(text), page, { hanging: 2 })),
      page,
    ),
    section('PEDIGREE', pedigree(one, stock, page), page),
    section(
      'MATES AND YOUNG',
      mates.flatMap((mate) => mateLines(mate, day, page)),
      page,
    ),
    section('LIFE', lifeLines(life, day, width), page),
  ];
  return textOf(blocks);
}

function pedigree({ ancestor }: StockBird, { of }: Stock, { width, look }: Page): string[] {
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

function mateLines({ id, times, young }: Mate, day: Day, page: Page): string[] {
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
  const text = [[mate, ...together].join(', '), bred].join(' · ');
  return indented(visible(text), page, { hanging: 2 });
}

function lifeLines(life: Portrait['life'], day: Day, width: number): string[] {
  const dates = life.map((event) => periodText({ from: event.from, to: event.day }, day));
  const column = Math.max(DATE, ...dates.map(widthOf)) + 2;
  return life.flatMap(({ what }, at) =>
    wrap(visible(what), width - 2 - column).map(
      (line, index) => `  ${pad(index === 0 ? (dates[at] as string) : '', column)}${line}`,
    ),
  );
}
