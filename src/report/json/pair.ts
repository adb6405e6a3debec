import { formatDay } from '../../days.ts';
import { hatchedOn } from '../../room/clock.ts';
import { type Bird, type Egg, howEnded } from '../../room/model.ts';
import type { EggLoss } from '../../rules/incubator/loss.ts';
import type { ClutchStory, PairStory } from '../../rules/season/story.ts';
import { courseData, dayData, spanData } from './course.ts';
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
  return {
    ...courseData(story),
    eggs: story.eggs.map(({ egg, fertility, volume, loss }) => ({
      egg: egg.ref,
      laid: spanData(egg.laid),
      fertility,
      ...eggEnd(egg),
      weights: weightData(egg),
      size: egg.size === null ? null : { length: egg.size.length, breadth: egg.size.breadth, volume },
      loss: loss === null ? null : lossData(loss),
    })),
    chicks: story.chicks.map(({ bird, weighed }) => ({
      ...chickData(bird),
      weights: weightData(bird),
      lastInNest: weighed === null ? null : { ...weighed, day: formatDay(weighed.day) },
    })),
  };
}

function weightData({ weights }: Egg | Bird) {
  return weights.map(({ day, grams }) => ({ date: formatDay(day), grams }));
}

function lossData({ last, warm, fresh, lost, atPip, pip, verdict }: EggLoss) {
  const weighed = { date: formatDay(last.day), grams: last.grams };
  return { weighed, warm, fresh, lost, atPip, pip: formatDay(pip), verdict };
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
    hatched: spanData(hatchedOn(bird)),
    fledged: dayData(bird.fledged?.day ?? null),
    independent: dayData(bird.independent?.day ?? null),
    fate: fate?.kind ?? null,
    cause: howEnded(fate),
    day: dayData(fate?.day ?? null),
  };
}
