import { mayStillHatch } from '../fates.ts';
import type { Measure } from './measure.ts';

export const fledge: Measure = {
  name: 'fledge',
  title: 'fledged of hatched',
  of: { k: 'fledged', n: 'chicks hatched' },
  credit: 'nestFeeder',
  explain:
    'Of the chicks that hatched, how many left the nest, once none of the clutch is in the nest any more and no egg can hatch. It is credited to whoever fed them. One sold or given away before it fledged is neither.',
  judge({ chicks, eggs, chicksCounted, day }) {
    const members = chicks.filter(({ fledged, fate }) => fledged !== null || fate?.kind !== 'gone');
    const inNest = members.some(({ fledged, fate }) => fledged === null && fate === null);
    if (!chicksCounted) return { is: 'out', members: members.length };
    if (inNest || eggs.some((egg) => mayStillHatch(egg, day))) return { is: 'open', members: members.length };
    return { is: 'in', k: members.filter(({ fledged }) => fledged !== null).length, n: members.length };
  },
};
