import { describe, expect, it } from 'vitest';
import { line, pair, spell, warned } from './warned.ts';

/** Three eggs, set on 4 March; zebra finches hatch after 12–15 d, so they should pip about the 17th. */
const SET = `
  date: 2026-02-28, checked: {eggs: 0}
  date: 2026-03-01, laid: 1
  date: 2026-03-01, pulled: e1
  date: 2026-03-02, laid: 1
  date: 2026-03-02, pulled: e2
  date: 2026-03-03, laid: 1
  date: 2026-03-03, pulled: e3
  date: 2026-03-04, set: {incubator: all}, weighed: {e1: 1.08, e2: 1.03, e3: 1.10}
`;
const eggs = (more: string) => ({ 'ZF-1': pair('ZF-1', 'zebra finch', `${SET}\n${more}`) });

describe('eggs in an incubator', () => {
  it('that dry too slowly want less humidity, for three days after the weighing', () => {
    const room = eggs('date: 2026-03-10, weighed: {e1: 1.05, e2: 1.00, e3: 1.07}');
    expect(spell(room, 'egg-weight-loss', '2026-03-01', '2026-03-31')).toEqual(['03-10 … 03-13 watch']);
    const { text, check } = line(room, 'egg-weight-loss', '2026-03-10');
    expect(text).toMatch(
      /^e1, e2 and e3 in the incubator, at day 6 of warmth: 4–8 % lost by 17 Mar, about when they pip; 12\.5–17\.5 % is wanted\. They dry too slowly\.$/,
    );
    expect(check).toMatch(
      /^somewhat less humidity; weigh again in three days\. .*the maker’s matter.*avian vet’s$/,
    );
  });

  it('that dry too fast want more, or have a crack', () => {
    const room = eggs('date: 2026-03-10, weighed: {e1: 0.94, e2: 0.90, e3: 0.96}');
    expect(line(room, 'egg-weight-loss', '2026-03-10').check).toMatch(
      /^a cracked shell\? Else somewhat more/,
    );
  });

  it('of which one goes another way are not a matter of humidity', () => {
    const room = eggs('date: 2026-03-10, weighed: {e1: 1.05, e2: 0.88, e3: 1.07}');
    const lines = warned(room, 'egg-weight-loss', '2026-03-10');
    expect(lines.map(({ text }) => text.split(' in the')[0])).toEqual(['e2', 'e1 and e3']);
    for (const { check } of lines) expect(check).toMatch(/^others in the same machine go the other way/);
  });

  it('are not spoken of while on track, nor while the weights cannot tell', () => {
    const track = eggs('date: 2026-03-10, weighed: {e1: 1.005, e2: 0.96, e3: 1.025}');
    expect(warned(track, 'egg-weight-loss', '2026-03-10')).toEqual([]);
    const early = eggs('date: 2026-03-05, weighed: {e1: 1.08, e2: 1.03, e3: 1.10}');
    expect(warned(early, 'egg-weight-loss', '2026-03-05')).toEqual([]);
  });

  it('are no more spoken of when they pip, or on the day on which they should', () => {
    const weighed = 'date: 2026-03-15, weighed: {e1: 1.03, e2: 0.98, e3: 1.05}';
    expect(spell(eggs(weighed), 'egg-weight-loss', '2026-03-01', '2026-03-31')).toEqual([
      '03-15 … 03-16 watch',
    ]);
    const pips = eggs(`${weighed}\n date: 2026-03-16, pipped: [e2, e3]`);
    expect(line(pips, 'egg-weight-loss', '2026-03-16').text).toMatch(
      /^e1 in the incubator, .*, about when it pips; .*\. It dries too slowly\.$/,
    );
  });

  it('that are clear may dry as they like', () => {
    const room = eggs(
      'date: 2026-03-10, weighed: {e1: 1.05, e2: 1.00, e3: 1.07}\ndate: 2026-03-11, candled: {clear: all}',
    );
    expect(warned(room, 'egg-weight-loss', '2026-03-11')).toEqual([]);
  });
});
