import { fertilityOf } from '../../../room/fertility.ts';
import { fertility } from './fertility.ts';
import { left, type Measure } from './measure.ts';

export const hatchOfFertile: Measure = {
  name: 'hatchOfFertile',
  title: 'hatched of fertile',
  of: { k: 'hatched', n: 'fertile eggs' },
  credit: 'sitter',
  explain:
    'Of the fertile eggs, how many hatched, in the clutches that count for fertility once each of their eggs has an end. It is credited to whoever sat on them last.',
  judge(cohort) {
    const fertile = left(cohort.eggs).filter((egg) => fertilityOf(egg) !== 'clear');
    if (!cohort.counted) return { is: 'out', members: fertile.length };
    if (cohort.eggs.some(({ fate }) => fate === null)) return { is: 'open', members: fertile.length };
    const before = fertility.judge(cohort);
    if (before.is !== 'in') return { is: 'out', members: fertile.length };
    return { is: 'in', k: fertile.filter(({ fate }) => fate?.kind === 'hatched').length, n: before.k };
  },
};
