import { type Day, foundWords, shortDay } from '../../days.ts';
import { grouped } from '../../grouped.ts';
import type { Anchor as AnchorName } from '../../journal/routines.ts';
import type { Routine } from '../../journal/settings.ts';
import type { Room } from '../../room/fold.ts';
import { enteredOn, housingOf } from '../../room/lives.ts';
import type { Bird, Pair } from '../../room/model.ts';
import type { Brood } from '../brood.ts';
import { birdsByName } from '../stock/names.ts';
import * as anchors from './anchors.ts';
import type { AgendaItem, TaskWords } from './item.ts';
import { stateOn } from './state.ts';

/** Days for which a routine that was not carried out goes on asking: half as long as other tasks. */
const LAPSES_AFTER = 30;

/** The room's own routines as tasks: of the whole room, of a pair, of a brood or of a bird that arrived. */
export function routineTasks(room: Room, broods: readonly Brood[]): AgendaItem[] {
  const byPair = grouped(broods, ({ pair }) => pair);
  return room.settings.routines.flatMap((routine) => {
    if (routine.after === null) return roomTask(room, routine) ?? [];
    if (routine.after === 'arrived') return birdTasks(room, routine);
    return currentBroods(room, byPair, routine.after).flatMap(
      (brood) => broodTask(room, routine, brood, byPair.get(brood.pair) ?? []) ?? [],
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
  const last = lastOf(doneDays(room, routine, room.pairs));
  const from = last === null ? room.day : last + routine.every;
  const why =
    last === null
      ? `every ${routine.every} d; never done yet`
      : `done ${shortDay(last)} + ${routine.every} d`;
  return item(room, routine, { from, to: from }, why, {});
}

function birdTasks(room: Room, routine: Routine): AgendaItem[] {
  const last = lastOf(doneDays(room, routine, room.pairs));
  const paired = routine.until === 'paired' ? lastPaired(room) : new Map<Bird, Day>();
  return room.birds.flatMap((bird): AgendaItem[] => {
    const came = enteredOn(bird);
    if (came === null || bird.fate !== null) return [];
    // What ends a routine: of a bird only two of the anchors are known.
    const end = routine.until === 'independent' ? bird.independent?.day : paired.get(bird);
    if (end !== undefined && end >= came) return [];
    const about = { bird: bird.id, housing: housingOf(bird), species: bird.species };
    const says = came === bird.arrived ? 'arrived' : 'back';
    const done = last === null || last < came ? null : last;
    const task = counted(room, routine, came, done, `${says} ${shortDay(came)}`, about);
    return task === null ? [] : [task];
  });
}

/** The last day on which each bird was put to a mate. */
function lastPaired({ birds, pairs }: Room): Map<Bird, Day> {
  const find = birdsByName(birds);
  const last = new Map<Bird, Day>();
  for (const { day, what, cock, hen } of pairs.flatMap(({ partings }) => partings)) {
    if (what === 'parted') continue;
    for (const name of [...cock, ...hen]) {
      const bird = find(name);
      if (bird !== null) last.set(bird, Math.max(day, last.get(bird) ?? day));
    }
  }
  return last;
}

/** One brood a pair for what happens to the pair; each brood for what happens to eggs and young. */
function currentBroods(room: Room, byPair: ReadonlyMap<Pair, Brood[]>, after: AnchorName): Brood[] {
  const nestsOf = (pair: Pair) => (byPair.get(pair) ?? []).filter(({ where }) => where === 'nest');
  if (isOfPair(after)) return room.pairs.map((pair) => nestsOf(pair).at(-1) ?? emptyBrood(room, pair));
  return room.pairs.flatMap(nestsOf);
}

/** What happens to the pair, not to its eggs and young. */
function isOfPair(after: AnchorName | null): boolean {
  return after === 'paired' || after === 'parted';
}

function emptyBrood(room: Room, pair: Pair): Brood {
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

/** @param broods all of this pair */
function broodTask(room: Room, routine: Routine, brood: Brood, broods: readonly Brood[]): AgendaItem | null {
  const start = happened(brood, routine.after as AnchorName);
  if (start === null) return null;
  // What happens to the pair goes on beyond a clutch: what was skipped before it began anew was another time.
  const since = isOfPair(routine.after) ? start.day : Number.NEGATIVE_INFINITY;
  if (brood.clutch?.skipped.some(({ task, day }) => task === routine.name.text && day >= since)) return null;
  if (routine.until !== null && (isEnded(brood, routine.until, start.day) || isPast(routine, brood, broods)))
    return null;
  const last = lastOf(doneDays(room, routine, [brood.pair]).filter((day) => day >= start.day));
  return counted(room, routine, start.day, last, start.says, {
    pair: brood.pair.id,
    clutch: isOfPair(routine.after) ? null : (brood.clutch?.number ?? null),
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
  const whole = broods.filter(({ clutch }) => clutch === brood.clutch);
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
      const egg = brood.clutch?.eggs[0];
      return egg === undefined ? null : { day: egg.laid.to, says: `first egg ${foundWords(egg.laid)}` };
    }
    case 'sitting':
      return fromAnchor(anchors.sitting(brood));
    case 'hatched':
      return fromAnchor(anchors.firstHatching(brood));
    case 'fledged':
      return fromAnchor(anchors.firstFledging(brood));
    case 'independent': {
      const days = brood.hatched.flatMap((bird) => (bird.independent === null ? [] : [bird.independent.day]));
      if (days.length === 0 || brood.young.length > 0) return null;
      return { day: Math.max(...days), says: `independent ${shortDay(Math.max(...days))}` };
    }
    case 'arrived':
      return null;
  }
}

function fromAnchor([anchor]: anchors.Anchor[]): { day: Day; says: string } | null {
  return anchor === undefined ? null : { day: anchor.span.to, says: anchor.says };
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

/** The days on which the routine was carried out, in these pairs' journals or the room's log. */
function doneDays(room: Room, { name: { text: name } }: Routine, pairs: readonly Pair[]): Day[] {
  const inRoom = room.settings.log
    .filter(({ done }) => done.some(({ text }) => text === name))
    .map(({ date }) => date);
  const inJournals = pairs.flatMap(({ done }) =>
    done.filter((one) => one.name === name).map(({ day }) => day),
  );
  return [...inRoom, ...inJournals].filter((day) => day <= room.day);
}

/** The last of some days; null where there is none. */
function lastOf(days: readonly Day[]): Day | null {
  return days.length === 0 ? null : days.reduce((last, day) => Math.max(last, day));
}

function item(
  room: Room,
  routine: Routine,
  window: { from: Day; to: Day },
  why: string,
  about: Partial<AgendaItem>,
): AgendaItem | null {
  const state = stateOn(room.day, window, routine.after === null ? null : window.to + LAPSES_AFTER);
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
