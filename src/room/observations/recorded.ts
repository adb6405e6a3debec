import type { Apply } from './apply.ts';

/** Kept with the entry and read from there: it changes nothing in the nest. */
export const recorded: Apply<'courting' | 'photo'> = () => {};
