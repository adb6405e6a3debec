import { describe, expect, it } from 'vitest';
import { lineThrough, type Measured } from '../../src/statistics/line.ts';

const exact = (deviation: number, ...points: [x: number, y: number][]): Measured[] =>
  points.map(([x, y]) => ({ x, y, deviation }));

describe('a line through measurements', () => {
  it('goes through two of them, and is as sure as they are', () => {
    const line = lineThrough(exact(0.1, [1, 3], [3, 7]));
    expect(line?.intercept).toBeCloseTo(1, 12);
    expect(line?.slope).toBeCloseTo(2, 12);
    // The slope is half the difference of two readings, the intercept (3 × the first − the second) / 2; s² is 0.01.
    expect(line?.slopeVariance).toBeCloseTo(0.01 * (1 / 4 + 1 / 4), 12);
    expect(line?.interceptVariance).toBeCloseTo(0.01 * (9 / 4 + 1 / 4), 12);
    expect(line?.covariance).toBeCloseTo(0.01 * (-3 / 4 - 1 / 4), 12);
  });

  it('has the residuals of textbook least squares where all are alike', () => {
    // By hand: x̄ = 1, ȳ = 2, Σ(x−x̄)(y−ȳ) = 3, Σ(x−x̄)² = 2.
    expect(lineThrough(exact(1, [0, 0.5], [1, 2], [2, 3.5]))).toMatchObject({ slope: 1.5, intercept: 0.5 });
  });

  it('heeds what was measured well more than what was not', () => {
    const line = lineThrough([...exact(0.01, [0, 0], [1, 1]), { x: 2, y: 5, deviation: 10 }]);
    expect(line?.slope).toBeCloseTo(1, 3);
  });

  it('is less sure where the points scatter more than they should', () => {
    const even = lineThrough(exact(0.01, [0, 0], [1, 1], [2, 2]));
    const uneven = lineThrough(exact(0.01, [0, 0], [1, 1.3], [2, 2]));
    expect(even?.slopeVariance).toBeCloseTo(0.01 ** 2 / 2, 12);
    // χ² of residuals −0.1, 0.2, −0.1 is 0.06 / 0.0001 on one degree of freedom.
    expect(uneven?.slopeVariance).toBeCloseTo((600 * 0.01 ** 2) / 2, 9);
    // Residuals 0.1, −0.1, −0.1, 0.1 about the level line, 0.04 / 0.0001 on two degrees; Σ(x−x̄)² = 5.
    const four = lineThrough(exact(0.01, [0, 1.1], [1, 0.9], [2, 0.9], [3, 1.1]));
    expect(four?.slopeVariance).toBeCloseTo((200 * 0.01 ** 2) / 5, 9);
  });

  it('does not exist through one day', () => {
    expect(lineThrough([])).toBeNull();
    expect(lineThrough(exact(1, [3, 1]))).toBeNull();
    expect(lineThrough(exact(1, [3, 1], [3, 2]))).toBeNull();
  });
});
