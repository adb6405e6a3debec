import { describe, expect, it } from 'vitest';
import { normalQuantile } from '../../src/statistics/normal.ts';
import { normalUpdate } from '../../src/statistics/normal-update.ts';

describe('normal–normal updating with known variance', () => {
  // Lee, Bayesian Statistics: an Introduction, 4th ed., section 2.2.2. The mean is printed as 413 there, because the
  // variance was rounded to 55 first.
  it('Ennerdale granophyre: 370 ± 20, measured 421 ± 8', () => {
    const { mean, variance } = normalUpdate({ mean: 370, variance: 20 ** 2 }, [
      { mean: 421, variance: 8 ** 2 },
    ]);
    expect(mean).toBeCloseTo(413.9655172414, 10);
    expect(variance).toBeCloseTo(55.1724137931, 10);
    expect(Math.sqrt(variance)).toBeCloseTo(7.4278135271, 10);
  });

  // The same measurement under another prior; computed with R and mpmath.
  it('Ennerdale granophyre: 400 ± 50', () => {
    const { mean, variance } = normalUpdate({ mean: 400, variance: 50 ** 2 }, [
      { mean: 421, variance: 8 ** 2 },
    ]);
    expect(mean).toBeCloseTo(420.4758190328, 10);
    expect(Math.sqrt(variance)).toBeCloseTo(7.8995250553, 10);
  });

  // Gelman et al., Bayesian Data Analysis, exercise 2.8 (from memory); computed with R and mpmath.
  it('weights of students: N(180, 40²), ten of standard deviation 20 with mean 150', () => {
    const ten = Array.from({ length: 10 }, () => ({ mean: 150, variance: 20 ** 2 }));
    const { mean, variance } = normalUpdate({ mean: 180, variance: 40 ** 2 }, ten);
    const deviation = Math.sqrt(variance);
    expect(mean).toBeCloseTo(150.7317073171, 10);
    expect(deviation).toBeCloseTo(6.2469504755, 10);
    expect(mean + normalQuantile(0.025) * deviation).toBeCloseTo(138.4879093718, 9);
    expect(mean + normalQuantile(0.975) * deviation).toBeCloseTo(162.9755052623, 9);
    expect(Math.sqrt(variance + 20 ** 2)).toBeCloseTo(20.9529088731, 10);
  });

  // Computed with R and mpmath.
  it('an aviary: 14 ± 2 d believed, one clutch of 13 ± 1 d', () => {
    const { mean, variance } = normalUpdate({ mean: 14, variance: 2 ** 2 }, [{ mean: 13, variance: 1 }]);
    expect(mean).toBeCloseTo(13.2, 12);
    expect(Math.sqrt(variance)).toBeCloseTo(0.894427191, 10);
    expect(Math.sqrt(variance + 1)).toBeCloseTo(1.3416407865, 10);
  });
});
