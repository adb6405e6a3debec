import type { Day } from '../../src/days.ts';
import { codes } from '../../src/findings/codes.ts';
import { type RoomRecord, readRoom, type SourceFile } from '../../src/journal/record.ts';
import type { Morning } from '../../src/report/morning.ts';
import { checkText } from '../../src/report/terminal/check.ts';
import { dueText } from '../../src/report/terminal/due.ts';
import { pairText } from '../../src/report/terminal/pair.ts';
import { seasonText } from '../../src/report/terminal/season.ts';
import { type Room, understanding, understandRoom } from '../../src/room/fold.ts';
import { isDependent } from '../../src/room/lives.ts';
import { type Absence, clutchId, fullRef } from '../../src/room/model.ts';
import { agendaOf } from '../../src/rules/agenda/agenda.ts';
import { broodsOf } from '../../src/rules/brood.ts';
import { learnedDurations } from '../../src/rules/durations.ts';
import { seasonBook } from '../../src/rules/season/season.ts';
import { pairStory } from '../../src/rules/season/story.ts';
import { stockFindings } from '../../src/rules/stock/findings.ts';
import { stockOf } from '../../src/rules/stock/stock.ts';
import { warningsOf } from '../../src/rules/warnings/index.ts';
import { FORBIDDEN } from '../report/hostile.ts';

/** What has to hold in any room, whatever was written; each broken law is a sentence. */
function brokenLaws(room: Room): string[] {
  return [...inTwoPlaces(room), ...eggsWithoutFate(room), ...outOfOrder(room)];
}

/** Nobody dead of a known cause, and nobody who left the room, is here again by a count: such a bird is named. */
export function raisedByCount(record: RoomRecord, clock: { day: Day; today: Day }): string[] {
  const raised: string[] = [];
  const named = new Set<Absence>();
  for (const { sighting, about } of understanding(record, clock, new Set())) {
    const { of, observation } = sighting;
    if (of !== 'pair' || observation.key !== 'back') continue;
    for (const bird of about.flatMap(({ who }) => who)) {
      const last = 'laid' in bird ? undefined : bird.absences.at(-1);
      // A bird of the list comes back by its own log as well, which tells no witness whom it meant.
      if (last === undefined || 'laid' in bird || bird.listed !== null || named.has(last)) continue;
      named.add(last);
      const { fate } = last;
      const why = fate.kind === 'gone' ? 'gone' : (fate.cause ?? 'missing');
      if (observation.value.kind !== 'refs' && why !== 'missing')
        raised.push(`${fullRef(bird)} is back by a count, and was ${why}`);
    }
  }
  return raised;
}

/** An egg or a bird is in the nest that its record names, and in no other. */
export function inTwoPlaces({ pairs, birds }: Room): string[] {
  const eggs = pairs.flatMap(({ clutches }) => clutches.flatMap((clutch) => clutch.eggs));
  const wrongEggs = eggs.filter((egg) => {
    const place = egg.places.at(-1)?.place;
    const there = egg.fate === null && place?.kind === 'nest' ? [place.pair] : [];
    return !sameMembers(
      pairs.filter(({ here }) => here.eggs.has(egg)),
      there,
    );
  });
  const wrongBirds = birds.filter((bird) => {
    const nest = bird.stays.at(-1)?.nest ?? null;
    const there = isDependent(bird) && nest !== null ? [nest] : [];
    return !sameMembers(
      pairs.filter(({ here }) => [...here.young].some((young) => young === bird)),
      there,
    );
  });
  return [...wrongEggs.map(fullRef), ...wrongBirds.map(({ id }) => id)].map(
    (name) => `${name} is not in the one nest it should be in`,
  );
}

/** Eggs count through; every hatched egg is one chick of its clutch, and every chick is one bird of the room. */
export function eggsWithoutFate({ pairs, birds }: Room): string[] {
  return pairs
    .flatMap(({ clutches }) => clutches)
    .filter(({ eggs, chicks }) => {
      const hatched = eggs.flatMap(({ fate }) => (fate?.kind === 'hatched' ? [fate.bird] : []));
      return (
        eggs.some(({ number }, index) => number !== index + 1) ||
        !sameMembers(hatched, chicks) ||
        chicks.some((chick) => birds.filter((bird) => bird === chick).length !== 1)
      );
    })
    .map((clutch) => `${clutchId(clutch)}: eggs and chicks do not add up`);
}

