import { DAYS_A_MONTH } from '../days.ts';
import { familyOf } from './families.ts';
import type { Profile, Range } from './profile.ts';
import { type TraitKey, traits } from './traits.ts';
import { type Problem, rangeText } from './value.ts';

/**
 * A row that is known to be wrong somewhere. `absurd` cannot be; `doubtful` may be, and wants a second look. The
 * first key is blamed, unless only another one is the keeper's own.
 */
interface Rule {
  keys: readonly [TraitKey, ...TraitKey[]];
  level: 'absurd' | 'doubtful';
  reason: string;
  breaks: (profile: Profile) => boolean;
}

/** The maturity of 12 months that data sets carry on as if it had been measured, in days. */
const PLACEHOLDER_MATURITY = [363.468, 364.234];

const table: readonly Rule[] = [
  above(
    'clutch',
    12,
    'no perching bird or parrot lays so many eggs',
    (profile) => familyOf(profile.scientific) !== 'quails',
  ),
  above('clutch', 24, 'no hen covers so many eggs'),
  below('layingInterval', 0.5, 'no hen lays two eggs a day'),
  above('layingInterval', 7, 'no cage bird leaves so many days between two eggs'),
  doubt('layingInterval', 'parrots and doves lay every other day', (profile) => {
    const family = familyOf(profile.scientific);
    return (family === 'parrots' || family === 'doves') && high(profile, 'layingInterval') < 2;
  }),
  {
    keys: ['sittingFrom', 'clutch'],
    level: 'absurd',
    reason: 'the clutch has no such egg',
    breaks: (profile) => low(profile, 'sittingFrom') > high(profile, 'clutch'),
  },

  above('incubation', 40, 'no cage bird sits so long; a decimal point may be lost, or months were counted'),
  below('incubation', 9, 'no bird hatches so early; was it counted from the last egg?'),
  secondSource('incubation', 10.5, 15.5),
  {
    ...before('candling', 'incubation', 'the eggs have hatched by then'),
    breaks: (profile) => high(profile, 'candling') >= low(profile, 'incubation'),
  },
  below('candling', 3, 'there is nothing to see so early, and the eggs are chilled for nothing'),

  leavesTooSoon(
    'absurd',
    'only the chicks of quails leave the nest so early',
    ({ scientific }) => scientific !== '',
  ),
  leavesTooSoon(
    'doubtful',
    'only the chicks of quails leave the nest so early; `scientific` would say that it is one',
    ({ scientific }) => scientific === '',
  ),
  above(
    'fledging',
    60,
    'no small bird stays so long in the nest; a decimal point may be lost',
    (profile) => familyOf(profile.scientific) !== 'parrots' || low(profile, 'adultMass') < 100,
  ),
  above(
    'fledging',
    40,
    'no dove stays so long in the nest; a decimal point may be lost',
    (profile) => familyOf(profile.scientific) === 'doves',
  ),
  secondSource('fledging', 16, 25),
  before('ringAge', 'fledging', 'the young have left the nest by then, and a closed ring no longer goes on'),
  {
    ...before('brooding', 'fledging', 'brooding by night ends before the young leave the nest'),
    breaks: (profile) =>
      high(profile, 'fledging') > 2 && low(profile, 'brooding') > high(profile, 'fledging'),
  },
  above('roostingBack', 60, 'the young are independent long before'),
  {
    keys: ['independence', 'fledging'],
    level: 'absurd',
    reason: 'no bird feeds itself before it leaves the nest',
    breaks: ({ independence, fledging }) =>
      independence !== null &&
      fledging !== null &&
      (independence.value.low < fledging.value.low || independence.value.high < fledging.value.high),
  },
  above('independence', 250, 'no cage bird is fed so long'),
  before('fledging', 'moult', 'the juvenile plumage is moulted out of the nest', ['moult', 'fledging']),
  {
    keys: ['breedingAge', 'independence'],
    level: 'absurd',
    reason: 'it would breed before it feeds itself; breeding age is in months',
    breaks: (profile) => low(profile, 'breedingAge') * DAYS_A_MONTH < high(profile, 'independence'),
  },
  above('breedingAge', 60, 'breeding age is in months, not days'),
  doubt('breedingAge', 'a 12-month class that data sets give in days, not a measured age', (profile) =>
    PLACEHOLDER_MATURITY.some(
      (days) =>
        Math.abs(low(profile, 'breedingAge') * DAYS_A_MONTH - days) < 0.3 ||
        low(profile, 'breedingAge') === days,
    ),
  ),
  above('clutchesPerYear', 8, 'no hen can lay so often and live'),

  above('liveFoodLead', 14, 'live food is offered days before the hatch, not weeks'),
  outside('restart', -30, 90, 'a pair begins anew around the fledging of its young'),
  outside('ringSize', 1.5, 14, 'rings are measured inside, in mm'),
  outside('adultMass', 4, 1500, 'masses are in g'),
  {
    keys: ['hatchMass', 'adultMass'],
    level: 'absurd',
    reason: 'a chick hatches with less than a quarter of its parents’ mass',
    breaks: (profile) => high(profile, 'hatchMass') > low(profile, 'adultMass') / 4,
  },
];

