import { describe, expect, it } from 'vitest';
import { formatDay } from '../../../src/days.ts';
import { type PairStory, pairStory } from '../../../src/rules/season/story.ts';
import { type Files, room } from '../../rooms.ts';
import { FOUR, pair, short, waxbills } from './rooms.ts';

function story(files: Files, on: string, id = 'LW-1'): PairStory {
  const known = room(files, on);
  const found = known.pairs.find((one) => one.id === id);
  if (found === undefined) throw new Error(`no pair ${id}`);
  return pairStory(known, found);
}

const days = (span: { from: number; to: number } | null | undefined) =>
  span ? `${formatDay(span.from).slice(5)}…${formatDay(span.to).slice(5)}` : null;

const all = `${FOUR}\n date: 2026-03-15, checked\n date: 2026-03-16, hatched: [e1, e2]\n date: 2026-03-17, hatched: e3\n date: 2026-03-25, lost: {clear: e4}\n date: 2026-04-03, fledged: all\n date: 2026-04-22, independent: all`;

describe('a clutch’s story', () => {
  it('has the days of each step, real and foreseen', () => {
    const [one] = story({ 'LW-1': waxbills(all) }, '2026-07-01').clutches;
    expect([one?.laid, one?.sitting?.span, one?.hatched, one?.fledged, one?.independent].map(days)).toEqual([
      '03-01…03-04',
      '03-03…03-04',
      '03-16…03-17',
      '04-03…04-03',
      '04-22…04-22',
    ]);
    expect(one?.over && formatDay(one.over)).toBe('2026-04-22');
    // Sat on from 3–4 March, 11–13 d; nestlings of 17–21 d; independence 30–40 d after the first and the last hatching.
    expect(days(one?.foreseen.hatch)).toBe('03-14…03-17');
    expect(days(one?.foreseen.fledge)).toBe('04-02…04-07');
    expect(one?.foreseen.hatch?.likely).toBeDefined();
    expect(days(one?.foreseen.independent)).toBe('04-15…04-26');
  });

  it('of an open one is not over, and foresees what is to come', () => {
    const [one] = story({ 'LW-1': waxbills(FOUR) }, '2026-03-10').clutches;
    expect([one?.over, one?.hatched, one?.foreseen.fledge, one?.foreseen.independent]).toEqual([
      null,
      null,
      null,
      null,
    ]);
    expect(days(one?.foreseen.hatch)).toBe('03-14…03-17');
  });

  it('was laid until the last egg that a look found, written as laid or not', () => {
    const more =
      'date: 2026-03-01, laid: 1\n date: 2026-03-03, laid: 2, sitting\n date: 2026-03-05, checked: {eggs: 5}';
    const [one] = story({ 'LW-1': waxbills(more) }, '2026-03-06').clutches;
    expect(days(one?.laid)).toBe('03-01…03-05');
  });

  it('was laid no later than sitting may have begun, however late the nest was looked into', () => {
    const glimpse = 'date: 2026-02-01, paired\n date: 2026-03-20, laid: 3+\n date: 2026-03-22, sitting: hen';
    const [one] = story({ 'LW-1': waxbills(glimpse) }, '2026-03-25').clutches;
    expect([one?.laid, one?.sitting?.span].map(days)).toEqual(['03-05…03-20', '03-07…03-22']);
  });

  it('of eggs that all lie in store knows of no sitting', () => {
    const stored = 'date: 2026-03-01, laid: 1, pulled: e1\n date: 2026-03-02, laid: 1, pulled: e2';
    expect(story({ 'LW-1': waxbills(stored) }, '2026-03-20').clutches[0]?.sitting).toBeNull();
  });

  it('tells of who has flown and feeds itself while others are not so far', () => {
    const some = `${FOUR}\n date: 2026-03-16, hatched: all\n date: 2026-04-03, fledged: [c1, c2]\n date: 2026-04-22, independent: c1`;
    const [one] = story({ 'LW-1': waxbills(some) }, '2026-04-23').clutches;
    expect([one?.fledged, one?.independent].map(days)).toEqual(['04-03…04-03', '04-22…04-22']);
  });

  it('of eggs of which one lies in store knows the sitting on the others', () => {
    const one = story({ 'LW-1': waxbills(`${FOUR}\n date: 2026-03-05, pulled: e1`) }, '2026-03-10')
      .clutches[0];
    expect(days(one?.sitting?.span)).toBe('03-03…03-04');
    expect(one?.sitting?.inferred).toBe(false);
    const early = FOUR.replace('03-01, laid: 1', '03-01, laid: 1, pulled: e1');
    const [never] = story({ 'LW-1': waxbills(early) }, '2026-03-10').clutches;
    expect([never?.sitting?.span, never?.foreseen.hatch].map(days)).toEqual(['03-03…03-04', '03-14…03-17']);
  });

  it('that was found with chicks has no day of laying', () => {
    const [one] = story({ 'LW-1': waxbills('date: 2026-03-20, hatched: 2') }, '2026-03-21').clutches;
    expect([one?.laid, days(one?.hatched)]).toEqual([null, '03-20…03-20']);
  });

  it('is over with the last that ended: chicks by themselves, dead ones, lost eggs', () => {
    const over = (more: string, on = '2026-07-01') => {
      const day = story({ 'LW-1': waxbills(`${FOUR}\n${more}`) }, on).clutches[0]?.over;
      return day == null ? null : formatDay(day);
    };
    const hatched = 'date: 2026-03-16, hatched: [e1, e2]';
    const lost = 'date: 2026-03-25, lost: {clear: [e3, e4]}';
    const flown = `${hatched}\n ${lost}\n date: 2026-04-03, fledged: all`;
    expect(over('date: 2026-03-12, lost: {broken: e1}\n date: 2026-03-20, lost: {clear: [e2, e3, e4]}')).toBe(
      '2026-03-20',
    );
    expect(over(`${hatched}\n ${lost}\n date: 2026-03-19, died: all`)).toBe('2026-03-25');
    expect(over(`${flown}\n date: 2026-04-10, died: c1\n date: 2026-04-22, independent: c2`)).toBe(
      '2026-04-22',
    );
    expect(over(`${flown}\n date: 2026-04-22, independent: c2\n date: 2026-04-24, died: c1`)).toBe(
      '2026-04-24',
    );
    // One chick is still fed, or one egg may still hatch.
    expect(over(`${flown}\n date: 2026-04-22, independent: c2`)).toBeNull();
    expect(over('date: 2026-03-12, lost: {broken: [e1, e2, e3]}', '2026-03-20')).toBeNull();
    // A fortnight past the longest sitting nothing comes of the last egg any more: 4 + 13 + 14 March.
    expect(over('date: 2026-03-12, lost: {broken: [e1, e2, e3]}', '2026-03-31')).toBeNull();
    expect(over('date: 2026-03-12, lost: {broken: [e1, e2, e3]}', '2026-04-01')).toBe('2026-03-12');
  });

  it('foresees its hatching without those that were known before to be no chick', () => {
    const foreseen = (more: string) =>
      days(
        story({ 'LW-1': waxbills(`${FOUR}\n date: 2026-03-09, laid: 1\n${more}`) }, '2026-03-18').clutches[0]
          ?.foreseen.hatch,
      );
    // A fifth egg of 9 March would hatch until the 21st.
    expect(foreseen('')).toBe('03-14…03-21');
    expect(foreseen('date: 2026-03-15, candled: {clear: e5}')).toBe('03-14…03-17');
    expect(foreseen('date: 2026-03-15, candled: {dead: e5}')).toBe('03-14…03-17');
    expect(foreseen('date: 2026-03-12, lost: {broken: e5}')).toBe('03-14…03-17');
    expect(foreseen('date: 2026-03-15, candled: {fertile: e5}')).toBe('03-14…03-21');
  });

  it('foresees from the book and the other clutches, never from what became of itself', () => {
    const slow = (more: string) => `date: 2026-03-02, after: 2026-03-01, laid: 1, sitting${more}`;
    const hatched = '\n date: 2026-03-18, after: 2026-03-17, hatched: 1';
    const own = (files: Files) => days(story(files, '2026-04-30').clutches[0]?.foreseen.hatch);
    const open = own({ 'LW-1': waxbills(slow('')) });
    expect(own({ 'LW-1': waxbills(slow(hatched)) })).toBe(open);
    const others = Object.fromEntries(
      ['2', '3', '4', '5', '6'].map((id) => [
        `LW-${id}`,
        pair(`LW-${id}`, 'lavender waxbill', slow(hatched)),
      ]),
    );
    expect(own({ 'LW-1': waxbills(slow(hatched)), ...others })).not.toBe(open);
  });

  it('of a species without a profile foresees nothing; of young only heard no leaving of the nest', () => {
    const unknown = { 'LW-1': pair('LW-1', 'moonfinch', all) };
    expect(story(unknown, '2026-07-01').clutches[0]?.foreseen).toEqual({
      hatch: null,
      fledge: null,
      independent: null,
    });
    const half = { ...unknown, 'species/own.yaml': 'species: moonfinch\nfledging: 18-20\n' };
    expect(story(half, '2026-07-01').clutches[0]?.foreseen).toMatchObject({ hatch: null, independent: null });
    expect(days(story(half, '2026-07-01').clutches[0]?.foreseen.fledge)).toMatch(/^04-03/);
    const heard = { 'LW-1': waxbills(`${FOUR}\n date: 2026-03-16, heard`) };
    expect(story(heard, '2026-03-20').clutches[0]?.foreseen).toMatchObject({
      fledge: null,
      independent: null,
    });
  });

  // 0.51 · length · breadth² (Hoyt 1979, as the reckoning has it): 0.51 · 1.6 · 1.17² = 1.117 cm³.
  it('has the size of an egg that was measured, unless it can be no egg of its kind', () => {
    const volumes = (size: string) =>
      story(
        { 'LW-1': waxbills(`${FOUR}\n date: 2026-03-05, measured: {e1: ${size}}`) },
        '2026-03-06',
      ).clutches[0]?.eggs.map(({ volume }) => volume);
    expect(volumes('16.0 x 11.7')).toEqual([expect.closeTo(1.117, 3), null, null, null]);
    expect(volumes('160 x 117')?.[0]).toBeNull();
  });

  it('knows each egg’s fertility', () => {
    const [one] = story({ 'LW-1': waxbills(all) }, '2026-07-01').clutches;
    expect(one?.eggs.map(({ egg, fertility }) => `${egg.ref} ${fertility}`)).toEqual([
      'e1 fertile',
      'e2 fertile',
      'e3 fertile',
      'e4 clear',
    ]);
  });
});

