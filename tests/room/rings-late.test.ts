import { describe, expect, it } from 'vitest';
import type { Files } from '../rooms.ts';
import { room } from '../rooms.ts';
import { journal, waxbills } from './facts.ts';

// Lavender waxbills are ringed at 7–8 d (common practice), hatched on the 16th: on the 23rd and 24th.
const eggs = 'date: 2026-03-01, laid: 3\ndate: 2026-03-15, checked: {eggs: 3}\ndate: 2026-03-16, hatched: 3';
const told = (log: string, more: Files = {}) =>
  room({ P: waxbills(`${eggs}\n${log}`), ...more }, '2026-07-01').findings.map(({ code, args }) =>
    code === 'ringed-late' ? `${args.who} at ${args.age} d, not ${args.from}…${args.to}` : code,
  );

describe('a ring put on too late for a closed one', () => {
  it('is asked about from the third day after its time on', () => {
    expect(told('date: 2026-03-26, ringed: {c1: R1}')).toEqual([]);
    expect(told('date: 2026-03-27, ringed: {c1: R1}')).toEqual(['c1 at 11 d, not 2026-03-23…2026-03-24']);
    expect(told('date: 2026-04-20, ringed: {c1: R1, c2: R2}')).toHaveLength(2);
  });

  it('is an open or split one where the clutch was to get no closed one, whenever that was written', () => {
    expect(told('date: 2026-04-20, ringed: {c1: R1}, skip: ring')).toEqual([]);
    expect(told('date: 2026-04-20, ringed: {c1: R1}\ndate: 2026-04-25, clutch: 1, skip: ring')).toEqual([]);
    expect(told('date: 2026-04-20, ringed: {c1: R1}, skip: candle')).toHaveLength(1);
  });

  it('is none where the chick may be younger, or turns out to be', () => {
    const found = 'date: 2026-04-14, aged: {10: c1}';
    const late = 'date: 2026-03-01, sitting\ndate: 2026-04-12, hatched: 2';
    const seen = (log: string) => room({ P: waxbills(log) }, '2026-07-01').findings.map(({ code }) => code);
    expect(seen(`${late}\ndate: 2026-04-14, ringed: {c1: R1}`)).toEqual([]);
    expect(seen(`${late}\n${found}\ndate: 2026-04-14, ringed: {c1: R1}`)).toEqual([]);
  });

  it('is not asked about of a bird that came from elsewhere, whatever its age', () => {
    const bought = { 'birds.yaml': 'birds:\n  - {id: H-1, hatched: 2025-05-01}\n' };
    expect(told('date: 2026-04-20, ringed: {H-1: R9}', bought)).toEqual([]);
  });

  it('is nobody’s matter in a room that rings no birds, nor of a species whose ring age nobody knows', () => {
    expect(told('date: 2026-04-20, ringed: {c1: R1}', { 'nestlog.yaml': 'ringing: no\n' })).toEqual([]);
    const finch = journal('X', 'ridge finch', `${eggs}\ndate: 2026-04-20, ringed: {c1: R1}`);
    const profiles: Files[] = [{}, { 'species/ridge-finch.yaml': 'species: ridge finch\n' }];
    for (const own of profiles)
      expect(room({ X: finch, ...own }, '2026-07-01').findings.map(({ code }) => code)).not.toContain(
        'ringed-late',
      );
  });
});
