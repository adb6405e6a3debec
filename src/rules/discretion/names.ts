import type { BirdEntry } from '../../journal/birds.ts';
import type { Entry } from '../../journal/entry.ts';
import type { RoomRecord } from '../../journal/record.ts';
import type { Room } from '../../room/fold.ts';

/** What a name is of. `owner`: other keepers, by whatever the bird list says of them. */
export type NameKind = 'pair' | 'bird' | 'ring' | 'housing' | 'room' | 'owner';

export interface Name {
  kind: NameKind;
  text: string;
}

/** Every name that stands anywhere in the record, also in entries dated later than the day stood on. */
export function namesIn(record: RoomRecord, room: Room): Name[] {
  const names = new Map<string, Name>();
  const add = (kind: NameKind, ...texts: (string | null | undefined)[]) => {
    for (const text of texts) {
      const trimmed = text?.trim() ?? '';
      if (trimmed !== '' && !ORDINARY.test(trimmed)) names.set(`${kind} ${trimmed}`, { kind, text: trimmed });
    }
  };
  const said = (list: readonly { text: string }[]) => list.map(({ text }) => text);
  add('room', record.settings.room);
  for (const { pair, cock, hen, housing, entries } of record.pairs) {
    add('pair', pair.text);
    add('bird', ...said(cock), ...said(hen));
    add('housing', housing?.text);
    for (const entry of entries) inEntry(entry, add);
  }
  for (const { id, ring, sire, dam, origin, owner, is, log } of record.birds) {
    add('bird', id.text, is?.text, ...said(sire), ...said(dam));
    add('ring', ring?.text);
    add('owner', owner?.text, origin?.text, ...properNames(owner?.text), ...properNames(origin?.text));
    for (const entry of log) inEntry(entry, add);
  }
  for (const { id, ring, sire, dam } of room.birds) {
    add('bird', id, ...sire, ...dam);
    add('ring', ring);
  }
  return [...names.values()];
}

/** Words that every keeper uses: they name nobody. */
const ORDINARY = /^(?:cock|hen|both|hand|incubator|all|some|[ec]\d+|(?:\d+\/)?[ec]\d+)$/;

type Add = (kind: NameKind, ...texts: (string | null | undefined)[]) => void;

function inEntry({ saw }: Entry | BirdEntry, add: Add): void {
  for (const observation of saw) {
    switch (observation.key) {
      case 'ringed':
        for (const { code } of observation.value) add('ring', code.text);
        break;
      case 'paired':
      case 'reunited':
        add('housing', observation.value.housing?.text);
        add('bird', observation.value.cock?.text, observation.value.hen?.text);
        break;
      case 'parted':
        add('housing', observation.value.cock?.text, observation.value.hen?.text);
        break;
      case 'moved':
        if (!Array.isArray(observation.value)) add('housing', observation.value.text);
        else for (const { housing } of observation.value) add('housing', housing.text);
        break;
      case 'arrived':
      case 'released':
        add('housing', observation.value?.text);
        break;
      case 'fostered':
      case 'set':
        for (const { place } of observation.value) add('pair', place?.text);
        break;
      default:
    }
  }
}

/**
 * `on loan from Ada of Elmhurst` names `Ada` and `Elmhurst`. The word that begins a longer sentence is a name where the
 * next one is: `Ada Loveday of Elmhurst`.
 */
function properNames(text: string | undefined): string[] {
  const words = text?.match(/\p{L}[\p{L}\p{M}'’]*/gu) ?? [];
  const isProper = (word: string | undefined) =>
    word !== undefined && /^\p{Lu}/u.test(word) && word.length > 2;
  return words.filter(
    (word, index) => isProper(word) && (index > 0 || words.length < 4 || isProper(words[1])),
  );
}