describe('a pair beside the others', () => {
  const files = {
    'LW-1': waxbills(all),
    'LW-2': pair('LW-2', 'lavender waxbill', `${FOUR}\n date: 2026-03-25, lost: {clear: all}`),
  };

  it('has its own rates and theirs', () => {
    const { own, others } = story(files, '2026-07-01');
    expect([short(own, 'fertility'), short(others, 'fertility')]).toEqual(['3/4', '0/4']);
    const second = story(files, '2026-07-01', 'LW-2');
    expect([short(second.own, 'fertility'), short(second.others, 'fertility')]).toEqual(['0/4', '3/4']);
  });

  it('has what it reared itself', () => {
    expect(story(files, '2026-07-01').reared).toEqual({
      taken: 0,
      hatched: 3,
      fledged: 3,
      independent: 3,
      died: 0,
    });
    expect(story(files, '2026-07-01', 'LW-2').reared).toMatchObject({ hatched: 0, independent: 0 });
  });

  it('alone in the room, or without a clutch, has nothing beside it', () => {
    const alone = story({ 'LW-1': waxbills('date: 2026-01-01, paired') }, '2026-07-01');
    expect([alone.clutches.length, short(alone.own, 'overall'), short(alone.others, 'overall')]).toEqual([
      0,
      '0/0',
      '0/0',
    ]);
  });
});
