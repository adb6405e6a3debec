import { left, type Measure } from './measure.ts';

export const hatchOfLaid: Measure = {
  name: 'hatchOfLaid',
  title: 'hatched of laid',
  of: { k: 'hatched', n: 'eggs laid' },
  credit: 'sitter',
  explain:
    'Of all eggs laid, how many hatched, once each egg of the clutch has an end. It needs no candling. Eggs that you took away, sold or gave are left out.',
  judge({ eggs, counted }) {
    const own = left(eggs);
    if (!counted) return { is: 'out', members: own.length };
    if (eggs.some(({ fate }) => fate === null)) return { is: 'open', members: own.length };
    return { is: 'in', k: own.filter(({ fate }) => fate?.kind === 'hatched').length, n: own.length };
  },
};
