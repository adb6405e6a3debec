import { fertilityOf } from '../../../room/fertility.ts';
import { reachedCandling } from '../fates.ts';
import { left, type Measure } from './measure.ts';

export const fertility: Measure = {
  name: 'fertility',
  title: 'fertile',
  of: { k: 'fertile', n: 'eggs judged' },
  credit: 'layer',
  explain:
    'Of the eggs that were judged, how many were fertile. A clutch counts once every egg that was still there on its candling day has been judged, by the lamp or by what became of it; else the hatched ones, which nobody doubts, would flatter the rest. An egg broken or thrown out before its candling day is neither.',
  judge({ eggs, counted, day }) {
    const members = left(eggs).length;
    if (!counted) return { is: 'out', members };
    const unknown = eggs.filter((egg) => fertilityOf(egg) === null);
    if (unknown.some(({ fate }) => fate === null)) return { is: 'open', members };
    // Also an egg taken by our hand: if it lay there unjudged, the judged ones are a choice among their clutch.
    if (unknown.some((egg) => reachedCandling(egg, day))) return { is: 'out', members };
    const judged = left(eggs).map(fertilityOf);
    const k = judged.filter((is) => is === 'fertile').length;
    return { is: 'in', k, n: k + judged.filter((is) => is === 'clear').length };
  },
};
