import { type Day, shortDay } from '../../days.ts';
import { feederOf } from '../../room/lives.ts';
import type { Bird } from '../../room/model.ts';
import { listed } from '../../words.ts';
import { breathesBadly, type Illness, illnessOf } from '../illness.ts';
import { bindingOf } from './egg-binding.ts';
import { type Found, folded, pairWith, type View, type Warning } from './warning.ts';
import { FOR_PEOPLE } from './words.ts';

interface Unwell extends Found {
  birds: string[];
  words: string;
  breathing: boolean;
  treated: Day | null;
}

/** Days after the last line about it for which it is said. */
const SHOWN = 7;
/** A grave sign asks for the vet on its day and the next; after that somebody has acted, or it is an illness. */
const GRAVE = 1;

export const unwell: Warning<Unwell> = {
  kind: 'unwell',
  levels: ['act', 'watch'],
  health: true,
  when: '`unwell`; act where the words tell of a bird on the floor, fluffed, straining, bleeding or breathing hard',
  over: `\`unwell: {BIRD: well again}\`, or the bird died or left; ${SHOWN} d after the last line about it`,
  explain:
    'Dates are kept here; no illness is found, and no remedy named. Birds hide illness until they cannot, so one that is fluffed by day, on the floor, straining or breathing hard needs an avian vet now. Keep it warm, quiet and apart, and write what the vet ordered with `treated`. People can catch some of it: psittacosis spreads with the dust of droppings and can cause a severe pneumonia, other illnesses through unwashed hands. Wash hands, clean damp, wear a mask for dusty work; tell a doctor about the birds when a flu-like illness follows. Write `well again` when it is over.',
  find: (view) =>
    folded(
      view.room.birds.flatMap((bird) => unwellBird(view, bird) ?? []),
      ({ level, pair, date, words, treated }) => [level, pair, date, words, treated],
      (all) => ({ breathing: all.some(({ breathing }) => breathing) }),
    ),
  say({ birds, words, breathing, treated, date }) {
    const vet =
      treated === null ? 'An ill bird hides it as long as it can' : `In treatment since ${shortDay(treated)}`;
    return {
      text: `${listed(birds)}: “${words}” on ${shortDay(date)}. ${vet}${treated === null ? ', so what is seen is late' : ''}.`,
      check: `${treated === null ? 'warm, quiet, apart; does it eat? An avian vet says what it is' : 'whether it gets better; if not, back to the avian vet'}${breathing ? FOR_PEOPLE : ''}`,
    };
  },
};

function unwellBird(view: View, bird: Bird): Unwell | null {
  const illness = illnessOf(bird, view.day);
  if (illness === null || view.day - illness.last > SHOWN || bindingOf(view, bird) !== null) return null;
  const { text: words } = illness.seen.at(-1) as Illness['seen'][number];
  return {
    level: isGrave(illness, view.day) ? 'act' : 'watch',
    pair: (pairWith(view, bird) ?? feederOf(bird))?.id ?? null,
    bird: bird.id,
    clutch: null,
    date: illness.last,
    birds: [bird.id],
    words,
    breathing: illness.seen.some(({ signs }) => breathesBadly(signs)),
    treated: illness.treated,
  };
}

function isGrave({ seen, treated }: Illness, today: Day): boolean {
  return seen.some(
    ({ day, signs }) => signs.length > 0 && today - day <= GRAVE && (treated === null || treated < day),
  );
}
