import { type Day, shortDay } from '../../days.ts';
import { grouped } from '../../grouped.ts';
import { type Bird, refIn } from '../../room/model.ts';
import type { Profile } from '../../species/profile.ts';
import { daysRange, listed } from '../../words.ts';
import { type Brood, profileIn } from '../brood.ts';
import { type Standing, standingOf, type Weighing, weighingsOf } from '../growth/weighings.ts';
import { about, type Found, type Warning } from './warning.ts';

interface Weight extends Found {
  /** What the scales showed of each, in words. */
  seen: string[];
  why: Why;
  /** All that were weighed are below the species' curve: it may be the curve that is wrong for them. */
  allLight: boolean;
}

type Why = 'losing' | 'behind' | 'light';

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

const MEANS: Record<Why, string> = {
  losing: 'A chick that grows gains every day: this one is not fed enough, cold or ill',
  behind: 'It may be pushed aside at feeding',
  light: 'Too light for its age it may be fed too little, cold or ill',
};

export const weight: Warning<Weight> = {
  kind: 'weight',
  levels: ['act', 'watch'],
  health: true,
  when: `between two weighings at most ${APART} d apart a chick lost a tenth, or did not gain in the first half of its time in the nest; or it weighs less than two thirds of siblings of its age; or a nestling weighs less than the species’ growth curve has at its age`,
  over: `the next weighing; ${SHOWN} d after the last. Act where a nestling lost a tenth`,
  explain:
    'Chicks in the nest gain every day until shortly before they leave it, when many lose a little. Look at one that has not gained since the day before in the first half of its time in the nest, or that fell by about a tenth (common practice). A sibling hatched a day later is smaller without being ill, so only chicks of an age are compared, with an allowance for one day. The curve of the species is made of its mass at hatching, its adult mass and its age at fledging, with a wide band; a strain smaller than the profile’s adult mass stays below it in good health. Weigh at the same hour: a crop full of food is a tenth of a small chick. One that is weak as well is a matter for an avian vet.',
  find: ({ day, broods }) => broods.flatMap((brood) => weightIn(brood, day) ?? []),
  say: ({ seen, why, allLight }) => ({
    text: `${seen.join('; ')}. ${allLight ? 'All that were weighed are light: the brood is short of food or warmth, or your birds are smaller than the profile’s adult mass' : MEANS[why]}.`,
    check:
      'the crop now and at dusk, and weigh again tomorrow at the same hour; who feeds them, do they feed all, is there food enough to rear on, is it warm? A weak chick: an avian vet',
  }),
};

function weightIn(brood: Brood, today: Day): Weight | null {
  const weighed = brood.young.flatMap((bird) => {
    const profile = profileIn(brood, bird);
    const weights = weighingsOf(bird, profile);
    const last = weights.at(-1);
    return last === undefined ? [] : [{ bird, profile, weights, last }];
  });
  const recent = weighed.filter(({ last }) => today - last.day <= SHOWN);
  const found = recent.flatMap((one) => {
    const seen = lossOf(brood, one) ?? behindSiblings(brood, one, weighed) ?? belowCurve(brood, one);
    return seen === null ? [] : [{ ...seen, day: one.last.day }];
  });
  if (found.length === 0) return null;
  const whys = found.map(({ why }) => why);
  return {
    ...about(brood),
    level: found.some(({ grave }) => grave) ? 'act' : 'watch',
    date: Math.max(...found.map(({ day }) => day)),
    seen: together(found),
    why: whys.includes('losing') ? 'losing' : whys.includes('behind') ? 'behind' : 'light',
    allLight: recent.length > 1 && found.length === recent.length && whys.every((why) => why === 'light'),
  };
}

interface WeighedBird {
  bird: Bird;
  profile: Profile | null;
  weights: Weighing[];
  last: Weighing;
}

interface Seen {
  /** A nestling that lost a tenth. */
  grave: boolean;
  /** Whom it is about, and what is said of it behind its name. */
  who: string;
  text: string;
  why: Why;
}

/** Of several of which the same is said, one phrase. */
function together(found: readonly Seen[]): string[] {
  const said = grouped(found, ({ text }) => text);
  return [...said].map(([text, some]) => `${listed(some.map(({ who }) => who))} ${text}`);
}

function lossOf(brood: Brood, { bird, profile, weights }: WeighedBird): Seen | null {
  const [before, now] = weights.slice(-2);
  if (before === undefined || now === undefined || now.day - before.day > APART) return null;
  const fall = 1 - now.grams / before.grams;
  const leaving = profile?.fledging?.value.low;
  const age = bird.hatched === null ? null : now.day - bird.hatched.to;
  const growing = leaving !== undefined && age !== null && age <= leaving / 2;
  // Differences of tenths must not be lost in the binary fraction: 7.0 to 6.3 g is a tenth.
  const fell = fall >= FALL - 1e-9;
  if (!fell && !(growing && fall >= 0)) return null;
  const text = `weighed ${before.grams} g on ${shortDay(before.day)} and ${now.grams} g on ${shortDay(now.day)}`;
  return { grave: fell && bird.fledged === null, who: refIn(brood, bird), text, why: 'losing' };
}

function behindSiblings(brood: Brood, own: WeighedBird, weighed: readonly WeighedBird[]): Seen | null {
  const { bird, last } = own;
  if (bird.hatched === null || bird.fledged !== null) return null;
  const hatched = bird.hatched.to;
  const others = weighed
    .flatMap(({ bird: sibling, weights }) => {
      const grams = weights.find(({ day }) => day === last.day)?.grams;
      const older = sibling.hatched === null ? null : hatched - sibling.hatched.to;
      if (sibling === bird || sibling.species !== bird.species) return [];
      if (grams === undefined || older === null || older > 1) return [];
      return [older === 1 ? grams * A_DAY_YOUNGER : grams];
    })
    .sort((a, b) => a - b);
  const middle = others[Math.floor((others.length - 1) / 2)];
  if (middle === undefined || last.grams >= middle * BEHIND) return null;
  const text = `weighed ${last.grams} g on ${shortDay(last.day)}, well below siblings of its age`;
  return { grave: false, who: refIn(brood, bird), text, why: 'behind' };
}

function belowCurve(brood: Brood, { bird, profile, last }: WeighedBird): Seen | null {
  const standing = standingOf(bird, profile, last);
  if (standing === null || last.grams >= standing.usual.low) return null;
  const text = `weighed ${last.grams} g on ${shortDay(last.day)}, where ${usually(standing)}`;
  return { grave: false, who: refIn(brood, bird), text, why: 'light' };
}

/** `2.9–5.8 g is usual at 6 d`. */
function usually({ age, usual }: Standing): string {
  return `${usual.low.toFixed(1)}–${usual.high.toFixed(1)} g is usual at ${daysRange(age)}`;
}
