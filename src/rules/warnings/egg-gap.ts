import { shortDay } from '../../days.ts';
import { layingInterval } from '../../room/lives.ts';
import { count, daysRange } from '../../words.ts';
import { isHenAway } from '../absences.ts';
import type { Brood } from '../brood.ts';
import { onlyOf } from '../stock/names.ts';
import { bindingOf } from './egg-binding.ts';
import { about, type Found, type View, type Warning } from './warning.ts';

interface Gap extends Found {
  eggs: number;
  laid: number;
  /** It was found then, and may have been laid before. */
  found: boolean;
  next: string;
  due: number;
  days: number;
  low: number;
  usual: number;
}

/** Species that are known to pause in the middle of a clutch, by profile, and for how many days (pajaroscanarios.com). */
const USUAL_GAPS: Record<string, number> = { canary: 3 };

/** Days after the missing egg for which it is said; then the clutch is a small one. */
const SHOWN = 3;

export const eggGap: Warning<Gap> = {
  kind: 'egg-gap',
  levels: ['watch', 'note'],
  health: true,
  when: 'looks on both days, the next egg did not come, the clutch is below its usual size and nobody sits; a note where the species often pauses',
  over: `an egg, sitting, or every egg ended; ${SHOWN} d after the day on which the egg was due`,
  explain:
    'Small perching birds lay an egg every morning, parrots and doves every other (Woodall 1975; common practice). A missed day in the middle of a clutch may be an egg that was eaten or laid elsewhere, and it may be an egg that does not come. So look at the hen: sleek, flying and eating, she is well; fluffed, straining or on the floor she is an emergency for an avian vet. Canaries pause for one to three days without any harm.',
  find: (view) => view.broods.flatMap((brood) => gapIn(brood, view) ?? []),
  say: ({ level, eggs, laid, found, next, due, days, low, usual }) => ({
    text: `${count(eggs, 'egg')}, the last ${found ? 'by' : 'on'} ${shortDay(laid)}; ${next} was due on ${shortDay(due)} and ${days === 1 ? 'did not come' : `has not come for ${days} d`}, and nobody sits. ${
      level === 'note'
        ? `Hens of this species often pause for ${daysRange({ low: 1, high: usual })} in mid-clutch; alone it means nothing.`
        : `Below the usual ${low} it can be an egg that does not come: egg binding.`
    }`,
    check:
      'the hen: sleek, flying and eating? A hen that is fluffed, straining or on the floor needs an avian vet now. Then whether an egg lies on the floor or was eaten',
  }),
};

function gapIn(brood: Brood, view: View): Gap | null {
  const { clutch, pair, profile, where, hatched } = brood;
  const last = clutch?.eggs.at(-1);
  const low = profile?.clutch?.value.low;
  if (clutch === null || last === undefined || low === undefined || where !== 'nest') return null;
  if (!clutch.counted || clutch.eggs.length >= low || hatched.length > 0) return null;
  if (clutch.eggs.every((egg) => egg.fate !== null)) return null;
  if (clutch.sittings.some(({ day, by }) => by !== 'off' && day >= last.laid.from)) return null;
  if (clutch.skipped.some(({ task }) => task === 'next-egg')) return null;
  const due = last.laid.to + layingInterval(profile);
  const looks = pair.looks.filter(({ day, site }) => day >= due && (site ?? clutch.site) === clutch.site);
  const usual = USUAL_GAPS[profile?.id ?? ''] ?? 0;
  if (looks.length === 0 || view.day > due + usual + SHOWN) return null;
  const hen = onlyOf(pair.hen, view.find);
  if (isHenAway(brood) || (hen !== null && bindingOf(view, hen) !== null)) return null;
  const days = Math.max(...looks.map(({ day }) => day)) - due + 1;
  return {
    ...about(brood),
    level: days <= usual ? 'note' : 'watch',
    date: due,
    eggs: clutch.eggs.length,
    laid: last.laid.to,
    found: last.laid.from < last.laid.to,
    next: `e${last.number + 1}`,
    due,
    days,
    low,
    usual,
  };
}
