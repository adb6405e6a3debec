import { compiled, stdtr } from 'cephes';
import { beforeAll, describe, expect, it } from 'vitest';
import { normalCdf } from '../../src/statistics/normal.ts';
import { studentTail } from '../../src/statistics/student.ts';

beforeAll(() => compiled);

describe("Student's t", () => {
  it("agrees with Moshier's Cephes library for 1 to 200 degrees of freedom", () => {
    for (let degrees = 1; degrees <= 200; degrees++) {
      for (let t = -12; t <= 12; t += 0.5) {
        expect(studentTail(t, degrees)).toBeCloseTo(stdtr(degrees, -t), 13);
      }
    }
  });

  it('with one degree of freedom is the Cauchy distribution', () => {
    for (const t of [-3, 0, 0.5, 8]) {
      expect(studentTail(t, 1)).toBeCloseTo(0.5 - Math.atan(t) / Math.PI, 14);
    }
  });

  it('has longer tails than the normal distribution and comes near it with many degrees of freedom', () => {
    expect(studentTail(3, 8)).toBeGreaterThan(5 * normalCdf(-3));
    expect(studentTail(3, 5000) / normalCdf(-3)).toBeCloseTo(1, 1);
  });

  // Two-sided 5 % and 2 % points, to 3 decimals, as statistical tables print them (from memory).
  it.each([
    [12.706, 1, 0.025],
    [2.306, 8, 0.025],
    [2.896, 8, 0.01],
    [2.228, 10, 0.025],
    [2.042, 30, 0.025],
  ])('%f is the tabled point for %i degrees of freedom at %f', (t, degrees, tail) => {
    expect(studentTail(t, degrees)).toBeCloseTo(tail, 4);
  });
});
