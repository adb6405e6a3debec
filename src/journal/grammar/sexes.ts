/** The sexes of a pair, with what keepers call them otherwise (common practice); 1.0 and 0.1 count cocks before hens. */
export const sexes = {
  cock: { alsoSaid: ['male', 'm', '♂', '1.0', 'father', 'sire'] },
  hen: { alsoSaid: ['female', 'f', '♀', '0.1', 'mother', 'dam'] },
} as const;

/** The same, of a bird that nobody could tell. */
export const knownOrNot = {
  ...sexes,
  unknown: { alsoSaid: ['?', 'u', 'unsexed', 'not sexed', '0.0.1'] },
} as const;
