import { describe, expect, it } from 'vitest';
import { hintsText, openingOf, quietText } from '../../../../src/report/terminal/due/opening.ts';
import { day, item, morning, warning } from '../../mornings.ts';

describe('a morning opens with', () => {
  it('its day, its room and how much there is', () => {
    const items = [item({ state: 'late' }), item({}), item({}), item({ state: 'coming' })];
    expect(openingOf(morning({ items, days: 1 }))).toEqual({
      title: 'Sunday 17 May 2026 · the finch room',
      standing: null,
      counts: '1 late · 2 for today · 1 to come in the next 1 day',
    });
  });

  it('a word that it is not today', () => {
    expect(openingOf(morning({ today: day('2026-05-18'), room: null }))).toMatchObject({
      title: 'Sunday 17 May 2026',
      standing: 'as it stands on that day; today is Mon 18 May',
    });
  });
});

describe('a quiet morning', () => {
  it('says when the next work comes', () => {
    const next = item({ state: 'coming', from: day('2026-06-01') });
    expect(quietText(morning({ next }), false)).toEqual([
      'A quiet morning: nothing is late and nothing is due today. Nor is anything in the next 7 days. After that: candle the eggs, LW-1 (Mon 1 Jun, in 15 d).',
    ]);
  });

  it('is not called quiet where something warns or cannot be read', () => {
    expect(quietText(morning({ warnings: [warning({})] }), false)[0]).toMatch(/^Beyond that/);
    expect(quietText(morning(), true)[0]).toMatch(/^Nothing is due as far as the journals can be read/);
  });

  it('is none with work to do', () => {
    expect(quietText(morning({ items: [item({})] }), false)).toEqual([]);
  });
});

it('hints are counted, and where they are read is said', () => {
  expect(hintsText(1)).toBe('1 hint on how something is written: nestlog check shows it');
  expect(hintsText(2)).toMatch(/shows them$/);
});