/** Laid, hatched, fledged, independent: in this order, and every span the right way round. */
export function outOfOrder({ birds }: Room): string[] {
  return birds
    .filter(({ egg, hatched, fledged, independent, fate }) => {
      const spans = [egg?.laid, hatched, fledged?.span, independent?.span].filter((span) => span != null);
      return (
        spans.some((span, index) => span.from > span.to || span.to < (spans[index - 1]?.from ?? span.to)) ||
        (fate?.kind === 'died' && fate.span.from > fate.span.to)
      );
    })
    .map(({ id }) => `${id}: something happened before it could`);
}

function sameMembers<T>(some: readonly T[], others: readonly T[]): boolean {
  return some.length === others.length && others.every((one) => some.includes(one));
}

/** All that is read of a room's files, and every page that is made of it, looked through for what must not be. */
export function brokenByReading(files: readonly SourceFile[], day: Day): string[] {
  const record = readRoom(files, { day, today: day });
  const room = understandRoom(record, { day, today: day });
  return [
    ...linesWithoutTrace(record),
    ...misplaced(record, room),
    ...brokenLaws(room),
    ...raisedByCount(record, { day, today: day }),
    ...badPages(record, room),
  ];
}

/** An entry as it is written on a line of its own. */
const ENTRY = /^ *- *\{ *date:/;

/**
 * Lines of a journal's log of which nothing is known afterwards: neither read as an entry, nor named by a finding before
 * the next one begins, nor part of a stretch that a finding began. A line that vanishes so is lost without a word.
 */
function linesWithoutTrace({ pairs, sources, findings }: RoomRecord): string[] {
  return pairs.flatMap(({ file, entries }) => {
    const lines = linesOf(sources.get(file) ?? '');
    const read = new Set([...entries].map(({ at }) => at.line - 1));
    const named = new Set(findings.filter(({ at }) => at.file === file).map(({ at }) => at.line - 1));
    const begins = (index: number) => /^[ \t]*-/.test(lines[index] ?? '-');
    return lines.flatMap((line, index) => {
      if (!ENTRY.test(line) || read.has(index)) return [];
      let from = index;
      while (from > 0 && !named.has(from) && !read.has(from - 1)) from -= 1;
      let to = index + 1;
      while (to < lines.length && !named.has(to) && !begins(to)) to += 1;
      return named.has(from) || named.has(to) ? [] : [`${file}:${index + 1} is lost: ${line}`];
    });
  });
}

/** Findings that point beside the text, so that an editor would mark nothing or the wrong line. */
function misplaced({ sources }: RoomRecord, { findings }: Room): string[] {
  return findings
    .filter(({ code, at }) => {
      const lines = linesOf(sources.get(at.file) ?? '');
      const line = lines[at.line - 1];
      return (
        codes[code] === undefined || line === undefined || at.column < 1 || at.column > [...line].length + 1
      );
    })
    .map(({ code, at }) => `${code} points to ${at.file}:${at.line}:${at.column}, where there is nothing`);
}

const linesOf = (text: string) => text.split(/\r\n|\r|\n/);

/** Every page of the room in words; what is no word of the keeper's and no number shows a slip of ours. */
function badPages(record: RoomRecord, room: Room): string[] {
  const { day } = room;
  const broods = broodsOf(room, learnedDurations(room));
  const items = agendaOf(room, broods, 30);
  const findings = [...room.findings, ...stockFindings(record, room)];
  const morning: Morning = {
    day,
    today: day,
    room: room.settings.room,
    days: 30,
    items,
    warnings: warningsOf(room, broods),
    findings,
    next: null,
  };
  const look = { width: 80, color: false };
  const book = seasonBook(room, { seasons: null, by: null });
  stockOf(room);
  const pages = {
    due: dueText(morning, { ...look, by: 'urgency' }),
    season: seasonText(book, look),
    check: checkText(
      { room: room.settings.room, findings, sources: record.sources, pairs: 1, entries: 1 },
      { ...look, perFile: 20 },
    ),
    ...Object.fromEntries(room.pairs.map((pair) => [pair.id, pairText(pairStory(room, pair), look)])),
  };
  return Object.entries(pages).flatMap(([name, text]) => {
    const slip = /\bundefined\b|\bNaN\b|\[object |Infinity/.exec(text) ?? FORBIDDEN.exec(text);
    return slip === null
      ? []
      : [`the page ${name} says ${JSON.stringify(text.slice(slip.index - 60, slip.index + 40))}`];
  });
}
