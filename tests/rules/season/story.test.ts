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

  it('was laid no later than sitting may have begun, however late the nest was looked into', () => {
    const glimpse = 'date: 2026-02-01, paired\n date: 2026-03-20, laid: 3+\n date: 2026-03-22, sitting: hen';
    const [one] = story({ 'LW-1': waxbills(glimpse) }, '2026-03-25').clutches;
    expect([one?.laid, one?.sitting?.span].map(days)).toEqual(['03-05…03-20', '03-07…03-22']);
  });

  it('of eggs that all lie in store knows of no sitting', () => {
    const stored = 'date: 2026-03-01, laid: 1, pulled: e1\n date: 2026-03-02, laid: 1, pulled: e2';
    expect(story({ 'LW-1': waxbills(stored) }, '2026-03-20').clutches[0]?.sitting).toBeNull();
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
