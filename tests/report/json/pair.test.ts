import { expect, it } from 'vitest';
import { pairJson } from '../../../src/report/json/pair.ts';
import { story } from '../seasons.ts';

const data = (id: string) => JSON.parse(pairJson(story(id)));

it('a pair for programs: its clutches with dates foreseen and real, fates, rates', () => {
  const { nestlog, pair, clutches, own, others, reared } = data('LW-1');
  expect([nestlog, pair, clutches.length]).toEqual([1, 'LW-1', 2]);
  expect(clutches[0]).toMatchObject({
    clutch: 1,
    season: '2026',
    counted: true,
    laid: { from: '2026-03-01', to: '2026-03-05' },
    hatched: { from: '2026-03-16', to: '2026-03-16' },
    over: '2026-04-25',
  });
  expect(Object.keys(clutches[0].foreseen)).toEqual(['hatch', 'fledge', 'independent']);
  expect(clutches[0].foreseen.hatch).toEqual({
    from: expect.any(String),
    to: expect.any(String),
    likely: expect.any(String),
  });
  expect(clutches[0].eggs[3]).toMatchObject({
    egg: 'e4',
    fertility: 'fertile',
    fate: 'lost',
    cause: 'dead-in-shell',
    day: '2026-03-22',
    chick: null,
  });
  expect(clutches[0].chicks[2]).toMatchObject({
    chick: 'c3',
    fate: 'died',
    cause: 'cold',
    day: '2026-03-19',
    fledged: null,
  });
  expect([own.rates.fertility.n, others.rates.fertility.n]).toEqual([8, 4]);
  expect(reared).toEqual({ taken: 0, hatched: 4, fledged: 3, independent: 3, died: 1 });
});

it('what is not known is null, never missing', () => {
  const [clutch] = data('LW-3').clutches;
  expect([clutch.hatched, clutch.fledged, clutch.independent, clutch.over, clutch.foreseen.fledge]).toEqual([
    null,
    null,
    null,
    null,
    null,
  ]);
  expect(clutch.eggs[0]).toEqual({
    egg: 'e1',
    laid: expect.any(Object),
    fertility: 'fertile',
    fate: null,
    cause: null,
    day: null,
    chick: null,
    weights: [],
    size: null,
    loss: null,
  });
});
