import { describe, expect, it } from 'vitest';
import { aheadJson } from '../../../src/report/json/ahead.ts';
import { aheadOf } from '../../../src/rules/ahead/ahead.ts';
import { exampleRoom } from '../../example/room.ts';
import { type Files, room } from '../../rooms.ts';

const json = (stood: ReturnType<typeof room>) =>
  JSON.parse(aheadJson({ ...aheadOf(stood, { weeks: 8, draws: 200 }), findings: stood.findings }));

const KEYS = [
  'nestlog',
  'date',
  'room',
  'until',
  'draws',
  'eggs',
  'chicks',
  'clutches',
  'weeks',
  'before',
  'total',
  'species',
  'pastTheirTime',
  'uncounted',
  'rings',
  'housing',
  'rest',
  'birds',
  'basis',
  'findings',
];

/** The names of the keys of each thing in plain data, by where they stand; lists by their first. */
function shape(data: unknown): unknown {
  if (Array.isArray(data)) return data.slice(0, 1).map(shape);
  if (typeof data !== 'object' || data === null) return null;
  return Object.fromEntries(Object.entries(data).map(([key, value]) => [key, shape(value)]));
}

describe('the weeks ahead as JSON', () => {
  const example = json(exampleRoom());

  it('have their promised keys, also of a room that has nothing', () => {
    const empty: Files = {};
    expect(Object.keys(example)).toEqual(KEYS);
    expect(Object.keys(json(room(empty, '2026-05-17')))).toEqual(KEYS);
  });

  it('have estimates with a mean and a range, and ISO dates', () => {
    const estimate = { mean: null, low: null, high: null };
    const young = { hatching: estimate, fledging: estimate, independent: estimate };
    const week = { year: null, week: null, from: null, to: null, ...young };
    expect(shape(example.weeks)).toEqual([week]);
    expect(shape(example.species)).toEqual([
      { species: null, eggs: null, chicks: null, clutches: null, ...young, weeks: [week] },
    ]);
    expect(example.weeks[1]).toMatchObject({ year: 2026, week: 21, from: '2026-05-18', to: '2026-05-24' });
  });

  it('have the rings by size, with null where there is nothing to say', () => {
    expect(Object.keys(example.rings)).toEqual([
      'wanted',
      'lead',
      'leadAssumed',
      'sooner',
      'sizes',
      'unused',
      'tooOld',
    ]);
    const size = example.rings.sizes.find(({ mm }: { mm: number }) => mm === 2.4);
    expect(Object.keys(size)).toEqual([
      'mm',
      'species',
      'chicks',
      'needed',
      'inHand',
      'order',
      'first',
      'orderBy',
      'late',
      'spare',
    ]);
    expect(size).toMatchObject({ inHand: 9, order: 0, orderBy: null, late: null });
    expect(size.first).toMatch(/^2026-05-\d\d$/);
  });

  it('have the housing, the hens and the birds', () => {
    expect(Object.keys(example.housing.place)).toEqual([
      'housing',
      'went',
      'moved',
      'now',
      'most',
      'mostOn',
      'weeks',
    ]);
    expect(Object.keys(example.housing)).toEqual(['place', 'leaving', 'occupied', 'empty']);
    expect(Object.keys(example.housing.occupied[0])).toEqual(['housing', 'now', 'most', 'mostOn']);
    expect(Object.keys(example.housing.leaving[0])).toEqual([
      'pair',
      'clutch',
      'housing',
      'ready',
      'young',
      'nextClutch',
      'days',
      'nextHatch',
    ]);
    expect(Object.keys(example.rest[0])).toEqual([
      'pair',
      'hen',
      'housing',
      'clutches',
      'limit',
      'from',
      'free',
    ]);
    expect(Object.keys(example.birds[0])).toEqual(['task', 'bird', 'species', 'housing', 'date', 'why']);
    expect(Object.keys(example.basis[0].fledge)).toEqual(['mean', 'low', 'high', 'k', 'n', 'clutches']);
  });
});
