import type { Day, Span } from '../../../days.ts';
import { hatchedOn } from '../../../room/clock.ts';
import { lampSays } from '../../../room/fertility.ts';
import { isFed } from '../../../room/left-behind.ts';
import { isDependent, isFedByHand, wasFedByHand } from '../../../room/lives.ts';
import type { Bird, Chick, Egg } from '../../../room/model.ts';
import type { Standing } from '../../../rules/growth/weighings.ts';
import type { ClutchStory, EggStory } from '../../../rules/season/story.ts';
import { dateSpan, shortDate } from '../dates.ts';
import { visible } from '../visible.ts';
import { pad, wrap } from '../width.ts';
import { eggMasses, weightOf } from './masses.ts';

const REF = 5;

/** Every egg and every chick of a clutch, each with what became of it; days are of the year in which the clutch was begun. */
export function fateLines(story: ClutchStory, today: Day, width: number): string[] {
  return fatesOf(story, today).flatMap(([ref, fate]) => {
    const [first = '', ...rest] = wrap(visible(fate), width - 4 - REF);
    return [`    ${pad(ref, REF)}${first}`, ...rest.map((line) => ' '.repeat(4 + REF) + line)];
  });
}

/** The same as pairs of a ref and its fate. */
export function fatesOf({ begun, eggs, chicks }: ClutchStory, today: Day): [string, string][] {
  return [
    ...eggs.map((one): [string, string[]] => [one.egg.ref, eggFate(one, begun)]),
    ...chicks.map(({ bird, weighed }): [string, string[]] => [
      bird.ref,
      chickFate(bird, weighed, begun, today),
    ]),
  ].map(([ref, parts]) => [ref, parts.join(' · ')]);
}

function eggFate(story: EggStory, day: Day): string[] {
  const { egg, fertility } = story;
  const { fate } = egg;
  const known = fate?.kind === 'hatched' ? [] : [fertility ?? 'not judged'];
  const dead = fate === null && lampSays(egg) === 'dead' ? (egg.lamp.at(-1)?.day ?? null) : null;
  const seen = dead === null ? [] : [`seen dead ${shortDate(dead, day)}`];
  return [
    ...known,
    ...seen,
    ...guestOf(egg),
    fate === null ? 'open' : eggEnd(fate, day),
    ...eggMasses(story),
  ];
}

function eggEnd(fate: NonNullable<Egg['fate']>, day: Day): string {
  if (fate.kind === 'hatched') return `hatched ${span(hatchedOn(fate.bird), day)} as ${fate.bird.ref}`;
  if (fate.kind === 'taken') return `${fate.cause} ${span(fate.span, day)}`;
  return `lost ${span(fate.span, day)}${fate.cause === null ? ', cause not known' : `: ${fate.cause}`}`;
}

/** Who sat on it, where it was not its own pair alone. */
function guestOf({ places, clutch }: Egg): string[] {
  const others = places.flatMap(({ place }) => {
    if (place.kind !== 'nest')
      return [place.kind === 'store' ? 'in store for a time' : `in the ${place.kind}`];
    return place.pair === clutch.pair ? [] : [`under ${place.pair.id}`];
  });
  return [...new Set(others)];
}

function chickFate(bird: Chick, weighed: Standing | null, day: Day, today: Day): string[] {
  const { ring, fledged, independent, fate, clutch } = bird;
  const fosters = bird.stays.flatMap(({ nest }) =>
    nest === null || nest === clutch.pair ? [] : [`fed by ${nest.id}`],
  );
  const feeders = [...handFeeding(bird, day), ...fosters];
  return [
    ...(ring === null ? [] : [ring]),
    ...(bird.placeholder ? ['heard, not counted'] : []),
    ...new Set(feeders),
    ...(fledged === null ? [] : [`fledged ${shortDate(fledged.day, day)}`]),
    ...(independent === null ? [] : [`independent ${shortDate(independent.day, day)}`]),
    ...(fate === null ? [] : [chickEnd(fate, day)]),
    ...(isDependent(bird) ? [rearing(bird, today)] : []),
    ...(weighed === null ? [] : [weightOf(weighed)]),
  ];
}

/** How far one is reared that was never seen to feed itself. */
function rearing(bird: Bird, day: Day): string {
  if (!isFed(bird, day)) return 'no end written';
  return bird.fledged === null && !isFedByHand(bird) ? 'in the nest' : 'being fed';
}

/** That it was fed by hand, and until when where a pair took it over. */
function handFeeding(bird: Bird, day: Day): string[] {
  if (!wasFedByHand(bird)) return [];
  const fed = bird.stays.filter(({ from }) => from < (bird.independent?.day ?? Number.POSITIVE_INFINITY));
  const since = fed[fed.findLastIndex(({ nest }) => nest === null) + 1];
  return [since === undefined ? 'fed by hand' : `fed by hand until ${shortDate(since.from, day)}`];
}

function chickEnd(fate: NonNullable<Bird['fate']>, day: Day): string {
  if (fate.kind === 'gone') return `${fate.how ?? 'gone'} ${shortDate(fate.day, day)}`;
  return `died ${span(fate.span, day)}${fate.cause === null ? '' : `: ${fate.cause}`}`;
}

function span({ from, to }: Span, day: Day): string {
  return dateSpan(from, to, day);
}
