import { type Day, formatDay } from '../../days.ts';
import type { Finding, Place } from '../../findings/finding.ts';
import type { PairJournal } from '../../journal/entry.ts';
import type { Located } from '../../journal/grammar/values.ts';
import { parentsNamed } from '../../journal/parents-named.ts';
import { endsBy, type RoomRecord } from '../../journal/record.ts';
import { hatchedOn } from '../../room/clock.ts';
import type { Room } from '../../room/fold.ts';
import type { Bird } from '../../room/model.ts';
import { birdsByName, type FindBird, onlyOf } from './names.ts';
import { hatchedAfter } from './parents.ts';

const roles = ['sire', 'dam'] as const;
type Role = (typeof roles)[number];

/** What cannot or may not be true of who descends from whom. Each once, at the name that says it. */
export function stockFindings(record: RoomRecord, room: Room): Finding[] {
  const find = birdsByName(room.birds);
  return [
    ...alikeNames(record),
    ...impossibleParents(record, room, find),
    ...(endsBy(record, room.day) ? missingParents(record, find) : []),
  ];
}

/** Names that differ only in capitals or blanks: the spelling that the bird list has is taken for the right one. */
function alikeNames(record: RoomRecord): Finding[] {
  const listed = record.birds.map(({ id }) => id);
  const parents = record.birds.flatMap(({ sire, dam }) => [...sire, ...dam]);
  const findings: Finding[] = [];
  for (const names of [
    [...listed, ...record.pairs.flatMap(parentNames), ...parents],
    record.pairs.map(({ pair }) => pair),
  ]) {
    const spellings = new Map<string, string>();
    const told = new Set<string>();
    for (const { text, at } of names) {
      const other = spellings.get(plain(text));
      if (other === undefined) spellings.set(plain(text), text);
      else if (other !== text && !told.has(text)) {
        told.add(text);
        findings.push({ code: 'alike-names', at, args: { name: text, other } });
      }
    }
  }
  return findings;
}

const plain = (name: string) => name.toLowerCase().replace(/\s+/g, '');

/** Every name that a journal has for its cock or hen. */
function parentNames(journal: PairJournal): Located[] {
  return [...namesOf(journal, 'sire'), ...namesOf(journal, 'dam')];
}

function namesOf(journal: PairJournal, role: Role): Located[] {
  return parentsNamed(journal, role === 'sire' ? 'cock' : 'hen');
}

/** Parents younger than their young, and one bird as both parents: once for all young that the same line makes so. */
function impossibleParents(record: RoomRecord, room: Room, find: FindBird): Finding[] {
  const journals = new Map(record.pairs.map((journal) => [journal.pair.text, journal]));
  const findings: Finding[] = [];
  const told = new Set<string>();
  const tell = (finding: Finding) => {
    const { code, at } = finding;
    const key = `${code} ${at.file} ${at.line} ${at.column}`;
    if (!told.has(key)) findings.push(finding);
    told.add(key);
  };
  for (const bird of room.birds) {
    const places = (role: Role) => placesOf(bird, role, journals);
    for (const role of roles) {
      const parent = onlyOf(bird[role], find);
      if (parent === null || parent === bird || !hatchedAfter(parent, bird)) continue;
      const args = {
        role,
        parent: parent.id,
        bird: bird.id,
        born: formatDay(bird.hatched?.to as Day),
        day: formatDay(hatchedOn(parent)?.from as Day),
      };
      tell({ code: 'parent-younger', at: places(role), args });
    }
    const sire = onlyOf(bird.sire, find);
    const dam = onlyOf(bird.dam, find);
    if (sire !== null && sire === dam) {
      tell({ code: 'one-parent-twice', at: places('dam'), args: { parent: sire.id, bird: bird.id } });
    }
  }
  return findings;
}

/** Where it stands who a bird's sire or dam is. */
function placesOf(bird: Bird, role: Role, journals: ReadonlyMap<string, PairJournal>): Place {
  const journal = journals.get(bird.clutch?.pair.id ?? '');
  const names = [...(bird.listed?.[role] ?? []), ...(journal === undefined ? [] : namesOf(journal, role))];
  const name = names.find(({ text }) => bird[role].includes(text));
  return name?.at ?? bird.listed?.at ?? (bird.clutch?.pair.at as Place);
}

/** Chicks named as parents, or as cock or hen of a pair, that are nowhere in the journals. */
function missingParents(record: RoomRecord, find: FindBird): Finding[] {
  const isMissing = ({ text }: Located) => {
    const bird = find(text);
    return text.includes('/') && (bird === null || (bird.clutch === null && bird.listed === null));
  };
  const missing = (names: readonly Located[], of: string) =>
    names
      .filter(isMissing)
      .map(({ text, at }): Finding => ({ code: 'no-such-parent', at, args: { name: text, of } }));
  return [
    ...record.birds.flatMap(({ id, sire, dam }) => missing([...sire, ...dam], id.text)),
    ...record.pairs.flatMap((journal) => missing(parentNames(journal), journal.pair.text)),
  ];
}
