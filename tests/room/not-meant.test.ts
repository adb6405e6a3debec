import { describe, expect, it } from 'vitest';
import { fullRef } from '../../src/room/model.ts';
import { room } from '../rooms.ts';
import { waxbills } from './facts.ts';
import { five } from './guests.ts';

describe('who died or was lost by count is not one of whom a later line tells', () => {
  const brood = `${five}\ndate: 2026-03-18, hatched: 5`;
  const told = (...entries: string[]) =>
    room({ P: waxbills([brood, ...entries].join('\ndate: ')) }, '2026-06-01');
  const ends = (...entries: string[]) => ({
    dead: told(...entries)
      .birds.filter(({ fate }) => fate?.kind === 'died')
      .map(fullRef),
    errors: told(...entries).findings.map(({ code }) => code),
  });

  it('that is ringed, weighed, weaned or sold later: it was one of the others', () => {
    for (const later of [
      'ringed: {c1: LW 26 01}',
      'weighed: {c1: 5}',
      'gone: {sold: c1}',
      'moved: {c1: flight 2}',
    ])
      expect(ends('2026-03-20, died: 1', `2026-03-25, ${later}`), later).toEqual({
        dead: ['LW-1/1/c2'],
        errors: [],
      });
  });

  it('each of several counts by itself, until all are those that nobody names', () => {
    expect(
      ends('2026-03-20, died: 1', '2026-03-21, died: 1', '2026-03-25, ringed: {c1: A1, c2: A2, c4: A4}'),
    ).toEqual({ dead: ['LW-1/1/c3', 'LW-1/1/c5'], errors: [] });
  });

  it('as far as there are others: whoever is named of five dead is an error still', () => {
    expect(ends('2026-03-20, died: 5', '2026-03-25, ringed: {c1: A1}').errors).toEqual(['dead-bird']);
  });

  it('told dead once more by its name it is the same one, and an error says so', () => {
    expect(ends('2026-03-20, died: 1', '2026-03-21, died: c1')).toEqual({
      dead: ['LW-1/1/c1'],
      errors: ['dead-bird'],
    });
  });

  it('as nobody knew it on the day: the day before it was named the lowest number stands for it', () => {
    const files = { P: waxbills(`${brood}\ndate: 2026-03-20, died: 1\ndate: 2026-03-25, ringed: {c1: A1}`) };
    const gone = (on: string) =>
      room(files, on)
        .birds.filter(({ fate }) => fate !== null)
        .map(fullRef);
    expect([gone('2026-03-24'), gone('2026-03-25')]).toEqual([['LW-1/1/c1'], ['LW-1/1/c2']]);
  });

  it('nor is an egg of those that were taken away by count one that hatches', () => {
    const log = `${five}\ndate: 2026-03-08, lost: {removed: 2}\ndate: 2026-03-18, hatched: [e1, e4]`;
    const known = room({ P: waxbills(log) }, '2026-03-24');
    expect(known.findings).toEqual([]);
    expect(known.pairs[0]?.clutches[0]?.eggs.map(({ fate }) => fate?.kind ?? 'open')).toEqual([
      ...['hatched', 'taken', 'taken', 'hatched', 'open'],
    ]);
  });

  it('nor is anybody asked whether it was the one that is named later', () => {
    const lamp = 'date: 2026-03-12, candled: {fertile: e1, clear: [e2, e3, e4, e5]}';
    const log = `${five}\n${lamp}\ndate: 2026-03-13, lost: {broken: 1}`;
    const asked = (more: string) =>
      room({ P: waxbills(`${log}${more}`) }, '2026-03-24').findings.map(({ code }) => code);
    expect([asked(''), asked('\ndate: 2026-03-18, hatched: e1')]).toEqual([['guessed'], []]);
  });

  it('nor does a slip change who hatched, where it was all of them', () => {
    const log = `${five}\ndate: 2026-03-18, hatched: 5\ndate: 2026-03-24, lost: {broken: e1}`;
    const known = room({ P: waxbills(log) }, '2026-03-24');
    expect(known.findings.map(({ code }) => code)).toEqual(['impossible']);
    expect(known.birds.flatMap(({ egg }) => egg?.ref ?? [])).toEqual(['e1', 'e2', 'e3', 'e4', 'e5']);
  });

  it('nor is an egg that hatched by count one that is lost by its name', () => {
    const log = `${five}\ndate: 2026-03-18, hatched: 3\ndate: 2026-03-24, lost: {dead-in-shell: e1, addled: e3}`;
    const known = room({ P: waxbills(log) }, '2026-03-24');
    expect(known.findings).toEqual([]);
    expect(known.birds.flatMap(({ egg }) => egg?.ref ?? [])).toEqual(['e2', 'e4', 'e5']);
  });
});
