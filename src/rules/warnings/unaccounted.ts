import type { Day } from '../../days.ts';
import { incubation, independence } from '../../room/lives.ts';
import { type Clutch, clutchId } from '../../room/model.ts';
import { count, few, listed, them } from '../../words.ts';
import { askedUntil } from '../agenda/agenda.ts';
import { GIVEN_UP } from '../agenda/state.ts';
import { type Brood, isNeverSeen, mayHoldChicksUntil, profileIn } from '../brood.ts';
import { daysInStore, STORED_SHOWN } from './stored.ts';
import type { Found, View, Warning } from './warning.ts';
import { opening } from './words.ts';

interface Unaccounted extends Found {
  eggs: number;
  young: number;
  clutches: string[];
}

/** Days after the hatch for which the eggs are left to themselves before anybody asks. */
const GRACE = 4;
/** Days after that for which it is said: a bird of which nobody knows whether it lives is asked after for longer. */
const SHOWN = { egg: 30, young: 365 };
/** So many clutches are named. */
const NAMED = 6;

export const unaccounted: Warning<Unaccounted> = {
  kind: 'unaccounted',
  levels: ['note'],
  health: false,
  when: 'eggs or young have no end in the journal though their time is over and the tasks that asked for them are given up',
  over: `they have an end; ${SHOWN.egg} d later, of young a year later. One line for the whole room`,
  explain:
    'Every egg ends hatched, lost or taken, every chick independent, dead or gone; the rates of a season rest on it, and those without an end count as open for ever. A line a clutch is enough: `lost: {clear: all}`, `lost: {missing: 2}`, `independent: all`, pinned with `clutch: N` and dated on the day you know of. `missing` is an honest answer.',
  find: unaccountedIn,
  say: ({ eggs, young, clutches }) => {
    const what = [...(eggs > 0 ? [count(eggs, 'egg')] : []), ...(young > 0 ? [`${young} young`] : [])];
    return {
      text: `${opening(listed(what))} ${eggs + young === 1 ? 'has' : 'have'} no end in the journal long after ${eggs + young === 1 ? 'its' : 'their'} time, in ${listed(few(clutches, NAMED))}. The season’s rates leave them open.`,
      check: `what became of ${them(eggs + young)}: one line a clutch with \`lost\`, \`died\`, \`independent\` or \`gone\``,
    };
  },
};

function unaccountedIn({ broods, day }: View): Unaccounted[] {
  const open = broods.flatMap((brood) => [...openEggs(brood, day), ...openYoung(brood)]);
  const lost = open.filter(({ since, what }) => day >= since && day <= since + SHOWN[what]);
  if (lost.length === 0) return [];
  return [
    {
      level: 'note',
      pair: null,
      bird: null,
      clutch: null,
      date: Math.max(...lost.map(({ since }) => since)),
      eggs: lost.filter(({ what }) => what === 'egg').length,
      young: lost.filter(({ what }) => what === 'young').length,
      clutches: [...new Set(lost.map(({ clutch }) => clutchId(clutch)))],
    },
  ];
}

interface Open {
  what: 'egg' | 'young';
  clutch: Clutch;
  /** The day from which it is unaccounted for. */
  since: Day;
}

/** Eggs in a nest or an incubator long after the hatch, and eggs in store longer than anybody keeps one. */
function openEggs(brood: Brood, day: Day): Open[] {
  const { eggs, stored, term } = brood;
  const asked = isNeverSeen(brood) ? mayHoldChicksUntil(brood) : askedUntil(brood, 'unhatched');
  // Beside young they are left in the nest, and are asked about with them.
  const withYoung = openYoung(brood).map(({ since }) => since);
  const warm = eggs.map((egg): Open => {
    const last = egg.clutch.eggs.at(-1)?.laid.to ?? egg.laid.to;
    const over = term?.to ?? last + incubation(profileIn(brood, egg)).high;
    const since = asked === null ? Math.max(over + GRACE + GIVEN_UP + 1, ...withYoung) : asked + 1;
    return { what: 'egg', clutch: egg.clutch, since };
  });
  const cool = stored.map((egg): Open => {
    const over = STORED_SHOWN + 1 - daysInStore(egg, day);
    return { what: 'egg', clutch: egg.clutch, since: day + over };
  });
  return [...warm, ...cool];
}

function openYoung(brood: Brood): Open[] {
  return brood.young.map((bird): Open => {
    const { hatched, clutch } = bird;
    const age = independence(profileIn(brood, bird)).high;
    return { what: 'young', clutch, since: hatched.to + age + GIVEN_UP + 1 };
  });
}
