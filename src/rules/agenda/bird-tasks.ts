import { type Day, shortDay } from '../../days.ts';
import type { Room } from '../../room/fold.ts';
import { housingOf } from '../../room/lives.ts';
import type { Bird } from '../../room/model.ts';
import type { AgendaItem, TaskWords } from './item.ts';
import { stateOn } from './state.ts';

/** Tasks of single birds, whether or not they are in a pair. */
export function birdTasks(room: Room): AgendaItem[] {
  return room.birds.flatMap((bird) => quarantineEnd(room, bird) ?? []);
}

/** What single birds' tasks mean. */
export const birdTaskWords = {
  'quarantine-end': {
    task: 'quarantine-end',
    say: 'let out of quarantine',
    when: 'arrival or return + the days of quarantine … + 2 d',
    doneBy: '`released`',
    over: 'the bird left; 60 d later. It waits while the bird is unwell',
    explain:
      'New and returned birds stay apart for thirty days at least (common practice), longer when a vet says so, and the days begin anew when another bird joins them. It waits while the bird is unwell.',
  },
} as const satisfies Record<string, TaskWords>;

/** An unwell bird is reckoned well again when nothing was written of it for so many days. */
const UNWELL_FOR = 14;

function quarantineEnd(room: Room, bird: Bird): AgendaItem | null {
  const { quarantine } = bird;
  if (quarantine === null || bird.released !== null || bird.fate !== null) return null;
  if (bird.unwell.some(({ day }) => room.day - day <= UNWELL_FOR)) return null;
  const window = { from: quarantine.until, to: quarantine.until + 2 };
  const state = stateOn(room.day, window, quarantine.until + 60);
  if (state === null) return null;
  return {
    task: 'quarantine-end',
    pair: null,
    bird: bird.id,
    clutch: null,
    who: [bird.id],
    housing: housingOf(bird),
    species: bird.species,
    ...window,
    likely: null,
    state,
    say: birdTaskWords['quarantine-end'].say,
    why: because(quarantine.from, quarantine.until),
    basis: null,
  };
}

function because(arrived: Day, until: Day): string {
  return `arrived ${shortDay(arrived)} + ${until - arrived} d`;
}
