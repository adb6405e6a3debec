import { describe, expect, it } from 'vitest';
import { blockData, rearedData, seasonJson } from '../../../src/report/json/season.ts';
import { clutchStories } from '../../../src/rules/season/story.ts';
import { room } from '../../rooms.ts';
import { whole } from '../../whole.ts';
import { book, FOUR, known, ON, waxbills } from '../seasons.ts';

const data = (by: Parameters<typeof book>[3] = null) =>
  JSON.parse(whole(seasonJson(book(known, ON, 'all', by), [])));

const BLOCK = ['pairs', 'clutches', 'eggs', 'chicks', 'rates', 'survival', 'stages'];

describe('the season for programs', () => {
  it('has the promised keys', () => {
    const { nestlog, season, totals, bySpecies, byPair } = data();
    expect([nestlog, season]).toEqual([1, 'all']);
    expect(Object.keys(totals)).toEqual(BLOCK);
    expect(bySpecies.map((block: object) => Object.keys(block))).toEqual([['species', ...BLOCK]]);
    expect(Object.keys(byPair[0])).toEqual(['pair', ...BLOCK, 'reared']);
    expect(Object.keys(totals.eggs)).toEqual([
      'laid',
      'fertile',
      'clear',
      'unknown',
      'hatched',
      'lost',
      'taken',
      'open',
    ]);
    expect(Object.keys(totals.chicks)).toEqual(['hatched', 'fledged', 'independent', 'died', 'gone', 'open']);
    expect(Object.keys(totals.rates)).toEqual([
      'fertility',
      'hatchOfFertile',
      'hatchOfLaid',
      'fledge',
      'independence',
      'overall',
    ]);
    expect(Object.keys(totals.rates.fertility)).toEqual([
      'k',
      'n',
      'open',
      'rate',
      'low',
      'high',
      'designEffect',
    ]);
    expect(Object.keys(totals.survival[0])).toEqual(['age', 'atRisk', 'died', 'surviving', 'low', 'high']);
    expect(Object.keys(totals.stages[0])).toEqual([
      'stage',
      'exposure',
      'losses',
      'daily',
      'se',
      'period',
      'low',
      'high',
    ]);
    expect(totals.stages.map(({ stage }: { stage: string }) => stage)).toEqual([
      'laying',
      'sitting',
      'nest',
      'fledged',
    ]);
    expect(Object.keys(byPair[0].reared)).toEqual(['taken', 'hatched', 'fledged', 'independent', 'died']);
  });

  it('has the groups asked for; of so few clutches they are not compared', () => {
    const { by } = data('pair');
    expect([by.name, by.groups.map(({ group }: { group: string }) => group)]).toEqual([
      'pair',
      ['LW-1', 'LW-2', 'LW-3', 'LW-4'],
    ]);
    expect([by.differences, by.survivalDifferences]).toEqual([[], []]);
    expect(data().by).toBeNull();
  });

  it('has the order of pairs, and the seasons before', () => {
    expect(data().ranking).toMatchObject({
      rate: 'overall',
      pairs: [
        { pair: 'LW-1', k: 3, n: 9 },
        { pair: 'LW-2', k: 0, n: 3 },
      ],
    });
    expect(data().before).toBeNull();
    const files = { 'LW-1': waxbills(`${FOUR.replaceAll('2026', '2025')}\n ${FOUR}`) };
    expect(JSON.parse(whole(seasonJson(book(files, '2026-07-01', '2026'), []))).before).toMatchObject({
      season: '2025',
      clutches: 1,
    });
  });

  it('has nulls where there is nothing', () => {
    const empty = JSON.parse(whole(seasonJson(book({}, '2026-07-01'), [])));
    expect(empty.totals.rates.overall).toEqual({
      k: 0,
      n: 0,
      open: 0,
      rate: null,
      low: null,
      high: null,
      designEffect: null,
    });
    expect([empty.bySpecies, empty.byPair, empty.ranking, empty.dangerousAges]).toEqual([[], [], null, null]);
  });
});

it('has every clutch on a timeline, and what the curve and the stages rest on', () => {
  const understood = room(known, ON);
  const clutches = understood.pairs.flatMap((pair) => pair.clutches);
  const found = JSON.parse(whole(seasonJson(book(known, ON), clutchStories(understood, clutches))));
  expect(found.timeline).toHaveLength(found.totals.clutches);
  expect(found.timeline[0]).toMatchObject({
    pair: 'LW-1',
    species: 'lavender waxbill',
    clutch: 1,
    season: '2026',
    begun: '2026-03-01',
    laid: { from: '2026-03-01', to: '2026-03-05' },
    hatched: { from: '2026-03-16', to: '2026-03-16' },
    over: '2026-04-25',
    of: { eggs: 5, hatched: 3, fledged: 2, independent: 2 },
  });
  expect(found.followed).toEqual({ chicks: found.totals.chicks.hatched, untilAge: 40, estimated: false });
  expect(Object.keys(found.stageDays)).toEqual(['laying', 'sitting', 'nest', 'fledged']);
  expect(found.seasons).toEqual(['2026']);
});

it('a block and what was reared are the same wherever they stand', () => {
  const found = book(known, ON);
  const [first] = found.byPair;
  if (first === undefined) throw new Error('no pair');
  expect({ pair: 'LW-1', ...blockData(first, found.measures), reared: rearedData(first.reared) }).toEqual(
    data().byPair[0],
  );
});
