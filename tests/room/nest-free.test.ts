import { describe, expect, it } from 'vitest';
import { formatDay } from '../../src/days.ts';
import { nestFreeSince } from '../../src/room/nest-free.ts';
import { agenda, room } from '../rooms.ts';
import { clutchIn, days, eggIn, journal } from './facts.ts';

// Two broods do not lie in one nest: eggs of the second are laid when the first has left it (common practice).

const first = `
  date: 2026-03-15, laid: 1
  date: 2026-03-18, laid: 3, sitting
  date: 2026-04-01, hatched: 4
  date: 2026-04-21, fledged: 4`;
const twinspots = (log: string) => ({ P: journal('A-1', "Peters' twinspot", `${first}\n${log}`) });
const laid = (log: string) => days(eggIn(room(twinspots(log), '2026-05-01'), 'A-1/2/e1').laid);
const free = (log: string) => {
  const since = nestFreeSince(clutchIn(room(twinspots(log), '2026-05-01'), 'A-1/2'));
  return since === null ? null : formatDay(since).slice(5);
};
const sits = 'date: 2026-04-28, sitting: hen';

describe('a second clutch that nobody saw laid', () => {
  it('was laid after the first brood left that nest', () => {
    expect(laid(sits)).toBe('04-21…04-28');
    expect(free(sits)).toBe('04-21');
  });

  it('was laid after the nest was seen being made or cleaned again', () => {
    expect(laid(`date: 2026-04-26, nest: lined\n${sits}`)).toBe('04-26…04-28');
    expect(laid(`date: 2026-04-24, nest: cleaned\n${sits}`)).toBe('04-24…04-28');
    expect(laid(`date: 2026-04-26, nest: moved\n${sits}`)).toBe('04-21…04-28');
  });

  it('was laid after the last of the first brood left that nest or died in it, whatever was made of it before', () => {
    const since = (ends: string) => {
      const log = `${first.replace(/\n *date: 2026-04-21.*$/, '')}\n${ends}\n${sits}`;
      const known = room({ P: journal('A-1', "Peters' twinspot", log) }, '2026-05-02');
      return formatDay(nestFreeSince(clutchIn(known, 'A-1/2')) ?? 0).slice(5);
    };
    expect(since('date: 2026-04-09, checked\ndate: 2026-04-10, died: all')).toBe('04-10');
    expect(since('date: 2026-04-19, fledged: 1\ndate: 2026-04-21, fledged: all')).toBe('04-21');
    expect(since('date: 2026-04-21, fledged: all\ndate: 2026-04-12, nest: lined')).toBe('04-21');
    expect(since('date: 2026-04-21, fledged: all\ndate: 2026-04-30, nest: lined')).toBe('04-21');
  });

  it('may be older in another nest, where the pair has two', () => {
    const sites = (log: string) =>
      days(eggIn(room({ P: journal('A-1', "Peters' twinspot", log) }, '2026-05-01'), 'A-1/2/e1').laid);
    const low = first.replace('laid: 1', 'site: low, laid: 1');
    expect(sites(`${low}\n${sits}, site: low`)).toBe('04-21…04-28');
    expect(sites(`${low}\n${sits}, site: high`)).toBe('04-14…04-28');
  });

  it('hatches by its own days, with the live food before them', () => {
    const [food] = agenda(twinspots(`date: 2026-04-26, nest: lined\n${sits}`), '2026-05-01').filter(
      ({ task }) => task === 'live-food',
    );
    expect([food?.from, food?.to].map((one) => formatDay(one ?? 0))).toEqual(['2026-05-07', '2026-05-09']);
  });
});

describe('a first clutch', () => {
  it('has none before it', () => {
    expect(nestFreeSince(clutchIn(room(twinspots(''), '2026-05-01'), 'A-1/1'))).toBeNull();
  });
});