/** What cannot be is said before what is only doubtful. */
const rules = (['absurd', 'doubtful'] as const).flatMap((level) =>
  table.filter((rule) => rule.level === level),
);

/**
 * Known wrong rows: lost decimal points, wrong units, figures that contradict each other. One problem a key.
 *
 * @param own only problems that one of these keys has a part in, and that key is blamed
 */
export function validateProfile(profile: Profile, own: readonly TraitKey[] | null = null): Problem[] {
  const problems: Problem[] = [];
  for (const { keys, level, reason, breaks } of rules) {
    const blamed = own === null ? keys[0] : keys.find((key) => own.includes(key));
    if (blamed === undefined || !breaks(profile)) continue;
    const key = traits[blamed].name;
    if (problems.some(({ path }) => path[0] === key)) continue;
    const args = { key, text: textOf(profile, blamed), unit: traits[blamed].unit, reason };
    problems.push({ path: [key], code: `profile-${level}`, args });
  }
  return problems;
}

/** Whether the value that a problem speaks of must not be used. */
export function absurd(problem: Problem): boolean {
  return problem.code === 'profile-absurd';
}

/** NaN where nothing is known, so that no comparison with it is true. */
function low(profile: Profile, key: TraitKey): number {
  return rangeOf(profile, key)?.low ?? Number.NaN;
}

function high(profile: Profile, key: TraitKey): number {
  return rangeOf(profile, key)?.high ?? Number.NaN;
}

function rangeOf(profile: Profile, key: TraitKey): Range | null {
  const value = profile[key]?.value ?? null;
  return typeof value === 'object' ? value : null;
}

function textOf(profile: Profile, key: TraitKey): string {
  const range = rangeOf(profile, key);
  return range === null ? String(profile[key]?.value ?? '') : rangeText(range);
}

function above(key: TraitKey, limit: number, reason: string, when: Rule['breaks'] = () => true): Rule {
  return {
    keys: [key],
    level: 'absurd',
    reason,
    breaks: (profile) => high(profile, key) > limit && when(profile),
  };
}

function below(key: TraitKey, limit: number, reason: string): Rule {
  return { keys: [key], level: 'absurd', reason, breaks: (profile) => low(profile, key) < limit };
}

function outside(key: TraitKey, least: number, most: number, reason: string): Rule {
  return {
    keys: [key],
    level: 'absurd',
    reason,
    breaks: (profile) => low(profile, key) < least || high(profile, key) > most,
  };
}

function doubt(key: TraitKey, reason: string, breaks: Rule['breaks']): Rule {
  return { keys: [key], level: 'doubtful', reason, breaks };
}

/** Finches, parrots and doves hatch naked and blind; ten days is the least that a dove takes (common practice). */
function leavesTooSoon(level: Rule['level'], reason: string, when: Rule['breaks']): Rule {
  return {
    keys: ['fledging'],
    level,
    reason,
    breaks: (profile) =>
      low(profile, 'fledging') < 8 && familyOf(profile.scientific) !== 'quails' && when(profile),
  };
}

/** `first` ends before `then` begins. */
function before(first: TraitKey, then: TraitKey, reason: string, keys: Rule['keys'] = [first, then]): Rule {
  return { keys, level: 'absurd', reason, breaks: (profile) => high(profile, first) > low(profile, then) };
}

/** Estrildids are so alike that a figure outside these days is more often a slip than a bird. */
function secondSource(key: 'incubation' | 'fledging', least: number, most: number): Rule {
  const reason = `outside ${least}-${most} days in a finch of this family: a second source is wanted beside the first`;
  return doubt(key, reason, (profile) => {
    const outlier = low(profile, key) < least || high(profile, key) > most;
    return familyOf(profile.scientific) === 'estrildids' && outlier && !profile[key]?.source.includes(';');
  });
}
