import { describe, expect, it } from 'vitest';
import { type FeedingSettings, sensibleFeeding } from '../../src/journal/feeding.ts';

const unsaid: FeedingSettings = { from: null, to: null, every: null, soak: null, sprout: null };
const read = (said: Partial<FeedingSettings>) => {
  const { feeding, problems } = sensibleFeeding({ ...unsaid, ...said });
  return { feeding, codes: problems.map(({ code }) => code) };
};

describe('feeding hours', () => {
  it('may be said in part', () => {
    for (const said of [
      { from: 360, to: 1200 },
      { every: 120 },
      { soak: 720 },
      { from: 360, to: 360, every: 60 },
    ]) {
      expect(read(said)).toEqual({ feeding: { ...unsaid, ...said }, codes: [] });
    }
  });

  it('that end before they begin, or have one end only, count as not said; the rest stands', () => {
    expect(read({ from: 1200, to: 360, every: 120, soak: 600 })).toEqual({
      feeding: { ...unsaid, every: 120, soak: 600 },
      codes: ['feeding-reversed'],
    });
    expect(read({ to: 1200, sprout: 1440 })).toEqual({
      feeding: { ...unsaid, sprout: 1440 },
      codes: ['feeding-half'],
    });
  });

  it('with one end only are told which end was said', () => {
    const said = (hours: Partial<FeedingSettings>) =>
      sensibleFeeding({ ...unsaid, ...hours }).problems[0]?.args;
    expect(said({ from: 360 })).toEqual({ has: 'from' });
    expect(said({ to: 1200 })).toEqual({ has: 'to' });
    expect(said({ from: 1200, to: 390 })).toEqual({ from: '20:00', to: '06:30' });
    expect(said({ from: 360, to: 1200, every: 850 })).toEqual({
      every: '14.17 h',
      from: '06:00',
      to: '20:00',
      between: '14 h',
    });
    expect(said({ soak: 50 * 60 })).toEqual({ key: 'soak', hours: '50 h', most: '48 h', usual: '12 h' });
    expect(said({ sprout: 121 * 60 })).toEqual({
      key: 'sprout',
      hours: '121 h',
      most: '120 h',
      usual: '24 h',
    });
  });

  it('may have one meal, at their end', () => {
    expect(read({ from: 360, to: 1200, every: 840 }).codes).toEqual([]);
    expect(read({ from: 360, to: 1200, every: 841 }).codes).toEqual(['feeding-interval']);
  });

  it('with an interval longer than they are hold, and are a hint', () => {
    const said = { from: 360, to: 1200, every: 1000 };
    expect(read(said)).toEqual({ feeding: { ...unsaid, ...said }, codes: ['feeding-interval'] });
  });
});

it('seed is not soaked for more than two days, nor sprouted for more than five', () => {
  expect(read({ soak: 48 * 60, sprout: 120 * 60 }).codes).toEqual([]);
  expect(read({ soak: 49 * 60, sprout: 121 * 60 })).toEqual({
    feeding: unsaid,
    codes: ['sprout-hours', 'sprout-hours'],
  });
});
