import { describe, expect, it } from 'vitest';
import { inOrder } from '../../src/room/sightings.ts';
import { day, type Files, record } from '../rooms.ts';
import { journal, waxbills } from './facts.ts';

/** What was seen, in order, as keys. */
function order(files: Files, until = '2026-12-31'): string[] {
  const { pairs, birds } = record(files, until);
  return [...inOrder(pairs, birds, day(until))].map(({ observation }) => observation.key);
}

const lines = [
  'date: 2026-03-01, laid: 1',
  'date: 2026-03-04, time: 07:00, laid: 2',
  'date: 2026-03-04, time: 18:30, sitting',
  'date: 2026-03-16, hatched: 1',
  'date: 2026-02-01, paired',
];

describe('what was seen is told in the order in which it happened', () => {
  it('by date and time, whatever the order of the lines', () => {
    const told = ['paired', 'laid', 'laid', 'sitting', 'hatched'];
    expect(order({ P: waxbills(lines.join('\n')) })).toEqual(told);
    expect(order({ P: waxbills([...lines].reverse().join('\n')) })).toEqual(told);
  });

  it('within a day in the order of the trade, though written down otherwise', () => {
    const day =
      'date: 2026-03-16, died: c1, ringed: {c2: "7"}, lost: {clear: e3}, hatched: 2, sitting, laid: 1, paired';
    expect(order({ P: waxbills(day) })).toEqual([
      'paired',
      'laid',
      'sitting',
      'hatched',
      'lost',
      'ringed',
      'died',
    ]);
  });

  it('a visit without a time before those of the day that have one', () => {
    const day = 'date: 2026-03-04, time: 06:00, laid: 1\ndate: 2026-03-04, sitting';
    expect(order({ P: waxbills(day) })).toEqual(['sitting', 'laid']);
  });

  it('with the logs of the bird list among those of the pairs', () => {
    const birds = `
      birds:
        - id: LW-20-11
          species: lavender waxbill
          log:
            - {date: 2026-03-02, weighed: 8.4}
            - {date: 2026-01-10, arrived: cage 1}
    `;
    const files = {
      'birds.yaml': birds,
      P: waxbills('date: 2026-03-01, laid: 1\ndate: 2026-03-03, laid: 1'),
    };
    expect(order(files)).toEqual(['arrived', 'laid', 'weighed', 'laid']);
  });

  it('and what is dated later than the day is not told', () => {
    expect(order({ P: waxbills(lines.join('\n')) }, '2026-03-03')).toEqual(['paired', 'laid']);
  });

  it.each([
    ['laid: e1', 'laid: e2'],
    ['candled: {clear: e1}', 'candled: {fertile: e1}'],
    ['candled: {clear: e1}', 'candled: {clear: e2}'],
    ['weighed: {c1: 4.5}', 'weighed: {c1: 4.6}'],
    ['died: {chilled: c1}', 'died: {starved: c1}'],
    ['chasing: {by: cock, at: c1}', 'chasing: {by: cock, at: hen}'],
    ['clutch: 1, laid: 1', 'clutch: 2, laid: 1'],
    ['laid: 1', 'clutch: 2, laid: 1'],
    ['site: left, laid: 1', 'site: right, laid: 1'],
    ['after: 2026-03-01, checked', 'after: 2026-03-02, checked'],
    ['after: 2026-03-01 07:00, checked', 'after: 2026-03-01 08:00, checked'],
  ])('of two visits of one day in the same order, whichever line stands first: %s; %s', (one, other) => {
    const told = (...entries: string[]) => {
      const log = entries.map((entry) => `date: 2026-03-03, ${entry}`).join('\n');
      // Of a pair that is not the first of the room, too.
      const files = { P: waxbills(log), Q: journal('A-1', 'canary', 'date: 2026-03-02, paired') };
      const { pairs } = record(files, '2026-03-03');
      const seen = [...inOrder(pairs, [], day('2026-03-03'))].slice(1);
      return seen.map((sighting) => {
        if (sighting.of === 'bird') return null;
        const { clutch, site, after } = sighting.entry;
        // Without the places, as those are what differs.
        const said = [clutch?.number, site?.text, after?.day, after?.time, sighting.observation.value];
        return JSON.stringify(said).replace(/"at":\{"file"[^}]*\}/g, '');
      });
    };
    expect(told(one, other)).toEqual(told(other, one));
    expect(new Set(told(one, other)).size).toBe(2);
  });

  it('of two pairs, and of two birds, in the order of their names', () => {
    const files = (first: string, second: string, names: [string, string]): Files => ({
      'birds.yaml': `birds:\n${names.map((id) => `  - {id: ${id}, log: [{date: 2026-03-03, weighed: 8.4}]}\n`).join('')}`,
      [first]: journal(first, 'lavender waxbill', 'date: 2026-03-03, laid: 1'),
      [second]: journal(second, 'lavender waxbill', 'date: 2026-03-03, laid: 1'),
    });
    const told = (rooms: Files) => {
      const { pairs, birds } = record(rooms, '2026-03-03');
      return [...inOrder(pairs, birds, day('2026-03-03'))].map((sighting) =>
        sighting.of === 'pair' ? sighting.journal.pair.text : sighting.record.id.text,
      );
    };
    const expected = ['P-2', 'P-10', 'B-2', 'B-10'];
    expect(told(files('P-10', 'P-2', ['B-10', 'B-2'])).toSorted(byKind)).toEqual(expected);
    expect(told(files('P-2', 'P-10', ['B-2', 'B-10'])).toSorted(byKind)).toEqual(expected);
  });

  it('of one bird in the order of what is said of it', () => {
    const weights = (...grams: number[]) => {
      const log = grams.map((one) => `{date: 2026-03-03, weighed: ${one}}`).join(', ');
      const { birds } = record({ 'birds.yaml': `birds:\n  - {id: B, log: [${log}]}\n` }, '2026-03-03');
      return [...inOrder([], birds, day('2026-03-03'))].map(({ observation }) => observation.value);
    };
    expect(weights(8.4, 8.5)).toEqual([8.4, 8.5]);
    expect(weights(8.5, 8.4)).toEqual([8.4, 8.5]);
  });

  it('and a bird’s first day is that on which it came, before all else of that day', () => {
    const birds = 'birds:\n  - {id: B, log: [{date: 2026-03-03, weighed: 8.4, arrived: cage 9}]}\n';
    expect(order({ 'birds.yaml': birds }, '2026-03-03')).toEqual(['arrived', 'weighed']);
    expect(order({ 'birds.yaml': birds }, '2026-03-02')).toEqual([]);
  });
});

/** Pairs before birds, and otherwise as they come. */
function byKind(a: string, b: string): number {
  return Number(a.startsWith('B')) - Number(b.startsWith('B'));
}
