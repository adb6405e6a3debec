import { type Bird, type Egg, refIn } from '../../room/model.ts';
import { capital, count, listed } from '../../words.ts';
import type { Brood } from '../brood.ts';

/** Whom a sentence is about, as this pair's journal names them; young that nobody counted have no name. */
export function names(brood: Brood, some: readonly (Egg | Bird)[]): string {
  const known = some.filter((one) => !('placeholder' in one && one.placeholder));
  return known.length === 0 ? 'the young' : listed(known.map((one) => refIn(brood, one)));
}

/** `1 chick`, `2 chicks`; young that were heard and never counted may be any number. */
export function chicksWords(some: readonly Bird[]): string {
  return some.some(({ placeholder }) => placeholder) ? 'young (not counted)' : count(some.length, 'chick');
}

/** A sentence begins with a capital, unless it begins with the ref of an egg or chick. */
export function opening(text: string): string {
  return /^[ec]\d/.test(text) ? text : capital(text);
}

/** What goes with the check of a bird that breathes badly (NASPHV Compendium 2010: psittacosis spreads by the dust of droppings). */
export const FOR_PEOPLE =
  '; for people: mask, damp cleaning, washed hands, and a word to the doctor about the birds if flu-like illness follows (psittacosis)';
