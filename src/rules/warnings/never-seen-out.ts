import { type Day, shortDay } from '../../days.ts';
import { hatchedOn } from '../../room/clock.ts';
import type { Bird } from '../../room/model.ts';
import { walksOff } from '../../species/walks-off.ts';
import { count } from '../../words.ts';
import { type Brood, profileIn } from '../brood.ts';
import { about, type Found, type Warning } from './warning.ts';
import { names } from './words.ts';

interface NeverSeenOut extends Found {
  who: string;
  many: boolean;
  out: number;
  last: Day;
}

/** Days after the others in which the last of a brood still leaves (common practice). */
const BEHIND = 3;
/** Days for which it is said: once, and no more. */
const SHOWN = 3;

export const neverSeenOut: Warning<NeverSeenOut> = {
  kind: 'never-seen-out',
  levels: ['watch'],
  health: true,
  when: 'some of a brood left the nest, and another was never seen out of it nor dead, three days later and past the usual age',
  over: `\`fledged\`, \`died\`, or any line that tells of it or of a look into the nest since; ${SHOWN} d later`,
  explain:
    'The last of a brood leaves a day or two behind the others (common practice). One that does not may be weak or lame, or held by a thread round its leg, and its parents feed those that call outside. Or it left with the others and nobody wrote it, or it died and was carried off: then one line tells it, and the season counts it. A weak chick is a matter for an avian vet.',
  find: ({ day, broods }) => broods.flatMap((brood) => leftBehind(brood, day) ?? []),
  say: ({ who, many, out, last }) => ({
    text: `${who} ${many ? 'were' : 'was'} never seen out of the nest; ${count(out, 'other')} left it, the last on ${shortDay(last)}.`,
    check: `is ${many ? 'anybody' : 'it'} still in there, weak or held by a thread? Then an avian vet. Else write what became of ${many ? 'them' : 'it'}: \`fledged\`, or \`died: {missing: …}\``,
  }),
};

function leftBehind(brood: Brood, day: Day): NeverSeenOut | null {
  const { hatched, young, where, pair } = brood;
  const out = hatched.flatMap(({ fledged }) => fledged?.day ?? []);
  if (where !== 'nest' || out.length === 0) return null;
  const last = Math.max(...out);
  if (pair.events.some(({ key, day: on }) => key === 'checked' && on > last)) return null;
  const behind = young.filter((bird) => bird.fledged === null && !seenSince(bird, last));
  const usual = behind.map((bird) => lastUsualDay(brood, bird));
  if (behind.length === 0 || usual.includes(null)) return null;
  const date = Math.max(last + BEHIND, ...usual.map((on) => (on as Day) + 1));
  if (day < date || day > date + SHOWN) return null;
  return {
    ...about(brood),
    level: 'watch',
    date,
    who: names(brood, behind),
    many: behind.length > 1,
    out: out.length,
    last,
  };
}

/** The last day on which its kind usually leaves the nest; null where nobody knows, and of one that never was in one. */
function lastUsualDay(brood: Brood, bird: Bird): Day | null {
  const profile = profileIn(brood, bird);
  const hatched = hatchedOn(bird);
  const age = profile?.fledging?.value.high;
  if (hatched === null || age === undefined || bird.placeholder) return null;
  return walksOff(profile) ? null : hatched.to + age;
}

/** Something was told of it after the others had left. */
function seenSince({ weights, crops, fedBy }: Bird, last: Day): boolean {
  return [...weights, ...crops, ...fedBy].some(({ day }) => day > last);
}
