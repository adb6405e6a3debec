import { type Day, shortSpan } from '../../days.ts';
import { isFed } from '../../room/left-behind.ts';
import { housingOf } from '../../room/lives.ts';
import { type Chick, fullRef, type Pair } from '../../room/model.ts';
import { count, few, listed } from '../../words.ts';
import { absencesFrom } from '../absences.ts';
import { type Brood, livesOrMayHatch } from '../brood.ts';
import { parentsLeft } from './parents.ts';
import { about, type Found, type Warning } from './warning.ts';

interface YoungAtHatch extends Found {
  independent: string[];
  dependent: number;
  when: string;
  /** With whom they are: `the parents`, or the one that is left. */
  parents: string;
}

/** Days before the hatch window from which it is said, and after the first chick is out. */
const BEFORE = 3;
const AFTER = 4;
/** Young hatched longer ago are kept there on purpose. */
const LATELY = 120;
/** So many are named. */
const NAMED = 6;

export const youngAtHatch: Warning<YoungAtHatch> = {
  kind: 'young-at-hatch',
  levels: ['watch', 'note'],
  health: false,
  when: `young of an earlier clutch live with the pair within ${BEFORE} d of the next hatch`,
  over: `they live elsewhere, or nobody of the new clutch lives or may hatch; ${AFTER} d after the first chick is out. A note where all of them still depend on being fed`,
  explain:
    'Young of the last brood crowd the nest, sleep in it, pull at the lining and beg the food away from chicks just hatched; in some species they are driven hard. Those that feed themselves move out before the hatch (common practice). Those that are still fed stay: do not part young from who feeds them for the sake of eggs.',
  find: ({ day, broods }) => broods.flatMap((brood) => crowdAt(brood, day) ?? []),
  say: ({ independent, dependent, when, parents }) => {
    const who = [...few(independent, NAMED), ...(dependent > 0 ? [`${dependent} still fed`] : [])];
    return {
      text: `Young of an earlier clutch are with ${parents} at the next hatch (${when}): ${listed(who)}. They crowd the nest and beg food away from the new chicks.`,
      check:
        independent.length > 0
          ? `move out those that feed themselves, on an evening without a look into the nest${dependent > 0 ? '; the others stay with who feeds them' : ''}`
          : `who feeds them, and food enough for ${count(dependent, 'young bird')} more; they stay until they feed themselves`,
    };
  },
};

function crowdAt(brood: Brood, day: Day): YoungAtHatch | null {
  const { clutch, hatch, hatched, where } = brood;
  if (clutch === null || where !== 'nest' || !livesOrMayHatch(brood)) return null;
  const hatchings = hatched.flatMap((bird) => (bird.clutch === clutch ? [bird.hatched.to] : []));
  const first = hatchings.length > 0 ? Math.min(...hatchings) : null;
  const span = first === null ? hatch : { from: first, to: first };
  if (span === null || day < span.from - BEFORE || day > (first === null ? span.to : first + AFTER))
    return null;
  const bredBefore = brood.pair.clutches.flatMap(({ chicks, opened }) =>
    opened < clutch.opened ? chicks : [],
  );
  const young = bredBefore.filter((bird) => livesWith(bird, brood.pair, day));
  const parents = parentsLeft(absencesFrom(brood));
  if (young.length === 0 || parents === null) return null;
  const dependent = young.filter((bird) => isFed(bird, day)).length;
  return {
    ...about(brood),
    level: dependent === young.length ? 'note' : 'watch',
    date: first ?? span.from - BEFORE,
    independent: young.filter((bird) => !isFed(bird, day)).map((bird) => bird.ring ?? fullRef(bird)),
    dependent,
    when: shortSpan({ from: span.from, to: span.to }),
    parents,
  };
}

/** A young bird that is out of the nest, in the pair's housing; where nobody wrote of housings, one that it reared itself. */
function livesWith(bird: Chick, pair: Pair, day: Day): boolean {
  if (bird.fate !== null || bird.fledged === null || day - bird.hatched.to > LATELY) return false;
  const housing = housingOf(bird);
  const reared = bird.stays.findLast(({ nest }) => nest !== null)?.nest === pair;
  return housing === pair.housing && (housing !== null || reared);
}
