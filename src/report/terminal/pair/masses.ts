import type { Standing } from '../../../rules/growth/weighings.ts';
import type { EggLoss } from '../../../rules/incubator/loss.ts';
import type { EggStory } from '../../../rules/season/story.ts';
import { daysRange } from '../../../words.ts';
import { percentRange } from '../figures.ts';

/** What is known of an egg's size and weight; nothing for most. */
export function eggMasses({ egg, volume, loss }: EggStory): string[] {
  const { size, weights } = egg;
  const [first, last] = [weights[0], weights.at(-1)];
  const measured =
    size === null || volume === null ? [] : [`${size.length} x ${size.breadth} mm, ${volume.toFixed(2)} cm³`];
  if (loss !== null) return [...measured, ...lossParts(loss)];
  if (first === undefined || last === undefined) return measured;
  return [...measured, first === last ? `${first.grams} g` : `${first.grams} → ${last.grams} g`];
}

function lossParts({ last, fresh, lost, atPip, warm, verdict }: EggLoss): string[] {
  const day = `${last.grams} g at day ${Math.round(warm)}`;
  if (fresh === null || lost === null) return [day];
  const sofar = `${day}, ${Math.round(Math.abs(lost) * 100)} % ${lost < 0 ? 'more' : 'less'} than ${fresh.grams.toFixed(2)} g${BY[fresh.by]}`;
  return [
    warm === 0 ? day : sofar,
    ...(atPip === null || verdict === null
      ? []
      : [`${percentRange(atPip.low, atPip.high)} by pipping: ${VERDICTS[verdict]}`]),
  ];
}

/** How the fresh mass is known. */
const BY = { scales: '', size: ' by its size', line: ' by its weights' } as const;

const VERDICTS = {
  fast: 'dries too fast',
  slow: 'dries too slowly',
  'on track': 'on track',
  unsure: 'not sure yet',
} as const;

/** The last weight of a chick in the nest, beside the usual ones. */
export function weightOf({ grams, age, usual }: Standing): string {
  return `${grams} g at ${daysRange(age)} (usual ${usual.low.toFixed(1)}–${usual.high.toFixed(1)} g)`;
}
