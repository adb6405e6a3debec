import { type Day, shortDay } from '../../days.ts';
import { housingOf } from '../../room/lives.ts';
import type { Bird } from '../../room/model.ts';
import { listed } from '../../words.ts';
import { fewNames, quarantineOf } from '../quarantine.ts';
import { type Found, pairWith, type View, type Warning } from './warning.ts';

interface Mixed extends Found {
  birds: string[];
  company: Bird[];
  housing: string | null;
  until: Day;
}

/** Days after they came together for which it is said. */
const SHOWN = 7;

export const quarantine: Warning<Mixed> = {
  kind: 'quarantine',
  levels: ['watch'],
  health: true,
  when: 'a bird whose quarantine is not over shares its housing, or its pair, with a bird that did not come with it',
  over: `apart again, \`released\`, or the quarantine is over; ${SHOWN} d later`,
  explain:
    'New and returned birds stay apart for thirty days at least (common practice), because what they carry shows late, and what the room carries may be new to them. When another bird joins, the days begin anew for all of them. An avian vet says whether the time can be shorter or must be longer. Wash hands, and see to the new birds last.',
  find: mixedIn,
  say: ({ birds, company, housing, until, date }) => ({
    text: `${listed(birds)}: in quarantine until ${shortDay(until)}, and since ${shortDay(date)} ${housing === null ? 'together' : `in ${housing}`} with ${fewNames(company)}. What a new bird carries shows late.`,
    check:
      'part them; if they were together, the days begin anew for all. Ask an avian vet before you shorten it; new birds last, and washed hands',
  }),
};

/** One line for birds that came together and sit together. */
function mixedIn(view: View): Mixed[] {
  const lines = new Map<string, Mixed>();
  for (const bird of view.room.birds) {
    const quarantine = bird.placeholder ? null : quarantineOf(view.room, bird);
    if (quarantine === null || view.day >= quarantine.until) continue;
    const joined = quarantine.meetings.filter(({ since, to }) => to === null && view.day - since <= SHOWN);
    if (joined.length === 0) continue;
    const since = Math.min(...joined.map((meeting) => meeting.since));
    const housing = housingOf(bird);
    const pair = pairWith(view, bird);
    const key = JSON.stringify([bird.quarantine?.from, quarantine.until, housing, pair?.id]);
    const line = lines.get(key);
    lines.set(key, {
      level: 'watch',
      pair: pair?.id ?? null,
      bird: line === undefined ? bird.id : null,
      clutch: null,
      date: Math.min(since, line?.date ?? since),
      birds: [...(line?.birds ?? []), bird.id],
      company: [...new Set([...(line?.company ?? []), ...joined.map((meeting) => meeting.bird)])],
      housing,
      until: quarantine.until,
    });
  }
  return [...lines.values()];
}
