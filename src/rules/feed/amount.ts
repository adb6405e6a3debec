import { sumBy } from '../../statistics/sums.ts';

/** A quantity that is only roughly known: what is most likely, between the least and the most to reckon with. */
export interface Amount {
  low: number;
  likely: number;
  high: number;
}

export const NOTHING: Amount = { low: 0, likely: 0, high: 0 };

/** From the least to the most, both above 0; the likely value is the one as many times from either (geometric mean). */
export function between(low: number, high: number): Amount {
  return { low, likely: Math.sqrt(low * high), high };
}

/** Exactly so much. */
export function exactly(value: number): Amount {
  return { low: value, likely: value, high: value };
}

/** `likely` with so many times less and more. */
export function about(likely: number, times: number): Amount {
  return { low: likely / times, likely, high: likely * times };
}

/**
 * The product of quantities that are wrong independently of one another. Their spreads are added in quadrature on the
 * scale of logarithms (propagation of independent relative errors), as all of them are hardly ever wrong to the same
 * side; plain products of the ends would make any plan useless.
 */
export function product(...factors: readonly Amount[]): Amount {
  const likely = factors.reduce((value, factor) => value * factor.likely, 1);
  if (likely === 0) return NOTHING;
  const spread = (end: 'low' | 'high') =>
    Math.exp(Math.hypot(...factors.map((factor) => Math.log(factor[end] / factor.likely))));
  return { low: likely / spread('low'), likely, high: likely * spread('high') };
}

/** One over it. */
export function inverse({ low, likely, high }: Amount): Amount {
  return { low: 1 / high, likely: 1 / likely, high: 1 / low };
}

/** The sum of quantities that rest on the same assumptions, and so are wrong to the same side. */
export function sum(amounts: readonly Amount[]): Amount {
  const of = (end: keyof Amount) => sumBy(amounts, (amount) => amount[end]);
  return { low: of('low'), likely: of('likely'), high: of('high') };
}

export function times({ low, likely, high }: Amount, factor: number): Amount {
  return { low: low * factor, likely: likely * factor, high: high * factor };
}
