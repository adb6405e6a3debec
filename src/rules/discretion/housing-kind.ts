const KINDS = ['cage', 'flight', 'aviary', 'pen', 'enclosure'] as const;
export type HousingKind = (typeof KINDS)[number];

/** Which kind of housing a name speaks of: `young flight` of a flight; null where it says none. */
export function housingKind(name: string): HousingKind | null {
  const words = name.toLowerCase().match(/\p{L}+/gu) ?? [];
  const found = words.map((word) => KINDS.find((kind) => word === kind || word === PLURALS[kind]));
  return found.findLast((kind) => kind !== undefined) ?? null;
}

const PLURALS: Record<HousingKind, string> = {
  cage: 'cages',
  flight: 'flights',
  aviary: 'aviaries',
  pen: 'pens',
  enclosure: 'enclosures',
};
