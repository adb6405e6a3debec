import type { Bird, Egg } from '../../room/model.ts';
import { type Brood, refIn } from '../brood.ts';

/** `c1`, `c1 and c2`, `c1, c2 and c3`. */
export function listed(names: readonly string[]): string {
  if (names.length < 2) return names.join('');
  return `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
}

/** `1 egg`, `3 eggs`; give the plural where it is not made with an s. */
export function count(n: number, one: string, many = `${one}s`): string {
  return `${n} ${n === 1 ? one : many}`;
}

/** Whom a sentence is about, as this pair's journal names them; young that nobody counted have no name. */
export function names(brood: Brood, some: readonly (Egg | Bird)[]): string {
  const known = some.filter((one) => !('placeholder' in one && one.placeholder));
  return known.length === 0 ? 'the young' : listed(known.map((one) => refIn(brood, one)));
}

/** `11–13 d`. */
export function daysRange({ low, high }: { low: number; high: number }): string {
  return low === high ? `${low} d` : `${low}–${high} d`;
}

/** A sentence begins with a capital, unless it begins with the ref of an egg or chick. */
export function capital(text: string): string {
  if (/^[ec]\d/.test(text)) return text;
  return text.charAt(0).toUpperCase() + text.slice(1);
}
