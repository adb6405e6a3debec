import type { Day } from '../days.ts';
import { formatDay } from '../days.ts';
import type { Finding, Place } from '../findings/finding.ts';
import { nearest } from '../findings/nearest.ts';
import { grouped } from '../grouped.ts';
import { mentioning } from '../journal/entries.ts';
import type { Located } from '../journal/grammar/values.ts';
import { endsBy, type RoomRecord } from '../journal/record.ts';
import { append } from '../journal/text/append.ts';
import { beforeHatching } from './before-hatching.ts';
import type { Bird, Clutch, Pair } from './model.ts';
import { birdNamed } from './names.ts';
import { nestsOverBroods } from './nests-down.ts';
import { lateRings } from './rings-late.ts';
import type { Fold } from './scene.ts';
import { inOrder } from './sightings.ts';
import { unfitParents } from './unfit-parents.ts';

/**
 * What only shows once all journals are read together: hens in two nests, parents of the wrong sex or of another species,
 * logs that begin before the bird hatched, pedigrees that bite their tail, names that nobody bears.
 */
export function checkRoom(fold: Fold, record: RoomRecord, { day }: { day: Day }): void {
  for (const found of [
    hensInTwoPairs([...fold.pairs.values()], record),
    unfitParents(fold, record, day),
    beforeHatching(fold, record, day),
    ownAncestors(fold),
    nestsOverBroods(fold),
    record.settings.ringing ? lateRings(fold) : [],
    unknownRoutines(fold, record),
    unpinnedParents(fold, record),
    endsBy(record, day) ? missingChicks(fold, record) : [],
  ])
    append(fold.findings, found);
}

/** One hen's clutches in two pairs, one begun while another was being laid or sat on; each with every pair in course. */
function hensInTwoPairs(pairs: readonly Pair[], record: RoomRecord): Finding[] {
  const known = pairs.flatMap(({ clutches }) => clutches).filter(({ hen }) => hen.length === 1);
  const byHen = grouped(known, ({ hen }) => hen[0] as string);
  const findings: Finding[] = [];
  for (const [hen, clutches] of byHen) {
    clutches.sort((a, b) => a.opened - b.opened);
    let inCourse: { pair: Pair; until: Day }[] = [];
    for (const clutch of clutches) {
      const { pair, opened } = clutch;
      inCourse = inCourse.filter(({ until }) => until >= opened);
      const others = new Set(inCourse.map((other) => other.pair).filter((other) => other !== pair));
      for (const other of others) {
        const at = firstSeen(record, pair, opened) ?? pair.at;
        const args = { hen, other: pair.id, pair: other.id, day: formatDay(opened) };
        findings.push({ code: 'hen-in-two-pairs', at, args });
      }
      inCourse.push({ pair, until: lastLaying(clutch) });
    }
  }
  return findings;
}

/** Where the first thing stands that a pair's journal tells of a day or of one behind it. */
function firstSeen({ pairs }: RoomRecord, { at }: Pair, day: Day): Place | null {
  const journals = pairs.filter(({ pair }) => pair.at === at);
  for (const { entry, observation } of inOrder(journals, [], Number.POSITIVE_INFINITY)) {
    if (entry.date >= day) return observation.at;
  }
  return null;
}

/** The last day on which the hen is known to have laid or sat here. */
function lastLaying(clutch: Clutch): Day {
  const laid = clutch.eggs.map((egg) => egg.laid.to);
  const sat = clutch.sittings.flatMap(({ day, by }) => (by === 'hen' || by === 'both' ? [day] : []));
  return Math.max(clutch.opened, ...laid, ...sat);
}

