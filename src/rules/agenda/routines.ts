import { type Day, foundWords, shortDay } from '../../days.ts';
import type { Routine } from '../../journal/settings.ts';
import type { Room } from '../../room/fold.ts';
import { enteredOn, housingOf } from '../../room/lives.ts';
import type { Bird } from '../../room/model.ts';
import type { Brood } from '../brood.ts';
import { birdsByName } from '../stock/names.ts';
import * as anchors from './anchors.ts';
import type { AgendaItem, TaskWords } from './item.ts';
import { stateOn } from './state.ts';

type AnchorName = NonNullable<Routine['after']>;

/** Long enough to be seen, not long enough to nag through a winter. */
const GIVEN_UP = 30;

/** The room's own routines as tasks: of the whole room, of a pair, of a brood or of a bird that arrived. */
export function routineTasks(room: Room, broods: readonly Brood[]): AgendaItem[] {
  return room.settings.routines.flatMap((routine) => {
    if (routine.after === null) return roomTask(room, routine) ?? [];
    if (routine.after === 'arrived') return room.birds.flatMap((bird) => birdTask(room, routine, bird) ?? []);
    return currentBroods(room, broods, routine.after).flatMap(
      (brood) => broodTask(room, routine, brood, broods) ?? [],
    );
  });
}

/** A routine of the room in the words of a task. */
export function routineWords({ name, after, days, every, until, say }: Routine): TaskWords {
  const again = every === null ? '' : `, again every ${every} d`;
  return {
    task: name.text,
    say,
    when: after === null ? `every ${every} d` : `${after} + ${days} d${again}`,
    doneBy: `\`done: ${name.text}\``,
    over:
      until === null
        ? 'a month later, unless it comes again'
        : `once \`${until}\` is recorded${isOfBrood({ after, until }) ? ', or nobody of the brood is left' : ''}`,
    explain: 'A routine of this room, from nestlog.yaml.',
  };
}

/** `every` without `after`: due at once, then counted from the last `done` in any journal or the room's log. */
function roomTask(room: Room, routine: Routine): AgendaItem | null {
  if (routine.every === null) return null;
  const last = lastDone(room, routine, null);
  const from = last === null ? room.day : last + routine.every;
  const why =
    last === null
      ? `every ${routine.every} d; never done yet`
      : `done ${shortDay(last)} + ${routine.every} d`;
  return item(room, routine, { from, to: from }, why, {});
}

function birdTask(room: Room, routine: Routine, bird: Bird): AgendaItem | null {
  const came = enteredOn(bird);
  if (came === null || bird.fate !== null) return null;
  if (isOver(room, routine.until, bird, came)) return null;
  const last = lastDone(room, routine, null, came);
  const about = { bird: bird.id, housing: housingOf(bird), species: bird.species };
  const says = came === bird.arrived ? 'arrived' : 'back';
  return counted(room, routine, came, last, `${says} ${shortDay(came)}`, about);
}

/** Whether what ends a routine has happened to a bird since it came; of a bird only two of the anchors are known. */
function isOver(room: Room, until: Routine['until'], bird: Bird, since: Day): boolean {
  if (until === 'independent') return bird.independent !== null && bird.independent.day >= since;
  if (until !== 'paired') return false;
  const find = birdsByName(room.birds);
  return room.pairs.some((pair) =>
    pair.partings.some(
      ({ day, what, cock, hen }) =>
        day >= since && what !== 'parted' && [...cock, ...hen].some((name) => find(name) === bird),
    ),
  );
}

/** One brood a pair for what happens to the pair; each brood for what happens to eggs and young. */
function currentBroods(room: Room, broods: readonly Brood[], after: AnchorName): Brood[] {
  const nests = broods.filter((brood) => brood.where === 'nest');
  // Guests alone are no laying of this pair.
  if (after === 'laid') return nests.filter((brood) => brood.clutch !== null);
  if (after !== 'paired' && after !== 'parted') return nests;
  return room.pairs.map((pair) => {
    const last = nests.findLast((brood) => brood.pair === pair);
    return last ?? emptyBrood(room, pair);
  });
}

function emptyBrood(room: Room, pair: Brood['pair']): Brood {
  return {
    room,
    pair,
    clutch: null,
    profile: pair.profile,
    where: 'nest',
    housing: pair.housing,
    eggs: [],
    stored: [],
    young: [],
    hatched: [],
    sitting: null,
    clocks: [],
    waiting: [],
    hatch: null,
    term: null,
    fledge: null,
  };
}

function broodTask(room: Room, routine: Routine, brood: Brood, broods: readonly Brood[]): AgendaItem | null {
  if (brood.clutch?.skipped.some(({ task }) => task === routine.name.text)) return null;
  const start = happened(brood, routine.after as AnchorName);
  if (start === null) return null;
  if (routine.until !== null && (isEnded(brood, routine.until, start.day) || isPast(routine, brood, broods)))
    return null;
  const last = lastDone(room, routine, brood.pair, start.day);
  return counted(room, routine, start.day, last, start.says, {
    pair: brood.pair.id,
    clutch: routine.after === 'paired' || routine.after === 'parted' ? null : (brood.clutch?.number ?? null),
    housing: brood.housing,
    species: brood.profile?.species ?? brood.pair.species,
  });
}

