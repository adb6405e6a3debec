import { describe, expect, it } from 'vitest';
import { clearEggs } from '../../../src/rules/warnings/clear-eggs.ts';
import { line, pair, spell, warned, waxbills } from './warned.ts';

/** Two clutches of four, candled on their sixth day; the second in April. */
function two(first: string, second: string, more = ''): string {
  return `date: 2026-03-01, laid: 1
    date: 2026-03-02, laid: 1
    date: 2026-03-03, laid: 1
    date: 2026-03-04, laid: 1, sitting
    date: 2026-03-10, candled: {${first}}
    date: 2026-03-20, lost: all
    date: 2026-04-01, clutch: 2, laid: 1
    date: 2026-04-02, laid: 1
    date: 2026-04-03, laid: 1
    date: 2026-04-04, laid: 1, sitting
    date: 2026-04-10, candled: {${second}}
    ${more}`;
}

describe('a run of clear eggs', () => {
  it('is said from the second clutch on, for a fortnight', () => {
    const room = { 'LW-1': waxbills(two('clear: all', 'clear: all')) };
    expect(spell(room, 'clear-eggs', '2026-03-05', '2026-05-20')).toEqual(['04-10 … 04-24 note']);
  });

  // The book alone: fertility 0.8 with a spread of 0.2 between clutches is Beta(2.4, 0.6). The chance that eight of
  // eight are clear is (0.6 · 1.6 · … · 7.6) / (3 · 4 · … · 10) = 1 in 156.
  it('tells the odds and where to look first, and sends to a vet only then', () => {
    const said = line({ 'LW-1': waxbills(two('clear: all', 'clear: all')) }, 'clear-eggs', '2026-04-10');
    let odds = 1;
    for (let i = 0; i < 8; i++) odds *= (3 + i) / (0.6 + i);
    expect(said.text).toBe(
      `All 8 eggs of the last 2 clutches are clear. Where 80 in 100 were to be expected fertile, that happens once in ${Math.round(odds)}.`,
    );
    expect(said.check).toMatch(
      /^first the age of both and whether their sexes are sure.*perches.*diet.*related.*vet/,
    );
  });

  it.each([
    [1, 1, 1, 'The one egg judged of this clutch is clear.'],
    [1, 5, 1, '1 of 5 eggs of this clutch is clear.'],
    [3, 4, 1, '3 of 4 eggs of this clutch are clear.'],
    [2, 2, 2, 'All 2 eggs of the last 2 clutches are clear.'],
  ])('of %i of %i eggs in %i clutches reads as it is said', (clear, judged, clutches, words) => {
    const found = { level: 'note', pair: 'LW-1', bird: null, clutch: 1, date: 0 } as const;
    const { text } = clearEggs.say({ ...found, clear, judged, clutches, chance: 0.04, expected: 0.8 });
    expect(text).toBe(`${words} Where 80 in 100 were to be expected fertile, that happens once in 25.`);
  });

  it('counts what the pair did before: after a good clutch a bad one is rarer', () => {
    const good = line({ 'LW-1': waxbills(two('fertile: all', 'clear: all')) }, 'clear-eggs', '2026-04-10');
    expect(good.text).toMatch(/^All 4 eggs of this clutch are clear\./);
    const odds = Number(/once in (\d+)/.exec(good.text)?.[1]);
    expect(odds).toBeGreaterThan(40);
  });

  it('is nothing where some are clear, as usual', () => {
    const room = {
      'LW-1': waxbills(two('fertile: [e1, e2, e3], clear: e4', 'fertile: [e1, e2], clear: [e3, e4]')),
    };
    expect(warned(room, 'clear-eggs', '2026-04-10')).toEqual([]);
  });

  it('of one clutch is that one alone, where a few of its eggs were fertile', () => {
    const log = two('fertile: all', 'fertile: e1, clear: [e2, e3, e4]');
    const good = pair('LW-2', 'lavender waxbill', two('fertile: all', 'fertile: all'));
    const { text } = line({ 'LW-1': waxbills(log), 'LW-2': good }, 'clear-eggs', '2026-04-10');
    expect(text).toMatch(/^3 of 4 eggs of this clutch are clear\./);
    // Three of four by themselves are no rarity, and a clutch that was all clear before them is not of their run.
    const after = { 'LW-1': waxbills(two('clear: all', 'fertile: e1, clear: [e2, e3, e4]')) };
    expect(warned(after, 'clear-eggs', '2026-04-10')).toEqual([]);
  });

  it('is nothing where the last clutch was fertile throughout', () => {
    const room = { 'LW-1': waxbills(two('clear: all', 'fertile: all')) };
    expect(warned(room, 'clear-eggs', '2026-04-10')).toEqual([]);
  });

  it('goes on over winter, and over a clutch of which nobody knows', () => {
    const spring = two('clear: all', 'clear: all').replaceAll('2026-03', '2025-05');
    expect(line({ 'LW-1': waxbills(spring) }, 'clear-eggs', '2026-04-10').text).toMatch(
      /^All 8 eggs of the last 2 clutches are clear\./,
    );
    const more = `date: 2026-04-20, lost: all
      date: 2026-05-01, clutch: 3, laid: 2
      date: 2026-05-02, sitting
      date: 2026-05-10, lost: {eaten: all}
      date: 2026-05-20, clutch: 4, laid: 1
      date: 2026-05-21, laid: 1, sitting
      date: 2026-05-28, candled: {clear: all}`;
    expect(
      line({ 'LW-1': waxbills(two('clear: all', 'clear: all', more)) }, 'clear-eggs', '2026-05-28').text,
    ).toMatch(/^All 10 eggs of the last 3 clutches are clear\./);
  });

  it('counts no egg that was broken before anybody saw what it was', () => {
    const log = two('clear: all', 'clear: [e1, e2, e3]').replace(
      '04-04, laid: 1, sitting',
      '04-04, laid: 1, sitting\n date: 2026-04-06, lost: {broken: e4}',
    );
    expect(line({ 'LW-1': waxbills(log) }, 'clear-eggs', '2026-04-10').text).toMatch(
      /^All 7 eggs of the last 2 clutches are clear\./,
    );
  });

  it('is said from the day on which the last was told clear, whatever the lamp could not show later', () => {
    const log = two('clear: all', 'clear: all', 'date: 2026-04-14, candled: {unsure: e1}');
    expect(spell({ 'LW-1': waxbills(log) }, 'clear-eggs', '2026-04-05', '2026-05-20')).toEqual([
      '04-10 … 04-24 note',
    ]);
  });

  it('is nothing where the lamp came too early to tell', () => {
    const room = {
      'LW-1': waxbills(
        two('clear: all', '').replace(
          'date: 2026-04-10, candled: {}',
          'date: 2026-04-07, candled: {clear: all}',
        ),
      ),
    };
    expect(warned(room, 'clear-eggs', '2026-04-10')).toEqual([]);
  });

  it('leaves out eggs that were taken away: nobody knows what they would have been', () => {
    const log = two('clear: all', 'clear: all', 'date: 2026-04-10, lost: {removed: [e1, e2]}');
    expect(line({ 'LW-1': waxbills(log) }, 'clear-eggs', '2026-04-10').text).toMatch(
      /^All 6 eggs of the last 2 clutches are clear\./,
    );
  });

  it('begins anew with a new mate', () => {
    const log = two('clear: all', 'clear: all').replace(
      'date: 2026-04-01, clutch: 2',
      'date: 2026-03-25, paired: {cock: LW-25-01}\n date: 2026-04-01, clutch: 2',
    );
    expect(warned({ 'LW-1': waxbills(log) }, 'clear-eggs', '2026-04-10')).toEqual([]);
  });

  it('weighs what the room’s other pairs of the species did', () => {
    const odds = (others: Record<string, string>) => {
      const { text } = line(
        { 'LW-1': waxbills(two('clear: all', 'clear: all')), ...others },
        'clear-eggs',
        '2026-04-10',
      );
      return Number(/once in (\d+)/.exec(text)?.[1]);
    };
    const fertile = two('fertile: all', 'fertile: all');
    expect(odds({ 'LW-2': pair('LW-2', 'lavender waxbill', fertile) })).toBeGreaterThan(odds({}));
    expect(odds({ 'ZF-1': pair('ZF-1', 'zebra finch', fertile) })).toBe(odds({}));
  });
});
