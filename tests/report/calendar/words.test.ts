import { describe, expect, it } from 'vitest';
import { descriptionOf, summaryOf } from '../../../src/report/calendar/words.ts';
import { day, item } from '../mornings.ts';

const standing = day('2026-05-17');

describe('a calendar’s cell', () => {
  it('begins with whose it is', () => {
    expect(summaryOf(item({}), standing)).toBe('LW-1: candle the eggs');
    expect(summaryOf(item({ pair: null, say: 'worm all flights' }), standing)).toBe(
      'the room: worm all flights',
    );
  });

  it('tells what is cared for without its parents from what is in the nest', () => {
    expect(summaryOf(item({ housing: 'incubator' }), standing)).toBe('LW-1, incubator: candle the eggs');
    expect(summaryOf(item({ housing: 'hand', say: 'ring them' }), standing)).toBe('LW-1, by hand: ring them');
  });

  it('says what is late, and that a forecast is one', () => {
    expect(summaryOf(item({ state: 'late' }), standing)).toBe('late · LW-1: candle the eggs');
    expect(summaryOf(item({ say: 'hatching expected', likely: standing + 3 }), standing)).toBe(
      'LW-1: hatching expected, likely Wed 20 May',
    );
  });
});

describe('an open entry', () => {
  it('says when, why, on what it rests, what ends it, and of which day that knowledge is', () => {
    const hatch = item({
      say: 'hatching expected',
      from: standing + 1,
      likely: standing + 3,
      to: standing + 5,
      state: 'coming',
      basis: '11–13 d, book',
    });
    expect(descriptionOf(hatch, 'every egg has a fate', standing).split('\n')).toEqual([
      'lavender waxbill, clutch 3, flight 2',
      'When: 18–22 May, likely Wed 20 May',
      'Why: sitting since 12 May + 5–6 d',
      'Rests on: 11–13 d, book',
      'Done by: every egg has a fate',
      'As known on Sunday 17 May 2026.',
    ]);
  });

  it('says how late it is, and that no end is foreseen', () => {
    const late = item({ state: 'late', from: standing - 4, to: standing - 2 });
    expect(descriptionOf(late, null, standing)).toContain('When: 13–15 May; 2 d late\n');
    expect(descriptionOf(item({ to: null }), null, standing)).toContain(
      'When: since 17 May; no end is foreseen, it goes on until the journal says so\n',
    );
  });

  it('leaves out what is not known', () => {
    const bare = item({ species: null, clutch: null, housing: null });
    expect(descriptionOf(bare, null, standing)).toMatch(/^When: /);
  });
});
