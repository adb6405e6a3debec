import type { Day } from '../../days.ts';
import type { GroupDiversity } from '../../rules/stock/groups.ts';
import type { AgeClass } from '../../rules/stock/life.ts';
import type { StockBird } from '../../rules/stock/stock.ts';
import { sumBy } from '../../statistics/sums.ts';
import { count, few, speciesName, stated } from '../../words.ts';
import type { StockGroup, StockPage } from '../stock.ts';
import { ageText, coefficient, percentInTwoFigures } from './birds.ts';
import { columns } from './columns.ts';
import { longDate, shortDate } from './dates.ts';
import { indented, type Page, type Screen, textOf } from './page.ts';
import { styles } from './style.ts';
import { visible } from './visible.ts';
import { wrap } from './width.ts';

/** Founders that are named one by one. */
const FOUNDERS = 6;
const INDENT = 2;

/** Who is here, species by species, and how varied they are; or who left, and where to. */
export function stockText(stock: StockPage, { width, color }: Screen): string {
  const look = styles(color);
  const page: Page = { width, look };
  const { day, room, groups, gone, unaccounted } = stock;
  const title = stated([longDate(day), room]);
  const blocks = [
    [...wrap(visible(title), width).map(look.heading), ...wrap(summary(stock), width)],
    ...groups.map((group) => (gone ? goneLines(group, day, page) : groupLines(group, day, page))),
    unaccountedLines(unaccounted, width),
    groups.some(({ living }) => living !== null) ? legend(page) : [],
  ];
  return textOf(blocks);
}

function summary({ groups, gone }: StockPage): string {
  const birds = sumBy(groups, (group) => group.birds.length);
  if (birds === 0) return gone ? 'Nobody has left.' : 'Nobody is here.';
  const species = groups.length === 1 ? '' : ` of ${count(groups.length, 'species', 'species')}`;
  return gone ? `${count(birds, 'bird')}${species} left or died` : `${count(birds, 'bird')}${species} here`;
}

function groupLines(group: StockGroup, day: Day, page: Page): string[] {
  const { width, look } = page;
  const { birds, living, breeders } = group;
  const head = ['bird', 'ring', 'sex', 'age', '', 'housing', 'pair', 'F', 'kinship'];
  const rows = birds.map((one) => [
    one.id,
    one.bird.ring ?? '',
    one.bird.sex ?? '?',
    one.age ?? '',
    ageText(one, day),
    one.housing ?? '?',
    one.current?.pair.id ?? '',
    coefficient(one.inbreeding),
    coefficient(one.meanKinship),
  ]);
  const [first = '', ...others] = table([head, ...rows], [4, 7, 8], 5, width);
  return [
    look.heading(`${visible(speciesName(group.species))} · ${birds.length}`),
    ...indented(countsOf(birds), page),
    look.muted(first),
    ...others,
    ...(living === null ? [] : diversityLines(living, 'all here', page)),
    ...(breeders === null || breeders.birds === living?.birds
      ? []
      : diversityLines(breeders, 'possible breeders', page)),
  ];
}

function table(rows: string[][], right: number[], cut: number, width: number): string[] {
  return columns(
    rows.map((row) => row.map(visible)),
    { width, indent: INDENT, right, cut },
  );
}

const PLURALS: Record<AgeClass, [string, string]> = {
  adult: ['adult', 'adults'],
  young: ['young', 'young'],
  fledgling: ['fledgling', 'fledglings'],
  chick: ['chick', 'chicks'],
};

/** `6 adults, 2 chicks · 3 cocks, 4 hens, 1 not sexed`. */
function countsOf(birds: readonly StockBird[]): string {
  const ages = (Object.keys(PLURALS) as AgeClass[]).flatMap((age) => {
    const number = birds.filter((one) => one.age === age).length;
    return number === 0 ? [] : [count(number, ...PLURALS[age])];
  });
  const of = (sex: 'cock' | 'hen' | null) => birds.filter(({ bird }) => bird.sex === sex).length;
  const sexes = [count(of('cock'), 'cock'), count(of('hen'), 'hen'), `${of(null)} not sexed`];
  return `${ages.join(', ')} · ${sexes.filter((words) => !words.startsWith('0')).join(', ')}`;
}

function diversityLines(group: GroupDiversity, who: string, page: Page): string[] {
  const { birds, meanKinship, geneDiversity, founderGenomes, founderEquivalents, founders } = group;
  const figures =
    `${who} (${birds}): mean kinship ${coefficient(meanKinship)}, gene diversity ${percentInTwoFigures(geneDiversity)}, ` +
    `founder genomes ${founderGenomes.toFixed(1)}`;
  const shares = founders.map(({ founder, share }) => `${visible(founder)} ${percentInTwoFigures(share)}`);
  const from = `founders: ${few(shares, FOUNDERS).join(', ')}; as even as ${founderEquivalents.toFixed(1)}`;
  return [figures, from].flatMap((text) => indented(text, page, { hanging: 2 }).map(page.look.muted));
}

function goneLines(group: StockGroup, day: Day, { width, look }: Page): string[] {
  const rows = [...group.birds]
    .sort((a, b) => (b.bird.fate?.day ?? 0) - (a.bird.fate?.day ?? 0))
    .map((one) => {
      const { fate } = one.bird;
      const how = fate?.kind === 'died' ? ['died', fate.cause] : [fate?.how ?? 'gone', null];
      return [
        fate === null ? '' : shortDate(fate.day, day),
        one.id,
        one.bird.ring ?? '',
        one.bird.sex ?? '?',
        fate === null ? '' : ageText(one, fate.day),
        stated(how, ': '),
      ];
    });
  const [first = '', ...others] = table(
    [['when', 'bird', 'ring', 'sex', 'age', 'what became of it'], ...rows],
    [4],
    5,
    width,
  );
  return [
    look.heading(`${visible(speciesName(group.species))} · ${group.birds.length}`),
    look.muted(first),
    ...others,
  ];
}

function unaccountedLines(birds: readonly StockBird[], width: number): string[] {
  if (birds.length === 0) return [];
  const names = birds.map(({ id }) => visible(id)).join(', ');
  return wrap(
    `Unaccounted for, so not counted: ${names}. Write what became of them: \`independent\`, \`died\` or \`gone\`.`,
    width,
  );
}

function legend({ width, look }: Page): string[] {
  return wrap(
    'F: inbreeding, the share of gene pairs that are twice one ancestor’s gene. Kinship: a bird’s mean kinship with all of its species here, itself included; low is rare. Gene diversity: 1 − mean kinship. Founder genomes: 1 / (2 × mean kinship). Birds of unknown parents count as unrelated.',
    width,
  ).map(look.muted);
}