/** Whether what the routine lasts until has happened; of eggs, those of any later clutch count too. */
function isEnded(brood: Brood, until: AnchorName, since: Day): boolean {
  if (until === 'laid')
    return brood.pair.clutches.some(({ eggs }) => eggs.some(({ laid }) => laid.to >= since));
  const end = happened(brood, until);
  return end !== null && end.day >= since;
}

/** What can only happen to eggs and young. */
const ofBrood: readonly AnchorName[] = ['sitting', 'hatched', 'fledged', 'independent'];

/** Whether it lasts from one thing to another in the course of a brood. */
function isOfBrood({ after, until }: Pick<Routine, 'after' | 'until'>): boolean {
  const begins = after === 'laid' || ofBrood.includes(after as AnchorName);
  return begins && ofBrood.includes(until as AnchorName);
}

/** Whether it waits for what can no longer happen: of the brood that it began with nobody is left. */
function isPast(routine: Routine, brood: Brood, broods: readonly Brood[]): boolean {
  if (!isOfBrood(routine)) return false;
  const whole = broods.filter(({ pair, clutch }) => pair === brood.pair && clutch === brood.clutch);
  return whole.every(({ eggs, stored, young }) => eggs.length + stored.length + young.length === 0);
}

/** The latest day on which it happened to this pair or brood. */
function happened(brood: Brood, what: AnchorName): { day: Day; says: string } | null {
  const { pair } = brood;
  const last = pair.partings.at(-1);
  switch (what) {
    case 'paired': {
      if (last === undefined || last.what === 'parted') return null;
      return { day: last.day, says: `${last.what} ${shortDay(last.day)}` };
    }
    case 'parted':
      return last?.what === 'parted' ? { day: last.day, says: `parted ${shortDay(last.day)}` } : null;
    case 'laid': {
      const egg =
        brood.clutch?.eggs[0] ?? pair.clutches.findLast(({ opened }) => opened >= (last?.day ?? 0))?.eggs[0];
      return egg === undefined ? null : { day: egg.laid.to, says: `first egg ${foundWords(egg.laid)}` };
    }
    case 'sitting':
      return fromAnchor(anchors.sitting(brood), 'to');
    case 'hatched':
      return fromAnchor(anchors.firstHatching(brood), 'to');
    case 'fledged':
      return fromAnchor(anchors.firstFledging(brood), 'to');
    case 'independent': {
      const days = brood.hatched.flatMap((bird) => (bird.independent === null ? [] : [bird.independent.day]));
      if (days.length === 0 || brood.young.length > 0) return null;
      return { day: Math.max(...days), says: `independent ${shortDay(Math.max(...days))}` };
    }
    case 'arrived':
      return null;
  }
}

function fromAnchor([anchor]: anchors.Anchor[], edge: 'from' | 'to'): { day: Day; says: string } | null {
  return anchor === undefined ? null : { day: anchor.span[edge], says: anchor.says };
}

/** Due so many days after its start, and again every so many days after it was done. */
function counted(
  room: Room,
  routine: Routine,
  start: Day,
  last: Day | null,
  says: string,
  about: Partial<AgendaItem>,
): AgendaItem | null {
  if (last === null) {
    const from = start + routine.days;
    return item(room, routine, { from, to: from }, `${says} + ${routine.days} d`, about);
  }
  if (routine.every === null) return null;
  const from = last + routine.every;
  return item(
    room,
    routine,
    { from, to: from },
    `done ${shortDay(last)} + ${routine.every} d; ${says}`,
    about,
  );
}

/** The last day on which the routine was carried out, in this pair's journal or the room's log. */
function lastDone(
  room: Room,
  routine: Routine,
  pair: Brood['pair'] | null,
  since = Number.NEGATIVE_INFINITY,
): Day | null {
  const name = routine.name.text;
  const inRoom = room.settings.log
    .filter((entry) => entry.done.some(({ text }) => text === name))
    .map(({ date }) => date);
  const journals = pair === null ? room.pairs : [pair];
  const inJournals = journals.flatMap(({ done }) =>
    done.filter((one) => one.name === name).map(({ day }) => day),
  );
  const days = [...inRoom, ...inJournals].filter((day) => day >= since && day <= room.day);
  return days.length === 0 ? null : Math.max(...days);
}

function item(
  room: Room,
  routine: Routine,
  window: { from: Day; to: Day },
  why: string,
  about: Partial<AgendaItem>,
): AgendaItem | null {
  const state = stateOn(room.day, window, routine.after === null ? null : window.to + GIVEN_UP);
  if (state === null) return null;
  return {
    task: routine.name.text,
    pair: null,
    bird: null,
    clutch: null,
    who: null,
    housing: null,
    species: null,
    ...window,
    likely: null,
    state,
    say: routine.say,
    why,
    basis: null,
    apart: null,
    ...about,
  };
}
