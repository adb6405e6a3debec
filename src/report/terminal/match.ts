import { dayWithYear } from '../../days.ts';
import { grouped } from '../../grouped.ts';
import type { JudgedMating } from '../../rules/match/mating.ts';
import type { KeptPair, LeftOut, Proposal, SpeciesMatch } from '../../rules/match/proposals.ts';
import { isCloser } from '../../statistics/pedigree/relationship.ts';
import { count, speciesName, stated } from '../../words.ts';
import type { JudgedPair, MatchPage } from '../match.ts';
import { ancestorsText, coefficient } from './birds.ts';
import { longDate } from './dates.ts';
import { indented, type Page, type Screen, textOf } from './page.ts';
import { styles } from './style.ts';
import { visible } from './visible.ts';
import { wrap } from './width.ts';

/** Columns before what is said of a pair. */
const INDENT = 4;

interface Layout extends Page {
  limit: number | null;
}

/** Whom to pair with whom in the next season, with the reasons, and who is left over. */
export function matchText({ day, room, limit, anew, species }: MatchPage, { width, color }: Screen): string {
  const look = styles(color);
  const layout = { width, look, limit };
  const title = stated(['For the next season', longDate(day), room]);
  const [fruitful, barren] = [true, false].map((some) =>
    species.filter(({ proposals }) => proposals.length > 0 === some),
  );
  const blocks = [
    [...wrap(visible(title), width).map(look.heading), ...limitLine(layout)],
    ...[...(fruitful ?? []), ...(barren ?? [])].flatMap((match) => speciesBlocks(match, layout)),
    anew || species.every(({ kept }) => kept.length === 0) ? [] : stayLine(layout),
    closing(layout),
  ];
  return textOf(blocks);
}

/** A pair that there is, judged in the same way. */
export function judgedPairText({ pair, limit, mating }: JudgedPair, { width, color }: Screen): string {
  const look = styles(color);
  const layout = { width, look, limit };
  const title = `${pair}: ${namesOf(mating)}`;
  return textOf([
    [...wrap(visible(title), width).map(look.heading), ...judgement(mating, layout)],
    closing(layout),
  ]);
}

function limitLine({ width, limit }: Layout): string[] {
  return limit === null
    ? []
    : wrap(`Only pairs whose young have an F of at most ${coefficient(limit)}.`, width);
}

function stayLine({ width }: Layout): string[] {
  return wrap(
    'Pairs that were not parted stay together. To think all pairs out anew: nestlog match --anew.',
    width,
  );
}

const namesOf = ({ cock, hen }: Pick<JudgedMating, 'cock' | 'hen'>) => `${cock.id} × ${hen.id}`;

function speciesBlocks(match: SpeciesMatch, layout: Layout): string[][] {
  const { species, proposals, kept, leftOut } = match;
  const { look, width } = layout;
  const number =
    proposals.length === 0 ? 'no pair to propose' : `${count(proposals.length, 'pair')} proposed`;
  return [
    wrap(visible(`${speciesName(species)} · ${number}`), width).map(look.heading),
    ...proposals.map((proposal) => proposalLines(proposal, layout)),
    keptLines(kept, layout),
    leftOutLines(leftOut, layout),
  ];
}

function proposalLines(proposal: Proposal, layout: Layout): string[] {
  const { reasons, runnerUp } = proposal;
  return [
    `  ${layout.look.task(visible(namesOf(proposal)))}`,
    ...judgement(proposal, layout),
    ...(reasons.length === 0 ? [] : item('why', reasons.join('; '), layout)),
    ...(runnerUp === null ? [] : item('next best', `${namesOf(runnerUp)}, ${short(runnerUp)}`, layout)),
  ];
}

/** What the young would be, what that means, and what the numbers cannot know. */
function judgement(mating: JudgedMating, layout: Layout): string[] {
  const { inbreeding, meanKinship, through, zInbreeding, kin, cautions } = mating;
  const { look, limit } = layout;
  const figures = `F of the young ${coefficient(inbreeding)} · mean kinship ${coefficient(meanKinship)}`;
  const beyond =
    limit !== null && isCloser(inbreeding, limit) ? ` It is beyond your limit of ${coefficient(limit)}.` : '';
  const close = inbreeding >= 1 / 16;
  const words =
    kin === null
      ? 'no ancestor in common is known'
      : `${close ? 'close kin: ' : ''}${kin}, through ${ancestorsText(through, 4)}. ${meaning(inbreeding)}${beyond}`;
  const style = close ? look.watch : (text: string) => text;
  const onZ =
    isCloser(zInbreeding, inbreeding) || isCloser(inbreeding, zInbreeding)
      ? item('on the Z', `${coefficient(zInbreeding)} for sons; daughters have one Z only`, layout)
      : [];
  return [
    ...wrapped(figures, layout),
    ...wrapped(words, layout).map(style),
    ...onZ,
    ...cautions.flatMap((caution) => item('check', caution, layout)),
  ];
}

/** `Of the young’s gene pairs 12.5 % are expected to be one ancestor’s gene twice.` */
function meaning(inbreeding: number): string {
  return `Of the young’s gene pairs ${percentToTenth(inbreeding)} are expected to be one ancestor’s gene twice.`;
}

const percentToTenth = (share: number) => `${Number((share * 100).toFixed(1))} %`;

const short = ({
  inbreeding,
  kin,
  meanKinship,
}: Omit<JudgedMating, 'through' | 'zInbreeding' | 'cautions'>) =>
  `F ${coefficient(inbreeding)}${kin === null ? '' : ` (${kin})`}, mean kinship ${coefficient(meanKinship)}`;

function item(label: string, text: string, layout: Layout): string[] {
  return wrapped(`${label}: ${text}`, layout);
}

function wrapped(text: string, layout: Layout): string[] {
  return indented(visible(text), layout, { indent: INDENT, hanging: 2 });
}

/** Of a pair that is together again. */
function chasedWords({ chased }: KeptPair): string {
  return chased === null ? '' : `; there was fierce chasing between them on ${dayWithYear(chased)}`;
}

function keptLines(kept: readonly KeptPair[], layout: Layout): string[] {
  if (kept.length === 0) return [];
  const lines = kept.flatMap((pair) =>
    wrapped(`${pair.pair}: ${namesOf(pair)}, ${short(pair)}${chasedWords(pair)}`, layout),
  );
  return ['  Stay together', ...lines];
}

/** By reason, as many birds often have the same. */
function leftOutLines(leftOut: readonly LeftOut[], layout: Layout): string[] {
  if (leftOut.length === 0) return [];
  const lines = [...grouped(leftOut, ({ why }) => why)].flatMap(([why, some]) =>
    wrapped(`${some.map(({ one }) => one.id).join(', ')}: ${why}`, layout),
  );
  return ['  Not paired', ...lines];
}

function closing({ width, look }: Layout): string[] {
  return wrap(
    'F counts what is known: birds of unknown parents pass for unrelated. The more inbred young are, the oftener hidden faults show and the fewer hatch and live: in wild great tits hatching fell by about 7.5 % for each 10 % of F (van Noordwijk & Scharloo, second hand). What is hidden in a line, how a bird is built and sings, which colours do not go together, and what local rules ask, is yours to judge.',
    width,
  ).map(look.muted);
}
