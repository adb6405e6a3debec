import { type Day, shortDay } from '../../days.ts';
import { housingOf } from '../../room/lives.ts';
import type { Bird } from '../../room/model.ts';
import { listed } from '../../words.ts';
import { fewNames, quarantineOf } from '../quarantine.ts';
import { type Found, folded, pairWith, type View, type Warning } from './warning.ts';

interface Mixed extends Found {
  birds: string[];
  company: Bird[];
  housing: string | null;
  /** When its days began: those that came together are one line. */
  came: Day | null;
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
  find: (view) =>
    folded(
      view.room.birds.flatMap((bird) => mixed(view, bird) ?? []),
      ({ came, until, housing, pair }) => [came, until, housing, pair],
      (all) => ({
        date: Math.min(...all.map(({ date }) => date)),
        company: [...new Set(all.flatMap(({ company }) => company))],
      }),
    ),
  say: ({ birds, company, housing, until, date }) => ({
    text: `${listed(birds)}: in quarantine until ${shortDay(until)}, and since ${shortDay(date)} ${housing === null ? 'together' : `in ${housing}`} with ${fewNames(company)}. What a new bird carries shows late.`,
    check:
      'part them; if they were together, the days begin anew for all. Ask an avian vet before you shorten it; new birds last, and washed hands',
  }),
};

/** The bird sits with one that did not come with it, and was put to it lately. */
function mixed(view: View, bird: Bird): Mixed | null {
  const quarantine = bird.placeholder ? null : quarantineOf(view.room, bird);
  if (quarantine === null || view.day >= quarantine.until) return null;
  const joined = quarantine.meetings.filter(({ since, to }) => to === null && view.day - since <= SHOWN);
  if (joined.length === 0) return null;
  return {
    level: 'watch',
    pair: pairWith(view, bird)?.id ?? null,
    bird: bird.id,
    clutch: null,
    date: Math.min(...joined.map(({ since }) => since)),
    birds: [bird.id],
    company: joined.map((meeting) => meeting.bird),
    housing: housingOf(bird),
    came: bird.quarantine?.from ?? null,
    until: quarantine.until,
  };
}
