import { mayStillHatch, youngFateOf } from '../fates.ts';
import type { Measure } from './measure.ts';

export const independence: Measure = {
  name: 'independence',
  title: 'independent of fledged',
  of: { k: 'independent', n: 'fledged' },
  credit: 'lastFeeder',
  explain:
    'Of the young that fledged, how many came to feed themselves, once none of the clutch depends on anybody any more. One sold or given away before that is neither.',
  judge({ chicks, eggs, day }) {
    const members = chicks.filter((bird) => bird.fledged !== null && youngFateOf(bird) !== 'gone');
    const waiting = chicks.some((bird) => youngFateOf(bird) === 'open');
    if (waiting || eggs.some((egg) => mayStillHatch(egg, day))) {
      return { is: 'open', members: members.length };
    }
    return {
      is: 'in',
      k: members.filter((bird) => youngFateOf(bird) === 'independent').length,
      n: members.length,
    };
  },
};
