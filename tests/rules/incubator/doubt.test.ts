import { describe, expect, it } from 'vitest';
import { eggDoubt } from '../../../src/rules/incubator/doubt.ts';
import { room } from '../../rooms.ts';
import { hillFinches } from '../agenda/hill-finch.ts';

function egg(log: string, but: Record<string, string>) {
  const [pair] = room(hillFinches(`date: 2026-03-01, laid: 1\n${log}`, but), '2026-03-02').pairs;
  const found = pair?.clutches[0]?.eggs[0];
  if (found === undefined) throw new Error('no egg');
  return found;
}

describe('what an egg of a species weighs', () => {
  it('follows from its chick and from its hen', () => {
    const both = egg('', { 'adult-mass': '12', 'hatch-mass': '1' });
    expect(eggDoubt(both, { grams: 12 })?.high).toBeCloseTo(1 / 0.7, 9);
    expect(eggDoubt(both, { grams: 12 })?.low).toBeCloseTo((12 * 0.065) / 0.7, 9);
    expect(eggDoubt(both, { grams: 1.0 })).toBeNull();
    const hen = egg('', { 'adult-mass': '12' });
    expect(eggDoubt(hen, { grams: 12 })).not.toBeNull();
  });

  it('judges its length and breadth too', () => {
    const measured = egg('date: 2026-03-01, measured: {e1: 160 x 118}', { 'adult-mass': '12' });
    expect(eggDoubt(measured, null)).not.toBeNull();
    expect(eggDoubt(egg('', { 'adult-mass': '12' }), null)).toBeNull();
  });

  it('is not made up without a mass', () => {
    expect(eggDoubt(egg('', {}), { grams: 900 })).toBeNull();
  });
});
