/** What may be told of a room to others, each only where it was asked for. */
export const tellable = ['names', 'rings', 'places', 'notes'] as const;
export type Tellable = (typeof tellable)[number];
