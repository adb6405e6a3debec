import { describe, expect, it } from 'vitest';
import { bar, intervalBar, stepPlot } from '../../../../src/report/terminal/season/plots.ts';

describe('a bar', () => {
  it.each([
    [1, '████'],
    [0.5, '██'],
    [0.28, '█▏'],
    [0.001, '▏'],
    [0, ''],
  ])('of %d', (share, expected) => {
    expect(bar(share, 4)).toBe(expected);
  });
});

describe('an interval', () => {
  it.each([
    [{ low: 0.2, rate: 0.5, high: 0.8 }, '··├──●──┤··'],
    [{ low: 0, rate: 0, high: 0.3 }, '●──┤·······'],
    [{ low: 0.7, rate: 1, high: 1 }, '·······├──●'],
    [{ low: 0.5, rate: 0.5, high: 0.5 }, '·····●·····'],
  ])('%o', (interval, expected) => {
    expect(intervalBar(interval, 11)).toBe(expected);
  });
});

describe('a survival curve', () => {
  it('has a column a day and falls where some die', () => {
    const plot = stepPlot(
      [
        { time: 5, surviving: 0.5 },
        { time: 10, surviving: 0 },
      ],
      { to: 10, width: 40, height: 2 },
    );
    expect(plot).toEqual(['100 % █████', ' 50 % ██████████', '  0 % ───────────', '      0         10 d']);
  });

  it('puts several days into a column where the page is narrow', () => {
    const [, , axis] = stepPlot([], { to: 100, width: 27, height: 2 });
    expect(axis).toBe(`  0 % ${'─'.repeat(20)}`);
  });

  it('shows the last survivor', () => {
    expect(stepPlot([{ time: 0, surviving: 0.001 }], { to: 1, width: 20, height: 2 })[1]).toBe(' 50 % ▁▁');
  });
});
