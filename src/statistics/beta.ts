/**
 * The beta distribution, written out for the same reason as the normal one: a library of it costs more to load than
 * the season takes to reckon. The tests hold it against such a library and against published quantiles.
 */
import type { Interval } from './proportions.ts';

/** A beta distribution by its two shapes, both above 0: what is believed of a proportion. */
export interface Beta {
  a: number;
  b: number;
}

// Lanczos' coefficients for g = 7 (from memory; held against a library in the tests).
const LANCZOS = [
  676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059, 12.507343278686905,
  -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
];

/** Natural logarithm of the gamma function for x > 0; relative error about 1e-14. Source: Lanczos 1964. */
export function logGamma(x: number): number {
  if (x < 0.5) return Math.log(Math.PI / Math.sin(Math.PI * x)) - logGamma(1 - x);
  const shifted = x - 1;
  let sum = 0.99999999999980993;
  LANCZOS.forEach((coefficient, i) => {
    sum += coefficient / (shifted + i + 1);
  });
  const t = shifted + 7.5;
  return 0.5 * Math.log(2 * Math.PI) + (shifted + 0.5) * Math.log(t) - t + Math.log(sum);
}

/** Natural logarithm of the beta function. */
export function logBeta(a: number, b: number): number {
  return logGamma(a) + logGamma(b) - logGamma(a + b);
}

/** Probability that the proportion is at most x: the regularised incomplete beta function. */
export function betaCdf(x: number, { a, b }: Beta): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  const front = Math.exp(a * Math.log(x) + b * Math.log1p(-x) - logBeta(a, b));
  return x < (a + 1) / (a + b + 2)
    ? (front * continuedFraction(x, a, b)) / a
    : 1 - (front * continuedFraction(1 - x, b, a)) / b;
}

const TINY = 1e-300;

/** Source: NIST Digital Library of Mathematical Functions, 8.17.22, by Lentz' method (from memory). */
function continuedFraction(x: number, a: number, b: number): number {
  let c = 1;
  let d = inverse(1 - ((a + b) * x) / (a + 1));
  let value = d;
  for (let m = 1; m <= 1000; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = inverse(1 + even * d);
    c = apart(1 + even / c);
    value *= c * d;
    d = inverse(1 + odd * d);
    c = apart(1 + odd / c);
    value *= c * d;
    if (Math.abs(c * d - 1) < 1e-15) break;
  }
  return value;
}

const apart = (value: number) => (Math.abs(value) < TINY ? TINY : value);
const inverse = (value: number) => 1 / apart(value);

/** The proportion below which it lies with probability p, by halving: exact to the last digits, and never astray. */
export function betaQuantile(p: number, beta: Beta): number {
  let low = 0;
  let high = 1;
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (betaCdf(middle, beta) < p) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

export function betaMean({ a, b }: Beta): number {
  return a / (a + b);
}

/** The middle part of a beta distribution that holds this share of it. */
export function betaInterval(beta: Beta, confidence = 0.95): Interval {
  const tail = (1 - confidence) / 2;
  return { low: betaQuantile(tail, beta), high: betaQuantile(1 - tail, beta) };
}

/** The beta distribution of this mean and variance (0 < variance < mean · (1 − mean)). */
export function betaWithMoments(mean: number, variance: number): Beta {
  const weight = (mean * (1 - mean)) / variance - 1;
  return { a: mean * weight, b: (1 - mean) * weight };
}

/** What is believed of a proportion after k of n. */
export function betaUpdate({ a, b }: Beta, { k, n }: { k: number; n: number }): Beta {
  return { a: a + k, b: b + n - k };
}

/** Probability of at least k of the next n, where the proportion itself is only believed: beta-binomial. */
export function atLeast(k: number, n: number, { a, b }: Beta): number {
  let sum = 0;
  for (let i = Math.max(0, k); i <= n; i++) {
    const ways = -Math.log(n + 1) - logBeta(n - i + 1, i + 1);
    sum += Math.exp(ways + logBeta(a + i, b + n - i) - logBeta(a, b));
  }
  return Math.min(1, sum);
}
