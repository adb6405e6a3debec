import { type Day, formatDay, type Span } from '../../days.ts';
import type { Bird, Egg } from '../../room/model.ts';
import type { ClutchStory, PairStory } from '../../rules/season/story.ts';
import { blockData, rearedData } from './season.ts';
import { jsonText } from './text.ts';

/** A pair's story for programs. */
export function pairJson({ pair, day, clutches, own, others, reared, measures }: PairStory): string {
  return jsonText({
    nestlog: 1,
    date: formatDay(day),
    pair: pair.id,
    species: pair.species,
    cock: pair.cock,
    hen: pair.hen,
    housing: pair.housing,
    clutches: clutches.map(clutchData),
    own: blockData(own, measures),
    reared: rearedData(reared),
    others: blockData(others, measures),
  });
}

function clutchData(story: ClutchStory) {
  const { clutch, season, foreseen, sitting } = story;
  const window = (one: { from: Day; likely: Day; to: Day } | null) =>
    one === null ? null : { ...spanData(one), likely: formatDay(one.likely) };
  return {
    clutch: clutch.number,
    season,
    counted: clutch.counted,
    laid: spanData(story.laid),
    sitting: sitting === null ? null : { ...spanData(sitting.span), inferred: sitting.inferred },
    hatched: spanData(story.hatched),
    fledged: spanData(story.fledged),
    independent: spanData(story.independent),
    over: dayData(story.over),
    foreseen: {
      hatch: window(foreseen.hatch),
      fledge: window(foreseen.fledge),
      independent: spanData(foreseen.independent),
    },
    eggs: story.eggs.map(({ egg, fertility }) => ({
      egg: egg.ref,
      laid: spanData(egg.laid),
      fertility,
      ...eggEnd(egg),
    })),
    chicks: clutch.chicks.map(chickData),
  };
}

function eggEnd({ fate }: Egg) {
  if (fate === null) return { fate: null, cause: null, day: null, chick: null };
  return {
    fate: fate.kind,
    cause: fate.kind === 'hatched' ? null : fate.cause,
    day: formatDay(fate.day),
    chick: fate.kind === 'hatched' ? fate.bird.ref : null,
  };
}

function chickData(bird: Bird) {
  const { fate } = bird;
  return {
    chick: bird.ref,
    id: bird.id,
    ring: bird.ring,
    hatched: spanData(bird.hatched),
    fledged: dayData(bird.fledged?.day ?? null),
    independent: dayData(bird.independent?.day ?? null),
    fate: fate?.kind ?? null,
    cause: fate === null ? null : fate.kind === 'died' ? fate.cause : fate.how,
    day: dayData(fate?.day ?? null),
  };
}

function dayData(day: Day | null): string | null {
  return day === null ? null : formatDay(day);
}

function spanData(span: Span | null) {
  return span === null ? null : { from: formatDay(span.from), to: formatDay(span.to) };
}
