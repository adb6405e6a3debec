import { type Day, shortDay } from '../../days.ts';
import type { Bird } from '../../room/model.ts';
import { refIn } from '../agenda/agenda.ts';
import type { WarningLevel } from '../agenda/item.ts';
import type { Brood } from '../brood.ts';
import { byDay } from './by-day.ts';
import { about, type Found, type Warning } from './warning.ts';

interface Weight extends Found {
  /** What the scales showed of each, in words. */
  seen: string[];
  losing: boolean;
}

/** Days after the last weighing for which it is said. */
const SHOWN = 3;
/** Weighings further apart than this are not compared. */
const APART = 3;
/** A fall of this share is more than the scales or an empty crop explain (common practice: about 10 %). */
const FALL = 0.1;
/** A chick below this share of its siblings is well below them (common practice). */
const BEHIND = 2 / 3;
/** A sibling a day older is ahead by about this much while both grow fast. */
const A_DAY_YOUNGER = 0.75;

export const weight: Warning<Weight> = {
  kind: 'weight',
  levels: ['act', 'watch'],
  health: true,
  when: 'between two weighings at most 3 d apart a chick lost a tenth, or did not gain in the first half of its time in the nest; or it weighs less than two thirds of siblings of its age',
  over: 'the next weighing; 3 d after the last. Act where a nestling lost a tenth',
  explain:
    'Chicks in the nest gain every day until shortly before they leave it, when many lose a little. Look at one that has not gained since the day before in the first half of its time in the nest, or that fell by about a tenth (common practice). A sibling hatched a day later is smaller without being ill, so only chicks of an age are compared, with an allowance for one day. Weigh at the same hour: a crop full of food is a tenth of a small chick. One that is weak as well is a matter for an avian vet.',
  find: ({ day, broods }) => broods.flatMap((brood) => weightIn(brood, day) ?? []),
  say: ({ seen, losing }) => ({
    text: `${seen.join('; ')}. ${losing ? 'A chick that grows gains every day: this one is not fed enough, cold or ill' : 'It may be pushed aside at feeding'}.`,
    check:
      'the crop now and at dusk, and weigh again tomorrow at the same hour; do the parents feed all, is there food enough to rear on? A weak chick: an avian vet',
  }),
};

function weightIn(brood: Brood, today: Day): Weight | null {
  const found = brood.young.flatMap((bird) => {
    const last = weighings(bird).at(-1);
    if (last === undefined || today - last.day > SHOWN) return [];
    const one = lossOf(brood, bird) ?? behindSiblings(brood, bird);
    return one === null ? [] : [{ ...one, day: last.day }];
  });
  if (found.length === 0) return null;
  return {
    ...about(brood),
    level: found.some(({ level }) => level === 'act') ? 'act' : 'watch',
    date: Math.max(...found.map(({ day }) => day)),
    seen: found.map(({ text }) => text),
    losing: found.some(({ losing }) => losing),
  };
}

interface Seen {
  level: WarningLevel;
  text: string;
  losing: boolean;
}

function lossOf(brood: Brood, bird: Bird): Seen | null {
  const [before, now] = weighings(bird).slice(-2);
  if (before === undefined || now === undefined || now.day - before.day > APART) return null;
  const fall = 1 - now.grams / before.grams;
  const leaving = brood.profile?.fledging?.value.low;
  const age = bird.hatched === null ? null : now.day - bird.hatched.to;
  const growing = leaving !== undefined && age !== null && age <= leaving / 2;
  // Differences of tenths must not be lost in the binary fraction: 7.0 to 6.3 g is a tenth.
  if (!(fall >= FALL - 1e-9 || (growing && fall >= 0))) return null;
  const text = `${refIn(brood, bird)} weighed ${before.grams} g on ${shortDay(before.day)} and ${now.grams} g on ${shortDay(now.day)}`;
  return { level: fall >= FALL - 1e-9 && bird.fledged === null ? 'act' : 'watch', text, losing: true };
}

function behindSiblings(brood: Brood, bird: Bird): Seen | null {
  const own = weighings(bird).at(-1);
  if (own === undefined || bird.hatched === null || bird.fledged !== null) return null;
  const hatched = bird.hatched.to;
  const others = brood.young
    .flatMap((sibling) => {
      const grams = weighings(sibling).find(({ day }) => day === own.day)?.grams;
      const older = sibling.hatched === null ? null : hatched - sibling.hatched.to;
      if (sibling === bird || sibling.species !== bird.species) return [];
      if (grams === undefined || older === null || older > 1) return [];
      return [older === 1 ? grams * A_DAY_YOUNGER : grams];
    })
    .sort((a, b) => a - b);
  const middle = others[Math.floor((others.length - 1) / 2)];
  if (middle === undefined || own.grams >= middle * BEHIND) return null;
  const text = `${refIn(brood, bird)} weighed ${own.grams} g on ${shortDay(own.day)}, well below siblings of its age`;
  return { level: 'watch', text, losing: false };
}

/**
 * One weight a day. Where two looks of one day are further apart than a full crop explains, nobody knows which is
 * right and the day is left out.
 */
function weighings({ weights }: Bird): { day: Day; grams: number }[] {
  return byDay(weights).flatMap(({ day, all }) => {
    const grams = all.map((one) => one.grams);
    const [least, most] = [Math.min(...grams), Math.max(...grams)];
    return least <= 0 || most > least * (1 + FALL) ? [] : [{ day, grams: grams.at(-1) as number }];
  });
}
