import { naturallyNamed } from '../../../findings/naturally.ts';
import { grouped } from '../../../grouped.ts';
import type { AgendaItem } from '../../../rules/agenda/item.ts';
import { stated } from '../../../words.ts';
import { type Said, unsaid } from './where.ts';

/** The ways in which a morning can be read. */
export const groupings = ['urgency', 'housing', 'pair'] as const;
export type Grouping = (typeof groupings)[number];

/** Items under one heading, and what the heading says of each of them. */
export interface Group {
  title: string;
  said: Said;
  items: AgendaItem[];
}

/** Items for walking the room: by where they are, or pair by pair; what belongs to none comes last. */
export function groupsBy(by: Exclude<Grouping, 'urgency'>, items: readonly AgendaItem[]): Group[] {
  const groups = grouped(items, (item) => (by === 'housing' ? item.housing : ownerOf(item)));
  return [...groups]
    .sort(([a], [b]) => naturallyNamed(a, b))
    .map(([key, ofGroup]) => (by === 'housing' ? ofHousing(key, ofGroup) : ofPair(key, ofGroup)));
}

const ownerOf = ({ pair, bird }: AgendaItem) => pair ?? bird;

function ofHousing(housing: string | null, items: AgendaItem[]): Group {
  const whose = items.every((item) => ownerOf(item) === null);
  const nowhere = whose ? 'the room' : 'housing not recorded';
  return { title: housing ?? nowhere, said: { ...unsaid, whose, housing: true }, items };
}

/** A pair's heading also says what it is and where, if all its items agree on that. */
function ofPair(id: string | null, items: AgendaItem[]): Group {
  const species = agreed(items.map((item) => item.species));
  const housing = agreed(items.map((item) => item.housing));
  return {
    title: stated([id ?? 'the room', species, housing]),
    said: { whose: true, species: species !== null, housing: housing !== null },
    items,
  };
}

function agreed(values: (string | null)[]): string | null {
  const [first = null, ...others] = new Set(values);
  return others.length === 0 ? first : null;
}
