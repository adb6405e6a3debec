import { describe, expect, it } from 'vitest';
import { birdObservations } from '../../../src/journal/bird-observations/index.ts';
import { observations } from '../../../src/journal/observations/index.ts';
import { birdPartsOf, type Part, partsOf } from '../../../src/rules/events/parts.ts';
import { record } from '../../rooms.ts';

const short = ({ what, amount, unit, count, details, who }: Part) =>
  [what, amount === null ? unit : `${amount} ${unit}`, count?.count, details, who?.kind].filter(
    (one) => one !== null && one !== undefined,
  );

/** The statements of one line of a pair's log. */
function said(line: string): unknown[][] {
  const files = { P: `pair: P\nspecies: star finch\nlog:\n  - {date: 2026-03-01, ${line}}\n` };
  const { pairs, findings } = record(files, '2026-03-02');
  expect(findings.map(({ code }) => code)).toEqual([]);
  return [...(pairs[0]?.entries ?? [])]
    .flatMap(({ saw }) => saw)
    .flatMap((observation) => partsOf(observation).map(short));
}

/** The statements of one line of a bird's own log. */
function saidOfBird(line: string): unknown[][] {
  const text = `birds:\n  - {id: A1, species: star finch, log: [{date: 2026-03-01, ${line}}]}\n`;
  const { birds, findings } = record({ 'birds.yaml': text }, '2026-03-02');
  expect(findings.map(({ code }) => code)).toEqual([]);
  return (birds[0]?.log[0]?.saw ?? []).flatMap((observation) => birdPartsOf(observation).map(short));
}

describe('an observation of a pair', () => {
  it.each([
    ['laid: 2', [['count']]],
    [
      'candled: {fertile: [e1, e3], clear: 1}',
      [
        ['fertile', 'refs'],
        ['clear', 'count'],
      ],
    ],
    [
      'lost: {clear: e4, eaten: all}',
      [
        ['clear', 'refs'],
        ['eaten', 'all'],
      ],
    ],
    ['died: hen', [['refs']]],
    [
      'weighed: {c1: 4.5, c2: 4.1}',
      [
        ['4.5 g', 'refs'],
        ['4.1 g', 'refs'],
      ],
    ],
    [
      'measured: {e1: 14.2 x 10.8}',
      [
        ['length', '14.2 mm', 'refs'],
        ['breadth', '10.8 mm', 'refs'],
      ],
    ],
    [
      'checked: {eggs: 0, chicks: 3+}',
      [
        ['eggs', 0],
        ['chicks', 3],
      ],
    ],
    ['checked', [[]]],
    [
      'feeding: {hand: c1, cock: c2}',
      [
        ['hand', 'refs'],
        ['cock', 'refs'],
      ],
    ],
    ['roosting: {nest: all}', [['nest', 'all']]],
    ['fostered: {LW-2: [e1, e2]}', [['LW-2', 'refs']]],
    [
      'gone: {sold: c1, given: c2}',
      [
        ['sold', 'refs'],
        ['given', 'refs'],
      ],
    ],
    ['unwell: {c1: fluffed}', [['fluffed', 'refs']]],
    ['sexed: {hen: [c1, c2]}', [['hen', 'refs']]],
    [
      'food: {egg food: 12, live food: 3}',
      [
        ['egg food', '12 g/d'],
        ['live food', '3 g/d'],
      ],
    ],
    ['food: [greens, dry seed]', [['greens'], ['dry seed']]],
    ['nest: {state: lined, site: box, height: 170}', [['lined', 'site: box; height: 170']]],
    ['paired: {housing: flight 2, hen: B2}', [['flight 2', 'hen: B2']]],
    ['paired', [[]]],
    ['parted', [[]]],
    ['parted: {cock: flight 7}', [['cock: flight 7']]],
    ['chasing: {by: cock, at: hen, level: hard}', [['hard', 'by: cock; at: hen']]],
    ['sitting', [['seen']]],
    ['sitting: off', [['off']]],
    ['aged: {5: all}', [['5 d', 'all']]],
    ['ringed: {c1: LW 26 014}', [['LW 26 014', 'refs']]],
    ['set: {incubator: 2}', [['incubator', 'count']]],
    ['moved: {c1: cage 4}', [['cage 4', 'refs']]],
    ['moved: cage 4', [['cage 4']]],
    ['treated: {hen: as the vet said}', [['as the vet said', 'refs']]],
    ['skip: [candle, ring]', [['candle'], ['ring']]],
  ])('%s', (line, parts) => {
    expect(said(line)).toEqual(parts);
  });

  it('has at least one statement, whichever key it is', () => {
    for (const [key, { example }] of Object.entries(observations)) {
      expect(said(example).length, key).toBeGreaterThan(0);
    }
  });
});

describe('an observation of a bird', () => {
  it.each([
    ['weighed: 8.4', [['8.4 g']]],
    ['quarantine: 40', [['40 d']]],
    ['quarantine: {until: 2026-04-09}', [['until: 2026-04-09']]],
    ['arrived: cage 1', [['cage 1']]],
    ['gone: sold', [['sold']]],
    ['back', [[]]],
  ])('%s', (line, parts) => {
    expect(saidOfBird(line)).toEqual(parts);
  });

  it('has at least one statement, whichever key it is', () => {
    for (const [key, { example }] of Object.entries(birdObservations)) {
      expect(saidOfBird(example).length, key).toBeGreaterThan(0);
    }
  });
});
