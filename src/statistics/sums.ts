/** All the numbers together. */
export function sumOf(numbers: Iterable<number>): number {
  let sum = 0;
  for (const number of numbers) sum += number;
  return sum;
}

/** The sum of a number that each of them has. */
export function sumBy<T>(all: Iterable<T>, of: (one: T) => number): number {
  let sum = 0;
  for (const one of all) sum += of(one);
  return sum;
}

/** The mean of the numbers, of which there is at least one. */
export function meanOf(numbers: readonly number[]): number {
  return sumOf(numbers) / numbers.length;
}