/** Each loop of parents once, at the bird of it that the list names first. */
function ownAncestors(fold: Fold): Finding[] {
  const state = new Map<Bird, 'open' | 'done'>();
  const findings: Finding[] = [];
  for (const start of new Set(fold.birds.values())) {
    if (state.has(start)) continue;
    const path: { bird: Bird; parents: Bird[] }[] = [];
    const enter = (bird: Bird) => {
      state.set(bird, 'open');
      path.push({ bird, parents: parentsIn(fold, bird) });
    };
    enter(start);
    while (path.length > 0) {
      const top = path.at(-1) as { bird: Bird; parents: Bird[] };
      const next = top.parents.pop();
      if (next === undefined) {
        state.set(top.bird, 'done');
        path.pop();
      } else if (state.get(next) === 'open') {
        const loop = path.slice(path.findIndex(({ bird }) => bird === next)).map(({ bird }) => bird);
        findings.push(...loopFinding(loop));
        // One bird may be both parents: the same loop is not told twice.
        top.parents = top.parents.filter((parent) => parent !== next);
      } else if (!state.has(next)) enter(next);
    }
  }
  return findings;
}

function parentsIn(fold: Fold, bird: Bird): Bird[] {
  return [...bird.sire, ...bird.dam].flatMap((name) => birdNamed(fold, name) ?? []);
}

function loopFinding(loop: readonly Bird[]): Finding[] {
  const [at] = [
    ...loop.flatMap(({ listed }) => listed?.at ?? []),
    ...loop.flatMap(({ clutch }) => clutch?.pair.at ?? []),
  ];
  if (at === undefined) return [];
  return [
    { code: 'own-ancestor', at, args: { loop: [...loop, loop[0] as Bird].map(({ id }) => id).join(' ← ') } },
  ];
}

/** Routines marked as done that the room does not have. */
function unknownRoutines(fold: Fold, record: RoomRecord): Finding[] {
  const routines = record.settings.routines.map(({ name }) => name.text);
  const findings: Finding[] = [];
  const said = (names: readonly Located[]) => {
    for (const { text, at } of names) {
      if (!routines.includes(text)) {
        findings.push({
          code: 'unknown-routine',
          at,
          args: { name: text, suggestion: nearest(text, routines) ?? '' },
        });
      }
    }
  };
  for (const journal of record.pairs) {
    if (fold.pairs.get(journal.pair.text)?.at !== journal.pair.at) continue;
    for (const { saw } of mentioning(journal.entries, 'done')) {
      for (const observation of saw) if (observation.key === 'done') said(observation.value);
    }
  }
  for (const entry of record.settings.log) said(entry.done);
  return findings;
}

/** A chick named as parent by its clutch's number, where that number is only counted and not written down. */
function unpinnedParents(fold: Fold, record: RoomRecord): Finding[] {
  const named = [
    ...record.birds.flatMap(({ sire, dam, is }) => [...sire, ...dam, ...(is === null ? [] : [is])]),
    ...record.pairs.flatMap(({ cock, hen }) => [...cock, ...hen]),
  ];
  const pinned = pinnedNumbers(record);
  return named.flatMap(({ text, at }) => {
    const clutch = fold.byRef.get(text)?.clutch ?? null;
    if (clutch === null || clutch.number === 1) return [];
    return pinned(clutch.pair).has(clutch.number)
      ? []
      : [{ code: 'unpinned-parent' as const, at, args: { who: text, number: clutch.number } }];
  });
}

/** The numbers that a pair's journal gives its clutches; each journal is gone through once. */
function pinnedNumbers({ pairs }: RoomRecord): (pair: Pair) => ReadonlySet<number> {
  const journals = new Map([...pairs].reverse().map((journal) => [journal.pair.text, journal]));
  const known = new Map<string, Set<number>>();
  return ({ id }) => {
    const found =
      known.get(id) ??
      new Set([...(journals.get(id)?.entries ?? [])].flatMap(({ clutch }) => clutch?.number ?? []));
    known.set(id, found);
    return found;
  };
}

function missingChicks(fold: Fold, record: RoomRecord): Finding[] {
  return record.birds.flatMap(({ is }) =>
    is === null || fold.byRef.has(is.text)
      ? []
      : [{ code: 'no-such-chick-named' as const, at: is.at, args: { ref: is.text } }],
  );
}
