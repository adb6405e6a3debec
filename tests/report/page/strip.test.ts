import { h } from 'preact';
import { describe, expect, it } from 'vitest';
import { markupOf } from '../../../src/report/page/document.tsx';
import { Bar, DIFFERENCES, ScaleHead, SHARES, UnseenHead, Whisker } from '../../../src/report/page/strip.tsx';

const bar = (share: number) => markupOf(h(Bar, { share, step: 3 }));
const widthOf = (text: string) => Number(/<rect[^>]* width="([\d.]+)%"/.exec(text)?.[1] ?? 0);

describe('a bar', () => {
  it('is as long as its share of the longest, which has its right edge inside of the cell', () => {
    const longest = widthOf(bar(1));
    expect(longest).toBeGreaterThan(99);
    expect(longest).toBeLessThan(100);
    expect(widthOf(bar(0.5))).toBeCloseTo(longest / 2, 2);
  });

  it('shows a sliver of what is hardly anything, and nothing of nothing', () => {
    expect(widthOf(bar(0.0001))).toBeGreaterThan(0.5);
    expect(bar(0)).not.toContain('<rect');
  });
});

describe('a whisker', () => {
  const dot = (text: string) => Number(/cx="([\d.]+)%"/.exec(text)?.[1]);
  const share = (low: number | null, at: number | null, high: number | null) =>
    markupOf(h(Whisker, { low, at, high }));

  it('has its dot between the ends of its line, all inside the cell', () => {
    const text = share(0, 0.25, 1);
    const [from, to] = [...text.matchAll(/class="line" x1="([\d.]+)%" x2="([\d.]+)%"/g)][0]?.slice(1) ?? [];
    expect(Number(from)).toBeGreaterThan(0);
    expect(Number(to)).toBeLessThan(100);
    expect(dot(text)).toBeCloseTo(Number(from) + (Number(to) - Number(from)) / 4, 1);
  });

  it('is no dot where there is no figure', () => {
    expect(share(null, null, null)).not.toContain('<circle');
  });

  it('of a difference has none in the middle', () => {
    expect(dot(markupOf(h(Whisker, { low: -0.2, at: 0, high: 0.2, scale: DIFFERENCES })))).toBe(50);
  });
});

it('heads say what the lines of a scale stand for, or are only read out', () => {
  expect(markupOf(h(ScaleHead, { scale: SHARES }))).toContain('50 %');
  expect(markupOf(h(UnseenHead, { says: 'drawn' }))).toContain('drawn');
});
