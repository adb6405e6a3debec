import { youngFateOf } from '../fates.ts';
import { left, type Measure } from './measure.ts';

export const overall: Measure = {
  name: 'overall',
  title: 'independent of laid',
  of: { k: 'independent', n: 'eggs laid' },
  credit: 'layer',
  explain:
    'Of all eggs laid, how many became birds that feed themselves, whoever sat and fed, once every egg and chick of the clutch has an end.',
  judge({ eggs, chicks, counted, chicksCounted }) {
    const sold = chicks.filter((bird) => youngFateOf(bird) === 'gone').length;
    const members = left(eggs).length - sold;
    if (!counted || !chicksCounted) return { is: 'out', members };
    if (eggs.some(({ fate }) => fate === null) || chicks.some((bird) => youngFateOf(bird) === 'open')) {
      return { is: 'open', members };
    }
    return {
      is: 'in',
      k: chicks.filter((bird) => youngFateOf(bird) === 'independent').length,
      n: members,
    };
  },
};
